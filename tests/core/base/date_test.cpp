// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/date.h"
#include "tests/core/day.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline {
namespace {

using tests::day;

TEST(Date, ReadsIsoDaysAlone) {
  EXPECT_EQ(day("2024-02-29").iso(), "2024-02-29");
  for (const auto* bad :
       {"", "2026-2-9", "09.03.2026", "20260309", "2026-03-09T10:00", "2026-03-9x", "２０26-03-09"})
    EXPECT_FALSE(Date::parse(bad)) << bad;
}

TEST(Date, RefusesDaysThatDoNotExist) {
  for (const auto* bad :
       {"2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "1899-12-31", "2200-01-01"})
    EXPECT_FALSE(Date::parse(bad)) << bad;
  EXPECT_NE(Date::parse("2026-02-29").error().what.find("2026-02-29"), std::string::npos);
}

TEST(Date, CountsMonthsAsACalendarDoes) {
  EXPECT_EQ(day("2026-01-31").plus_months(1).iso(), "2026-02-28");
  EXPECT_EQ(day("2024-01-31").plus_months(1).iso(), "2024-02-29");
  EXPECT_EQ(day("2026-03-15").plus_months(-3).iso(), "2025-12-15");
  EXPECT_EQ(day("2026-01-10").plus_part_months(1.5).iso(), "2026-02-25");
  EXPECT_EQ(day("2026-03-15").first_of_month().iso(), "2026-03-01");
  EXPECT_EQ(months_between(day("2025-11-30"), day("2026-02-01")), 3);
  EXPECT_EQ(days_between(day("2024-02-28"), day("2024-03-01")), 2);
}

RC_GTEST_PROP(Date, ComesBackFromItsText, ()) {
  const auto date = Date::from_days(*rc::gen::inRange(-25567, 84006));
  RC_ASSERT(Date::parse(date.iso()).value() == date);
}

} // namespace
} // namespace coneline
