// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_measures.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::stats {
namespace {

Tray tray(std::int64_t sown, std::vector<double> days, std::vector<std::int64_t> counts) {
  Tray made{"A", "1", sown, {}};
  for (std::size_t i = 0; i < days.size(); ++i)
    made.looks.push_back({days[i], counts[i], 0});
  return made;
}

// Own data, worked out in exact fractions by the formulas of Ranal & Santana 2006; not published.
TEST(GerminationMeasures, OwnCaseInExactFractions) {
  const auto measures =
      germination_measures(tray(60, {7, 14, 21, 28, 42, 56, 84}, {0, 3, 9, 14, 8, 4, 2}));
  EXPECT_DOUBLE_EQ(*measures.mean_time, 33.775);
  EXPECT_NEAR(*measures.variance, 273.614744, 5e-7);
  EXPECT_NEAR(*measures.velocity, 2.960770, 5e-7);
  EXPECT_NEAR(*measures.uncertainty, 2.307249, 5e-7);
  EXPECT_NEAR(*measures.synchrony, 0.211538, 5e-7);
  EXPECT_DOUBLE_EQ(*measures.t50_coolbear, 25.25);
  EXPECT_DOUBLE_EQ(*measures.t50_farooq, 25);
  EXPECT_NEAR(*measures.speed, 1.428571, 5e-7);
  EXPECT_NEAR(*measures.peak_value, 1.547619, 5e-7);
  EXPECT_NEAR(*measures.germination_value, 1.228269, 5e-7);
}

// Own data.
TEST(GerminationMeasures, HalfTimeOnALevelStretchIsTheEarliest) {
  const auto measures = germination_measures(tray(30, {2, 4, 6}, {10, 0, 10}));
  EXPECT_DOUBLE_EQ(*measures.t50_coolbear, 4.1);
  EXPECT_DOUBLE_EQ(*measures.t50_farooq, 2.0);
}

// Own data.
TEST(GerminationMeasures, AllAtOneLook) {
  const auto measures = germination_measures(tray(20, {5, 10, 15}, {0, 20, 0}));
  EXPECT_EQ(*measures.variance, 0);
  EXPECT_EQ(*measures.uncertainty, 0);
  EXPECT_EQ(*measures.synchrony, 1);
  EXPECT_DOUBLE_EQ(*measures.t50_coolbear, 7.625);
  EXPECT_DOUBLE_EQ(*measures.t50_farooq, 7.5);
}

TEST(GerminationMeasures, NoneWhereNothingGerminated) {
  const auto measures = germination_measures(tray(20, {0, 10}, {0, 0}));
  for (const auto& value :
       {measures.mean_time, measures.variance, measures.velocity, measures.uncertainty,
        measures.synchrony, measures.t50_coolbear, measures.t50_farooq, measures.speed,
        measures.peak_value, measures.germination_value})
    EXPECT_FALSE(value);
}

TEST(GerminationMeasures, ASingleSeedHasNeitherVarianceNorSynchrony) {
  const auto measures = germination_measures(tray(5, {4, 8}, {0, 1}));
  EXPECT_FALSE(measures.variance);
  EXPECT_FALSE(measures.synchrony);
  EXPECT_EQ(*measures.mean_time, 8);
  EXPECT_EQ(*measures.t50_coolbear, 8);
  EXPECT_EQ(*measures.t50_farooq, 6);
}

Tray any_tray() {
  Tray made{"A", "1", 0, {}};
  double day = 0;
  for (const auto count :
       *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 9)))) {
    day += *rc::gen::inRange(1, 20);
    made.looks.push_back({day, count, 0});
  }
  made.sown = made.germinated() + *rc::gen::inRange(1, 50);
  return made;
}

RC_GTEST_PROP(GerminationMeasures, TimesScaleWithTheUnitOfTime, ()) {
  const auto days = any_tray();
  auto hours = days;
  for (auto& look : hours.looks)
    look.day *= 24;
  const auto in_days = germination_measures(days);
  const auto in_hours = germination_measures(hours);
  RC_PRE(in_days.variance.has_value());
  const auto close = [](double a, double b) {
    return std::abs(a - b) <= 1e-9 * std::max(1.0, std::abs(a));
  };
  RC_ASSERT(close(*in_days.mean_time * 24, *in_hours.mean_time));
  RC_ASSERT(close(*in_days.variance * 576, *in_hours.variance));
  RC_ASSERT(close(*in_days.velocity, *in_hours.velocity * 24));
  RC_ASSERT(close(*in_days.t50_coolbear * 24, *in_hours.t50_coolbear));
  RC_ASSERT(close(*in_days.germination_value, *in_hours.germination_value * 576));
  RC_ASSERT(in_days.synchrony == in_hours.synchrony);
}

RC_GTEST_PROP(GerminationMeasures, AnEmptyLookAtTheEndChangesTheGerminationValueAlone, ()) {
  const auto before = any_tray();
  auto after = before;
  after.looks.push_back({before.last_day() * 2, 0, 0});
  const auto a = germination_measures(before);
  const auto b = germination_measures(after);
  RC_PRE(a.mean_time.has_value());
  RC_ASSERT(a.mean_time == b.mean_time && a.variance == b.variance && a.velocity == b.velocity);
  RC_ASSERT(a.uncertainty == b.uncertainty && a.synchrony == b.synchrony && a.speed == b.speed);
  RC_ASSERT(a.t50_coolbear == b.t50_coolbear && a.t50_farooq == b.t50_farooq);
  RC_ASSERT(a.peak_value == b.peak_value);
  RC_ASSERT(std::abs(*a.germination_value - 2 * *b.germination_value) <
            1e-9 * *a.germination_value);
}

} // namespace
} // namespace coneline::stats
