// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/still_expected.h"

#include "core/stats/count_mixture.h"
#include "core/stats/curve_search.h"
#include "core/stats/share_posterior.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace coneline::stats {

namespace {

constexpr double impossible = -std::numeric_limits<double>::infinity();
constexpr double usual_log_shape = 1.386; // ln 4
constexpr double spread_of_log_shape = 1;
constexpr double spread_of_log_scale = 1.2;

double bell(double value, double middle, double spread) {
  const double apart = (value - middle) / spread;
  return -apart * apart / 2 - std::log(spread);
}

/// Likelihood times priors, by d, rho, ln shape and ln scale, with mean and variance of the number
/// still to come.
Weighed weigh(CurveEvidence& evidence, const SearchPoint& point, double log_last) {
  const auto& [curve, rho, up, possible] = point;
  Weighed result;
  result.share = curve.germinable;
  result.log_density = bell(std::log(curve.shape), usual_log_shape, spread_of_log_shape) +
                       bell(std::log(curve.scale), log_last, spread_of_log_scale) - rho / mean_rho +
                       evidence.times(curve);
  for (std::size_t i = 0; i < evidence.trays() && result.log_density > impossible; ++i) {
    const auto tray = evidence.tray(i, curve.germinable, rho);
    result.log_density += tray.log_likelihood;
    result.mean += tray.mean;
    result.variance += tray.variance;
  }
  if (std::isnan(result.log_density))
    result.log_density = impossible;
  return result;
}

/// Where to look first: around the fit, no wider than the priors; and all over the priors.
std::vector<Proposal> proposals_for(const FamilyFit& family, double log_last,
                                    const IntervalCounts& counts) {
  const auto up = logit_up(counts);
  const double middle_of_rho = coordinate_of_rho(0.03);
  Proposal wide{{up.value, 1, usual_log_shape, middle_of_rho}, Eigen::Matrix4d::Zero()};
  wide.covariance.diagonal() << 2 * up.variance, 9, 1, 1;
  std::vector<Proposal> proposals;
  if (family.fit) {
    proposals.push_back(around_fit(*family.fit, log_last, up, middle_of_rho, 1));
    wide.middle[1] = proposals.back().middle[1];
    wide.middle[2] = proposals.back().middle[2];
  }
  proposals.push_back(wide);
  return proposals;
}

Sample sample_family(const FamilyFit& family, CurveEvidence& evidence, double last_day) {
  constexpr std::size_t points = 1400;
  const double log_last = std::log(last_day);
  const auto density = [&](const Point& at) {
    const auto point = search_point(family.family, log_last, at);
    if (!point.possible)
      return Weighed{impossible, 0, 0, 0};
    auto weighed = weigh(evidence, point, log_last);
    weighed.log_density +=
        std::log(point.curve.germinable * (1 - point.up)) - at[2] + at[3]; // the Jacobian
    return weighed;
  };
  return adaptive_sample(density, proposals_for(family, log_last, evidence.counts()), points);
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

std::vector<FamilySample> sampled(std::span<const FamilyFit> families, CurveEvidence& evidence,
                                  double last_day) {
  std::vector<FamilySample> samples;
  double highest = impossible;
  for (const auto& family : families)
    if (!hopeless(family, families)) {
      samples.push_back({sample_family(family, evidence, last_day), 0});
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

/// See `diluted` in the header; `up` is F d, the share seen.
double diluted(std::span<const FamilySample> samples, double up) {
  double mean = 0;
  double weights = 0;
  for (const auto& [sample, weight] : samples)
    for (const auto& point : sample.points)
      if (const double share = std::max(point.found.share, up); share > 0 && up < 1) {
        mean += weight * point.weight * (up / share) * (1 - share) / (1 - up);
        weights += weight * point.weight;
      }
  return weights > 0 ? mean / weights : 1;
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
  std::int64_t germinated = 0;
  std::int64_t sown = 0;
  double last_day = 0;
  for (const auto& tray : trays) {
    waiting += tray.waiting();
    germinated += tray.germinated();
    sown += tray.sown;
    if (tray.waiting() > 0)
      last_day = std::max(last_day, tray.last_day());
  }
  if (waiting == 0)
    return {};
  if (last_day == 0)
    last_day = 1; // never looked at: the unit of time makes no difference
  CurveEvidence evidence(trays, counts);
  const auto samples = sampled(families, evidence, last_day);
  const auto more = mixture_of(samples, waiting);
  const auto range = more.shortest(confidence);
  const auto share = share_found(samples, confidence);
  const double up = static_cast<double>(germinated) / static_cast<double>(sown);
  return {more.median(), range.low, range.high, share.median, share.range, diluted(samples, up)};
}

} // namespace coneline::stats
