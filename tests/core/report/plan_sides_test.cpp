// SPDX-License-Identifier: GPL-3.0-or-later
// The season plan at its sides: targets that want more than there is, lots on no route, what a cone
// is taken to give.
#include "core/report/forecast_input.h"
#include "core/report/placing_input.h"
#include "core/report/sowings_input.h"
#include "core/report/targets.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using book::State;
using tests::day;

class PlanSides : public testing::Test {
 protected:
  PlanSides() { nursery.put_route(); }
  plan::ForecastInput input(std::string_view today = "2025-12-01", int months = 24) {
    return nursery.ask(
        [&](store::Reading& reading) { return forecast_input(reading, day(today), months, {}); });
  }
  static plan::Forecast forecast(const plan::ForecastInput& input) {
    return plan::forecast_of(input, {50, 1, 1, {}}).value();
  }
  book::PlaceId bench(double length, std::string_view name = "Bench",
                      book::Light light = book::Light::part_shade) {
    return nursery.write([&](store::Writing& writing) {
      return writing
          .put(book::Place{{},
                           writing.next_code(Kind::place).value(),
                           std::string(name),
                           book::PlaceKind::bench,
                           {},
                           length,
                           1000,
                           light,
                           1})
          .value();
    });
  }
  plan::Target target(std::int64_t plants, std::string_view by = "2027-06-01") {
    return {{}, "Old Sentinel × Blue Twin", nursery.taxon(), nursery.pot(), plants, day(by), 0.8};
  }
  ConeGives gives(std::string_view today) {
    return nursery.ask([&](store::Reading& reading) {
      return cone_gives(reading, reading.registers(), nursery.taxon(), day(today));
    });
  }

  tests::SmallNursery nursery;
  book::PlantId mother = nursery.plant("Old Sentinel", book::Sex::female);
};

TEST_F(PlanSides, AConeGivesTheGeometricMeanOfThoseBefore) {
  EXPECT_EQ(gives("2025-12-01").seeds, 0);
  nursery.harvest(nursery.cone(mother), "2025-02-01", 100);
  EXPECT_NEAR(gives("2025-12-01").seeds, 100, 1e-9);
  nursery.harvest(nursery.cone(mother), "2025-03-01", 400);
  nursery.cone(mother); // still on the plant
  const auto two = gives("2025-12-01");
  EXPECT_NEAR(two.seeds, 200, 1e-9);
  EXPECT_EQ(two.source, "the mean of 2 earlier cones of Cycas revoluta");
  EXPECT_NEAR(gives("2025-02-15").seeds, 100, 1e-9);
  const auto other = nursery.ask([&](store::Reading& reading) {
    return cone_gives(reading, reading.registers(), book::TaxonId{99}, day("2025-12-01"));
  });
  EXPECT_EQ(other.seeds, 0);
}

TEST_F(PlanSides, ATargetTellsSeedAndConesThatAreLacking) {
  const auto routeless = nursery.write([](store::Writing& writing) {
    return writing.put(book::Taxon{{}, "Zamia nowhere", {}, {}, {}, {}, {}, {}}).value();
  });
  const auto from = input();
  const plan::ForecastRuns runs{200, 1, 1, {}};
  const auto told = [&](const plan::Target& wanted, std::int64_t filled, double a_cone) {
    std::map<std::pair<std::string, book::TaxonId>, SeedAtHand> held;
    if (filled > 0)
      held[{wanted.cross, wanted.taxon}] = {filled, 1, 50};
    ConeGives cone;
    cone.seeds = a_cone;
    return told_of(from, wanted, held, cone, runs);
  };
  const auto lacking = told(target(20), 0, 30).value();
  ASSERT_TRUE(lacking.seed);
  EXPECT_GT(lacking.seed->seeds, 40); // at most half of them come up
  EXPECT_EQ(lacking.seed->lacking, lacking.seed->seeds);
  ASSERT_TRUE(lacking.seed->cones);
  EXPECT_GE(lacking.seed->cones->with_seed * 30, lacking.seed->lacking);
  EXPECT_GE(lacking.seed->cones->to_pollinate, lacking.seed->cones->with_seed);
  const auto some = told(target(20), 10, 0).value();
  EXPECT_EQ(some.seed->at_hand, 11); // floaters do not count
  EXPECT_EQ(some.seed->lacking, some.seed->seeds - 11);
  EXPECT_FALSE(some.seed->cones); // nobody knows what a cone gives
  EXPECT_EQ(told(target(20), 5000, 30)->seed->lacking, 0);
  EXPECT_FALSE(told(target(20, "2026-01-15"), 0, 30)->seed); // no sowing gets there in time
  EXPECT_FALSE(told(target(0), 0, 30));
  auto nowhere = target(5);
  nowhere.taxon = routeless;
  EXPECT_FALSE(told(nowhere, 0, 30));
}

