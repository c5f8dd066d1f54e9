// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is believed of a cross before its own counts speak, from earlier crosses of the taxon.
//
// Four values describe a cross, each on a scale on which crosses of a taxon scatter like a bell:
//
//   share      logit of the share of seed that germinates sooner or later
//   half       ln of the day by which half of that share is up
//   steepness  ln of 1 / ln(day of three quarters / day of one quarter)
//   spread     ln(rho + 0.01), rho being the spread between trays
//
// Crosses j = 1 ... J have values theta_j around a mean mu of the taxon with a scatter tau, and of
// each theta_j the counts of its cross say x_j with an error e_j:
//
//   x_j ~ N(theta_j, e_j²)   theta_j ~ N(mu, tau²)   mu ~ N(m, s²)   tau ~ half-normal(t)
//
// m, s and t are the weak prior below. What follows for a further cross is worked out by summing
// over tau; mu is averaged over exactly. Without earlier crosses that is the weak prior; with two
// or three, tau is mostly the prior's, so the belief stays wide; with many it is the taxon's own.
// The four values are taken as independent of one another.

#include <optional>
#include <span>
#include <vector>

namespace coneline::stats {

/// A bell, on the scale of the value.
struct Belief {
  double middle = 0;
  double spread = 1; ///< standard deviation
};

/// What the hierarchy begins with for one value.
struct WeakBelief {
  double middle = 0;  ///< m
  double spread = 1;  ///< s
  double scatter = 1; ///< t

  /// For a cross of a taxon of which nothing is known: N(m, s² + t²).
  [[nodiscard]] Belief alone() const;
};

/// For a further cross, given what earlier ones say.
Belief belief_of_next(std::span<const Belief> seen, const WeakBelief& weak);

/// What counts say of a value once the prior is taken out of a belief that holds both, all taken as
/// bells. Nothing where the counts say next to nothing: where they narrowed the prior by less than
/// a twentieth.
std::optional<Belief> without_prior(const Belief& both, const Belief& prior);

/// A belief read back from its scale: its middle, and the ends between which the confidence lies.
struct BeliefRange {
  double median = 0;
  double low = 0;
  double high = 0;
};
BeliefRange share_range(const Belief& share, double confidence);    ///< 0 to 1
BeliefRange exponential_range(const Belief& ln, double confidence); ///< days, or steepness
BeliefRange rho_range(const Belief& spread, double confidence);     ///< 0 or more

struct GerminationPrior {
  Belief share;
  Belief half;
  Belief steepness;
  Belief spread;
  /// Earlier crosses behind it. With any, the bells get the heavy tails of Student's t with four
  /// degrees of freedom, so that counts that say otherwise overrule them.
  std::size_t crosses = 0;
};

/// What earlier crosses say; a value is missing where a cross says nothing of it.
struct EarlierCross {
  std::optional<Belief> share;
  std::optional<Belief> half;
  std::optional<Belief> steepness;
  std::optional<Belief> spread;
};

/// The weak prior: any share; a spread around 0.05; half of it up around `usual_day`, a factor of
/// 3.3 to either side; days of one and three quarters of the curve in a ratio of 1.7, give or take.
GerminationPrior weak_prior(double usual_day);

/// The prior of a cross from the earlier ones of its taxon.
GerminationPrior prior_from(std::span<const EarlierCross> earlier, double usual_day);

} // namespace coneline::stats
