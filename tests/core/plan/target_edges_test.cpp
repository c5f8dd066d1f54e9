// SPDX-License-Identifier: GPL-3.0-or-later
// Targets where all or nothing comes up, what the taxon's other crosses say, and when seed is sown.
#include "core/plan/forecast_sowings.h"
#include "core/plan/integer_program.h"
#include "core/plan/target.h"
#include "tests/core/plan/invented_lots.h"

#include <limits>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

const ForecastRuns runs{.runs = 200, .seed = 2, .threads = 1, .go_on = {}};

/// All seed comes up in its first two months and lives; in 1 L four months after sowing.
ForecastInput all_live() {
  ForecastInput input;
  input.standing = small_plan("2026-01-01", 12);
  auto& route = input.standing.registers.routes[0];
  route.germination = 1;
  route.germination_months = {1, 2};
  route.steps[0].months = {4, 4};
  for (auto& step : route.steps)
    step.survival = 1;
  const double known = std::numeric_limits<double>::infinity();
  input.assumed.survival_weight = input.assumed.season_weight = known;
  input.assumed.germination_weight = known;
  return input;
}

Target hundred(std::string_view by) {
  return {{}, "A × B", cycas, one_litre, 100, day(by), 0.9};
}

TEST(TargetEdges, WhereEverySeedBecomesAPlantAsManySeedsAreSown) {
  const auto plan = plan_target(all_live(), hundred("2026-10-31"), runs).value();
  ASSERT_TRUE(plan.latest);
  EXPECT_EQ(plan.sowings.front().seeds, 100);
  EXPECT_EQ(plan.sowings.front().assured, 1);
  EXPECT_NEAR(plan.sowings.front().share, 1, 1e-9);
  EXPECT_EQ(plan.alone, 0);
}

TEST(TargetEdges, InAMonthTooLateNoNumberOfSeedsDoes) {
  const auto plan = plan_target(all_live(), hundred("2026-02-28"), runs).value();
  EXPECT_FALSE(plan.latest);
  ASSERT_FALSE(plan.sowings.empty());
  for (const auto& sowing : plan.sowings) {
    EXPECT_FALSE(sowing.seeds);
    EXPECT_EQ(sowing.share, 0);
  }
  EXPECT_FALSE(plan.harvest_by);
  EXPECT_FALSE(plan.pollinate_by);
}

TEST(TargetEdges, WhatStandsThereAlreadyNeedsNoSeed) {
  auto input = all_live();
  input.standing.groups = {group(one_litre, "2025-12-01", 120)};
  const auto plan = plan_target(input, hundred("2026-02-28"), runs).value();
  EXPECT_EQ(plan.alone, 1);
  EXPECT_EQ(plan.here.low, 120);
  ASSERT_TRUE(plan.latest);
  EXPECT_EQ(plan.sowings[*plan.latest].seeds, 0);
}

// The other crosses of the taxon come up with 0.4: of 0.4 × 1 of what is sown, 100 plants with 9 in
// 10 take more than 250 seeds, and by the normal approximation about 275.
TEST(TargetEdges, OfANewCrossTheTaxonsOtherCrossesSpeak) {
  auto input = all_live();
  input.next_cross[cycas] = {{{stats::Family::log_logistic, 0.4, 8, 40}, 0, 1}};
  const auto plan = plan_target(input, hundred("2026-10-31"), runs).value();
  ASSERT_TRUE(plan.sowings.front().seeds);
  EXPECT_NEAR(plan.sowings.front().share, 0.4, 0.01);
  EXPECT_GT(*plan.sowings.front().seeds, 250);
  EXPECT_LT(*plan.sowings.front().seeds, 290);
}

TEST(TargetEdges, APlanThatCannotBeIsRefused) {
  auto input = all_live();
  input.assumed.settling = 1;
  const auto plan = plan_target(input, hundred("2026-10-31"), runs);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.error().what, "a settling of 1");
}

TEST(SownMonths, SeedAtHandWaitsForAPottingMonthAndWhatIsSaidDoesNot) {
  const auto today = day("2026-01-20");
  std::array<bool, 12> potting{};
  potting.at(2) = true; // March
  const Calendar calendar(today, 12, potting);
  const auto sown = [&](SeedFrom from, std::vector<SeedDraw> draws) {
    Sowing sowing;
    sowing.from = from;
    sowing.draws = std::move(draws);
    std::string all;
    for (const auto& month : sown_months(sowing, calendar, today))
      all += fmt::format("{} {};", month.sown_on.iso(), fmt::join(month.seeds, "+"));
    return all;
  };
  EXPECT_EQ(sown(SeedFrom::at_hand, {{day("2026-01-10"), 30}}), "2026-03-15 30;");
  EXPECT_EQ(sown(SeedFrom::told, {{day("2026-01-10"), 30}}), "2026-01-20 30;")
      << "not before today";
  EXPECT_EQ(sown(SeedFrom::told, {{day("2026-05-02"), 30}}), "2026-05-15 30;");
  EXPECT_EQ(sown(SeedFrom::at_hand, {{day("2026-04-01"), 30}}), "") << "no March is left";
  EXPECT_EQ(sown(SeedFrom::told, {{day("2027-01-01"), 30}}), "") << "after the plan";
  EXPECT_EQ(sown(SeedFrom::told, {{day("2026-05-02"), 0}}), "");
  // Two ways in which it may turn out, of one month and of two.
  EXPECT_EQ(sown(SeedFrom::told, {{day("2026-05-02"), 30}, {day("2026-05-20"), 10}}),
            "2026-05-15 30+10;");
  EXPECT_EQ(sown(SeedFrom::told, {{day("2026-05-02"), 30}, {day("2026-06-20"), 10}}),
            "2026-05-15 30+0;2026-06-15 0+10;");
}

TEST(SolvedGap, IsTheShareThatTheCostMayBeTooHigh) {
  Solved solved;
  solved.cost = 10;
  solved.bound = 8;
  EXPECT_DOUBLE_EQ(solved.gap(), 0.2);
  solved.bound = 10;
  EXPECT_EQ(solved.gap(), 0);
  solved.cost = -10;
  solved.bound = -12;
  EXPECT_DOUBLE_EQ(solved.gap(), 0.2);
}

} // namespace
} // namespace coneline::plan
