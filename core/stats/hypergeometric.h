// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Seeds cut open out of one batch: a sample, without replacement, of something that ends. Of
// `seeds` seeds `opened` were cut and `filled` of those were filled. How many of the whole batch
// are filled?
//
//   filled_interval({300, 100, 2}, 0.95)  ->  2 to 18
//
// The interval holds every whole number M for which both hypergeometric tails, P(X <= filled | M)
// and P(X >= filled | M), are greater than (1 - confidence)/2. Its coverage is at least the
// confidence whatever the true number. A tail equal to the bound is not greater: equality is
// decided in whole numbers, with the confidence as it was written (as_written.h).

#include "core/base/fault.h"

#include <compare>
#include <cstdint>

namespace coneline::stats {

/// What was cut open; 0 <= filled <= opened <= seeds <= 1 000 000 000.
struct CutTest {
  std::int64_t seeds = 0;
  std::int64_t opened = 0;
  std::int64_t filled = 0;
};

/// Whole seeds, both ends included.
struct CountInterval {
  std::int64_t low = 0;
  std::int64_t high = 0;

  bool operator==(const CountInterval&) const = default;
};

/// The test itself, or what is wrong with it.
Result<CutTest> checked(const CutTest& test);

/// The exact interval for the number filled, opened ones included. With nothing opened it is 0 to
/// `seeds`, with all opened it is what was found.
Result<CountInterval> filled_interval(const CutTest& test, double confidence);

/// A draw of `drawn` from `population`, `marked` of which are marked.
struct Draw {
  std::int64_t population = 0;
  std::int64_t marked = 0;
  std::int64_t drawn = 0;
};

/// P(X <= count), X being the marked ones in the draw. Rounded; relative error below 1e-9.
double at_most(const Draw& draw, std::int64_t count);

/// P(X <= count) against `(1 - confidence) / divisor`, exactly wherever doubles cannot tell.
std::strong_ordering compare_at_most(const Draw& draw, std::int64_t count, double confidence,
                                     int divisor);

} // namespace coneline::stats
