// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Weight of seed from several weighings of 100 seeds each (eight, as a rule).

#include "core/base/fault.h"

#include <span>

namespace coneline::stats {

/// The coefficient of variation up to which weighings agree, in percent (seed testing rules for
/// seed that is not chaffy; from memory).
constexpr double most_weight_variation = 4.0;

struct HundredSeedWeight {
  double mean = 0;                 ///< of 100 seeds, in the unit weighed
  double variation = 0;            ///< standard deviation (n - 1) by mean, in percent
  double thousand_seed_weight = 0; ///< ten times the mean
  bool agree = true;               ///< `variation` is at most `most_weight_variation`
};

/// Fails with fewer than two weights, and on one that is no number or not above zero.
Result<HundredSeedWeight> hundred_seed_weight(std::span<const double> weights);

} // namespace coneline::stats