/// A target as it stands in the list of all, its own plan left aside.
TargetTold wanting(const plan::Target& target, std::int64_t seeds, std::int64_t at_hand) {
  TargetTold told;
  told.plan.target = target;
  told.seed = SeedNeeded{seeds, at_hand, std::max<std::int64_t>(0, seeds - at_hand), {}};
  return told;
}

TEST_F(PlanSides, TargetsOfOneCrossShareItsSeed) {
  bench(100'000); // 100 m²: room is no matter here
  const auto from = input();
  const auto future = forecast(from);
  const auto conflict = [&](const std::vector<TargetTold>& targets) {
    return conflicts(targets, future, from.standing.registers);
  };
  const auto one = wanting(target(5), 60, 100);
  EXPECT_TRUE(conflict({one}).empty());
  const auto both = conflict({one, one});
  ASSERT_EQ(both.size(), 1U);
  EXPECT_EQ(both[0].of, Scarce::seed);
  EXPECT_EQ(both[0].targets, (std::vector<std::size_t>{0, 1}));
  EXPECT_EQ(both[0].told, "2 targets of 'Old Sentinel × Blue Twin' want 120 seeds; 100 are at "
                          "hand, 20 are lacking.");
  auto other = one;
  other.plan.target.cross = "Grey Widow × Blue Twin";
  EXPECT_TRUE(conflict({one, other}).empty());
  auto too_late = one;
  too_late.seed.reset();
  EXPECT_TRUE(conflict({one, too_late, wanting(target(5), 0, 0)}).empty());
}

// A pot of 110 mm takes 0.0121 m²; 100 of them 1.21 m².
TEST_F(PlanSides, TargetsOfAMonthShareItsRoom) {
  const auto room = [&](const TargetTold& told) {
    const auto from = input();
    return conflicts({told}, forecast(from), from.standing.registers);
  };
  const auto hundred = wanting(target(100), 0, 0);
  const auto nothing = room(hundred);
  ASSERT_EQ(nothing.size(), 1U); // no place at all
  EXPECT_EQ(nothing[0].of, Scarce::room);
  EXPECT_EQ(nothing[0].name, "part shade");
  EXPECT_NEAR(nothing[0].wanted, 1.21, 1e-9);
  EXPECT_EQ(nothing[0].month, day("2027-06-01"));
  bench(1000, "Small");
  const auto lacking = room(hundred);
  ASSERT_EQ(lacking.size(), 1U);
  EXPECT_NE(lacking[0].told.find("0.21"), std::string::npos) << lacking[0].told;
  bench(1000, "Sunny", book::Light::sun); // of no use to it
  EXPECT_EQ(room(hundred).size(), 1U);
  bench(1000, "Other");
  EXPECT_TRUE(room(hundred).empty());
  const auto many = [&](std::string_view by, book::TaxonId taxon, book::PotId pot) {
    auto told = wanting(target(10'000, by), 0, 0);
    told.plan.target.taxon = taxon;
    told.plan.target.pot = pot;
    return room(told);
  };
  EXPECT_EQ(many("2027-06-01", nursery.taxon(), nursery.pot()).size(), 1U);
  EXPECT_TRUE(many("2029-06-01", nursery.taxon(), nursery.pot()).empty());   // beyond the forecast
  EXPECT_TRUE(many("2027-06-01", book::TaxonId{99}, nursery.pot()).empty()); // on no route
  auto reached = wanting(target(100), 0, 0);
  reached.plan.here.middle = 200; // the line brings them all
  EXPECT_TRUE(room(reached).empty());
}

TEST_F(PlanSides, LotsOnNoRouteStayWhereTheyStand) {
  const auto place = bench(3000);
  const auto foreign = nursery.write([](store::Writing& writing) {
    book::Taxon taxon;
    taxon.name = "Zamia nowhere";
    taxon.light.value = book::Light::sun;
    return writing.put(taxon).value();
  });
  const auto bought = [&](Kind kind, std::int64_t count) {
    const auto origin = nursery.write([&](store::Writing& writing) {
      return writing
          .put(book::Purchase{
              {}, writing.next_code(Kind::purchase).value(), foreign, "", day("2025-01-01"), ""})
          .value();
    });
    if (kind == Kind::tray)
      return nursery.sow(nursery.harvest(origin, "2025-01-02", count), "2025-11-01", count);
    const auto group = nursery.lot(kind, origin);
    nursery.enter(book::Verb::buy_in, "2025-01-02", group,
                  {{group, State::bought_in, group, State::plant, count}});
    return group;
  };
  const auto group = bought(Kind::pot_group, 12);
  const auto tray = bought(Kind::tray, 30);
  const auto own =
      nursery.sow(nursery.harvest(nursery.cone(mother), "2025-02-01", 50), "2025-11-01", 40);
  nursery.write([&](store::Writing& writing) {
    for (const auto& [name, value] :
         {std::pair(book::figure::pot_gap, 20.0), std::pair(book::figure::staggered, 1.0)})
      if (!writing.put(book::Figure{name, value}))
        return false;
    return writing.put(book::Pin{own, place}).has_value();
  });
  const auto from = input("2025-12-01", 12);
  const auto future = forecast(from);
  const auto placing = [&](int months) {
    return nursery.ask([&](store::Reading& reading) {
      return placing_input(from, future, reading.plan_records(), lot_codes(reading), 0.9, months);
    });
  };
  const auto placed = placing(6);
  EXPECT_EQ(placed.months, 6);
  EXPECT_EQ(placing(99).months, static_cast<int>(future.months().size()));
  EXPECT_EQ(placed.gap_mm, 20);
  EXPECT_EQ(placed.pattern, plan::Pattern::staggered);
  EXPECT_EQ(placed.pins.at(nursery.lot_of(own).code), place);
  const auto piece = [&](book::LotId lot) -> const plan::Piece& {
    return *std::ranges::find(placed.pieces, nursery.lot_of(lot).code, &plan::Piece::code);
  };
  EXPECT_EQ(piece(group).containers, plan::ByMonth(6, 12)); // 12 pots of one plant, as they stand
  EXPECT_EQ(piece(group).light, book::Light::sun);          // its taxon's
  EXPECT_EQ(piece(tray).containers, plan::ByMonth(6, 1));
  EXPECT_EQ(piece(own).containers[0], 1);
  EXPECT_EQ(piece(own).light, book::Light::part_shade); // its route's
}

TEST_F(PlanSides, WithoutFiguresPotsStandInSquaresWithoutAGap) {
  const auto from = input("2025-12-01", 3);
  const auto placed = nursery.ask([&](store::Reading& reading) {
    return placing_input(from, forecast(from), reading.plan_records(), {}, 0.9, 3);
  });
  EXPECT_EQ(placed.gap_mm, 0);
  EXPECT_EQ(placed.pattern, plan::Pattern::square);
  EXPECT_TRUE(placed.pieces.empty());
}

TEST_F(PlanSides, SeedAndConesAtHandAreSownInThePlan) {
  nursery.cone(mother, "2025-06-01"); // still ripens
  const auto batch = nursery.harvest(nursery.cone(mother), "2025-02-01", 50);
  nursery.enter(book::Verb::move, "2025-02-02", batch,
                {{batch, State::unsorted, batch, State::judged_filled, 30},
                 {batch, State::unsorted, batch, State::judged_empty, 5}});
  const auto held = nursery.ask([](store::Reading& reading) {
    return seed_at_hand(reading, reading.registers(), day("2025-12-01"));
  });
  ASSERT_EQ(held.size(), 1U);
  EXPECT_EQ(held.begin()->second.judged_filled, 30);
  EXPECT_EQ(held.begin()->second.unsorted, 15);
  EXPECT_EQ(held.begin()->second.judged_empty, 5);
  const auto sown = [&](const SowingsWanted& wanted) {
    auto from = input();
    nursery.ask([&](store::Reading& reading) {
      add_sowings(from, reading, wanted);
      return true;
    });
    return from;
  };
  EXPECT_TRUE(sown({}).sowings.empty());
  const auto seed = sown({true, false}).sowings;
  ASSERT_EQ(seed.size(), 1U);
  EXPECT_EQ(seed[0].draws.at(0).seeds, 30);
  const auto cones = sown({false, true});
  ASSERT_EQ(cones.sowings.size(), 1U);
  EXPECT_EQ(cones.sowings[0].from, plan::SeedFrom::cone);
  const auto usual = [](const plan::ForecastInput& from) {
    return std::ranges::any_of(from.remarks, [](const auto& remark) {
      return remark.find("rests on common practice alone") != std::string::npos;
    });
  };
  EXPECT_TRUE(usual(cones)); // no sorted cone yet
  nursery.enter(book::Verb::move, "2025-02-03", batch,
                {{batch, State::unsorted, batch, State::judged_filled, 15}});
  EXPECT_FALSE(usual(sown({false, true})));
}

} // namespace
} // namespace coneline::report
