// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/still_expected.h"

#include "core/stats/adaptive_sample.h"
#include "core/stats/count_mixture.h"
#include "core/stats/share_posterior.h"
#include "core/stats/waiting_seed.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace coneline::stats {

namespace {

constexpr double impossible = -std::numeric_limits<double>::infinity();
constexpr double least_rho = 1e-4;        ///< what is less is no different to the counts
constexpr double usual_log_shape = 1.386; // ln 4
constexpr double spread_of_log_shape = 1;
constexpr double spread_of_log_scale = 1.2;

double bell(double value, double middle, double spread) {
  const double apart = (value - middle) / spread;
  return -apart * apart / 2 - std::log(spread);
}

/// A curve and the spread around it, found from the coordinates that the search uses. In them the
/// likelihood is near to a bell even when a tray has only begun, and share and delay can hardly be
/// told apart: what is well known is the share that has come up by now.
struct Meant {
  Curve curve;
  double rho = 0;
  double log_jacobian = 0;
  bool possible = false;
};

/// Coordinates: logit of the share of seed up by the last look; z of the curve at the last look;
/// ln shape; ln of rho, a little shifted.
class Coordinates {
 public:
  Coordinates(Family family, double last_day) : family_(family), log_last_(std::log(last_day)) {}

  [[nodiscard]] Meant meant(const Point& at) const {
    Meant result;
    const double up = 1 / (1 + std::exp(-at[0]));
    const auto progress = parts(family_, at[1]);
    const double shape = std::exp(at[2]);
    const double shifted = std::exp(at[3]);
    result.curve = {family_, up / progress.below, shape, std::exp(log_last_ - at[1] / shape)};
    result.rho = shifted - shift;
    result.possible = progress.below > 0 && result.curve.germinable < 1 &&
                      result.curve.germinable > 0 && result.rho > least_rho && result.rho < 0.95 &&
                      std::abs(at[1] / shape) < 50 && std::abs(at[2]) < 12;
    result.log_jacobian = std::log(result.curve.germinable * (1 - up)) - at[2] + at[3];
    return result;
  }

  [[nodiscard]] double z_of(const Curve& curve) const {
    return curve.shape * (log_last_ - std::log(curve.scale));
  }

  static double from_rho(double rho) { return std::log(rho + shift); }

 private:
  static constexpr double shift = 0.01;
  Family family_;
  double log_last_;
};

/// The counts, ready to be asked how likely they are.
class Evidence {
 public:
  Evidence(std::span<const Tray> trays, const IntervalCounts& counts)
      : counts_(counts), at_(counts.bounds.size()) {
    for (const double bound : counts.bounds)
      log_days_.push_back(std::log(bound));
    for (const auto& tray : trays) {
      if (tray.sown == 0)
        continue;
      const auto bound =
          std::ranges::lower_bound(counts.bounds, tray.last_day()) - counts.bounds.begin();
      ends_.push_back({static_cast<double>(tray.germinated()), static_cast<double>(tray.removed()),
                       static_cast<double>(tray.waiting())});
      bounds_.push_back(tray.waiting() > 0 ? static_cast<std::size_t>(bound) : 0);
    }
  }

  /// Likelihood times priors, by d, rho, ln shape and ln scale, with mean and variance of the
  /// number still to come.
  Weighed weigh(const Curve& curve, double rho, double log_last) {
    Weighed result;
    result.share = curve.germinable;
    result.log_density = bell(std::log(curve.shape), usual_log_shape, spread_of_log_shape) +
                         bell(std::log(curve.scale), log_last, spread_of_log_scale) -
                         rho / mean_rho + times(curve);
    for (std::size_t i = 0; i < ends_.size() && result.log_density > impossible; ++i) {
      const auto tray = to_come(ends_[i], curve.germinable, rho, at_[bounds_[i]].above);
      result.log_density += tray.log_likelihood;
      result.mean += tray.mean;
      result.variance += tray.variance;
    }
    if (std::isnan(result.log_density))
      result.log_density = impossible;
    return result;
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
      const double share = from.above < 0.5 ? from.above - to.above : to.below - from.below;
      sum += cell.seeds * std::log(share);
    }
    return sum;
  }

