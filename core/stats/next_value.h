// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Where the next of some like values will fall, from those seen so far.

#include "core/base/fault.h"
#include "core/stats/share_interval.h"

#include <span>

namespace coneline::stats {

/// For values above 0 whose logarithms scatter like a normal distribution: mean ± t · s · √(1 +
/// 1/n) of the logarithms, t being Student's with n − 1 degrees of freedom, so that the next value
/// falls inside with the confidence given, however few there are (Hahn & Meeker 1991, Statistical
/// Intervals, section 4.8; from memory). Fails with fewer than two values, one that is not above 0,
/// or a confidence outside 0 to 1.
Result<Interval> next_value(std::span<const double> seen, double confidence);

} // namespace coneline::stats
