// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/replicates.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <numeric>

namespace coneline::stats {

namespace {
/// An average from `from` up to the next row's.
struct Row {
  int from;
  int limit;
};
constexpr Row table[] = {{99, 5},  {98, 6},  {97, 7},  {96, 8},  {95, 9},  {93, 10},
                         {91, 11}, {89, 12}, {87, 13}, {84, 14}, {81, 15}, {78, 16},
                         {73, 17}, {67, 18}, {56, 19}, {51, 20}};
} // namespace

std::optional<int> largest_range(int average) {
  const int mirrored = average < 51 ? 101 - average : average;
  if (mirrored > 99)
    return std::nullopt;
  for (const auto& row : table)
    if (mirrored >= row.from)
      return row.limit;
  return std::nullopt;
}

Result<ReplicateCheck> check_replicates(const std::array<int, 4>& percentages) {
  for (const int percentage : percentages)
    if (percentage < 0 || percentage > 100)
      return refuse(fault(phrase("{} germinated of 100 sown cannot be", percentage),
                          "Give each replicate as a number from 0 to 100."));
  const int sum = std::accumulate(percentages.begin(), percentages.end(), 0);
  const auto [low, high] = std::ranges::minmax(percentages);
  ReplicateCheck check{(sum + 2) / 4, high - low, std::nullopt, std::nullopt};
  check.limit = largest_range(check.average);
  if (check.limit)
    check.agree = check.range <= *check.limit;
  return check;
}

} // namespace coneline::stats
