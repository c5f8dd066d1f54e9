// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/space.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::plan {
namespace {

std::int64_t pots(const Bench& bench, Pattern pattern) {
  return pots_on_bench(bench, pattern).value().pots;
}

/// Sets pot after pot, in whole millimetres, by the definition: positions in half spacings along
/// and in sqrt(3)/2 spacings across, compared squared.
std::int64_t placed(std::int64_t along, std::int64_t across, std::int64_t pot, std::int64_t gap,
                    Pattern pattern) {
  const auto spacing = pot + gap;
  std::int64_t count = 0;
  for (std::int64_t row = 0;; ++row) {
    const auto room = across - pot;
    const bool fits = room >= 0 && (pattern == Pattern::square
                                        ? row * spacing <= room
                                        : 3 * row * row * spacing * spacing <= 4 * room * room);
    if (!fits)
      return count;
    for (std::int64_t half = pattern == Pattern::staggered ? row % 2 : 0;
         half * spacing + 2 * pot <= 2 * along; half += 2)
      ++count;
  }
}

std::int64_t by_placing(std::int64_t length, std::int64_t width, std::int64_t pot, std::int64_t gap,
                        Pattern pattern) {
  return std::max(placed(length, width, pot, gap, pattern),
                  placed(width, length, pot, gap, pattern));
}

// 6-inch centres on 100 square feet: 400 square (trade press arithmetic, read, which gives 462 by
// density for staggered); 429 is what stands on a real bench, worked out.
TEST(Space, TenByTenFeet) {
  EXPECT_EQ(pots({3048, 3048, 152.4, 0}, Pattern::square), 400);
  EXPECT_EQ(pots({3048, 3048, 152.4, 0}, Pattern::staggered), 429);
  EXPECT_NEAR(pots_on_bench({3048, 3048, 152.4, 0}, Pattern::staggered)->per_square_metre,
              429 / (3.048 * 3.048), 1e-9);
}

TEST(Space, WholeNumbersThatAreNoneInDoubles) {
  for (int n = 1; n <= 300; ++n)
    for (const int tenths : {1, 3, 7, 9}) {
      const double pot = 100 + tenths / 10.0;
      const double length = (1000.0 + tenths) * n / 10.0;
      EXPECT_EQ(pots({length, pot, pot, 0}, Pattern::square), n) << pot;
      EXPECT_EQ(pots({length - 0.1, pot, pot, 0}, Pattern::square), n - 1) << pot;
    }
}

TEST(Space, TheGapIsBetweenPotsOnly) {
  EXPECT_EQ(pots({210, 100, 100, 10}, Pattern::square), 2);
  EXPECT_EQ(pots({209, 100, 100, 10}, Pattern::square), 1);
  EXPECT_EQ(pots({210, 210, 100, 10}, Pattern::square), 4);
}

TEST(Space, StaggeredRowsHoldTheSameOrOneLess) {
  const auto same = pots_on_bench({350, 190, 100, 0}, Pattern::staggered).value();
  EXPECT_EQ(same.pots, 6); // 3 + 3: the second row ends at 350 exactly
  EXPECT_EQ(same.in_a_row, 3);
  EXPECT_EQ(same.in_the_next, 3);
  EXPECT_EQ(pots({349, 190, 100, 0}, Pattern::staggered), 5);
  EXPECT_EQ(pots({350, 186, 100, 0}, Pattern::staggered), 3); // 186.6 needed for two rows
  EXPECT_EQ(pots({350, 187, 100, 0}, Pattern::staggered), 6);
}

TEST(Space, RowsRunTheWayThatHoldsMore) {
  const auto narrow = pots_on_bench({120, 1000, 100, 0}, Pattern::staggered).value();
  EXPECT_EQ(narrow.pots, 10);
  EXPECT_EQ(narrow.along, RowsAlong::width);
  EXPECT_EQ(pots({1000, 120, 100, 0}, Pattern::staggered), 10);
}

TEST(Space, APotLargerThanTheBenchDoesNotStand) {
  const auto none = pots_on_bench({500, 90, 100, 0}, Pattern::square).value();
  EXPECT_EQ(none.pots, 0);
  EXPECT_EQ(none.per_square_metre, 0);
  EXPECT_EQ(pots({90, 500, 100, 0}, Pattern::staggered), 0);
  EXPECT_EQ(pots({100, 100, 100, 50}, Pattern::staggered), 1);
}

TEST(Space, RefusesWhatCannotBe) {
  for (const auto& bench : {Bench{0, 100, 10, 0},
                            {100, -1, 10, 0},
                            {100, 100, 0, 0},
                            {100, 100, 10, -1},
                            {2e6, 100, 10, 0},
                            {100, 100, 0.5, 0},
                            {100, std::nan(""), 10, 0},
                            {100, 100, 10, HUGE_VAL}})
    EXPECT_FALSE(pots_on_bench(bench, Pattern::staggered));
}

TEST(Space, AKilometreOfThimblesIsCounted) {
  EXPECT_EQ(pots({1e6, 1e6, 1, 0}, Pattern::square), 1'000'000'000'000);
  EXPECT_NEAR(static_cast<double>(pots({1e6, 1e6, 1, 0}, Pattern::staggered)),
              1e12 * 2 / std::sqrt(3.0), 2e6);
  EXPECT_EQ(pots({1e6, 1e6, 1e6, 1e6}, Pattern::staggered), 1);
}

RC_GTEST_PROP(Space, IsWhatPlacingPotAfterPotGives, ()) {
  const auto length = *rc::gen::inRange<std::int64_t>(1, 3000);
  const auto width = *rc::gen::inRange<std::int64_t>(1, 3000);
  const auto pot = *rc::gen::inRange<std::int64_t>(20, 400);
  const auto gap = *rc::gen::inRange<std::int64_t>(0, 100);
  const auto real = [](std::int64_t value) { return static_cast<double>(value); };
  const Bench bench{real(length), real(width), real(pot), real(gap)};
  for (const auto pattern : {Pattern::square, Pattern::staggered}) {
    RC_ASSERT(pots(bench, pattern) == by_placing(length, width, pot, gap, pattern));
    RC_ASSERT(pots({bench.width, bench.length, bench.pot, bench.gap}, pattern) ==
              pots(bench, pattern));
    RC_ASSERT(pots({bench.length + 7, bench.width, bench.pot, bench.gap}, pattern) >=
              pots(bench, pattern));
  }
}

TEST(Space, IsWhatPlacingGivesForEverySmallBench) {
  for (int length = 1; length <= 60; ++length)
    for (int width = 1; width <= 60; ++width)
      for (const int pot : {2, 5, 7, 13})
        for (const int gap : {0, 1, 4})
          for (const auto pattern : {Pattern::square, Pattern::staggered})
            ASSERT_EQ(pots({length * 1.0, width * 1.0, pot * 1.0, gap * 1.0}, pattern),
                      by_placing(length, width, pot, gap, pattern))
                << length << ' ' << width << ' ' << pot << ' ' << gap;
}

} // namespace
} // namespace coneline::plan
