// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A batch sorted in water, a few seeds of each part cut open: how many are filled, and how many
// filled ones are left now that the opened ones are gone.
//
//   180 sank, 9 of 10 opened were filled; 60 floated, none of 10 was
//   -> about 162 of the 240 filled, 153 of them left

#include "core/stats/hypergeometric.h"

#include <optional>

namespace coneline::stats {

/// A number of filled seeds; no estimate where nothing was opened.
struct Filled {
  std::optional<double> estimate;
  std::int64_t low = 0;
  std::int64_t high = 0;

  bool operator==(const Filled&) const = default;
};

struct Sorted {
  Filled sank;    ///< of the sunk part, opened ones included
  Filled floated; ///< of the floated part, opened ones included
  Filled batch;   ///< of both parts, opened ones included
  Filled left;    ///< `batch` minus the filled ones destroyed
};

/// A part's estimate is seeds * filled / opened and its interval the exact one of
/// hypergeometric.h. The batch: where one part is known to the seed (none in it, or all opened) or
/// has seeds of which none was opened, the parts' intervals are added, since only one of them is
/// uncertain, or the other can be anything; otherwise batch_interval.h. The batch has no estimate
/// while a part with seeds was not opened. Each interval covers at least the confidence whatever
/// the true numbers.
/// Fails on counts that cannot be, a confidence that is none, and more than a thousand million
/// seeds.
Result<Sorted> sort_by_water(const CutTest& sank, const CutTest& floated, double confidence);

} // namespace coneline::stats