  const IntervalCounts& counts_;
  std::vector<double> log_days_; ///< of the bounds; that of 0 is not used
  std::vector<Parts> at_;
  std::vector<TrayEnd> ends_;
  std::vector<std::size_t> bounds_; ///< of each tray's last look
};

/// Where to look first: around the fit, no wider than the priors; and all over the priors.
std::vector<Proposal> proposals_for(const FamilyFit& family, const Coordinates& coordinates,
                                    const IntervalCounts& counts) {
  const double germinated = counts.germinated();
  const double rest = counts.sown() - germinated;
  const double logit = std::log((germinated + 0.5) / (rest + 0.5));
  const double logit_variance = 1 / (germinated + 0.5) + 1 / (rest + 0.5) + 0.02;
  const double middle_of_rho = Coordinates::from_rho(0.03);
  Proposal wide{{logit, 1, usual_log_shape, middle_of_rho}, Eigen::Matrix4d::Zero()};
  wide.covariance.diagonal() << 2 * logit_variance, 9, 1, 1;
  std::vector<Proposal> proposals;
  if (family.fit) {
    const auto& fit = *family.fit;
    const double shape_spread =
        std::min(0.7, 1.3 * fit.shape_error.value_or(fit.curve.shape) / fit.curve.shape);
    const double scale_spread =
        std::min(1.0, 1.3 * fit.scale_error.value_or(fit.curve.scale) / fit.curve.scale);
    const double shape = std::min(fit.curve.shape, 50.0);
    const double z =
        std::clamp(coordinates.z_of({family.family, 1, shape, fit.curve.scale}), -8.0, 40.0);
    Proposal near{{logit, z, std::log(shape), middle_of_rho}, Eigen::Matrix4d::Zero()};
    near.covariance.diagonal() << logit_variance,
        z * z * shape_spread * shape_spread + shape * shape * scale_spread * scale_spread + 0.01,
        shape_spread * shape_spread, 1;
    near.covariance(1, 2) = near.covariance(2, 1) = z * shape_spread * shape_spread;
    proposals.push_back(near);
    wide.middle[2] = std::log(shape);
    wide.middle[1] = z;
  }
  proposals.push_back(wide);
  return proposals;
}

Sample sample_family(const FamilyFit& family, Evidence& evidence, const IntervalCounts& counts,
                     double last_day) {
  constexpr std::size_t points = 1400;
  const Coordinates coordinates(family.family, last_day);
  const double log_last = std::log(last_day);
  const auto density = [&](const Point& at) {
    const auto meant = coordinates.meant(at);
    if (!meant.possible)
      return Weighed{impossible, 0, 0, 0};
    auto weighed = evidence.weigh(meant.curve, meant.rho, log_last);
    weighed.log_density += meant.log_jacobian;
    return weighed;
  };
  return adaptive_sample(density, proposals_for(family, coordinates, counts), points);
}

/// Log-logistic and log-normal curves share what the Weibull curve has alone; see the header.
double log_prior(Family family) {
  return family == Family::weibull ? std::log(0.5) : std::log(0.25);
}

/// A family whose best fit is so much worse than the best of all that it would not count.
bool hopeless(const FamilyFit& family, std::span<const FamilyFit> families) {
  constexpr double so_much = 9;
  return std::ranges::any_of(families, [&](const FamilyFit& other) {
    return other.fit && family.fit &&
           other.fit->log_likelihood > family.fit->log_likelihood + so_much;
  });
}

