// SPDX-License-Identifier: GPL-3.0-or-later
// Placing: never an overload, pins kept, as few moves as can be, against every placing there is.
#include "core/plan/placing.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <limits>
#include <map>
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
  // Three of 500 mm take two rows of two.
  EXPECT_NEAR(placing.taken.at(book::PlaceId{2})[5], 1, 1e-12);
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
            "what is pinned to 'Bench 1' does not fit in November 2026: 0.50 m² are missing");
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
  EXPECT_EQ(why(),
            input.pieces[0].code.text() +
                " is pinned to 'Bench 2', where it cannot stand: 'Bench 2' is shade, it needs sun");
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
        double small = 0;
        double large = 0;
        for (std::size_t at = 0; at < input.pieces.size(); ++at)
          if (places[at][month] == place.id)
            (input.pieces[at].pot == pot_20 ? small : large) += input.pieces[at].containers[month];
        fits = 200 * std::ceil(small / 5) + 500 * std::ceil(large / 2) <= 1000;
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

/// Rows of a bench reckoned from the outside: mm of its length that its pots take.
double length_taken(const PlacingInput& input, const Placing& placing, const book::Place& place,
                    std::size_t month) {
  std::map<book::PotId, double> pots;
  for (const auto& one : placing.placed)
    if (one.places[month] == place.id)
      pots[input.pieces[one.piece].pot] += input.pieces[one.piece].containers[month];
  double length = -input.gap_mm;
  for (const auto& [id, count] : pots) {
    const auto& pot = input.registers.pot(id);
    const double side = pot.length_mm + input.gap_mm;
    const double in_a_row = std::floor((place.width_mm + input.gap_mm) / side + 1e-9);
    const double rows = std::ceil(count / in_a_row - 1e-6);
    const bool staggered =
        input.pattern == Pattern::staggered && pot.shape == book::Shape::round && rows > 0;
    // Every other row may hold one less: never better than all rows being full.
    length += staggered ? side + (rows - 1) * side * std::sqrt(3.0) / 2 : rows * side;
  }
  return length;
}

RC_GTEST_PROP(PlaceLots, NeverOverloadKeepPinsAndTellASoundBound, ()) {
  auto input = benches(*rc::gen::inRange(1, 6), *rc::gen::inRange(1, 7));
  input.gap_mm = *rc::gen::inRange(0, 60);
  input.pattern = *rc::gen::element(Pattern::square, Pattern::staggered);
  input.registers.pots[0].shape = book::Shape::round;
  for (auto& place : input.registers.places) {
    place.length_mm = *rc::gen::inRange(900, 3000);
    place.width_mm = *rc::gen::inRange(500, 901);
    if (*rc::gen::inRange(0, 3) == 0)
      input.limits.push_back({place.id, *rc::gen::inRange(20, 120) * 1.0, book::Frost::not_known});
  }
  const auto last = static_cast<int>(input.registers.places.size());
  const auto many = *rc::gen::inRange(1, 12);
  for (int number = 1; number <= many; ++number) {
    const bool large = *rc::gen::inRange(0, 3) == 0;
    ByMonth containers;
    for (int month = 0; month < input.months; ++month)
      containers.push_back(*rc::gen::inRange(0, large ? 4 : 20) * 0.75);
    const auto place = *rc::gen::inRange(0, last + 1);
    input.pieces.push_back(piece(number, large ? pot_50 : pot_20, containers,
                                 place == 0 ? std::nullopt : std::optional(place),
                                 "cross " + std::to_string(number % 3)));
    if (*rc::gen::inRange(0, 8) == 0)
      input.pins[input.pieces.back().code] = book::PlaceId{*rc::gen::inRange(1, last + 1)};
  }
  const auto placing = place_lots(input, {.seconds = 0.2, .go_on = {}});
  if (!placing) { // then it is the pins
    RC_ASSERT(!input.pins.empty());
    RC_ASSERT(placing.error().what.find("pinned") != std::string::npos);
    RC_ASSERT(!placing.error().remedy.empty());
    return;
  }
  for (const auto& place : input.registers.places)
    for (std::size_t month = 0; month < placing->months.size(); ++month) {
      RC_ASSERT(length_taken(input, *placing, place, month) <= place.length_mm + 1e-6);
      double kilograms = 0;
      for (const auto& one : placing->placed)
        if (one.places[month] == place.id)
          kilograms += input.pieces[one.piece].containers[month] * 0.9 *
                       input.registers.pot(input.pieces[one.piece].pot).litres;
      for (const auto& limit : input.limits)
        RC_ASSERT(limit.place != place.id ||
                  kilograms <= *limit.kilograms_a_square_metre * place.square_metres() + 1e-3);
    }
  std::vector<std::vector<std::optional<book::PlaceId>>> places;
  for (const auto& one : placing->placed) {
    places.push_back(one.places);
    const auto& of = input.pieces[one.piece];
    for (std::size_t month = 0; month < placing->months.size(); ++month)
      if (const auto pin = input.pins.find(of.code);
          pin != input.pins.end() && of.containers[month] > 0)
        RC_ASSERT(one.places[month] == pin->second);
  }
  RC_ASSERT(std::abs(placing->cost - cost_of(input, places)) < 1e-6);
  RC_ASSERT(placing->bound <= placing->cost + 1e-6);
  RC_ASSERT(placing->moves_bound <= placing->moved);
}

