// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/route_walk.h"
#include "tests/core/plan/small_plan.h"

namespace coneline::plan {
namespace {

using namespace coneline::tests;

TEST(AfterMonths, CountsWholeMonthsByTheCalendar) {
  EXPECT_EQ(after_months(day("2026-01-31"), 1), day("2026-02-28"));
  EXPECT_EQ(after_months(day("2026-01-15"), 12), day("2027-01-15"));
  EXPECT_EQ(after_months(day("2026-01-01"), 0.5), day("2026-01-16")); // 15.2 days
  EXPECT_EQ(after_months(day("2026-01-01"), 0), day("2026-01-01"));
  EXPECT_EQ(after_months(day("2026-01-01"), 1e9), day("2126-01-01"));
}

TEST(Stays, FollowTheMiddleOfEachRange) {
  const auto route = small_plan().registers.routes.front();
  const auto way = stays(route, 0, tray_of_50, day("2026-01-10"), day("2026-02-01"));
  ASSERT_EQ(way.size(), 3U);
  EXPECT_EQ(way[0].until, day("2026-07-10"));
  EXPECT_EQ(way[1].pot, one_litre);
  EXPECT_EQ(way[1].from, day("2026-07-10"));
  EXPECT_EQ(way[1].until, day("2027-07-10"));
  EXPECT_EQ(way[2].until, day("2028-07-10"));
  EXPECT_EQ(way[2].survival, 0.95);
}

TEST(Stays, WhatIsOverdueLeavesNowAndTheRestFollowsFromThere) {
  const auto route = small_plan().registers.routes.front();
  const auto way = stays(route, 1, one_litre, day("2020-01-01"), day("2026-02-01"));
  ASSERT_EQ(way.size(), 2U);
  EXPECT_EQ(way[0].from, day("2020-01-01"));
  EXPECT_EQ(way[0].until, day("2026-02-01"));
  EXPECT_EQ(way[1].until, day("2027-02-01"));
}

TEST(StepWith, TakesTheStepOfThePotOrOfTheNextLargerOne) {
  const auto registers = small_plan().registers;
  const auto& route = registers.routes.front();
  EXPECT_EQ(step_with(route, registers, one_litre), 1U);
  EXPECT_EQ(step_with(route, registers, three_litres), 2U);
  EXPECT_EQ(step_with(route, registers, two_litres), 2U);
  EXPECT_EQ(step_with(route, registers, ten_litres), std::nullopt);
  EXPECT_EQ(step_with(route, registers, tray_of_50), 0U);
}

TEST(StillToSprout, IsTheShareLessWhatCameUp) {
  const auto route = small_plan().registers.routes.front();
  // 100 sown on 1 January; half come up between 1 February and 1 June.
  const auto early = still_to_sprout(route, tray("2026-01-01", 100, 0, 100, 0), day("2026-01-10"));
  EXPECT_EQ(early.seeds, 50);
  EXPECT_EQ(early.from, day("2026-02-01"));
  EXPECT_EQ(early.until, day("2026-06-01"));
  const auto later = still_to_sprout(route, tray("2026-01-01", 100, 30, 70, 30), day("2026-03-01"));
  EXPECT_EQ(later.seeds, 20);
  EXPECT_EQ(later.from, day("2026-03-01"));
}

TEST(StillToSprout, IsNeverBelowZeroNorMoreThanWaitsNorAfterItsMonths) {
  const auto route = small_plan().registers.routes.front();
  const auto on = day("2026-03-01");
  EXPECT_EQ(still_to_sprout(route, tray("2026-01-01", 100, 60, 40, 60), on).seeds, 0);
  EXPECT_EQ(still_to_sprout(route, tray("2026-01-01", 100, 0, 5, 0), on).seeds, 5);
  EXPECT_EQ(still_to_sprout(route, tray("2025-01-01", 100, 0, 100, 0), on).seeds, 0);
  EXPECT_EQ(still_to_sprout(route, tray("2026-01-01", 100, 0, 100, 0), day("2026-06-01")).seeds, 0);
}

TEST(Sprouting, IsSpreadEvenlyOverItsDays) {
  const Sprouting sprouting{100, day("2026-01-01"), day("2026-01-11")};
  EXPECT_DOUBLE_EQ(sprouting.between(day("2026-01-01"), day("2026-01-04")), 30);
  EXPECT_DOUBLE_EQ(sprouting.between(day("2025-12-01"), day("2026-01-02")), 10);
  EXPECT_DOUBLE_EQ(sprouting.between(day("2026-01-10"), day("2026-03-01")), 10);
  EXPECT_DOUBLE_EQ(sprouting.between(day("2026-02-01"), day("2026-03-01")), 0);
  const Sprouting at_once{7, day("2026-01-05"), day("2026-01-05")};
  EXPECT_EQ(at_once.between(day("2026-01-01"), day("2026-02-01")), 7);
  EXPECT_EQ(at_once.between(day("2026-02-01"), day("2026-03-01")), 0);
}

} // namespace
} // namespace coneline::plan
