// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How many seeds to cut open, so that a batch with filled ones in it is not taken for an empty one.
//
//   300 seeds, 15 or more filled, assurance 0.95  ->  cut 54

#include "core/base/fault.h"

#include <cstdint>

namespace coneline::stats {

/// The smallest number n of `seeds` to cut such that, if at least `filled` of them are filled, at
/// least one filled one is among the n with probability `assurance` or more:
/// 1 - C(seeds - filled, n) / C(seeds, n), exactly. More filled ones only make it likelier.
/// Fails unless 1 <= filled <= seeds <= 1 000 000 000 and 0 < assurance < 1.
Result<std::int64_t> seeds_to_open(std::int64_t seeds, std::int64_t filled, double assurance);

/// How many more to cut when `opened` were and none of them was filled; 0 when it was enough.
/// Fails as above, and when more were opened than there are.
Result<std::int64_t> more_to_open(std::int64_t seeds, std::int64_t filled, double assurance,
                                  std::int64_t opened);

} // namespace coneline::stats
