// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/needs.h"
#include "tests/core/plan/small_plan.h"

#include <rapidcheck/gtest.h>

namespace coneline::plan {
namespace {

using namespace coneline::tests;
using book::Light;

TEST(Needs, OfPlantsInOneLitre) {
  // 100 plants in 1 L since 1 March 2025: twelve months on, 90 of them go into 3 L on 1 March 2026,
  // and on 1 March 2027 90 × 0.95 = 85.5 are ready.
  auto input = small_plan("2026-01-15");
  input.groups = {group(one_litre, "2025-03-01", 100)};
  const auto plan = needs(input).value();
  ASSERT_EQ(plan.months.size(), 24U);
  EXPECT_EQ(plan.months[0], day("2026-01-01"));
  EXPECT_EQ(plan.months[2], day("2026-03-01"));

  const auto& small = of(plan, one_litre);
  EXPECT_EQ(small.standing_today, 100);
  EXPECT_EQ(small.standing[1], 100);
  EXPECT_EQ(small.standing[2], 0);
  const auto& large = of(plan, three_litres);
  EXPECT_DOUBLE_EQ(large.into[2], 90);
  EXPECT_DOUBLE_EQ(sum(large.into), 90);
  EXPECT_DOUBLE_EQ(large.standing[13], 90);   // February 2027
  EXPECT_DOUBLE_EQ(large.standing[14], 85.5); // ready, and still there
  EXPECT_DOUBLE_EQ(large.standing[23], 85.5);
  ASSERT_EQ(plan.ready.size(), 1U);
  EXPECT_EQ(plan.ready[0].cross, "A × B");
  EXPECT_DOUBLE_EQ(plan.ready[0].plants[14], 85.5);

  // 90 × (3 − 1) = 180 L in the pots, 198 L with a tenth spilt; 198 / 0.8 = 247.5 L of parts, three
  // quarters of them bark.
  EXPECT_DOUBLE_EQ(of(plan.mixes, "cycad mix").litres[2], 198);
  EXPECT_NEAR(of(plan.parts, "bark").litres[2], 185.625, 1e-9);
  EXPECT_NEAR(of(plan.parts, "sand").litres[2], 61.875, 1e-9);
  EXPECT_DOUBLE_EQ(sum(of(plan.mixes, "cycad mix").litres), 198);

  EXPECT_DOUBLE_EQ(plan.sums.here, 100);
  EXPECT_DOUBLE_EQ(plan.sums.ready, 85.5);
  EXPECT_DOUBLE_EQ(plan.sums.lost, 14.5);
  EXPECT_DOUBLE_EQ(plan.sums.growing, 0);
}

TEST(Needs, TellTheFirstMonthThatDoesNotFit) {
  // 100 pots of 0.1 × 0.1 m take 1 m² of 2 m² part shade; 90 of 0.2 × 0.2 m take 3.6 m² of 1 m²
  // sun.
  auto input = small_plan("2026-01-15");
  input.groups = {group(one_litre, "2025-03-01", 100)};
  const auto plan = needs(input).value();
  const auto& shade = of(plan, Light::part_shade);
  EXPECT_DOUBLE_EQ(shade.offered, 2);
  EXPECT_DOUBLE_EQ(shade.today, 1);
  EXPECT_FALSE(shade.first_over);
  EXPECT_EQ(shade.told, "Part shade fits: at most 1.00 of 2.00 m².");
  const auto& sun = of(plan, Light::sun);
  EXPECT_NEAR(sun.needed[2], 3.6, 1e-9);
  EXPECT_EQ(sun.first_over, 2U);
  EXPECT_EQ(sun.told,
            "Sun does not fit from March 2026: 3.60 m² needed, 1.00 m² there, 2.60 m² short.");
}

TEST(Needs, ABenchThatIsJustFullFits) {
  auto input = small_plan("2026-01-15", 2);
  input.groups = {group(one_litre, "2025-12-01", 200)};
  EXPECT_FALSE(of(needs(input).value(), Light::part_shade).first_over);
  input.groups = {group(one_litre, "2025-12-01", 201)};
  EXPECT_EQ(of(needs(input).value(), Light::part_shade).told,
            "Part shade does not fit today: 2.01 m² needed, 2.00 m² there, 0.01 m² short.");
}

TEST(Needs, WhereNoPlaceIsMeasuredSaysSo) {
  auto input = small_plan("2026-01-15", 2);
  input.registers.places.clear();
  input.groups = {group(one_litre, "2025-12-01", 10)};
  EXPECT_NE(of(needs(input).value(), Light::part_shade).told.find("no measured place"),
            std::string::npos);
}

TEST(Needs, OfATrayStillSprouting) {
  // 100 sown on 1 January, 10 up and in the tray, 90 waiting. 40 more are expected over 120 days, 1
  // February to 1 June: 28, 31, 30 and 31 days of them. On 1 July, 6 months on, 0.8 × 50 are
  // potted.
  auto input = small_plan("2026-01-20", 12);
  input.trays = {tray("2026-01-01", 100, 10, 90, 10)};
  const auto plan = needs(input).value();
  const auto& in_tray = of(plan, tray_of_50);
  EXPECT_EQ(in_tray.standing_today, 10);
  EXPECT_DOUBLE_EQ(in_tray.standing[0], 10);
  EXPECT_NEAR(in_tray.standing[1], 10 + 40 * 28 / 120.0, 1e-9);
  EXPECT_NEAR(in_tray.standing[2], 10 + 40 * 59 / 120.0, 1e-9);
  EXPECT_NEAR(in_tray.standing[5], 50, 1e-9);
  EXPECT_EQ(in_tray.standing[6], 0);
  EXPECT_EQ(in_tray.containers_today, 1);
  EXPECT_EQ(in_tray.containers[5], 1);
  EXPECT_EQ(in_tray.containers[6], 0);
  const auto& small = of(plan, one_litre);
  EXPECT_NEAR(small.into[6], 40, 1e-9);
  EXPECT_NEAR(of(plan.mixes, "cycad mix").litres[6], 40 * (1 - 0.1) * 1.1, 1e-9); // tray: 5 L of 50
  EXPECT_NEAR(plan.sums.come_up, 40, 1e-9);
  EXPECT_NEAR(plan.sums.growing, 40, 1e-9);
  EXPECT_NEAR(plan.sums.lost, 10, 1e-9);
  // the tray, 0.5 × 0.4 m, then 40 pots of 0.01 m²
  EXPECT_NEAR(of(plan, Light::part_shade).needed[5], 0.2, 1e-9);
  EXPECT_NEAR(of(plan, Light::part_shade).needed[6], 0.4, 1e-9);
}

TEST(Needs, SeedlingsThatComeUpAfterThePottingDayArePottedInTheirMonth) {
  auto input = small_plan("2026-01-01", 12);
  input.registers.routes[0].steps[0].months = {2, 2}; // potted on 1 March, sprouting to 1 June
  input.trays = {tray("2026-01-01", 100, 0, 100, 0)};
  const auto plan = needs(input).value();
  const auto& small = of(plan, one_litre);
  EXPECT_NEAR(small.into[2], 0.8 * 50 * (28 + 31) / 120.0, 1e-9);
  EXPECT_NEAR(small.into[3], 0.8 * 50 * 30 / 120.0, 1e-9);
  EXPECT_NEAR(small.into[4], 0.8 * 50 * 31 / 120.0, 1e-9);
  EXPECT_NEAR(sum(small.into), 40, 1e-9);
}

TEST(Needs, ATrayFromWhichNothingMoreIsExpectedIsClearedThisMonth) {
  auto input = small_plan("2026-01-01", 3);
  input.trays = {tray("2024-01-01", 100, 0, 100, 0)};
  const auto plan = needs(input).value();
  EXPECT_DOUBLE_EQ(of(plan, Light::part_shade).today, 0.2);
  EXPECT_EQ(of(plan, Light::part_shade).needed[0], 0);
}

TEST(Needs, ATrayTakesItsRoomWhileSeedMayComeUpBeyondTheMonthsAskedFor) {
  auto input = small_plan("2026-01-01", 2);
  input.registers.routes[0].germination_months = {3, 30};
  input.trays = {tray("2026-01-01", 100, 0, 100, 0)};
  const auto plan = needs(input).value();
  EXPECT_EQ(plan.sums.come_up, 0);
  EXPECT_DOUBLE_EQ(of(plan, Light::part_shade).needed[1], 0.2);
}

TEST(Needs, WhatIsOverdueIsDueThisMonth) {
  auto input = small_plan("2026-01-15", 12);
  input.groups = {group(one_litre, "2020-01-01", 10)};
  const auto plan = needs(input).value();
  EXPECT_EQ(of(plan, one_litre).standing_today, 10);
  EXPECT_EQ(of(plan, one_litre).standing[0], 0);
  EXPECT_DOUBLE_EQ(of(plan, three_litres).into[0], 9);
}

TEST(Needs, CountsPotsOfSeveralCellsByTheCell) {
  auto input = small_plan("2026-01-15", 12);
  input.registers.pots[2].cells = 4; // four plants share 3 L: 0.75 L each, less than the 1 L before
  input.groups = {group(one_litre, "2025-03-01", 100)};
  const auto plan = needs(input).value();
  EXPECT_DOUBLE_EQ(of(plan, three_litres).into[2], 90);
  EXPECT_DOUBLE_EQ(of(plan, three_litres).containers[2], 22.5);
  EXPECT_DOUBLE_EQ(of(plan.mixes, "cycad mix").litres[2], 0);
  ASSERT_EQ(plan.remarks.size(), 1U);
  EXPECT_NE(plan.remarks[0].find("no more than the root ball"), std::string::npos);
}

TEST(Needs, NameWhatIsLeftOutAndCountItsRoom) {
  auto input = small_plan("2026-01-15", 3);
  input.groups = {group(one_litre, "2025-03-01", 30, unrouted), group(ten_litres, "2025-03-01", 4)};
  input.trays = {tray("2026-01-01", 100, 0, 100, 0, unrouted)};
  const auto plan = needs(input).value();
  ASSERT_EQ(plan.left_out.size(), 3U);
  EXPECT_EQ(plan.left_out[0].code.kind(), Kind::tray);
  EXPECT_EQ(plan.left_out[0].count, 100);
  EXPECT_EQ(plan.left_out[1].why, "its taxon has no route");
  EXPECT_EQ(plan.left_out[2].why, "'10 L' is larger than every pot of its route");
  EXPECT_EQ(plan.sums.here, 0);
  // 30 × 0.01 + 4 × 0.09 + the tray's 0.2
  EXPECT_NEAR(of(plan, Light::sun).needed[2], 0.86, 1e-9);
}

TEST(Needs, APotBetweenTwoStepsStandsInItsOwnPotUntilItMovesOn) {
  auto input = small_plan("2026-01-15", 12);
  input.groups = {group(two_litres, "2025-06-01", 10)}; // taken as at the 3 L step: ready in June
  const auto plan = needs(input).value();
  EXPECT_DOUBLE_EQ(plan.ready.at(0).plants[5], 9.5);
  EXPECT_DOUBLE_EQ(of(plan, two_litres).standing[11], 9.5);
  ASSERT_EQ(plan.remarks.size(), 1U);
  EXPECT_NE(plan.remarks[0].find("not on its route"), std::string::npos);
}

TEST(Needs, OfNoMonthsAreRefused) {
  EXPECT_FALSE(needs(small_plan("2026-01-15", 0)));
  EXPECT_EQ(needs(small_plan("2026-01-15", 601)).error().blame, Blame::usage);
}

TEST(Needs, OfAMixThatCannotBeMixedAreRefusedByName) {
  auto input = small_plan("2026-01-15");
  input.registers.mixes[0].loss = 3;
  input.groups = {group(one_litre, "2025-03-01", 100)};
  const auto plan = needs(input);
  ASSERT_FALSE(plan);
  EXPECT_NE(plan.error().what.find("cycad mix"), std::string::npos);
}

TEST(Needs, OfAnEmptyBookAreNothing) {
  const auto plan = needs(small_plan("2026-01-15", 2)).value();
  EXPECT_TRUE(plan.pots.empty());
  EXPECT_EQ(of(plan, Light::sun).told, "Sun fits: at most 0.00 of 1.00 m².");
}

RC_GTEST_PROP(Needs, NoPlantIsLostSightOf, ()) {
  auto input = small_plan("2026-03-17", *rc::gen::inRange(1, 60));
  for (auto& step : input.registers.routes[0].steps) {
    const auto low = *rc::gen::inRange(0, 300) / 10.0;
    step.months = {low, low + *rc::gen::inRange(0, 300) / 10.0};
    step.survival = *rc::gen::inRange(1, 101) / 100.0;
  }
  const auto low = *rc::gen::inRange(0, 200) / 10.0;
  input.registers.routes[0].germination_months = {low, low + *rc::gen::inRange(0, 300) / 10.0};
  for (int i = *rc::gen::inRange(0, 6); i > 0; --i)
    input.groups.push_back({Code::of(Kind::pot_group, 17, i).value(), "A × B", cycas,
                            *rc::gen::element(one_litre, two_litres, three_litres, tray_of_50),
                            input.today.plus_days(-*rc::gen::inRange(0, 2000)),
                            *rc::gen::inRange<std::int64_t>(1, 1000)});
  for (int i = *rc::gen::inRange(0, 6); i > 0; --i) {
    const auto up = *rc::gen::inRange<std::int64_t>(0, 100);
    const auto there = *rc::gen::inRange<std::int64_t>(0, up + 1);
    input.trays.push_back({Code::of(Kind::tray, 17, i).value(), "A × B", cycas, tray_of_50,
                           input.today.plus_days(-*rc::gen::inRange(0, 1000)), up + 100, up, 100,
                           there});
  }
  const auto plan = needs(input).value();
  double standing = 0;
  double today = 0;
  double ready = 0;
  for (const auto& pot : plan.pots) {
    standing += pot.standing.back();
    today += pot.standing_today;
  }
  for (const auto& cross : plan.ready)
    ready += sum(cross.plants);
  const auto& sums = plan.sums;
  const auto near = [](double a, double b) { return std::abs(a - b) < 1e-6; };
  RC_ASSERT(near(sums.here + sums.come_up, sums.growing + sums.ready + sums.lost));
  RC_ASSERT(near(sums.here, today));
  RC_ASSERT(near(sums.growing + sums.ready, standing)); // ready plants stay until sold
  RC_ASSERT(near(sums.ready, ready));
}

} // namespace
} // namespace coneline::plan
