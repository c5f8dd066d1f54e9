// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Do four replicates of 100 seeds differ by no more than chance lets them?

#include "core/base/fault.h"

#include <array>
#include <optional>

namespace coneline::stats {

struct ReplicateCheck {
  int average = 0;          ///< to the nearest whole percent, halves up
  int range = 0;            ///< largest minus smallest
  std::optional<int> limit; ///< largest range allowed; none where the table has no row
  /// Whether range <= limit; nothing where there is no limit.
  std::optional<bool> agree;
};

/// The largest range allowed at an average, by US Federal Seed Act regulations, 7 CFR 201.55(a).
/// Below 51 the table is mirrored (average a stands for 101 - a); it has no row for 0, 1 and 100.
std::optional<int> largest_range(int average);

/// Percentages of four replicates of 100 seeds. Fails on one outside 0 to 100.
///   {82, 87, 90, 78}  ->  average 84, range 12, limit 14: they agree
Result<ReplicateCheck> check_replicates(const std::array<int, 4>& percentages);

} // namespace coneline::stats
