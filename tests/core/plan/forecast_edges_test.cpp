// SPDX-License-Identifier: GPL-3.0-or-later
// Lots that no route leads on, routes of one step or of a single month, and draws that are certain.
#include "core/plan/bench_rows.h"
#include "core/plan/forecast.h"
#include "core/plan/forecast_run.h"
#include "core/plan/mix.h"
#include "tests/core/plan/invented_lots.h"

#include <cmath>
#include <numeric>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

const ForecastRuns few{.runs = 20, .seed = 3, .threads = 1, .go_on = {}};

/// Everything certain but which seed and plant it is, and no lot yet.
ForecastInput empty(int months = 24) {
  ForecastInput input;
  input.standing = small_plan("2026-01-01", months);
  const double known = std::numeric_limits<double>::infinity();
  input.assumed.survival_weight = input.assumed.season_weight = known;
  input.assumed.germination_weight = known;
  return input;
}

bool remarked(const Ways& ways, std::string_view part) {
  return std::ranges::any_of(ways.remarks, [&](const std::string& remark) {
    return remark.find(part) != std::string::npos;
  });
}

/// Of a series over all runs and months; 0 where there is none.
double all_of(const ForecastInput& input, Shown shown, const std::string& name) {
  const auto forecast = forecast_of(input, few).value();
  const auto at = forecast.find({shown, name});
  double sum = 0;
  for (std::size_t month = 0; at && month < forecast.months().size(); ++month)
    sum += forecast.mean(*at, month);
  return sum;
}

TEST(ForecastEdges, LotsWithoutARouteAreLeftOutWithTheirReason) {
  auto input = empty();
  input.standing.trays = {tray("2025-12-01", 40, 5, 30, 5, unrouted)};
  input.standing.groups = {group(one_litre, "2025-06-01", 20, unrouted),
                           group(ten_litres, "2025-06-01", 7)};
  const auto ways = ways_of(input);
  ASSERT_EQ(ways.left_out.size(), 3U);
  EXPECT_EQ(ways.left_out[0].count, 35); // those that wait and the seedlings
  EXPECT_EQ(ways.left_out[0].why, "its taxon has no route");
  EXPECT_EQ(ways.left_out[1].why, "its taxon has no route");
  EXPECT_EQ(ways.left_out[2].why, "'10 L' is larger than every pot of its route");
  EXPECT_TRUE(remarked(ways, "3 lots are left out of pots and mix"));
  EXPECT_TRUE(ways.lots.empty());
}

TEST(ForecastEdges, AGroupBesideItsRouteIsTakenToBeAtTheNextLargerPot) {
  auto input = empty();
  input.standing.groups = {group(two_litres, "2025-06-01", 20)};
  EXPECT_TRUE(remarked(ways_of(input), "stands in '2 L', which is not on its route; it is taken to "
                                       "be at the step of '3 L'"));
  EXPECT_TRUE(ways_of(input).left_out.empty());
}

TEST(ForecastEdges, APotThatHoldsNoMoreThanTheRootBallTakesNoMix) {
  auto input = empty();
  auto& steps = input.standing.registers.routes[0].steps;
  std::swap(steps[1].pot, steps[2].pot); // from 3 L into 1 L
  input.standing.groups = {group(three_litres, "2025-01-01", 20)};
  EXPECT_TRUE(remarked(ways_of(input), "'1 L' holds no more than the root ball out of '3 L'"));
  EXPECT_EQ(all_of(input, Shown::mix, "cycad mix"), 0);
}

TEST(ForecastEdges, SeedOfATaxonWithoutARouteIsNotInThePlan) {
  auto input = empty();
  input.sowings = {{SeedFrom::told, {}, "new", unrouted, {{day("2026-02-01"), 50}}, 1, ""}};
  const auto ways = ways_of(input);
  EXPECT_TRUE(
      remarked(ways, "'Cycas media' has no route: its seed to be sown is not in the plan."));
  EXPECT_TRUE(ways.lots.empty());
}

TEST(ForecastEdges, TwoSowingsOfOneCrossAreToldApart) {
  auto input = empty();
  for (const char* month : {"2026-02-01", "2026-03-01"})
    input.sowings.push_back({SeedFrom::told, {}, "A × B", cycas, {{day(month), 50}}, 1, ""});
  const auto ways = ways_of(input);
  ASSERT_EQ(ways.lots.size(), 2U);
  EXPECT_EQ(ways.lots[0].name, "seed of A × B, sown in 2026-02");
  EXPECT_EQ(ways.lots[1].name, "seed of A × B (2), sown in 2026-03");
  EXPECT_NE(ways.lots[0].key, ways.lots[1].key) << "they draw apart";
}

// A tray of which nobody knows how it comes up keeps what is up: of 10 seedlings 0.8 live.
TEST(ForecastEdges, OfATrayWithoutAForecastOnlyWhatIsUpIsPotted) {
  auto input = empty();
  input.standing.registers.routes[0].steps[0].months = {4, 4};
  input.standing.trays = {tray("2025-12-01", 40, 10, 30, 10)};
  const double potted = all_of(input, Shown::into, "1 L");
  EXPECT_GT(potted, 4);
  EXPECT_LE(potted, 10);
  // With draws that say nothing comes up, the same.
  CrossSprouting cross;
  cross.cross = "A × B";
  cross.taxon = cycas;
  cross.trays = {input.standing.trays[0].code};
  cross.months = 24;
  cross.draws = {std::vector<double>(24, 0.0)};
  input.sprouting = {cross};
  EXPECT_EQ(all_of(input, Shown::into, "1 L"), potted);
  // All 30 come up in the first month: up to 40 are potted, 0.8 × 40 = 32 on average.
  input.sprouting[0].draws[0][0] = 1;
  EXPECT_NEAR(all_of(input, Shown::into, "1 L"), 32, 3);
}

