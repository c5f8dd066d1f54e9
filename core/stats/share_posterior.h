// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What several trays of one group tell about the group's own share, when trays differ by more than
// chance and how much they differ is itself known only from them.
//
// A few trays tell little about rho, and the value of highest likelihood is mostly too low; a range
// that takes it for true is too narrow. So rho is averaged over: the beta-binomial likelihood,
// weighted by a weak prior of rho that favours small values, and Jeffreys' prior of the share.

#include "core/stats/beta_binomial.h"
#include "core/stats/share_interval.h"

#include <span>
#include <vector>

namespace coneline::stats {

/// The prior of rho: exponential. Trays of one cross seldom differ by a rho above 0.15 (common
/// practice, no source), and often by hardly any.
constexpr double mean_rho = 0.065;

/// Values of rho that stand for all, each with its prior weight; the weights sum to 1.
struct RhoNode {
  double rho = 0;
  double weight = 0;
};
std::span<const RhoNode> rho_nodes();

/// A distribution of a share, known by its quantiles.
class ShareDistribution {
 public:
  /// `angles` ascend, the arcsines of the roots of shares; `density` is by angle, not normalised.
  ShareDistribution(std::vector<double> angles, const std::vector<double>& density);

  /// The share below which the distribution lies with probability Phi(z), Phi being that of the
  /// normal distribution.
  [[nodiscard]] double quantile_at(double z) const;

 private:
  std::vector<double> angles_;
  std::vector<double> z_;
};

/// The outcomes of a group's trays, prepared for every value of rho.
class GroupShare {
 public:
  /// At least one tray holds seed.
  explicit GroupShare(std::span<const Outcome> outcomes);

  [[nodiscard]] double share() const { return share_; } ///< of all seed of the group
  [[nodiscard]] double seeds() const { return seeds_; }
  [[nodiscard]] std::size_t trays() const { return trays_; }
  /// Log-likelihood of each rho node, the share averaged over.
  [[nodiscard]] const std::vector<double>& evidence() const { return evidence_; }
  /// The share, rho weighted by `weights`: one for each node.
  [[nodiscard]] ShareDistribution distribution(std::span<const double> weights) const;

 private:
  double share_ = 0;
  double seeds_ = 0;
  std::size_t trays_ = 0;
  std::vector<double> evidence_;
  std::vector<double> angles_;
  std::vector<std::vector<double>> density_; ///< by node, each of sum 1
};

/// Prior of this mean times the evidence of all the groups, which share one rho; sums to 1.
std::vector<double> rho_weights(std::span<const GroupShare* const> groups, double mean = mean_rho);

/// Equal tails of (1 - confidence)/2, widened where needed to hold the share seen; low is 0 when
/// none germinated, high 1 when all did. `dilution`, above 0 to 1: of the spread between trays in
/// the end, as much as shows by now (see `diluted` in still_expected.h).
Interval share_range(const GroupShare& group, double confidence, double dilution = 1);

} // namespace coneline::stats
