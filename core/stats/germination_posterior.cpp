// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_posterior.h"

#include "core/stats/adaptive_sample.h"
#include "core/stats/curve_fit.h"
#include "core/stats/interval_counts.h"
#include "core/stats/waiting_seed.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace coneline::stats {

namespace {

constexpr double impossible = -std::numeric_limits<double>::infinity();
constexpr double shift = 0.01; ///< of rho, as in germination_prior.h

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
          std::log(rho + shift)};
}

/// A point of the search: logit of the share of seed up by the last look; z of the curve there; ln
/// shape; ln of the shifted rho. In these the likelihood is near to a bell even where share and
/// delay can hardly be told apart: what is well known is the share that is up by now.
struct Meant {
  Curve curve;
  double rho = 0;
  double log_jacobian = 0; ///< from logit germinable, half, steepness, spread
  bool possible = false;
};

Meant meant(Family family, double log_last, const Point& at) {
  Meant result;
  const double up = 1 / (1 + std::exp(-at[0]));
  const auto progress = parts(family, at[1]);
  const double shape = std::exp(at[2]);
  result.curve = {family, up / progress.below, shape, std::exp(log_last - at[1] / shape)};
  result.rho = std::exp(at[3]) - shift;
  const double germinable = result.curve.germinable;
  result.possible = progress.below > 0 && germinable < 1 && germinable > 0 && result.rho > 1e-4 &&
                    result.rho < 0.95 && std::abs(at[1] / shape) < 50 && std::abs(at[2]) < 12;
  // d logit(germinable) / d logit(up) = (1 - up) / (1 - germinable); d half / d z = -1 / shape.
  result.log_jacobian = std::log((1 - up) / (1 - germinable)) - at[2];
  return result;
}

/// The counts, ready to be asked how likely they are.
class Evidence {
 public:
  explicit Evidence(std::span<const Tray> trays)
      : counts_(interval_counts(trays)), at_(counts_.bounds.size()) {
    for (const double bound : counts_.bounds)
      log_days_.push_back(std::log(bound));
    for (const auto& tray : trays) {
      if (tray.sown == 0)
        continue;
      const auto bound =
          std::ranges::lower_bound(counts_.bounds, tray.last_day()) - counts_.bounds.begin();
      ends_.push_back({static_cast<double>(tray.germinated()), static_cast<double>(tray.removed()),
                       static_cast<double>(tray.waiting())});
      bounds_.push_back(tray.waiting() > 0 ? static_cast<std::size_t>(bound) : 0);
      last_day_ = std::max(last_day_, tray.last_day());
    }
    if (last_day_ == 0)
      last_day_ = 1; // never looked at: the place to count from makes no difference
  }

  [[nodiscard]] const IntervalCounts& counts() const { return counts_; }
  [[nodiscard]] double last_day() const { return last_day_; }

  double log_likelihood(const Curve& curve, double rho) {
    double value = times(curve);
    for (std::size_t i = 0; i < ends_.size() && value > impossible; ++i)
      value += to_come(ends_[i], curve.germinable, rho, at_[bounds_[i]].above).log_likelihood;
    return std::isnan(value) ? impossible : value;
  }

 private:
  /// ln of the share of germinable seed in each interval, summed over the seeds seen.
  double times(const Curve& curve) {
    const double log_scale = std::log(curve.scale);
    for (std::size_t i = 1; i < at_.size(); ++i)
      at_[i] = parts(curve.family, curve.shape * (log_days_[i] - log_scale));
    double sum = 0;
    for (const auto& cell : counts_.seen) {
      const auto& from = at_[cell.from];
      const auto& to = at_[cell.to];
      sum +=
          cell.seeds * std::log(from.above < 0.5 ? from.above - to.above : to.below - from.below);
    }
    return sum;
  }

  IntervalCounts counts_;
  std::vector<double> log_days_; ///< of the bounds; that of 0 is not used
  std::vector<Parts> at_;
  std::vector<TrayEnd> ends_;
  std::vector<std::size_t> bounds_; ///< of each tray's last look
  double last_day_ = 0;
};

