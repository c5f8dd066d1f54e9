// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/coverage.h"
#include "core/stats/simulated_cross.h"
#include "core/stats/still_expected.h"
#include "tests/core/stats/published_data.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

std::vector<FamilyFit> all_fits(const IntervalCounts& counts) {
  std::vector<FamilyFit> fits;
  for (const auto family : all_families)
    fits.push_back({family, fit_curve(counts, family)});
  return fits;
}

StillExpected expected(const std::vector<Tray>& trays, double confidence = 0.95) {
  const auto counts = interval_counts(trays);
  return still_expected(trays, counts, all_fits(counts), confidence);
}

TEST(StillExpected, NoneOfNoneWaiting) {
  EXPECT_EQ(expected({{"A", "1", 20, {{5, 12, 0}, {9, 4, 4}}}}), StillExpected{});
}

TEST(StillExpected, FewWhereAllHasLongBeenStill) {
  const auto more = expected(chickweed());
  EXPECT_EQ(more.low, 0);
  EXPECT_LE(more.high, 3);
}

TEST(StillExpected, AnythingWhereNothingHasGerminated) {
  const auto more = expected({{"A", "1", 100, {{30, 0, 0}, {60, 0, 0}}}});
  EXPECT_LE(more.low, 5);
  EXPECT_GE(more.high, 85);
}

TEST(StillExpected, RemovedSeedIsNotWaitedFor) {
  const auto more = expected({{"A", "1", 100, {{30, 5, 0}, {40, 20, 60}}}});
  EXPECT_LE(more.high, 15);
}

TEST(StillExpected, NeverLookedAt) {
  const auto more = expected({{"A", "1", 40, {{0, 0, 0}}}});
  EXPECT_LE(more.low, 2);
  EXPECT_GE(more.high, 38);
  EXPECT_NEAR(static_cast<double>(more.median), 20, 3);
}

// F (1 - d) / (1 - F d): next to nothing of the trays' spread shows while little is up, all of it
// at the end.
TEST(StillExpected, TheSpreadBetweenTraysShowsBitByBit) {
  const auto early = expected({{"A", "1", 100, {{30, 0, 0}, {40, 2, 0}}}}).diluted;
  const auto late = expected(chickweed()).diluted;
  EXPECT_GT(early, 0);
  EXPECT_LT(early, 0.15);
  EXPECT_GT(late, 0.7);
  EXPECT_LE(late, 1);
  EXPECT_EQ(expected({{"A", "1", 20, {{5, 12, 0}, {9, 4, 4}}}}).diluted, 1);
}

TEST(StillExpected, TheSameCountsAlwaysGiveTheSameAnswer) {
  Chance draw(7);
  const auto cross = simulated_cross(draw);
  auto turned = cross.trays;
  std::ranges::reverse(turned);
  EXPECT_EQ(expected(cross.trays), expected(cross.trays));
  EXPECT_NEAR(static_cast<double>(expected(turned).high),
              static_cast<double>(expected(cross.trays).high), 1);
}

TEST(StillExpected, MoreConfidenceIsAWiderRange) {
  Chance draw(8);
  for (int i = 0; i < 20; ++i) {
    const auto cross = simulated_cross(draw);
    const auto narrow = expected(cross.trays, 0.5);
    const auto wide = expected(cross.trays, 0.99);
    EXPECT_LE(wide.low, narrow.low);
    EXPECT_GE(wide.high, narrow.high);
    EXPECT_LE(narrow.low, narrow.median);
    EXPECT_GE(narrow.high, narrow.median);
  }
}

// 77 to 83 and 93 to 97 times in 100, and three standard errors of so few crosses; the table of
// thousands is made by `coneline coverage`.
TEST(StillExpected, RangesHoldTheTruthAsOftenAsTheySay) {
  constexpr int crosses = 300;
  const auto rows = germination_coverage({crosses, 20261125}, [](int) { return true; });
  const auto& all = rows.front();
  ASSERT_EQ(all.of, "all");
  ASSERT_EQ(all.crosses, crosses);
  const auto near = [&](int held, double promised, double allowed) {
    const double error = 3 * std::sqrt(promised * (1 - promised) / crosses);
    EXPECT_NEAR(static_cast<double>(held) / crosses, promised, allowed + error);
  };
  for (const auto& held : {all.still_expected, all.share_in_end, all.share_now}) {
    near(held.at_80, 0.80, 0.03);
    near(held.at_95, 0.95, 0.02);
  }
}

} // namespace
} // namespace coneline::stats
