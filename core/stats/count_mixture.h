// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A count between 0 and `most` whose distribution is a mixture of many, each known by its mean and
// variance.

#include <cstdint>
#include <span>
#include <vector>

namespace coneline::stats {

struct CountPart {
  double weight = 0; ///< the weights sum to 1
  double mean = 0;   ///< 0 to most
  double variance = 0;
};

class CountMixture {
 public:
  /// Each part is taken as the beta-binomial of its mean and variance, or as the binomial of its
  /// mean where the variance is less than that of the binomial.
  CountMixture(std::int64_t most, std::span<const CountPart> parts);

  /// The range that holds `confidence` (0 to 1) with the fewest counts, grown from the likeliest
  /// count by the likelier neighbour until the next one would take it further above the confidence
  /// than it is below; the median is always in it. Two equal tails would hold too much wherever one
  /// tail is missing, as it is when nothing at all is the likeliest. A greater confidence never
  /// gives a narrower range.
  struct Range {
    std::int64_t low = 0;
    std::int64_t high = 0;
  };
  [[nodiscard]] Range shortest(double confidence) const;

  /// Smallest y with P(Y <= y) >= 1/2.
  [[nodiscard]] std::int64_t median() const;

  [[nodiscard]] const std::vector<double>& probabilities() const { return probability_; }

 private:
  std::vector<double> probability_; ///< by count, from 0
};

} // namespace coneline::stats
