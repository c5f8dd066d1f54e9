// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/degree_days.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::stats {
namespace {

DayTemperature day(double low, double high) {
  return {low, high, (low + high) / 2, 0, 24, 24};
}

// Worked by hand from the published formulas (McMaster & Wilhelm 1997; Zalom et al. 1983).
TEST(DegreeDays, FollowTheFormulas) {
  // Warm all day: all three agree.
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::average, day(14, 30), 10), 12);
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::clipped, day(14, 30), 10), 12);
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::triangle, day(14, 30), 10), 12);
  // Low below the base: (4+18)/2-10 = 1; (10+18)/2-10 = 4; 8²/(2·14) = 2.2857….
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::average, day(4, 18), 10), 1);
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::clipped, day(4, 18), 10), 4);
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::triangle, day(4, 18), 10), 64.0 / 28);
  // Mean below the base, high above it: nothing, half of 2, 2²/(2·12).
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::average, day(0, 12), 10), 0);
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::clipped, day(0, 12), 10), 1);
  EXPECT_DOUBLE_EQ(degree_days(DegreeDays::triangle, day(0, 12), 10), 4.0 / 24);
  // Cold all day.
  for (const auto method : {DegreeDays::average, DegreeDays::clipped, DegreeDays::triangle})
    EXPECT_DOUBLE_EQ(degree_days(method, day(-5, 9), 10), 0);
}

TEST(DegreeDays, AreKnownByTheirWords) {
  for (const auto method : all_degree_days)
    EXPECT_EQ(degree_days_named(degree_days_word(method)), method);
  EXPECT_FALSE(degree_days_named("sine"));
}

// A day that is a straight rise and fall is exactly the triangle.
TEST(DegreeDays, ByReadingsOfATriangleAreTheTriangle) {
  std::vector<TemperatureReading> readings;
  for (int half_hour = 0; half_hour <= 48; ++half_hour)
    readings.push_back({half_hour / 2.0, half_hour <= 24 ? 4 + half_hour * 14.0 / 24
                                                         : 18 - (half_hour - 24) * 14.0 / 24});
  const auto days = temperature_days(readings, std::vector(readings.size(), SensorMark::sound), 10);
  const auto& one = days.known.at(0);
  EXPECT_NEAR(degree_days(DegreeDays::readings, one, 10),
              degree_days(DegreeDays::triangle, one, 10), 1e-9);
}

RC_GTEST_PROP(DegreeDays, AverageIsLeastAndClippedMost, ()) {
  const auto low = *rc::gen::inRange(-300, 300) / 10.0;
  const auto high = low + *rc::gen::inRange(0, 300) / 10.0;
  const auto average = degree_days(DegreeDays::average, day(low, high), 10);
  const auto triangle = degree_days(DegreeDays::triangle, day(low, high), 10);
  const auto clipped = degree_days(DegreeDays::clipped, day(low, high), 10);
  RC_ASSERT(average <= triangle + 1e-12);
  RC_ASSERT(triangle <= clipped + 1e-12);
}

} // namespace
} // namespace coneline::stats