/// Fewer parts that stand for all: evenly spaced along the summed weights.
std::vector<CountPart> thinned(std::span<const SamplePoint> points, double family_weight,
                               std::size_t parts) {
  std::vector<CountPart> chosen;
  double summed = 0;
  std::size_t next = 0;
  for (const auto& point : points) {
    summed += point.weight;
    std::size_t hits = 0;
    for (; (static_cast<double>(next) + 0.5) / static_cast<double>(parts) < summed && next < parts;
         ++next)
      ++hits;
    if (hits > 0)
      chosen.push_back({family_weight * static_cast<double>(hits) / static_cast<double>(parts),
                        point.found.mean, point.found.variance});
  }
  return chosen;
}

/// What was found with one family, and how much it counts.
struct FamilySample {
  Sample sample;
  double weight = 0; ///< the weights sum to 1
};

std::vector<FamilySample> sampled(std::span<const FamilyFit> families, Evidence& evidence,
                                  const IntervalCounts& counts, double last_day) {
  std::vector<FamilySample> samples;
  double highest = impossible;
  for (const auto& family : families)
    if (!hopeless(family, families)) {
      samples.push_back({sample_family(family, evidence, counts, last_day), 0});
      samples.back().sample.log_evidence += log_prior(family.family);
      highest = std::max(highest, samples.back().sample.log_evidence);
    }
  double total = 0;
  for (auto& [sample, weight] : samples)
    total += weight = std::exp(sample.log_evidence - highest);
  for (auto& family : samples)
    family.weight /= total;
  return samples;
}

CountMixture mixture_of(std::span<const FamilySample> samples, std::int64_t waiting) {
  constexpr double parts_of_all = 600;
  constexpr double counts_for_nothing = 1e-3;
  std::vector<CountPart> parts;
  for (const auto& [sample, weight] : samples)
    if (weight > counts_for_nothing)
      std::ranges::move(thinned(sample.points, weight,
                                static_cast<std::size_t>(std::ceil(weight * parts_of_all))),
                        std::back_inserter(parts));
  return {waiting, parts};
}

/// The group's share: its median, and the shortest range that holds `confidence`.
struct ShareFound {
  double median = 0;
  Interval range;
};

ShareFound share_found(std::span<const FamilySample> samples, double confidence) {
  std::vector<std::pair<double, double>> weighed; // share, weight
  for (const auto& [sample, weight] : samples)
    for (const auto& point : sample.points)
      weighed.emplace_back(point.found.share, weight * point.weight);
  std::ranges::sort(weighed);
  ShareFound found{weighed.back().first, {weighed.front().first, weighed.back().first}};
  double below = 0; // of the points before `first`
  double held = 0;  // of those from `first` up to `last`
  std::size_t first = 0;
  for (const auto& [share, weight] : weighed) {
    if (below + held < 0.5 && below + held + weight >= 0.5)
      found.median = share;
    held += weight;
    for (; held - weighed[first].second >= confidence; ++first) {
      held -= weighed[first].second;
      below += weighed[first].second;
    }
    if (held >= confidence && share - weighed[first].first < found.range.high - found.range.low)
      found.range = {weighed[first].first, share};
  }
  found.range.low = std::min(found.range.low, found.median);
  found.range.high = std::max(found.range.high, found.median);
  return found;
}

} // namespace

StillExpected still_expected(std::span<const Tray> trays, const IntervalCounts& counts,
                             std::span<const FamilyFit> families, double confidence) {
  std::int64_t waiting = 0;
  double last_day = 0;
  for (const auto& tray : trays) {
    waiting += tray.waiting();
    if (tray.waiting() > 0)
      last_day = std::max(last_day, tray.last_day());
  }
  if (waiting == 0)
    return {};
  if (last_day == 0)
    last_day = 1; // never looked at: the unit of time makes no difference
  Evidence evidence(trays, counts);
  const auto samples = sampled(families, evidence, counts, last_day);
  const auto more = mixture_of(samples, waiting);
  const auto range = more.shortest(confidence);
  const auto share = share_found(samples, confidence);
  return {more.median(), range.low, range.high, share.median, share.range};
}

} // namespace coneline::stats
