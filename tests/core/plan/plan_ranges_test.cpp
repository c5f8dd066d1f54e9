// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan, a decision, an order list and a target refuse, and the ends of what they take.
#include "core/plan/buying.h"
#include "core/plan/floaters.h"
#include "core/plan/shown_units.h"
#include "core/plan/target.h"
#include "tests/core/plan/invented_lots.h"

#include <cmath>
#include <functional>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

bool has(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

using Spoil = std::function<void(ForecastInput&)>;
std::string planned(const Spoil& spoil) {
  auto input = invented_lots(6, 12);
  add_sowings(input);
  spoil(input);
  const auto can = can_be_planned(input);
  return can ? "planned" : can.error().what;
}

TEST(PlanRanges, AssumptionsAtTheirEnds) {
  EXPECT_EQ(planned([](auto& i) { i.assumed.sold_after = 1200; }), "planned");
  EXPECT_EQ(planned([](auto& i) { i.assumed.sold_after = 1201; }), "sold after 1201 months");
  EXPECT_EQ(planned([](auto& i) { i.assumed.settling = -0.1; }), "a settling of -0.1");
  EXPECT_EQ(planned([](auto& i) { i.assumed.wet_kilograms_a_litre = 10; }),
            "10 kg for a litre of wet mix");
  EXPECT_EQ(planned([](auto& i) { i.assumed.germination_weight = no_number; }),
            "a weight of nan cannot be");
}

TEST(PlanRanges, StepsMixesAndSowingsAtTheirEnds) {
  const auto step = [](ForecastInput& i) -> book::RouteStep& {
    return i.standing.registers.routes[0].steps[1];
  };
  EXPECT_EQ(planned([&](auto& i) {
              step(i).months = {12, 6};
            }),
            "step 2 of the route of 'Cycas revoluta' lasts 12 to 6 months: it has no end");
  EXPECT_TRUE(has(planned([&](auto& i) { step(i).months = {-1, 6}; }), "lasts -1 to 6 months"));
  EXPECT_TRUE(has(planned([&](auto& i) { step(i).months = {6, 1201}; }), "lasts 6 to 1201"));
  EXPECT_EQ(planned([&](auto& i) { step(i).survival = 1.1; }),
            "step 2 of the route of 'Cycas revoluta' is survived by 1.1");
  const auto mix = [](ForecastInput& i) -> book::Mix& { return i.standing.registers.mixes[0]; };
  EXPECT_EQ(planned([&](auto& i) { mix(i).loss = -0.1; }),
            "the mix 'cycad mix' shrinks by 0.2 and loses -0.1");
  EXPECT_EQ(planned([&](auto& i) { mix(i).shrink = -0.1; }),
            "the mix 'cycad mix' shrinks by -0.1 and loses 0.1");
  EXPECT_EQ(planned([&](auto& i) { mix(i).parts[0].share = HUGE_VAL; }),
            "the parts of the mix 'cycad mix' sum to nothing");
  // A mix in two others is no circle.
  EXPECT_EQ(planned([&](auto& i) {
              auto& mixes = i.standing.registers.mixes;
              mixes.push_back({book::MixId{2}, "base", 0, 0, "", {{"sand", 1}}});
              mixes.push_back({book::MixId{3}, "top", 0, 0, "", {{"base", 1}}});
              mixes[0].parts.push_back({"base", 1});
            }),
            "planned");
  EXPECT_EQ(planned([](auto& i) { i.sowings[0].draws.clear(); }),
            "a sowing without a number of seeds");
  EXPECT_EQ(planned([](auto& i) { i.sowings[0].draws[0].seeds = -1; }),
            "a sowing of -1 seeds of cross 1/0");
  EXPECT_EQ(planned([](auto& i) { i.sowings[0].draws[0].seeds = 1'000'001; }),
            "a sowing of 1000001 seeds of cross 1/0");
  for (const double pace : {0.0, 101.0, no_number})
    EXPECT_TRUE(has(planned([&](auto& i) { i.sowings[0].pace = pace; }), "as long to come up"));
}

TEST(PlanRanges, DrawsOfGerminationAreChances) {
  EXPECT_EQ(planned([](auto& i) { i.sprouting.at(0).draws.at(0).pop_back(); }),
            "a draw of germination does not cover its trays");
  const std::string none = "a draw of germination is no probability";
  EXPECT_EQ(planned([](auto& i) { i.sprouting.at(0).draws.at(0).at(0) = -0.1; }), none);
  EXPECT_EQ(planned([](auto& i) { i.sprouting.at(0).draws.at(0).at(0) = 1.1; }), none);
  EXPECT_EQ(planned([](auto& i) { i.sprouting.at(0).draws.at(0).at(0) = no_number; }), none);
}

TEST(PlanRanges, SeedsOfASowingAreTheMeanOfItsDraws) {
  Sowing sowing;
  EXPECT_EQ(sowing.mean_seeds(), 0);
  sowing.draws = {{day("2027-01-01"), 10}, {day("2027-01-01"), 15}};
  EXPECT_EQ(sowing.mean_seeds(), 12.5);
}

// One plant in a season that is worth 60: each counts 1 / (1 + 0 / 61) = 1; of 62 plants each
// counts 1 / (1 + 61 / 61) = 0.5.
TEST(PlanRanges, PlantsOfOneSeasonCountLess) {
  EXPECT_EQ(equivalent(0, 0, 60).alive, 0);
  EXPECT_EQ(equivalent(1, 0, 60).alive, 1);
  EXPECT_EQ(equivalent(40, 22, 60).alive, 20);
  EXPECT_EQ(equivalent(40, 22, 60).died, 11);
  EXPECT_EQ(equivalent(40, 22, HUGE_VAL).alive, 40);
}

FloatersAsked fifty() {
  FloatersAsked asked;
  asked.seeds = 50;
  asked.filled_low = 4;
  asked.filled_middle = 8;
  asked.filled_high = 12;
  asked.plant_of_filled = {0.4, 0.8};
  asked.plant_of_filled_middle = 0.6;
  asked.worth = 20;
  asked.cost = 1;
  asked.known = FloatKnown::trusted;
  return asked;
}

TEST(PlanRanges, WhatCannotBeOfFloatersIsSaid) {
  const auto said = [](const std::function<void(FloatersAsked&)>& change) {
    auto asked = fifty();
    change(asked);
    const auto decision = decide_on_floaters(asked);
    return decision ? "decided" : decision.error().what;
  };
  EXPECT_EQ(said([](auto&) {}), "decided");
  EXPECT_EQ(said([](auto& a) { a.seeds = -1; }), "-1 floaters, 0 opened");
  EXPECT_EQ(said([](auto& a) { a.opened = -1; }), "50 floaters, -1 opened");
  EXPECT_EQ(said([](auto& a) { a.filled_low = -1; }), "-1 to 12 filled of 50 floaters");
  EXPECT_EQ(said([](auto& a) { a.filled_high = 7; }), "4 to 7 filled of 50 floaters");
  EXPECT_EQ(said([](auto& a) { a.keep_cost = -1; }), "a sown seed at 1, a kept one at -1");
  EXPECT_EQ(said([](auto& a) { a.plant_of_filled.low = -0.1; }),
            "a filled seed becomes a plant -0.1 to 0.8 times");
  EXPECT_EQ(said([](auto& a) { a.plant_of_filled_middle = 0.3; }),
            "a filled seed becomes a plant 0.4 to 0.8 times");
  EXPECT_EQ(said([](auto& a) { a.plant_of_filled_middle = 0.9; }),
            "a filled seed becomes a plant 0.4 to 0.8 times");
}

TEST(PlanRanges, FloatersAtTheEndsOfTheirAdvice) {
  auto none = fifty();
  none.seeds = 0;
  none.filled_low = none.filled_middle = none.filled_high = 0;
  EXPECT_EQ(decide_on_floaters(none)->why, "There are no floaters.");
  auto free = fifty();
  free.cost = 0; // any share pays
  EXPECT_EQ(decide_on_floaters(free)->advice, FloatersAdvice::sow);
  EXPECT_EQ(decide_on_floaters(free)->open_more, 50);
  auto never = fifty(); // a filled seed never becomes a plant
  never.plant_of_filled = {0, 0};
  never.plant_of_filled_middle = 0;
  EXPECT_EQ(decide_on_floaters(never)->break_even, 2);
  EXPECT_TRUE(has(decide_on_floaters(never)->why, "costs more than the plants would be worth"));
  // Of 4 floaters one filled is 25 %: to see it, all but one would have to be cut.
  auto few = fifty();
  few.seeds = 4;
  few.filled_low = 0;
  few.filled_middle = 1;
  few.filled_high = 2;
  few.assurance = 0.99;
  EXPECT_EQ(decide_on_floaters(few)->advice, FloatersAdvice::keep);
  EXPECT_TRUE(has(decide_on_floaters(few)->why, "opening more would leave too few"));
}

TEST(PlanRanges, OffersThatCannotBeAreNamed) {
  const auto ordered = [](const std::function<void(Offer&)>& change) {
    Offer offer{{}, "bark", "the mill", Form::bag, 70, 1, 900, 0, 7, 1, 25.0};
    change(offer);
    const auto list =
        order_list({{"bark", {70}, {}}}, {offer}, day("2026-03-01"), {day("2026-03-01")});
    return list ? fmt::format("{} packs", list->lines.at(0).packs) : list.error().what;
  };
  EXPECT_EQ(ordered([](auto&) {}), "1 packs");
  EXPECT_EQ(ordered([](auto& o) { o.expansion = 0.5; }),
            "'bark' of the mill has 70 litres, expanding 0.5 times");
  EXPECT_TRUE(has(ordered([](auto& o) { o.expansion = HUGE_VAL; }), "expanding inf times"));
  for (const std::function<void(Offer&)>& wrong :
       {std::function<void(Offer&)>([](Offer& o) { o.delivery_cents = -1; }),
        std::function<void(Offer&)>([](Offer& o) { o.least = 0; }),
        std::function<void(Offer&)>([](Offer& o) { o.lead_days = -1; }),
        std::function<void(Offer&)>([](Offer& o) { o.lead_days = 3651; })})
    EXPECT_TRUE(has(ordered(wrong), "has a price, least order or lead time that cannot be"));
  EXPECT_TRUE(has(ordered([](auto& o) { o.lead_days = 3650; }), "cannot be had in time"));
}

TEST(PlanRanges, WhatIsMissingIsNamedMonthByMonth) {
  Offer late{{}, "bark", "the mill", Form::bag, 70, 1, 900, 0, 300, 1, {}};
  const auto list = order_list({{"bark", {50, 0, 20}, {}}}, {late}, day("2026-03-01"),
                               {day("2026-03-01"), day("2026-04-01"), day("2026-05-01")});
  ASSERT_FALSE(list);
  EXPECT_EQ(list.error().what, "'bark' cannot be had in time: 50.0 L in March 2026, 20.0 L in May "
                               "2026 are missing");
}

TEST(PlanRanges, ConesNeedSeedsThatAreANumber) {
  EXPECT_EQ(cones_for(100, HUGE_VAL, 0.8, 0.9).error().what, "inf seeds a cone cannot be");
  EXPECT_EQ(cones_for(100, no_number, 0.8, 0.9).error().what, "nan seeds a cone cannot be");
}

class InPounds : public Language {
 public:
  [[nodiscard]] UnitSystem units() const override { return UnitSystem::us; }
};

// 1 m² is 10.7639 ft², 1 kg is 2.20462 lb, so 1 kg/m² is 0.204816 lb/ft² (NIST SP 811, B.8).
TEST(PlanRanges, AForecastIsReadInTheReadersUnits) {
  EXPECT_EQ(readers_unit(Shown::ready), "plants");
  EXPECT_EQ(readers_unit(Shown::part), "L");
  EXPECT_EQ(readers_unit(Shown::place_metres), "m²");
  EXPECT_EQ(readers_unit(Shown::place_load), "kg/m²");
  EXPECT_EQ(in_readers_units(Shown::load, 5), 5);
  const InPounds us;
  speak(&us);
  EXPECT_EQ(readers_unit(Shown::load), "lb/ft²");
  EXPECT_EQ(readers_unit(Shown::mix), "US gal");
  EXPECT_NEAR(in_readers_units(Shown::load, 1), 0.204816, 1e-6);
  EXPECT_NEAR(in_readers_units(Shown::unplaced_metres, 1), 10.763910, 1e-6);
  EXPECT_EQ(in_readers_units(Shown::into, 7), 7);
  speak(nullptr);
}

} // namespace
} // namespace coneline::plan
