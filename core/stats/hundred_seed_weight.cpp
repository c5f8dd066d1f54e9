// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/hundred_seed_weight.h"

#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cmath>
#include <numeric>

namespace coneline::stats {

Result<HundredSeedWeight> hundred_seed_weight(std::span<const double> weights) {
  if (weights.size() < 2)
    return refuse(fault(phrase("{} weighings are too few to compare", weights.size()),
                        "Weigh at least two times 100 seeds, better eight."));
  for (std::size_t i = 0; i < weights.size(); ++i)
    if (!std::isfinite(weights[i]) || weights[i] <= 0)
      return refuse(
          fault(phrase("weighing {} is {}, which is no weight", i + 1, write_real(weights[i])),
                "Write a number above zero."));
  const auto n = static_cast<double>(weights.size());
  const double mean = std::accumulate(weights.begin(), weights.end(), 0.0) / n;
  double squares = 0;
  for (const double weight : weights)
    squares += (weight - mean) * (weight - mean);
  const double variation = 100 * std::sqrt(squares / (n - 1)) / mean;
  return HundredSeedWeight{mean, variation, 10 * mean, variation <= most_weight_variation};
}

} // namespace coneline::stats
