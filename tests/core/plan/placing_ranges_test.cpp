// SPDX-License-Identifier: GPL-3.0-or-later
// What cannot be placed, pins against the months of a lot, and plans that cannot be compared.
#include "core/plan/compared.h"
#include "core/plan/placing.h"
#include "core/plan/supposed.h"
#include "tests/core/plan/invented_lots.h"

#include <cmath>

namespace coneline::plan {
namespace {

using namespace coneline::tests;
using book::Light;

/// Two benches of the small plan: A in part shade, B in the sun. Pots of 3 L are 200 mm across.
PlacingInput benches(int months) {
  PlacingInput input;
  input.today = day("2026-11-20");
  input.months = months;
  input.registers = small_plan().registers;
  return input;
}

Piece piece(int number, Light light, book::PotId pot, ByMonth containers,
            std::optional<int> place = {}) {
  return {Code::of(Kind::pot_group, 17, number).value(),
          "A × B",
          cycas,
          light,
          pot,
          place ? std::optional(book::PlaceId{*place}) : std::nullopt,
          std::move(containers)};
}

std::string said(const PlacingInput& input, double seconds = 5) {
  const auto placing = place_lots(input, {.seconds = seconds, .go_on = {}});
  return placing ? "placed" : placing.error().what;
}

TEST(PlacingRanges, MonthsGapsAndSecondsHaveTheirRanges) {
  auto input = benches(1);
  EXPECT_EQ(said(input), "placed");
  input.months = 0;
  EXPECT_EQ(said(input), "a placing of 0 months");
  input.months = 61;
  EXPECT_EQ(said(input), "a placing of 61 months");
  input.months = 1;
  input.gap_mm = -1;
  EXPECT_EQ(said(input), "a gap of -1 mm between pots");
  input.gap_mm = std::nan("");
  EXPECT_EQ(said(input), "a gap of nan mm between pots");
  input.gap_mm = 0;
  EXPECT_EQ(said(input, 0), "0 seconds to place in");
}

TEST(PlacingRanges, WhatStandsTodayMustBeAbleToStandWhereItIsPinned) {
  auto input = benches(2);
  const auto lot = Code::of(Kind::pot_group, 17, 1).value();
  input.pins[lot] = book::PlaceId{1};
  input.pieces = {piece(1, Light::sun, three_litres, {5, 5}, 2)};
  const auto refused = lot.text() + " is pinned to 'bench A', where it cannot stand: ";
  EXPECT_EQ(said(input), refused + "'bench A' is part shade, it needs sun");
  // Nobody said where it stands, but it is there today.
  input.pieces = {piece(1, Light::sun, three_litres, {5, 5})};
  EXPECT_EQ(said(input), refused + "'bench A' is part shade, it needs sun");
  // It comes later, and never can.
  input.pieces = {piece(1, Light::sun, three_litres, {0, 5})};
  EXPECT_EQ(said(input), refused + "'bench A' is part shade, it needs sun");
  // It comes later into the sun, and stands today where it is pinned.
  input.pieces = {piece(1, Light::part_shade, three_litres, {5, 0}, 1),
                  piece(1, Light::sun, three_litres, {0, 5})};
  EXPECT_EQ(said(input), "placed");
  input.registers.places[0].length_mm = 0;
  EXPECT_EQ(said(input), refused + "'bench A' has no size of its own");
}

TEST(PlacingRanges, PinsToNothingAndPlacesOfNoClassAreRemarked) {
  auto input = benches(1);
  const auto lot = Code::of(Kind::pot_group, 17, 1).value();
  input.pins[lot] = book::PlaceId{1};
  input.pieces = {piece(1, Light::part_shade, three_litres, {0}),
                  piece(2, Light::shade, three_litres, {5})};
  const auto placing = place_lots(input, {.seconds = 5, .go_on = {}}).value();
  const auto remarks = fmt::format("{}", fmt::join(placing.remarks, "\n"));
  EXPECT_NE(remarks.find(lot.text() + " is pinned to 'bench A', but nothing of it will stand."),
            std::string::npos)
      << remarks;
  EXPECT_NE(remarks.find("No place of shade has a size. Measure one."), std::string::npos)
      << remarks;
}

const ForecastRuns few{.runs = 10, .seed = 3, .threads = 1, .go_on = {}};

TEST(ComparedRanges, PlansOfOtherMonthsAreNotCompared) {
  const auto present = invented_lots(6, 12);
  const auto longer = compare(present, invented_lots(6, 13), few);
  ASSERT_FALSE(longer);
  EXPECT_EQ(longer.error().what, "two plans of different months cannot be compared");
  EXPECT_EQ(longer.error().blame, Blame::program);
  auto later = present;
  later.standing.today = day("2026-12-01");
  EXPECT_FALSE(compare(present, later, few));
}

TEST(ComparedRanges, APlanThatCannotBeIsRefusedOnEitherSide) {
  const auto present = invented_lots(6, 12);
  auto spoilt = present;
  spoilt.assumed.settling = 1;
  EXPECT_EQ(compare(spoilt, present, few).error().what, "a settling of 1");
  EXPECT_EQ(compare(present, spoilt, few).error().what, "a settling of 1");
}

TEST(ComparedRanges, ItIsStoppedInTheFirstHalfOrTheSecondAndCountsBoth) {
  const auto present = invented_lots(6, 12);
  auto asked = few;
  std::vector<int> seen;
  asked.go_on = [&](int done) {
    seen.push_back(done);
    return true;
  };
  EXPECT_TRUE(compare(present, present, asked));
  ASSERT_FALSE(seen.empty());
  EXPECT_EQ(seen.front(), 0);
  EXPECT_GE(seen.back(), 5) << "what the second plan does is told as the second half";
  EXPECT_LE(seen.back(), 10);
  asked.go_on = [](int) { return false; };
  EXPECT_FALSE(compare(present, present, asked));
  asked.go_on = [](int done) { return done < 5; };
  EXPECT_FALSE(compare(present, present, asked));
}

TEST(ComparedRanges, AClassOfLightThatIsNewHasNoRoomInThePresentPlan) {
  const auto present = invented_lots(6, 12);
  const auto more =
      suppose(present, {PlaceMore{"cold frame", Light::shade, 2000, 1500}}).value().input;
  const auto found = compare(present, more, few).value();
  const auto shade =
      std::ranges::find(found.full, std::string(book::word(Light::shade)), &FullCompared::name);
  ASSERT_NE(shade, found.full.end());
  EXPECT_EQ(shade->offered_present, 0);
  EXPECT_EQ(shade->offered_supposed, 3);
  EXPECT_EQ(shade->over_present, std::vector<double>(12, 0.0));
}

} // namespace
} // namespace coneline::plan
