// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/posterior_sprouting.h"
#include "core/plan/target.h"
#include "core/stats/assured.h"
#include "tests/core/plan/invented_lots.h"

#include <array>
#include <limits>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

const ForecastRuns runs{.runs = 400, .seed = 2, .threads = 0, .go_on = {}};

/// Everything certain but which seed and plant it is: 0.75 come up in two months, 0.8 of the tray
/// live, four months after sowing they are in 1 L.
ForecastInput certain() {
  ForecastInput input;
  input.standing = small_plan("2026-01-01", 12);
  auto& route = input.standing.registers.routes[0];
  route.germination = 0.75;
  route.germination_months = {1, 2};
  route.steps[0].months = {4, 4};
  const double known = std::numeric_limits<double>::infinity();
  input.assumed.survival_weight = known;
  input.assumed.season_weight = known;
  input.assumed.germination_weight = known;
  return input;
}

Target hundred(std::string_view by, double assurance) {
  return {{}, "A × B", cycas, one_litre, 100, day(by), assurance};
}

TEST(PlanTarget, WithEverythingKnownIsTheExactBinomial) {
  // 100 plants at 0.75 × 0.8 = 60 %: 180 seeds for 90 %, 185 for 95 % (exact binomial).
  const std::array<double, 2> shares{0.75, 0.8};
  for (const auto& [assurance, seeds] : {std::pair{0.9, 180}, std::pair{0.95, 185}}) {
    const auto plan = plan_target(certain(), hundred("2026-10-31", assurance), runs);
    ASSERT_TRUE(plan) << plan.error().text();
    EXPECT_EQ(stats::seeds_to_sow(100, shares, assurance)->assured, seeds);
    ASSERT_TRUE(plan->sowings.front().seeds);
    EXPECT_NEAR(static_cast<double>(*plan->sowings.front().seeds), seeds, 1); // 400 futures drawn
    EXPECT_NEAR(plan->sowings.front().share, 0.6, 1e-3);
    EXPECT_EQ(plan->alone, 0);
  }
}

TEST(PlanTarget, FindsTheLastMonthToSowAndToPollinate) {
  auto input = certain();
  auto& taxon = input.standing.registers.taxa[0];
  taxon.ripening.value = book::Range{10, 12};
  taxon.after_ripening.value = book::Range{1, 3};
  // Sown in the middle of June, four months on is the middle of October.
  const auto plan = plan_target(input, hundred("2026-10-31", 0.9), runs).value();
  ASSERT_TRUE(plan.latest);
  EXPECT_EQ(plan.sowings[*plan.latest].month, day("2026-06-01"));
  EXPECT_EQ(plan.harvest_by, day("2026-03-01"));
  EXPECT_EQ(plan.pollinate_by, day("2025-03-01")); // too late: the cone should hang already
  const auto late = plan_target(input, hundred("2026-03-31", 0.9), runs).value();
  EXPECT_FALSE(late.latest);
  EXPECT_FALSE(late.pollinate_by);
}

TEST(PlanTarget, CountsInWhatStandsInTheLine) {
  auto input = certain();
  input.standing.groups = {group(one_litre, "2025-12-01", 80), group(one_litre, "2025-12-01", 15)};
  input.standing.groups[1].code = Code::of(Kind::pot_group, 17, 2).value();
  input.standing.groups[1].cross = "C × D"; // not this one's
  auto& steps = input.standing.registers.routes[0].steps;
  steps[1].months = {60, 60};
  const auto plan = plan_target(input, hundred("2026-10-31", 0.9), runs).value();
  EXPECT_EQ(plan.here.middle, 80);
  const std::array<double, 1> share{0.6};
  EXPECT_NEAR(static_cast<double>(*plan.sowings.front().seeds),
              static_cast<double>(stats::seeds_to_sow(20, share, 0.9)->assured), 1);
  input.standing.groups[0].plants = 120;
  const auto enough = plan_target(input, hundred("2026-10-31", 0.9), runs).value();
  EXPECT_EQ(enough.alone, 1);
  EXPECT_EQ(enough.sowings.front().seeds, 0);
}

TEST(PlanTarget, UncertaintyAsksForMoreSeed) {
  auto input = certain();
  input.assumed.germination_weight = 10;
  const auto plan = plan_target(input, hundred("2026-10-31", 0.9), runs).value();
  EXPECT_GT(*plan.sowings.front().seeds, 200);
  // A cross that has shown itself bad asks for more still.
  const std::vector<stats::PosteriorPoint> points{
      {{stats::Family::log_logistic, 0.2, 8, 40}, 0, 0.5},
      {{stats::Family::log_logistic, 0.25, 8, 40}, 0, 0.5}};
  const auto shown = tray("2025-06-01", 200, 40, 0, 0);
  input.standing.trays = {shown};
  input.sprouting = {
      posterior_sprouting(points, {{shown.code, shown.sown_on, {"", "", 200, {{150, 40, 160}}}}},
                          input.standing.today, 12)};
  input.sprouting.front().cross = shown.cross;
  input.sprouting.front().taxon = shown.taxon;
  const auto bad = plan_target(input, hundred("2026-10-31", 0.9), runs).value();
  EXPECT_GT(*bad.sowings.front().seeds, 2 * *plan.sowings.front().seeds);
}

TEST(PlanTarget, RefusesWhatCannotBe) {
  const auto refused = [](const Target& target) {
    const auto plan = plan_target(certain(), target, runs);
    EXPECT_FALSE(plan);
    return plan ? "" : plan.error().what;
  };
  auto target = hundred("2026-10-31", 0.9);
  target.pot = ten_litres;
  EXPECT_EQ(refused(target), "the route of 'Cycas revoluta' does not come to '10 L'");
  target = hundred("2026-10-31", 0.9);
  target.taxon = unrouted;
  EXPECT_EQ(refused(target), "'Cycas media' has no route");
  refused(hundred("2025-12-31", 0.9));
  refused(hundred("2036-12-31", 0.9));
  refused(hundred("2026-10-31", 1));
  target = hundred("2026-10-31", 0.9);
  target.plants = 0;
  refused(target);
}

TEST(ConesFor, CountsThoseThatFail) {
  const auto cones = cones_for(450, 200, 0.8, 0.9).value();
  EXPECT_EQ(cones.with_seed, 3);
  EXPECT_EQ(cones.to_pollinate, 5); // P(Binomial(4, 0.8) >= 3) = 0.819, of 5: 0.942
  EXPECT_EQ(cones_for(0, 200, 0.8, 0.9)->to_pollinate, 0);
  EXPECT_FALSE(cones_for(100, 0, 0.8, 0.9));
  EXPECT_FALSE(cones_for(100, 200, 0, 0.9));
}

} // namespace
} // namespace coneline::plan
