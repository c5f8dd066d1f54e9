// SPDX-License-Identifier: GPL-3.0-or-later
// Placing: never an overload, pins kept, as few moves as can be, against every placing there is.
#include "core/plan/placing.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <set>

namespace coneline::plan {
namespace {

using book::Light;

constexpr book::PotId pot_20{1}; // 200 × 200 mm: 25 on a square metre
constexpr book::PotId pot_50{2}; // 500 × 500 mm: 4 on a square metre

book::Place bench(std::int64_t id, const std::string& name, double length_mm, double width_mm,
                  Light light = Light::sun) {
  return {book::PlaceId{id},
          Code::of(Kind::place, 17, id).value(),
          name,
          book::PlaceKind::bench,
          {},
          length_mm,
          width_mm,
          light,
          0};
}

/// Benches of a square metre each in the sun.
PlacingInput benches(int many, int months) {
  PlacingInput input;
  input.today = Date::parse("2026-11-20").value();
  input.months = months;
  auto& registers = input.registers;
  registers.taxa = {{book::TaxonId{1}, "Cycas revoluta", {}, {}, {}, {}, {}, {}}};
  registers.pots = {{pot_20, "small", 4, book::Shape::rectangular, 200, 200, 1, ""},
                    {pot_50, "large", 40, book::Shape::rectangular, 500, 500, 1, ""}};
  for (int id = 1; id <= many; ++id)
    registers.places.push_back(bench(id, "Bench " + std::to_string(id), 1000, 1000));
  return input;
}

Piece piece(int number, book::PotId pot, ByMonth containers, std::optional<int> place,
            const std::string& cross = "A × B") {
  return {Code::of(Kind::pot_group, 17, number).value(),
          cross,
          book::TaxonId{1},
          Light::sun,
          pot,
          place ? std::optional(book::PlaceId{*place}) : std::nullopt,
          std::move(containers)};
}

Placing placed(const PlacingInput& input) {
  auto placing = place_lots(input, {.seconds = 20, .go_on = {}});
  EXPECT_TRUE(placing) << placing.error().text();
  return placing.value_or(Placing{});
}

TEST(ContainersOnAPlace, AreWholeOnes) {
  const auto place = bench(1, "bench", 1100, 1000);
  const book::Pot large{pot_50, "large", 40, book::Shape::rectangular, 500, 500, 1, ""};
  EXPECT_EQ(containers_on(place, 1.1, large, 0, Pattern::square), 4);
  EXPECT_EQ(containers_on(place, 1.1, large, 100, Pattern::square), 2);
  // 10 × 10 ft with 6-inch pots: 400 square, 429 staggered (trade press arithmetic).
  const auto table = bench(2, "table", 3048, 3048);
  const book::Pot round{pot_20, "round", 2, book::Shape::round, 152.4, 152.4, 1, ""};
  EXPECT_EQ(containers_on(table, table.square_metres(), round, 0, Pattern::square), 400);
  EXPECT_EQ(containers_on(table, table.square_metres(), round, 0, Pattern::staggered), 429);
  // What its bays take is not offered twice.
  EXPECT_EQ(containers_on(table, table.square_metres() / 2, round, 0, Pattern::square), 200);
  const book::Pot tub{pot_50, "tub", 400, book::Shape::round, 4000, 4000, 1, ""};
  EXPECT_EQ(containers_on(table, table.square_metres(), tub, 0, Pattern::square), 0);
}

TEST(PlaceLots, LeaveWhatStandsWellWhereItIs) {
  auto input = benches(3, 6);
  input.pieces = {piece(1, pot_20, ByMonth(6, 20), 1), piece(2, pot_50, ByMonth(6, 3), 2)};
  const auto placing = placed(input);
  EXPECT_EQ(placing.moved, 0);
  EXPECT_TRUE(placing.moves.empty());
  EXPECT_TRUE(placing.no_room.empty());
  EXPECT_TRUE(placing.proven);
  EXPECT_NEAR(placing.taken.at(book::PlaceId{1})[5], 0.8, 1e-12);
  EXPECT_NEAR(placing.taken.at(book::PlaceId{2})[5], 0.75, 1e-12);
}

TEST(PlaceLots, MoveTheOneThatSavesTheOthers) {
  // Both grow on one bench; in March it is full. One move is enough.
  auto input = benches(2, 6);
  input.pieces = {piece(1, pot_20, {5, 5, 5, 5, 15, 15}, 1),
                  piece(2, pot_20, {8, 8, 8, 8, 15, 15}, 1)};
  const auto placing = placed(input);
  EXPECT_EQ(placing.moved, 1);
  ASSERT_EQ(placing.moves.size(), 1U);
  EXPECT_LE(placing.moves[0].month, 4U);
  EXPECT_EQ(placing.moves[0].to, book::PlaceId{2});
  EXPECT_TRUE(placing.no_room.empty());
}

TEST(PlaceLots, NameWhatFindsNoRoom) {
  auto input = benches(1, 2);
  input.pieces = {piece(1, pot_50, {4, 4}, 1), piece(2, pot_50, {0, 2}, {})};
  const auto placing = placed(input);
  ASSERT_EQ(placing.no_room.size(), 1U);
  EXPECT_EQ(placing.no_room[0].month, 1U);
  EXPECT_NEAR(placing.no_room[0].square_metres, 0.5, 1e-12);
  EXPECT_EQ(placing.no_room[0].pieces, (std::vector<std::size_t>{1}));
}

TEST(PlaceLots, RespectLightColdAndLoad) {
  auto input = benches(3, 1);
  input.registers.taxa[0].frost.value = book::Frost::none;
  input.registers.places[0].light = Light::shade;
  input.limits = {{book::PlaceId{2}, {}, book::Frost::light}};
  input.pieces = {piece(1, pot_20, {5}, {})};
  EXPECT_EQ(placed(input).placed[0].places[0], book::PlaceId{3});
  // 5 pots of 4 L at 0.9 kg a litre are 18 kg on a square metre.
  input.limits.push_back({book::PlaceId{3}, 17.9, book::Frost::none});
  EXPECT_FALSE(placed(input).placed[0].places[0]);
  input.limits.back().kilograms_a_square_metre = 18;
  EXPECT_EQ(placed(input).placed[0].places[0], book::PlaceId{3});
}

TEST(PlaceLots, KeepACrossTogether) {
  auto input = benches(2, 1);
  input.pieces = {piece(1, pot_20, {5}, 2, "C × D"), piece(2, pot_20, {5}, {}, "C × D"),
                  piece(3, pot_20, {5}, 1, "E × F")};
  EXPECT_EQ(placed(input).placed[1].places[0], book::PlaceId{2});
}

TEST(PlaceLots, KeepPinsOrSayWhyNot) {
  auto input = benches(2, 2);
  input.pieces = {piece(1, pot_50, {2, 2}, 1), piece(2, pot_50, {3, 3}, 1)};
  input.pins = {{input.pieces[1].code, book::PlaceId{1}}, {input.pieces[0].code, book::PlaceId{2}}};
  const auto placing = placed(input);
  EXPECT_EQ(placing.placed[1].places[1], book::PlaceId{1});
  EXPECT_EQ(placing.placed[0].places[0], book::PlaceId{2});
  input.pins.at(input.pieces[0].code) = book::PlaceId{1};
  const auto refused = place_lots(input, {});
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().what,
            "what is pinned to 'Bench 1' does not fit in November 2026: 0.25 m² are missing");
  EXPECT_NE(refused.error().remedy, "");
}

TEST(PlaceLots, NamePinsThatCannotBe) {
  auto input = benches(2, 1);
  input.pieces = {piece(1, pot_50, {2}, 1)};
  const auto why = [&] {
    const auto refused = place_lots(input, {});
    EXPECT_FALSE(refused);
    return refused ? std::string() : refused.error().what;
  };
  input.pins = {{input.pieces[0].code, book::PlaceId{2}}};
  input.registers.places[1].light = Light::shade;
  EXPECT_EQ(why(), "G1711F is pinned to 'Bench 2', where it cannot stand: 'Bench 2' is shade, it "
                   "needs sun");
  input.registers.places[1] = bench(2, "Bench 2", 0, 0);
  EXPECT_NE(why().find("has no size"), std::string::npos);
  input.registers.places[1] = bench(2, "Bench 2", 400, 4000);
  EXPECT_NE(why().find("'large' is larger than 'Bench 2'"), std::string::npos);
  input.pins.clear();
  input.months = 0;
  EXPECT_EQ(why(), "a placing of 0 months");
}

/// What a placing costs, reckoned from the outside.
double cost_of(const PlacingInput& input,
               const std::vector<std::vector<std::optional<book::PlaceId>>>& places) {
  double cost = 0;
  std::set<std::pair<std::string, book::PlaceId>> apart;
  for (std::size_t at = 0; at < input.pieces.size(); ++at) {
    const auto& one = input.pieces[at];
    auto before = one.place;
    for (std::size_t month = 0; month < one.containers.size(); ++month) {
      if (one.containers[month] <= 0) {
        before.reset();
        continue;
      }
      const auto now = places[at][month];
      if (!now)
        cost += 5 + 20 * one.containers[month] * input.registers.pot(one.pot).square_metres();
      else
        apart.emplace(one.cross, *now);
      if (before && now != before)
        cost += 1;
      before = now;
    }
  }
  return cost + 0.05 * static_cast<double>(apart.size());
}

/// The cheapest of every placing there is: each piece in each month on any bench or none.
double cheapest(const PlacingInput& input) {
  const auto months = static_cast<std::size_t>(input.months);
  const auto choices = input.registers.places.size() + 1;
  const auto cells = input.pieces.size() * months;
  double best = std::numeric_limits<double>::infinity();
  std::size_t all = 1;
  for (std::size_t cell = 0; cell < cells; ++cell)
    all *= choices;
  for (std::size_t nth = 0; nth < all; ++nth) {
    std::vector<std::vector<std::optional<book::PlaceId>>> places(
        input.pieces.size(), std::vector<std::optional<book::PlaceId>>(months));
    auto rest = nth;
    for (std::size_t cell = 0; cell < cells; ++cell, rest /= choices)
      if (rest % choices > 0)
        places[cell / months][cell % months] =
            book::PlaceId{static_cast<std::int64_t>(rest % choices)};
    bool fits = true;
    for (const auto& place : input.registers.places)
      for (std::size_t month = 0; month < months && fits; ++month) {
        double taken = 0;
        for (std::size_t at = 0; at < input.pieces.size(); ++at)
          if (places[at][month] == place.id)
            taken += input.pieces[at].containers[month] / (input.pieces[at].pot == pot_20 ? 25 : 4);
        fits = taken <= 1 + 1e-9;
      }
    if (fits)
      best = std::min(best, cost_of(input, places));
  }
  return best;
}

RC_GTEST_PROP(PlaceLots, AreAsGoodAsTheBestThereIs, ()) {
  auto input = benches(2, 2);
  const auto many = *rc::gen::inRange(1, 5);
  for (int number = 1; number <= many; ++number) {
    const bool large = *rc::gen::arbitrary<bool>();
    ByMonth containers;
    for (int month = 0; month < input.months; ++month)
      containers.push_back(*rc::gen::inRange(0, large ? 5 : 26));
    const auto place = *rc::gen::inRange(0, 3);
    input.pieces.push_back(piece(number, large ? pot_50 : pot_20, containers,
                                 place == 0 ? std::nullopt : std::optional(place),
                                 number % 2 == 0 ? "A × B" : "C × D"));
  }
  const auto placing = place_lots(input, {}).value();
  std::vector<std::vector<std::optional<book::PlaceId>>> places;
  for (const auto& one : placing.placed)
    places.push_back(one.places);
  for (const auto& [place, taken] : placing.taken)
    for (const auto share : taken)
      RC_ASSERT(share <= 1 + 1e-6);
  const double best = cheapest(input);
  RC_ASSERT(std::abs(cost_of(input, places) - best) < 1e-4);
  RC_ASSERT(std::abs(placing.cost - best) < 1e-4);
  RC_ASSERT(placing.bound <= best + 1e-4);
  RC_ASSERT(placing.proven);
}

TEST(PlaceLots, OfALargeNurserySayHowFarFromTheBest) {
  // 300 lots on 60 benches over 12 months, fuller each month: never an overload, and a sound bound.
  auto input = benches(60, 12);
  for (int number = 1; number <= 300; ++number) {
    ByMonth containers;
    for (int month = 0; month < 12; ++month)
      containers.push_back(2 + number % 4 + month * (number % 7 == 0 ? 0.3 : 0.05));
    input.pieces.push_back(
        piece(number, pot_20, containers, number % 60 + 1, "cross " + std::to_string(number % 9)));
  }
  const auto placing = place_lots(input, {.seconds = 3, .go_on = {}}).value();
  for (const auto& [place, taken] : placing.taken)
    for (const auto share : taken)
      EXPECT_LE(share, 1 + 1e-6);
  EXPECT_LE(placing.bound, placing.cost + 1e-6);
  EXPECT_TRUE(placing.no_room.empty());
}

} // namespace
} // namespace coneline::plan
