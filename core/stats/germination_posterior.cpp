// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_posterior.h"

#include "core/stats/curve_search.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace coneline::stats {

namespace {

constexpr double impossible = -std::numeric_limits<double>::infinity();

double log_bell(double value, const Belief& belief, bool heavy) {
  const double apart = (value - belief.middle) / belief.spread;
  if (!heavy)
    return -apart * apart / 2;
  constexpr double freedom = 4;
  // Scaled so that the middle is as that of the bell and only the tails are heavier.
  return -(freedom + 1) / 2 * std::log1p(apart * apart / freedom);
}

/// z at which H is one quarter, a half and three quarters.
struct Quarters {
  double one = 0;
  double half = 0;
  double three = 0;
};

Quarters quarters(Family family) {
  switch (family) {
  case Family::log_logistic:
    return {-std::log(3.0), 0, std::log(3.0)};
  case Family::weibull:
    return {std::log(std::log(4.0 / 3)), std::log(std::log(2.0)), std::log(std::log(4.0))};
  case Family::log_normal:
    return {-0.674489750196082, 0, 0.674489750196082};
  }
  return {};
}

/// The four values of a cross.
struct Values {
  double share = 0;
  double half = 0;
  double steepness = 0;
  double spread = 0;
};

Values values_of(const Curve& curve, double rho, const Quarters& z) {
  return {std::log(curve.germinable / (1 - curve.germinable)),
          std::log(curve.scale) + z.half / curve.shape, std::log(curve.shape / (z.three - z.one)),
          coordinate_of_rho(rho)};
}

/// The counts, and the day of the last look.
struct Counted {
  CurveEvidence evidence;
  double last_day = 0;

  explicit Counted(std::span<const Tray> trays) : evidence(trays, interval_counts(trays)) {
    for (const auto& tray : trays)
      if (tray.sown > 0)
        last_day = std::max(last_day, tray.last_day());
    if (last_day == 0)
      last_day = 1; // never looked at: the place to count from makes no difference
  }
};

double log_likelihood(CurveEvidence& evidence, const SearchPoint& point) {
  double value = evidence.times(point.curve);
  for (std::size_t i = 0; i < evidence.trays() && value > impossible; ++i)
    value += evidence.tray(i, point.curve.germinable, point.rho).log_likelihood;
  return std::isnan(value) ? impossible : value;
}

/// From logit germinable, half, steepness and spread:
/// d logit(germinable) / d logit(up) = (1 - up) / (1 - germinable); d half / d z = -1 / shape.
double log_jacobian(const SearchPoint& point, const Point& at) {
  return std::log((1 - point.up) / (1 - point.curve.germinable)) - at[2];
}

/// Where to look first: around the fit if there is one, and all over the prior.
std::vector<Proposal> proposals_for(Family family, const std::optional<CurveFit>& fit,
                                    const Counted& counted, const GerminationPrior& prior) {
  const double log_last = std::log(counted.last_day);
  const auto up = logit_up(counted.evidence.counts());
  const auto z = quarters(family);
  const double log_shape = prior.steepness.middle + std::log(z.three - z.one);
  const double shape = std::exp(log_shape);
  const double usual_z = std::clamp(z.half + shape * (log_last - prior.half.middle), -8.0, 12.0);
  Proposal wide{{up.value, usual_z, log_shape, prior.spread.middle}, Eigen::Matrix4d::Zero()};
  const double z_spread = std::clamp(shape * prior.half.spread, 1.0, 4.0);
  const double rho_variance = prior.spread.spread * prior.spread.spread;
  wide.covariance.diagonal() << 2 * up.variance, z_spread * z_spread,
      prior.steepness.spread * prior.steepness.spread, rho_variance;
  std::vector<Proposal> proposals;
  if (fit)
    proposals.push_back(around_fit(*fit, log_last, up, prior.spread.middle, rho_variance));
  proposals.push_back(wide);
  return proposals;
}

Sample sample_family(Family family, Counted& counted, const std::optional<CurveFit>& fit,
                     const GerminationPrior& prior) {
  constexpr std::size_t points = 1200;
  const double log_last = std::log(counted.last_day);
  const auto z = quarters(family);
  const bool heavy = prior.crosses > 0;
  const auto density = [&](const Point& at) {
    const auto here = search_point(family, log_last, at);
    if (!here.possible)
      return Weighed{impossible, 0, 0, 0};
    const auto values = values_of(here.curve, here.rho, z);
    return Weighed{log_likelihood(counted.evidence, here) + log_jacobian(here, at) +
                       log_bell(values.share, prior.share, heavy) +
                       log_bell(values.half, prior.half, heavy) +
                       log_bell(values.steepness, prior.steepness, heavy) +
                       log_bell(values.spread, prior.spread, heavy),
                   0, 0, 0};
  };
  return adaptive_sample(density, proposals_for(family, fit, counted, prior), points);
}

/// Mean and standard deviation, gathered point by point.
class Gathered {
 public:
  void add(double value, double weight) {
    first_ += weight * value;
    second_ += weight * value * value;
  }
  [[nodiscard]] Belief belief() const {
    return {first_, std::sqrt(std::max(1e-12, second_ - first_ * first_))};
  }