/// Where to look first: around the fit if there is one, and all over the prior.
std::vector<Proposal> proposals_for(Family family, const std::optional<CurveFit>& fit,
                                    const Evidence& evidence, const GerminationPrior& prior) {
  const auto& counts = evidence.counts();
  const double log_last = std::log(evidence.last_day());
  const double rest = counts.sown() - counts.germinated();
  const double logit = std::log((counts.germinated() + 0.5) / (rest + 0.5));
  const double logit_variance = 1 / (counts.germinated() + 0.5) + 1 / (rest + 0.5) + 0.02;
  const auto z = quarters(family);
  const double log_shape = prior.steepness.middle + std::log(z.three - z.one);
  const double shape = std::exp(log_shape);
  const double usual_z = std::clamp(z.half + shape * (log_last - prior.half.middle), -8.0, 12.0);
  Proposal wide{{logit, usual_z, log_shape, prior.spread.middle}, Eigen::Matrix4d::Zero()};
  const double z_spread = std::clamp(shape * prior.half.spread, 1.0, 4.0);
  wide.covariance.diagonal() << 2 * logit_variance, z_spread * z_spread,
      prior.steepness.spread * prior.steepness.spread, prior.spread.spread * prior.spread.spread;
  std::vector<Proposal> proposals;
  if (fit) {
    const auto& curve = fit->curve;
    const auto part = [](const std::optional<double>& error, double value, double most) {
      return std::min(most, 1.3 * error.value_or(value) / value);
    };
    const double shape_spread = part(fit->shape_error, curve.shape, 0.7);
    const double scale_spread = part(fit->scale_error, curve.scale, 1.0);
    const double fitted = std::min(curve.shape, 50.0);
    const double at = std::clamp(fitted * (log_last - std::log(curve.scale)), -8.0, 40.0);
    Proposal near{{logit, at, std::log(fitted), prior.spread.middle}, Eigen::Matrix4d::Zero()};
    near.covariance.diagonal() << logit_variance,
        at * at * shape_spread * shape_spread + fitted * fitted * scale_spread * scale_spread +
            0.01,
        shape_spread * shape_spread, prior.spread.spread * prior.spread.spread;
    near.covariance(1, 2) = near.covariance(2, 1) = at * shape_spread * shape_spread;
    proposals.push_back(near);
  }
  proposals.push_back(wide);
  return proposals;
}

Sample sample_family(Family family, Evidence& evidence, const std::optional<CurveFit>& fit,
                     const GerminationPrior& prior) {
  constexpr std::size_t points = 1200;
  const double log_last = std::log(evidence.last_day());
  const auto z = quarters(family);
  const bool heavy = prior.crosses > 0;
  const auto density = [&](const Point& at) {
    const auto here = meant(family, log_last, at);
    if (!here.possible)
      return Weighed{impossible, 0, 0};
    const auto values = values_of(here.curve, here.rho, z);
    return Weighed{evidence.log_likelihood(here.curve, here.rho) + here.log_jacobian +
                       log_bell(values.share, prior.share, heavy) +
                       log_bell(values.half, prior.half, heavy) +
                       log_bell(values.steepness, prior.steepness, heavy) +
                       log_bell(values.spread, prior.spread, heavy),
                   0, 0};
  };
  return adaptive_sample(density, proposals_for(family, fit, evidence, prior), points);
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
  Evidence evidence(trays);
  std::array<Sample, all_families.size()> samples;
  double highest = impossible;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const auto fit = fit_curve(evidence.counts(), all_families[i]);
    samples[i] = sample_family(all_families[i], evidence, fit, prior);
    highest = std::max(highest, samples[i].log_evidence);
  }
  double total = 0;
  for (const auto& sample : samples)
    total += std::exp(sample.log_evidence - highest);
  const double log_last = std::log(evidence.last_day());
  GerminationPosterior posterior;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const double weight = std::exp(samples[i].log_evidence - highest) / total;
    for (const auto& point : samples[i].points)
      if (weight * point.weight > 1e-9) {
        const auto here = meant(all_families[i], log_last, point.at);
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
