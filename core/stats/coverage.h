// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How often the ranges of germination hold the truth, found by drawing crosses of which the truth
// is known. A range of 80 % has to hold it 80 times in 100, not less and not much more.

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace coneline::stats {

/// How often the ranges of 80 and of 95 % held the truth.
struct Held {
  int at_80 = 0;
  int at_95 = 0;
};

struct CoverageRow {
  std::string of; ///< which crosses: "all", "up to 150 seeds", "weibull"
  int crosses = 0;
  Held still_expected; ///< how many more came up; and so the share of the seed sown in the end
  Held share_in_end;   ///< the cross's own share, of which its trays are samples
  Held share_now;      ///< the same, of what came up by the last look
  double width = 0;    ///< of the 95 % range of still_expected, as a share of the seed sown; mean
};

struct CoverageWanted {
  int crosses = 2000; ///< 1 or more
  std::uint32_t seed = 1;
};

/// The same numbers for the same seed, on every machine. `drawn` is told how many are done and
/// stops the work by returning false.
std::vector<CoverageRow> germination_coverage(const CoverageWanted& wanted,
                                              const std::function<bool(int)>& drawn);

} // namespace coneline::stats