TEST(ForecastEdges, ARouteOfOneStepIsReadyFromItsTray) {
  auto input = empty();
  auto& route = input.standing.registers.routes[0];
  route.steps.resize(1);
  route.steps[0].survival = 1;
  route.germination = 1;
  route.germination_months = {1, 1};
  input.sowings = {{SeedFrom::told, {}, "A × B", cycas, {{day("2026-02-01"), 50}}, 1, ""}};
  EXPECT_NEAR(all_of(input, Shown::ready, "A × B"), 50, 1e-6);
  EXPECT_EQ(all_of(input, Shown::into, "1 L"), 0);
}

// Sown today, between the months 3 and 3 all of it: in the third month from now.
TEST(RouteSproutingEdges, ARangeWithoutWidthIsASingleMonth) {
  auto input = empty();
  auto& route = input.standing.registers.routes[0];
  route.germination = 1;
  route.germination_months = {3, 3};
  const auto today = input.standing.today;
  const auto sown = tray("2026-01-01", 40, 0, 40, 0);
  const auto cross = route_sprouting(route, {{sown, 0, today}}, today, 6, 10);
  ASSERT_EQ(cross.draws.size(), 1U) << "a share of 1 leaves nothing to learn";
  EXPECT_EQ(cross.draws[0], (std::vector<double>{0, 0, 1, 0, 0, 0}));
  const auto old = tray("2025-01-01", 40, 40, 0, 40);
  EXPECT_EQ(route_sprouting(route, {{old, 0, today}}, today, 3, 10).draws[0],
            (std::vector<double>{0, 0, 0}));
  EXPECT_TRUE(route_sprouting(route, {}, today, 3, 10).trays.empty());
}

TEST(StreamEdges, WhatIsCertainTakesNoRandomNumber) {
  Stream stream(1, 1);
  std::vector<Drawn> drawn;
  stream.keep(&drawn);
  EXPECT_EQ(stream.binomial(0, 0.5), 0);
  EXPECT_EQ(stream.binomial(5, 0), 0);
  EXPECT_EQ(stream.binomial(5, -1), 0);
  EXPECT_EQ(stream.binomial(5, 1), 5);
  EXPECT_TRUE(drawn.empty());
  const auto lived = stream.binomial(5, 0.5);
  EXPECT_TRUE(lived >= 0 && lived <= 5);
  ASSERT_EQ(drawn.size(), 1U);
  EXPECT_EQ(drawn[0].plants, 5);
  EXPECT_EQ(stream.share(0, 10), 0);
  EXPECT_EQ(stream.share(1, 10), 1);
  EXPECT_EQ(stream.share(0.3, HUGE_VAL), 0.3);
  EXPECT_EQ(Stream::month({3, {0.5, 0.25, 0.25}}, 0.5), 4);
  EXPECT_EQ(Stream::month({3, {0.5, 0.25, 0.25}}, 0.99), 5);
}

TEST(RouteWalkEdges, TheSmallestOfTheLargerPotsAndADayOfItsOwn) {
  auto registers = small_plan().registers;
  auto& route = registers.routes.front();
  route.steps[1].pot = ten_litres; // tray, 10 L, 3 L
  EXPECT_EQ(step_with(route, registers, two_litres), 2U);
  route.steps[1].pot = three_litres;
  route.steps[2].pot = ten_litres; // tray, 3 L, 10 L
  EXPECT_EQ(step_with(route, registers, two_litres), 1U);
  const Sprouting on_a_day{12, day("2026-03-01"), day("2026-03-01")};
  EXPECT_EQ(on_a_day.between(day("2026-03-01"), day("2026-03-02")), 12);
  EXPECT_EQ(on_a_day.between(day("2026-02-01"), day("2026-03-01")), 0);
  EXPECT_EQ(on_a_day.between(day("2026-03-02"), day("2026-04-01")), 0);
}

TEST(BenchEdges, WhereNoPotStandsThereAreNoRows) {
  const Ground staggered{2000, 100, 0, Pattern::staggered};
  const auto rows = rows_across(staggered, small_plan().registers.pot(ten_litres));
  EXPECT_EQ(rows.in_a_row, 0);
  EXPECT_EQ(rows.most(staggered.room()), 0);
  EXPECT_EQ(rows.room_for(0), 0);
  const auto fits =
      rows_across({2000, 1000, 0, Pattern::square}, small_plan().registers.pot(ten_litres));
  EXPECT_EQ(fits.in_a_row, 3);
  EXPECT_EQ(fits.most(fits.first - 1), 0) << "not even the first row";
  EXPECT_EQ(fits.room_for(-1), 0);
}

TEST(MixEdges, AmountsBeyondAnyNurseryAreRefused) {
  const auto said = [](double litres, double amount) {
    const auto mix = mix_for({10, litres, {{"bark", amount}}});
    return mix ? "mixed" : mix.error().what;
  };
  EXPECT_EQ(said(1e6, 1e9), "mixed");
  EXPECT_EQ(said(1.1e6, 1), "a pot of 1100000 litres cannot be");
  EXPECT_EQ(said(3, 1.1e9), "1.1e+09 parts of bark cannot be");
  EXPECT_EQ(said(3, std::nan("")), "nan parts of bark cannot be");
}

} // namespace
} // namespace coneline::plan
