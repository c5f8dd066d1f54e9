// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Intervals for a share that was seen as `successes` of `trials`, when the trials are a sample of
// something endless (seed of this cross in general). For seeds opened out of one batch, which ends,
// see hypergeometric.h.
//
// All take 0 <= successes <= trials, trials >= 1 and 0 < confidence < 1, and are two-sided with
// (1 - confidence)/2 on each side unless said. They fail, with text, on anything else.
//
//   wilson(81, 263, 0.95)  ->  .2553 to .3662
//
// Which one: `wilson` for showing (its coverage is near the confidence on average),
// `clopper_pearson` where the coverage must never be below it. Formulas: Newcombe 1998, Statistics
// in Medicine 17:857-872.

#include "core/base/fault.h"

#include <cstdint>

namespace coneline::stats {

/// Shares; 0 <= low <= high <= 1 but for `wald`.
struct Interval {
  double low = 0;
  double high = 1;

  bool operator==(const Interval&) const = default;
};

/// The textbook normal interval, for comparison only: it can leave 0 to 1, and is of no width at 0
/// of n and n of n.
Result<Interval> wald(std::int64_t successes, std::int64_t trials, double confidence);

/// Wilson's score interval.
Result<Interval> wilson(std::int64_t successes, std::int64_t trials, double confidence);

/// Wilson's score interval with continuity correction; the low end is 0 at 0 of n, the high 1 at n
/// of n.
Result<Interval> wilson_corrected(std::int64_t successes, std::int64_t trials, double confidence);

/// The exact interval: both binomial tails, with what was seen, are at least (1 - confidence)/2.
Result<Interval> clopper_pearson(std::int64_t successes, std::int64_t trials, double confidence);

/// The exact interval with half the probability of what was seen in each tail.
Result<Interval> mid_p(std::int64_t successes, std::int64_t trials, double confidence);

/// Beta(successes + 1/2, failures + 1/2) quantiles; the low end is 0 at 0 of n, the high 1 at n of
/// n (Brown, Cai & DasGupta 2001, Statistical Science 16:101-133).
Result<Interval> jeffreys(std::int64_t successes, std::int64_t trials, double confidence);

/// The largest share that `successes` of `trials` does not rule out, one-sided: P(X <= successes)
/// is 1 - confidence there. With none found it is 1 - (1 - confidence)^(1/trials), nearly 3/trials
/// at 95 %.
Result<double> exact_upper(std::int64_t successes, std::int64_t trials, double confidence);

} // namespace coneline::stats
