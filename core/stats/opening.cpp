// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/opening.h"

#include "core/base/phrase.h"
#include "core/stats/hypergeometric.h"
#include "core/stats/probability.h"

#include <fmt/format.h>

namespace coneline::stats {

Result<std::int64_t> seeds_to_open(std::int64_t seeds, std::int64_t filled, double assurance) {
  if (const auto ok = checked({seeds, 0, 0}); !ok)
    return refuse(ok.error());
  if (filled < 1)
    return refuse(fault(phrase("{} filled seeds cannot be found by cutting", filled),
                        "Give the number of filled seeds worth finding, 1 or more."));
  if (filled > seeds)
    return refuse(fault(phrase("{} filled of {} seeds: {} too many", filled, seeds, filled - seeds),
                        phrase("Give a number from 1 to {}.", seeds)));
  if (const auto ok = inside_0_and_1(assurance, "the assurance"); !ok)
    return refuse(ok.error());
  std::int64_t low = 1;
  std::int64_t high = seeds - filled + 1; // one of so many is filled for certain
  while (low < high) {
    const auto middle = low + (high - low) / 2;
    if (compare_at_most({seeds, filled, middle}, 0, assurance, 1) <= 0)
      high = middle;
    else
      low = middle + 1;
  }
  return low;
}

Result<std::int64_t> more_to_open(std::int64_t seeds, std::int64_t filled, double assurance,
                                  std::int64_t opened) {
  if (const auto ok = checked({seeds, opened, 0}); !ok)
    return refuse(ok.error());
  return seeds_to_open(seeds, filled, assurance).transform([opened](std::int64_t enough) {
    return std::max<std::int64_t>(0, enough - opened);
  });
}

} // namespace coneline::stats
