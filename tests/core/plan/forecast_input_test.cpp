// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast.h"
#include "tests/core/plan/invented_lots.h"

#include <limits>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

/// What a spoilt plan is refused with.
template <class Spoil>
std::string refused(Spoil spoil) {
  auto input = invented_lots(6, 12);
  spoil(input);
  const auto can = can_be_planned(input);
  EXPECT_FALSE(can);
  EXPECT_FALSE(forecast_of(input, {.runs = 2, .seed = 1, .threads = 1, .go_on = {}}));
  if (can)
    return "";
  EXPECT_NE(can.error().remedy, "");
  return can.error().text();
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

TEST(CanBePlanned, ARouteWithoutAnEnd) {
  EXPECT_TRUE(has(refused([](auto& input) { input.standing.registers.routes[1].steps.clear(); }),
                  "the route of 'Cycas media' has no steps"));
  EXPECT_TRUE(has(refused([](auto& input) {
                    input.standing.registers.routes[0].steps[2].months.high =
                        std::numeric_limits<double>::infinity();
                  }),
                  "step 3 of the route of 'Cycas revoluta'"));
  EXPECT_TRUE(
      has(refused([](auto& input) { input.standing.registers.routes[0].steps[0].survival = 0; }),
          "survived by 0"));
}

TEST(CanBePlanned, AMixThatContainsItself) {
  EXPECT_TRUE(has(refused([](auto& input) {
                    input.standing.registers.mixes[0].parts.push_back({"cycad mix", 1});
                  }),
                  "'cycad mix' contains itself"));
  EXPECT_TRUE(has(refused([](auto& input) {
                    auto& mixes = input.standing.registers.mixes;
                    mixes.push_back({book::MixId{2}, "base", 0, 0, "", {{"cycad mix", 1}}});
                    mixes[0].parts.push_back({"base", 1});
                  }),
                  "contains itself"));
}

TEST(CanBePlanned, AMixOfNothing) {
  EXPECT_TRUE(has(refused([](auto& input) {
                    for (auto& part : input.standing.registers.mixes[0].parts)
                      part.share = 0;
                  }),
                  "sum to nothing"));
  refused([](auto& input) { input.standing.registers.mixes[0].shrink = 1; });
}

TEST(CanBePlanned, AssumptionsThatCannotBe) {
  EXPECT_TRUE(
      has(refused([](auto& input) { input.assumed.potting.fill(false); }), "no month of the year"));
  refused([](auto& input) { input.assumed.survival_weight = 0; });
  refused([](auto& input) { input.assumed.season_weight = -1; });
  refused([](auto& input) { input.assumed.sold_after = -1; });
  refused([](auto& input) { input.assumed.settling = 1; });
  refused([](auto& input) { input.assumed.wet_kilograms_a_litre = 0; });
  refused([](auto& input) { input.standing.months = 0; });
  refused([](auto& input) { input.standing.months = 121; });
  EXPECT_FALSE(forecast_of(invented_lots(2, 2), {.runs = 0, .seed = 1, .threads = 1, .go_on = {}}));
}

TEST(CanBePlanned, NamesPlacesWithoutSizeAndPotsLargerThanAnyBench) {
  auto input = invented_lots(6, 12);
  input.standing.registers.places[0].length_mm = 0;
  input.standing.registers.places[1] = input.standing.registers.places[0];
  input.standing.registers.places[1].id = book::PlaceId{2};
  input.standing.registers.places[1].length_mm = 150; // 3 L pots take 200
  const auto remarks = ways_of(input).remarks;
  EXPECT_TRUE(std::ranges::any_of(
      remarks, [](const auto& remark) { return has(remark, "'bench A' has no size"); }));
  EXPECT_TRUE(std::ranges::any_of(remarks, [](const auto& remark) {
    return has(remark, "'3 L' (200 × 200 mm) is larger than every measured place");
  }));
}

TEST(LeaveMonths, OfARangeAreItsPartsByMonth) {
  std::array<bool, 12> all{};
  all.fill(true);
  const Calendar calendar(day("2026-01-01"), 6, all);
  // Since a month and a half ago, 2 to 4 months: from 0.5 to 2.5 months on.
  const auto leave = leave_months(calendar, {2, 4}, -1.5, 0, Leaving::by_potting);
  EXPECT_EQ(leave.first, 0);
  ASSERT_EQ(leave.chance.size(), 3U);
  EXPECT_DOUBLE_EQ(leave.chance[0], 0.25);
  EXPECT_DOUBLE_EQ(leave.chance[1], 0.5);
  EXPECT_DOUBLE_EQ(leave.chance[2], 0.25);
  // What has not left by now leaves in the rest of its range; what is overdue, now.
  const auto late = leave_months(calendar, {2, 4}, -3, 0, Leaving::by_potting);
  EXPECT_EQ(late.chance.size(), 1U);
  const auto overdue = leave_months(calendar, {2, 4}, -9, 0.3, Leaving::by_potting);
  EXPECT_EQ(overdue.first, 0);
  EXPECT_EQ(overdue.chance, std::vector<double>{1});
  const auto never = leave_months(calendar, {20, 40}, 0, 0, Leaving::by_potting);
  EXPECT_EQ(never.first, 6);
}

TEST(RouteSprouting, WithoutCountsIsTheRoutesShareAndMonths) {
  auto standing = small_plan("2026-01-01", 12);
  const auto sown = tray("2026-01-01", 40, 0, 40, 0);
  const auto cross = route_sprouting(standing.registers.routes[0], {{sown, 0, sown.sown_on}},
                                     standing.today, 12, 10);
  ASSERT_EQ(cross.draws.size(), 99U);
  double share = 0;
  for (const auto& draw : cross.draws) {
    for (const double chance : draw)
      share += chance / 99;
    EXPECT_EQ(draw[0], 0); // between the months 1 and 5
    EXPECT_GT(draw[1], 0);
    EXPECT_NEAR(draw[1], draw[4], 1e-12);
    EXPECT_EQ(draw[5], 0);
  }
  EXPECT_NEAR(share, 0.5, 1e-3);
}

TEST(RouteSprouting, LearnsFromTheCrossAndEndsWithTheRoute) {
  auto standing = small_plan("2026-01-01", 12);
  const auto& route = standing.registers.routes[0];
  const auto mean = [&](const std::vector<SproutingTray>& trays) {
    const auto cross = route_sprouting(route, trays, standing.today, 12, 10);
    double share = 0;
    for (const auto& draw : cross.draws)
      for (std::size_t month = 0; month < 12; ++month)
        share += draw[month] / 99;
    return share; // of the first tray's waiting seed
  };
  const auto fresh = tray("2026-01-01", 100, 0, 100, 0);
  const auto good = tray("2025-06-01", 100, 95, 5, 95);
  const auto bad = tray("2025-06-01", 100, 4, 96, 4);
  EXPECT_GT(mean({{fresh, 0, fresh.sown_on}, {good, 0, standing.today}}), 0.85);
  EXPECT_LT(mean({{fresh, 0, fresh.sown_on}, {bad, 0, standing.today}}), 0.12);
  EXPECT_EQ(mean({{bad, 0, standing.today}}), 0); // its months are over
  // Halfway through with half of the expected up, the rest is worth d (1 - H) / (1 - d H).
  const auto half = tray("2025-10-01", 1000, 250, 750, 250);
  EXPECT_NEAR(mean({{half, 0, standing.today}}), 1.0 / 3, 0.02);
}

} // namespace
} // namespace coneline::plan