 private:
  double first_ = 0;
  double second_ = 0;
};

void summarise(GerminationPosterior& posterior) {
  Gathered share;
  Gathered half;
  Gathered steepness;
  Gathered spread;
  for (const auto& point : posterior.points) {
    const auto values = values_of(point.curve, point.rho, quarters(point.curve.family));
    share.add(values.share, point.weight);
    half.add(values.half, point.weight);
    steepness.add(values.steepness, point.weight);
    spread.add(values.spread, point.weight);
  }
  posterior.share = share.belief();
  posterior.half = half.belief();
  posterior.steepness = steepness.belief();
  posterior.spread = spread.belief();
}

} // namespace

GerminationPosterior germination_posterior(std::span<const Tray> trays,
                                           const GerminationPrior& prior) {
  Counted counted(trays);
  std::array<Sample, all_families.size()> samples;
  double highest = impossible;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const auto fit = fit_curve(counted.evidence.counts(), all_families[i]);
    samples[i] = sample_family(all_families[i], counted, fit, prior);
    highest = std::max(highest, samples[i].log_evidence);
  }
  double total = 0;
  for (const auto& sample : samples)
    total += std::exp(sample.log_evidence - highest);
  const double log_last = std::log(counted.last_day);
  GerminationPosterior posterior;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const double weight = std::exp(samples[i].log_evidence - highest) / total;
    for (const auto& point : samples[i].points)
      if (weight * point.weight > 1e-9) {
        const auto here = search_point(all_families[i], log_last, point.at);
        posterior.points.push_back({here.curve, here.rho, weight * point.weight});
      }
  }
  summarise(posterior);
  return posterior;
}

std::vector<PosteriorPoint> GerminationPosterior::thinned(std::size_t wanted) const {
  std::vector<PosteriorPoint> chosen;
  const auto number = static_cast<double>(wanted);
  double summed = 0;
  for (const auto& point : points) {
    summed += point.weight;
    while (chosen.size() < wanted && (static_cast<double>(chosen.size()) + 0.5) / number < summed) {
      chosen.push_back(point);
      chosen.back().weight = 1 / number;
    }
  }
  // The last weights can be lost to rounding.
  while (!chosen.empty() && chosen.size() < wanted)
    chosen.push_back(chosen.back());
  return chosen;
}

EarlierCross as_earlier_cross(const GerminationPosterior& posterior, const GerminationPrior& weak) {
  return {without_prior(posterior.share, weak.share), without_prior(posterior.half, weak.half),
          without_prior(posterior.steepness, weak.steepness),
          without_prior(posterior.spread, weak.spread)};
}

} // namespace coneline::stats
