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

  /// The count at a share (0 to 1) of the distribution, the probability of a count being divided
  /// evenly below and above it: the smallest y with P(Y < y) + P(Y = y)/2 >= share where `share` is
  /// below a half, and from the other side the largest y with P(Y > y) + P(Y = y)/2 >= 1 - share.
  /// Ranges made so hold on average what they promise; without the halving they would hold more.
  [[nodiscard]] std::int64_t count_at(double share) const;

  /// Smallest y with P(Y <= y) >= 1/2.
  [[nodiscard]] std::int64_t median() const;

  [[nodiscard]] const std::vector<double>& probabilities() const { return probability_; }

 private:
  std::vector<double> probability_; ///< by count, from 0
};

} // namespace coneline::stats
