// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/count_by_weight.h"

#include "core/base/phrase.h"

#include <boost/math/distributions/students_t.hpp>
#include <fmt/format.h>

#include <cmath>
#include <vector>

namespace coneline::stats {

namespace {

constexpr std::size_t enough_to_leave_out = 16;
constexpr double most_seeds = 1e9;

/// Those within two standard deviations of the mean.
std::vector<double> near_the_mean(std::span<const double> hundreds, const HundredSeedWeight& of) {
  const double reach = 2 * of.variation / 100 * of.mean;
  std::vector<double> kept;
  for (const double weight : hundreds)
    if (std::abs(weight - of.mean) <= reach)
      kept.push_back(weight);
  return kept;
}

} // namespace

Result<CountByWeight> count_by_weight(std::span<const double> hundreds, double all) {
  if (!(all > 0) || !std::isfinite(all))
    return refuse(fault(phrase("all the seed weighs {}", all),
                        "Give a weight above 0, in the unit of the weighings."));
  auto weight = hundred_seed_weight(hundreds);
  if (!weight)
    return refuse(weight.error());
  CountByWeight count;
  std::size_t used = hundreds.size();
  if (!weight->agree) {
    if (hundreds.size() < enough_to_leave_out)
      return refuse(
          fault(phrase("the weighings differ by {:.1f} % (coefficient of variation), at most "
                       "{:.0f} % would do",
                       weight->variation, most_weight_variation),
                phrase("Weigh eight more times 100 seeds and give all {}, or count by hand.",
                       hundreds.size() + 8)));
    const auto kept = near_the_mean(hundreds, *weight);
    count.left_out = hundreds.size() - kept.size();
    used = kept.size();
    weight = hundred_seed_weight(kept);
    if (!weight)
      return refuse(weight.error());
  }
  count.of_hundred = *weight;
  const double seeds = 100 * all / weight->mean;
  if (seeds > most_seeds)
    return refuse(fault(phrase("more than {:.0f} seeds by weight", most_seeds),
                        "Weigh all of it in the same unit as the hundreds."));
  const double t = quantile(boost::math::students_t(static_cast<double>(used - 1)), 0.975);
  const double error = weight->variation / 100 / std::sqrt(static_cast<double>(used));
  count.seeds = std::llround(seeds);
  count.low = std::llround(seeds / (1 + t * error));
  count.high = t * error < 0.9 ? std::llround(seeds / (1 - t * error)) : std::llround(seeds * 10);
  return count;
}

} // namespace coneline::stats
