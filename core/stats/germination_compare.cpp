// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_compare.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numeric>

namespace coneline::stats {

namespace {

/// Limits of a share at z standard deviations to either side, which hold the share seen.
using Limits = std::function<Interval(double z)>;

/// Wilson's, by z rather than by confidence: z can be so large that the confidence rounds to 1.
Limits wilson_limits(double share, double seeds) {
  return [=](double z) {
    const double middle = share + z * z / (2 * seeds);
    const double half = z * std::sqrt(share * (1 - share) / seeds + z * z / (4 * seeds * seeds));
    const double whole = 1 + z * z / seeds;
    return Interval{std::min(share, (middle - half) / whole),
                    std::max(share, (middle + half) / whole)};
  };
}

Limits limits_with_spread(const GroupShare& group, std::span<const double> weights) {
  const double share = group.share();
  return [share, shares = group.distribution(weights)](double z) {
    return Interval{share == 0 ? 0 : std::min(share, shares.quantile_at(-z)),
                    share == 1 ? 1 : std::max(share, shares.quantile_at(z))};
  };
}

struct Both {
  double share_a;
  double share_b;
  Limits limits_a;
  Limits limits_b;

  [[nodiscard]] double below(double z) const {
    return std::hypot(share_a - limits_a(z).low, limits_b(z).high - share_b);
  }
  [[nodiscard]] double above(double z) const {
    return std::hypot(limits_a(z).high - share_a, share_b - limits_b(z).low);
  }
};

/// z at which the range just reaches 0; the range widens with z.
double z_reaching_zero(const Both& both) {
  constexpr double far = 37;
  const double apart = both.share_a - both.share_b;
  const auto reach = [&](double z) { return apart > 0 ? both.below(z) : both.above(z); };
  double low = 0;
  double high = far;
  if (reach(high) < std::abs(apart))
    return far;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (reach(middle) < std::abs(apart) ? low : high) = middle;
  }
  return low;
}

IntervalCounts together(const IntervalCounts& a, const IntervalCounts& b) {
  IntervalCounts both;
  std::ranges::set_union(a.bounds, b.bounds, std::back_inserter(both.bounds));
  for (const auto* counts : {&a, &b}) {
    std::vector<std::size_t> place;
    for (const double bound : counts->bounds)
      place.push_back(static_cast<std::size_t>(std::ranges::lower_bound(both.bounds, bound) -
                                               both.bounds.begin()));
    for (const auto& cell : counts->seen)
      both.seen.push_back({place[cell.from], place[cell.to], cell.seeds});
    for (const auto& cell : counts->waiting)
      both.waiting.push_back({place[cell.since], cell.seeds});
    both.removed += counts->removed;
  }
  return both;
}

} // namespace

Difference difference_of(const GroupShare& a, const GroupShare& b, double confidence) {
  const std::array groups{&a, &b};
  const bool no_spread_to_see = a.trays() < 2 && b.trays() < 2;
  const auto weights = rho_weights(groups);
  const auto limits = [&](const GroupShare& group) {
    return no_spread_to_see ? wilson_limits(group.share(), group.seeds())
                            : limits_with_spread(group, weights);
  };
  const Both both{a.share(), b.share(), limits(a), limits(b)};
  const boost::math::normal normal;
  const double z = -quantile(normal, (1 - confidence) / 2);
  Difference result;
  result.difference = a.share() - b.share();
  result.low = std::max(-1.0, result.difference - both.below(z));
  result.high = std::min(1.0, result.difference + both.above(z));
  result.p_value = result.difference == 0 ? 1 : 2 * cdf(normal, -z_reaching_zero(both));
  return result;
}

double p_value_of_one_curve(const IntervalCounts& a, const CurveFit& curve_a,
                            const IntervalCounts& b, const CurveFit& curve_b) {
  constexpr double parameters = 3;
  const auto one = fit_curve_between(together(a, b), curve_a.curve, curve_b.curve);
  if (!one)
    return 1; // one moment lies in all intervals of both groups: nothing tells them apart
  const double gain = 2 * (curve_a.log_likelihood + curve_b.log_likelihood - one->log_likelihood);
  return gain > 0 ? cdf(complement(boost::math::chi_squared(parameters), gain)) : 1;
}

std::vector<double> holm(std::span<const double> p_values) {
  std::vector<std::size_t> order(p_values.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, {}, [&](std::size_t i) { return p_values[i]; });
  std::vector<double> adjusted(p_values.size());
  double highest = 0;
  for (std::size_t rank = 0; rank < order.size(); ++rank) {
    const auto tests_left = static_cast<double>(order.size() - rank);
    highest = std::max(highest, std::min(1.0, tests_left * p_values[order[rank]]));
    adjusted[order[rank]] = highest;
  }
  return adjusted;
}

} // namespace coneline::stats