TEST(PlaceLots, NameAPlaceOfNoSizeAndAPotLargerThanTheBench) {
  auto input = benches(2, 1);
  input.registers.places[1].length_mm = 0;
  input.registers.pots[1].length_mm = input.registers.pots[1].width_mm = 1200;
  input.pieces = {piece(1, pot_20, {2}, 2), piece(2, pot_50, {1}, 1)};
  const auto placing = placed(input);
  ASSERT_EQ(placing.remarks.size(), 2U);
  EXPECT_NE(placing.remarks[0].find("'Bench 2' has no size"), std::string::npos);
  EXPECT_NE(placing.remarks[1].find("'large' is larger than every place of sun"),
            std::string::npos);
  EXPECT_EQ(placing.placed[0].places[0], book::PlaceId{1});
  ASSERT_EQ(placing.no_room.size(), 1U);
  EXPECT_NEAR(placing.no_room[0].square_metres, 1.44, 1e-12);
}

TEST(PlaceLots, StopWhenTold) {
  auto input = benches(2, 2);
  input.pieces = {piece(1, pot_50, {2, 2}, 1), piece(2, pot_50, {3, 3}, 1)};
  const auto placing = place_lots(input, {.seconds = 20, .go_on = [] { return false; }}).value();
  EXPECT_LE(placing.bound, placing.cost);
  EXPECT_TRUE(placing.no_room.empty());
}

/// 300 lots on 60 benches of three light classes over 12 months, each bench filled `full` of its
/// length today; the lots then grow, are potted on and go.
PlacingInput large_nursery(double full) {
  auto input = benches(60, 12);
  for (auto& place : input.registers.places) {
    place.light = place.id.value % 3 == 0   ? Light::sun
                  : place.id.value % 3 == 1 ? Light::part_shade
                                            : Light::shade;
    place.length_mm = 4000;
  }
  unsigned state = 12345; // one's own numbers: the same on every computer
  const auto between = [&state](int low, int high) {
    state = state * 1664525U + 1013904223U;
    return low + static_cast<int>((state >> 8U) % static_cast<unsigned>(high - low + 1));
  };
  std::map<int, double> length;
  for (int number = 1; number <= 300; ++number) {
    const int place = number % 60 + 1;
    const bool large = number % 5 == 0;
    const int stand = large ? between(1, 6) : between(5, 30);
    const double takes = large ? std::ceil(stand / 2.0) * 500 : std::ceil(stand / 5.0) * 200;
    const bool here = length[place] + takes <= 4000 * full;
    const int goes = between(3, 20);
    const int comes = here ? 0 : between(1, 8);
    ByMonth containers;
    for (int month = 0; month < 12; ++month)
      containers.push_back(
          month < comes || month > comes + goes ? 0 : stand + (number % 4 == 0 ? month / 3 : 0));
    length[place] += here ? takes : 0;
    input.pieces.push_back(piece(number, large ? pot_50 : pot_20, containers,
                                 here ? std::optional(place) : std::nullopt,
                                 "cross " + std::to_string(number % 23)));
    input.pieces.back().light = input.registers.places[static_cast<std::size_t>(place) - 1].light;
  }
  return input;
}

TEST(PlaceLots, OfALargeNurserySayHowFarFromTheBest) {
  for (const double full : {0.5, 0.8, 1.0}) {
    const auto input = large_nursery(full);
    const auto began = std::chrono::steady_clock::now();
    const auto placing = place_lots(input, {.seconds = 5, .go_on = {}}).value();
    const double seconds =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    for (const auto& place : input.registers.places)
      for (std::size_t month = 0; month < 12; ++month)
        ASSERT_LE(length_taken(input, placing, place, month), place.length_mm + 1e-6);
    EXPECT_LE(placing.bound, placing.cost + 1e-6);
    EXPECT_LE(placing.moves_bound, placing.moved);
    double missing = 0;
    for (const auto& one : placing.no_room)
      missing += one.square_metres;
    std::printf("%3.0f %% full: %d moves, at least %d; %.2f m² months without a place; cost %.2f, "
                "at least %.2f; %.1f s\n",
                100 * full, placing.moved, placing.moves_bound, missing, placing.cost,
                placing.bound, seconds);
  }
}

} // namespace
} // namespace coneline::plan
