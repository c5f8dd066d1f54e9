// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/turnbull.h"
#include "tests/core/stats/published_data.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

// Data of Finkelstein & Wolfe 1985, Biometrics 41:933-945; masses as in Fay & Shaw 2010, J. Stat.
// Software 36(2), from memory, worked out again with another program.
TEST(Turnbull, CosmesisAfterRadiotherapy) {
  const auto result = stepwise(interval_counts(cosmesis()));
  const std::vector<Step> expected{{4, 5, .046347},   {6, 7, .033363},   {7, 8, .088667},
                                   {11, 12, .070753}, {24, 25, .092646}, {33, 34, .081786},
                                   {38, 40, .120880}, {46, 48, .465558}};
  ASSERT_EQ(result.steps.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(result.steps[i].from, expected[i].from);
    EXPECT_EQ(result.steps[i].to, expected[i].to);
    EXPECT_NEAR(result.steps[i].mass, expected[i].mass, 5e-7);
  }
  EXPECT_NEAR(result.log_likelihood, -58.06002, 5e-6);
  EXPECT_LT(result.short_of_best, 1e-8);
}

TEST(Turnbull, OneTrayLookedAtToTheEndGivesItsOwnShares) {
  const auto result = stepwise(interval_counts(chickweed()));
  ASSERT_EQ(result.steps.size(), 8U);
  EXPECT_EQ(result.steps[0].from, 133);
  EXPECT_EQ(result.steps[0].to, 143);
  EXPECT_NEAR(result.steps[0].mass, 2.0 / 200, 1e-12);
  EXPECT_NEAR(result.never_seen, 0.8, 1e-12);
}

// Without looks in common, and with a tray given up early: the product-limit estimate by hand.
// 10 sown, 4 up by day 5 and the rest taken no further; 10 sown, 4 by day 5 and 3 more by day 10.
TEST(Turnbull, SeedGivenUpEarlyIsSharedOutOverWhatCameLater) {
  const std::vector<Tray> trays{{"A", "1", 10, {{5, 4, 0}}},
                                {"A", "2", 10, {{5, 4, 0}, {10, 3, 0}}}};
  const auto result = stepwise(interval_counts(trays));
  ASSERT_EQ(result.steps.size(), 2U);
  EXPECT_NEAR(result.steps[0].mass, 0.4, 1e-9);
  EXPECT_NEAR(result.steps[1].mass, 0.6 * 0.5, 1e-9);
  EXPECT_NEAR(result.never_seen, 0.3, 1e-9);
}

TEST(Turnbull, RemovedSeedNeverComes) {
  const std::vector<Tray> trays{{"A", "1", 10, {{5, 4, 6}}},
                                {"A", "2", 10, {{5, 4, 0}, {10, 3, 3}}}};
  const auto result = stepwise(interval_counts(trays));
  EXPECT_NEAR(result.steps[0].mass, 8.0 / 20, 1e-9);
  EXPECT_NEAR(result.steps[1].mass, 3.0 / 20, 1e-9);
  EXPECT_NEAR(result.never_seen, 9.0 / 20, 1e-9);
}

TEST(Turnbull, NothingGerminatedOrNothingSownGivesNoSteps) {
  EXPECT_TRUE(
      stepwise(interval_counts(std::vector<Tray>{{"A", "1", 10, {{5, 0, 0}}}})).steps.empty());
  EXPECT_TRUE(stepwise(IntervalCounts{{0}, {}, {}, 0}).steps.empty());
}

std::vector<Tray> any_trays() {
  std::vector<Tray> trays;
  const int number = *rc::gen::inRange(1, 12);
  for (int i = 0; i < number; ++i) {
    Tray tray{"A", std::to_string(i), 0, {}};
    const int looks = *rc::gen::inRange(1, 8);
    double day = 0;
    for (int j = 0; j < looks; ++j) {
      day += *rc::gen::inRange(1, 15);
      tray.looks.push_back({day, *rc::gen::inRange(0, 6), *rc::gen::inRange(0, 2)});
    }
    tray.sown = tray.germinated() + tray.removed() + *rc::gen::inRange(0, 20);
    trays.push_back(tray);
  }
  return trays;
}

/// Share given to (from, to] by the steps within it; steps never straddle a look of the data.
double share_between(const Stepwise& result, double from, double to) {
  double sum = 0;
  for (const auto& step : result.steps)
    if (step.from >= from && step.to <= to)
      sum += step.mass;
  return sum;
}

RC_GTEST_PROP(Turnbull, IsOptimal, ()) {
  const auto counts = interval_counts(any_trays());
  RC_PRE(!counts.seen.empty());
  const auto result = stepwise(counts);
  RC_ASSERT(result.short_of_best < 1e-6 * counts.sown());
  double total = result.never_seen;
  for (const auto& step : result.steps)
    total += step.mass;
  RC_ASSERT(std::abs(total - 1) < 1e-9);
  // The optimality conditions again, from the steps alone.
  for (const auto& step : result.steps) {
    double slope = 0;
    for (const auto& cell : counts.seen) {
      const double from = counts.bounds[cell.from];
      const double to = counts.bounds[cell.to];
      if (step.from >= from && step.to <= to)
        slope += cell.seeds / share_between(result, from, to);
    }
    for (const auto& cell : counts.waiting)
      if (step.from >= counts.bounds[cell.since])
        slope += cell.seeds /
                 (share_between(result, counts.bounds[cell.since], 1e9) + result.never_seen);
    RC_ASSERT(slope < counts.sown() * (1 + 1e-5));
    if (step.mass > 1e-4)
      RC_ASSERT(slope > counts.sown() * (1 - 1e-3));
  }
}

} // namespace
} // namespace coneline::stats
