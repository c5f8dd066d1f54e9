// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/temperature_days.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace coneline::stats {
namespace {

std::vector<TemperatureReading> hourly(int hours, auto celsius) {
  std::vector<TemperatureReading> readings;
  for (int hour = 0; hour <= hours; ++hour)
    readings.push_back({static_cast<double>(hour), celsius(hour)});
  return readings;
}

double wave(int hour) {
  return 20 + 8 * std::sin(hour / 24.0 * 2 * 3.14159265358979);
}

std::size_t marked(const std::vector<SensorMark>& marks, SensorMark mark) {
  return static_cast<std::size_t>(std::ranges::count(marks, mark));
}

TEST(SensorMarks, AnOrdinaryDayHasNone) {
  const auto marks = sensor_marks(hourly(72, wave));
  EXPECT_EQ(marked(marks, SensorMark::sound), marks.size());
}

TEST(SensorMarks, FindWhatNoPlaceForPlantsHas) {
  auto readings = hourly(24, wave);
  readings[5].celsius = -127; // what a lost sensor often says
  readings[6].celsius = 85;
  const auto marks = sensor_marks(readings);
  EXPECT_EQ(marks[5], SensorMark::out_of_range);
  EXPECT_EQ(marks[6], SensorMark::out_of_range);
  EXPECT_EQ(marked(marks, SensorMark::sound), readings.size() - 2);
}

TEST(SensorMarks, FindASpikeOfOneToThreeReadings) {
  for (int many = 1; many <= 3; ++many) {
    std::vector<TemperatureReading> readings;
    for (int quarter = 0; quarter < 96; ++quarter)
      readings.push_back({quarter / 4.0, 20 + quarter * 0.02});
    for (int i = 0; i < many; ++i)
      readings[static_cast<std::size_t>(40 + i)].celsius += 15;
    const auto marks = sensor_marks(readings);
    EXPECT_EQ(marked(marks, SensorMark::spike), static_cast<std::size_t>(many));
    EXPECT_EQ(marks[40], SensorMark::spike);
  }
}

TEST(SensorMarks, AStepThatStaysIsNoSpike) {
  const auto marks = sensor_marks(
      hourly(48, [](int hour) { return hour < 24 ? 10.0 + hour * 0.01 : 25.0 + hour * 0.01; }));
  EXPECT_EQ(marked(marks, SensorMark::sound), marks.size());
}

TEST(SensorMarks, StuckIsTheSameNumberForADay) {
  const auto stuck =
      sensor_marks(hourly(60, [](int hour) { return hour < 20 || hour > 50 ? wave(hour) : 21.5; }));
  EXPECT_EQ(marked(stuck, SensorMark::stuck), 31U);
  const auto night =
      sensor_marks(hourly(60, [](int hour) { return hour < 20 || hour > 30 ? wave(hour) : 21.5; }));
  EXPECT_EQ(marked(night, SensorMark::stuck), 0U);
}

TEST(TemperatureDays, HaveLowHighAndMeanOfTheirOwn) {
  const auto readings = hourly(48, [](int hour) { return hour < 24 ? 10.0 + hour : 34.0; });
  const auto days = temperature_days(readings, std::vector(readings.size(), SensorMark::sound), 10);
  ASSERT_EQ(days.known.size(), 2U);
  EXPECT_EQ(days.known.at(0).low, 10);
  EXPECT_EQ(days.known.at(0).high, 33);
  EXPECT_DOUBLE_EQ(days.known.at(0).mean, 22);       // a straight rise from 10 to 34
  EXPECT_DOUBLE_EQ(days.known.at(0).above_base, 12); // all of it above 10
  EXPECT_DOUBLE_EQ(days.known.at(1).mean, 34);
  EXPECT_EQ(days.lacking, std::vector<int>{2}); // one reading at midnight is no day
}

TEST(TemperatureDays, AGapIsSaidAndItsDayLacks) {
  auto readings = hourly(96, wave);
  std::erase_if(readings,
                [](const TemperatureReading& one) { return one.hours > 30 && one.hours < 40; });
  const auto days = temperature_days(readings, sensor_marks(readings), 10);
  ASSERT_EQ(days.gaps.size(), 1U);
  EXPECT_EQ(days.gaps[0].from, 30);
  EXPECT_EQ(days.gaps[0].to, 40);
  EXPECT_FALSE(days.known.contains(1));
  EXPECT_TRUE(days.known.contains(2));
}

TEST(TemperatureDays, MarkedReadingsTakeNoPart) {
  auto readings = hourly(48, wave);
  const auto clean = temperature_days(readings, sensor_marks(readings), 10);
  readings[12].celsius = 85;
  const auto days = temperature_days(readings, sensor_marks(readings), 10);
  EXPECT_LT(days.known.at(0).high, 29);
  EXPECT_NEAR(days.known.at(0).mean, clean.known.at(0).mean, 0.05);
}

TEST(TemperatureDays, CrossingTheBaseCountsOnlyWhatIsAbove) {
  // From 0 up to 20 over a day, base 10: the upper half of a triangle, 10 x 12 / 2 / 24 = 2.5.
  const std::vector<TemperatureReading> readings{{0, 0}, {2.9, 20 * 2.9 / 24}, {12, 10}, {24, 20}};
  SensorRules rules;
  rules.gap_hours = 24;
  const auto days = temperature_days(readings, std::vector(4, SensorMark::sound), 10, rules);
  EXPECT_NEAR(days.known.at(0).above_base, 2.5, 1e-9);
}

RC_GTEST_PROP(TemperatureDays, NeverLoseAnHour, ()) {
  const auto steps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(1, 400));
  std::vector<TemperatureReading> readings{{0, 20}};
  for (std::size_t i = 0; i < steps.size(); ++i)
    readings.push_back({readings.back().hours + steps[i] / 60.0, 20 + static_cast<double>(i % 5)});
  const auto days = temperature_days(readings, std::vector(readings.size(), SensorMark::sound), 10);
  for (std::size_t i = 1; i < days.gaps.size(); ++i)
    RC_ASSERT(days.gaps[i].from >= days.gaps[i - 1].to);
  for (const auto& [day, one] : days.known) {
    RC_ASSERT(one.hours_measured <= 24 + 1e-9);
    RC_ASSERT(one.low <= one.high);
    RC_ASSERT(one.mean >= 20 - 1e-9 && one.mean <= 24 + 1e-9);
    RC_ASSERT(std::abs(one.above_base - (one.mean - 10)) < 1e-9);
  }
}

} // namespace
} // namespace coneline::stats
