// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/interval_counts.h"

#include <gtest/gtest.h>

namespace coneline::stats {
namespace {

TEST(IntervalCounts, EachSeedKeepsTheIntervalOfItsOwnTray) {
  const std::vector<Tray> trays{{"A", "1", 10, {{5, 2, 0}, {9, 0, 0}, {12, 3, 1}}},
                                {"A", "2", 8, {{7, 1, 0}, {12, 2, 0}}},
                                {"A", "3", 4, {{5, 4, 0}}}};
  const auto counts = interval_counts(trays);
  EXPECT_EQ(counts.bounds, (std::vector<double>{0, 5, 7, 9, 12}));
  ASSERT_EQ(counts.seen.size(), 4U);
  EXPECT_EQ(counts.seen[0].seeds, 6); // (0, 5] of trays 1 and 3 together
  EXPECT_EQ(counts.bounds[counts.seen[2].from], 7);
  EXPECT_EQ(counts.bounds[counts.seen[3].from], 9);
  ASSERT_EQ(counts.waiting.size(), 1U);
  EXPECT_EQ(counts.bounds[counts.waiting[0].since], 12);
  EXPECT_EQ(counts.waiting[0].seeds, 9);
  EXPECT_EQ(counts.removed, 1);
  EXPECT_EQ(counts.germinated(), 12);
  EXPECT_EQ(counts.sown(), 22);
  EXPECT_EQ(counts.bounds[counts.latest_begin()], 9);
  EXPECT_EQ(counts.bounds[counts.earliest_end()], 5);
}

} // namespace
} // namespace coneline::stats
