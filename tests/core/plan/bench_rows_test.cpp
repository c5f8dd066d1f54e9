// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/bench_rows.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::plan {
namespace {

book::Pot pot(double length_mm, double width_mm, book::Shape shape) {
  return {book::PotId{1}, "pot", 1, shape, length_mm, width_mm, 1, ""};
}

TEST(BenchRows, HoldWhatABenchHolds) {
  // 10 × 10 ft with 6-inch pots touching: 400 square, 429 staggered (trade press arithmetic).
  const auto six_inch = pot(152.4, 152.4, book::Shape::round);
  Ground ground{3048, 3048, 0, Pattern::square};
  EXPECT_EQ(rows_across(ground, six_inch).most(ground.room()), 400);
  ground.pattern = Pattern::staggered;
  EXPECT_EQ(rows_across(ground, six_inch).most(ground.room()), 429);
}

TEST(BenchRows, TurnTraysTheBetterWay) {
  // 1000 mm across: one of 540 beside nothing, or three of 280. 7200 mm hold 13 rows of three.
  const Ground ground{7200, 1000, 0, Pattern::staggered};
  const auto rows = rows_across(ground, pot(540, 280, book::Shape::rectangular));
  EXPECT_EQ(rows.in_a_row, 3);
  EXPECT_EQ(rows.most(ground.room()), 39);
  EXPECT_EQ(rows.room_for(4), 2 * 540 * 1000);
}

TEST(BenchRows, HoldNothingThatIsLarger) {
  const Ground ground{2000, 400, 0, Pattern::square};
  EXPECT_EQ(rows_across(ground, pot(500, 500, book::Shape::round)).most(ground.room()), 0);
  EXPECT_EQ(rows_across(ground, pot(2100, 300, book::Shape::rectangular)).most(ground.room()), 0);
  EXPECT_EQ(rows_across(ground, pot(1900, 300, book::Shape::rectangular)).most(ground.room()), 1);
}

/// One size alone: as space.h counts, which may turn staggered rows along the bench as well.
TEST(BenchRows, ARowThatHoldsNoneTakesNoRoomAtTheEnd) {
  // 201 mm pots on 300 mm: every second staggered row stands half a pot on and holds none.
  const Ground ground{900, 300, 0, Pattern::staggered};
  const auto rows = rows_across(ground, pot(201, 201, book::Shape::round));
  ASSERT_EQ(rows.in_a_row, 1);
  ASSERT_EQ(rows.in_the_next, 0);
  EXPECT_EQ(rows.room_for(1), micrometres(201));
  EXPECT_EQ(rows.rows_for(2), 3);
  EXPECT_EQ(rows.most(ground.room()), 3);
  EXPECT_LE(rows.room_for(3), ground.room());
}

RC_GTEST_PROP(BenchRows, AgreeWithTheCountOfPots, ()) {
  const Ground ground{*rc::gen::inRange(300, 6000) * 1.0, *rc::gen::inRange(300, 3000) * 1.0,
                      *rc::gen::inRange(0, 80) * 1.0,
                      *rc::gen::element(Pattern::square, Pattern::staggered)};
  const double across = *rc::gen::inRange(50, 400);
  const auto rows = rows_across(ground, pot(across, across, book::Shape::round));
  const auto count =
      pots_on_bench({ground.length_mm, ground.width_mm, across, ground.gap_mm}, ground.pattern)
          .value();
  const auto most = rows.most(ground.room());
  if (ground.pattern == Pattern::square)
    RC_ASSERT(most == count.pots);
  else
    RC_ASSERT(most <= count.pots);
  for (const auto pots : {most, most - 1, most / 2})
    if (pots > 0)
      RC_ASSERT(rows.room_for(pots) <= ground.room());
  if (most > 0)
    RC_ASSERT(rows.room_for(most + 1) > ground.room());
}

} // namespace
} // namespace coneline::plan
