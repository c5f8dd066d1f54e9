// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/kaplan_meier.h"
#include "tests/core/stats/published_waits.h"

#include <gtest/gtest.h>

#include <map>

namespace coneline::stats {
namespace {

double survival_at(const std::vector<SurvivalStep>& steps, double time) {
  double survival = 1;
  for (const auto& step : steps)
    if (step.time <= time)
      survival = step.survival;
  return survival;
}

// Freireich et al. 1963, Blood 21:699-716; Gehan 1965, Biometrika 52:203-223: from memory, worked
// out again with another program.
TEST(KaplanMeier, RemissionTimes) {
  const auto steps = kaplan_meier(remission_treated());
  const std::vector<std::pair<double, double>> expected{{6, .857143},  {7, .806723},  {10, .752941},
                                                        {13, .690196}, {16, .627451}, {22, .537815},
                                                        {23, .448179}};
  ASSERT_EQ(steps.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(steps[i].time, expected[i].first);
    EXPECT_NEAR(steps[i].survival, expected[i].second, 5e-7);
  }
  EXPECT_NEAR(log_rank(remission_treated(), remission_control())->chi_square, 16.792941, 5e-7);
}

// Acute myelogenous leukaemia, Miller 1981, Survival Analysis: from memory, to the digits shown.
TEST(KaplanMeier, MaintainedAndNot) {
  const auto steps = kaplan_meier(leukaemia_maintained());
  EXPECT_NEAR(survival_at(steps, 9), .909, 5e-4);
  EXPECT_NEAR(survival_at(steps, 18), .716, 5e-4);
  EXPECT_NEAR(survival_at(steps, 31), .491, 5e-4);
  EXPECT_NEAR(survival_at(steps, 48), .184, 5e-4);
  EXPECT_NEAR(steps.front().standard_error, .0867, 5e-5);
  EXPECT_NEAR(steps.back().standard_error, .1535, 5e-5);
  EXPECT_EQ(time_of_share(steps, 0.5), 31);
  EXPECT_EQ(time_of_share(kaplan_meier(leukaemia_not_maintained()), 0.5), 23);
  const auto test = log_rank(leukaemia_maintained(), leukaemia_not_maintained());
  ASSERT_TRUE(test);
  EXPECT_NEAR(test->chi_square, 3.4, 0.05);
  EXPECT_NEAR(test->p_value, 0.0653, 5e-5);
}

TEST(KaplanMeier, NothingEndedIsNotInSight) {
  const std::vector<Wait> waits{{5, false}, {9, false}};
  const auto steps = kaplan_meier(waits);
  EXPECT_TRUE(steps.empty());
  EXPECT_FALSE(time_of_share(steps, 0.5));
  EXPECT_FALSE(log_rank(waits, waits));
}

TEST(KaplanMeier, AllAtOnceIsOneStepToNone) {
  const std::vector<Wait> waits(4, {7, true});
  const auto steps = kaplan_meier(waits);
  ASSERT_EQ(steps.size(), 1U);
  EXPECT_EQ(steps.front().survival, 0);
  EXPECT_EQ(steps.front().standard_error, 0);
  EXPECT_EQ(time_of_share(steps, 0.9), 7);
}

TEST(KaplanMeier, TheRangeHoldsTheMiddle) {
  const auto steps = kaplan_meier(remission_treated());
  const auto range = range_of_share(steps, 0.5, 0.95);
  ASSERT_TRUE(range.low);
  EXPECT_LE(*range.low, *time_of_share(steps, 0.5));
  EXPECT_FALSE(range.high); // more than a third still waited at the end
}

} // namespace
} // namespace coneline::stats
