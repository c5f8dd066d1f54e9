// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Counting small seed by weight: a few lots of 100 seeds are weighed, then all of it.
//
//   eight times 100 seeds of about 15.2 g each, 304 g in all  ->  about 2000 seeds

#include "core/stats/hundred_seed_weight.h"
#include "core/stats/share_interval.h"

#include <cstdint>

namespace coneline::stats {

struct CountByWeight {
  std::int64_t seeds = 0;
  std::int64_t low = 0; ///< with `high`: what the weighings allow, at 95 %
  std::int64_t high = 0;
  HundredSeedWeight of_hundred; ///< of the weighings that were used
  std::size_t left_out = 0;     ///< weighings too far from the rest
};

/// `hundreds` are the weights of 100 seeds each, `all` the weight of all the seed, in one unit.
/// The rule of seed testing (from memory): eight weighings whose coefficient of variation is at
/// most `most_weight_variation`; where they differ by more, eight further ones, and of all of them
/// those within two standard deviations of the mean. The range is Student's, for the mean of the
/// weighings used.
/// Fails with fewer than two weighings, on a weight that is no number or not above zero, on fewer
/// than sixteen that differ too much, and on a count above 1 000 000 000.
Result<CountByWeight> count_by_weight(std::span<const double> hundreds, double all);

} // namespace coneline::stats
