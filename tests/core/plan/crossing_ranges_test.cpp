// SPDX-License-Identifier: GPL-3.0-or-later
// What a wish for crosses may ask for, and crosses of which no plants can be reckoned.
#include "core/plan/binary_program.h"
#include "core/plan/crossing.h"
#include "tests/core/plan/small_crossing.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <functional>

namespace coneline::plan {
namespace {

using tests::small_crossing;

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

bool has(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

TEST(CrossingRanges, AWishForCrossesStaysWithinItsRanges) {
  const auto said = [](const std::function<void(CrossingInput&, CrossingWish&)>& change) {
    auto input = small_crossing();
    CrossingWish wish;
    change(input, wish);
    const auto proposal = propose(input, possible_crosses(input).value(), wish);
    return proposal ? "proposed" : proposal.error().what;
  };
  EXPECT_EQ(said([](auto&, auto&) {}), "proposed");
  for (const double weight : {-0.1, 1.1, no_number})
    EXPECT_TRUE(has(said([&](auto&, auto& w) { w.kinship_weight = weight; }), "a weight of"));
  for (const double kinship : {-0.1, 1.1, no_number})
    EXPECT_TRUE(has(said([&](auto&, auto& w) { w.most_kinship = kinship; }), "a kinship of"));
  EXPECT_EQ(said([](auto&, auto& w) { w.crosses = 0; }), "0 crosses");
  EXPECT_EQ(said([](auto&, auto& w) {
              w.crosses = 1;
              w.pinned = {1, 4};
            }),
            "2 crosses are pinned and 1 asked for");
  // Nothing in sun or shade is free, and room below zero is none.
  for (const auto& room : {std::map<book::Light, double>{}, {{book::Light::part_shade, -1.0}}})
    EXPECT_TRUE(has(said([&](auto& i, auto&) { i.room = room; }),
                    "of part shade are needed and 0.00 m² are free"));
  for (const auto aim : {Aim::most_plants, Aim::least_kinship, Aim::mixture})
    EXPECT_TRUE(has(said([&](auto& i, auto& w) {
                      w.aim = aim;
                      i.millilitres_a_cone = 11;
                    }),
                    "11 ml of pollen are needed and 10 ml are left"));
  EXPECT_TRUE(has(said([](auto&, auto& w) {
                    for (std::size_t at = 0; at < 9; ++at)
                      w.forbidden.push_back(at);
                  }),
                  "none of the 9 possible crosses may be proposed"));
}

TEST(CrossingRanges, WithoutSeedOrRouteNoPlantsAreReckonedAndThatIsSaid) {
  auto input = small_crossing();
  input.females[0].seeds.reset();
  std::erase_if(input.registers.routes,
                [](const book::Route& route) { return route.taxon == book::TaxonId{2}; });
  const auto crosses = possible_crosses(input).value();
  EXPECT_FALSE(crosses[0].plants);
  EXPECT_TRUE(crosses[3].plants);
  EXPECT_FALSE(crosses[8].plants);
  const auto remarks = [&](std::size_t at) {
    return fmt::format("{}", fmt::join(crosses[at].remarks, "; "));
  };
  EXPECT_TRUE(has(remarks(0), "no seed of a cone of its taxon was ever counted"));
  EXPECT_TRUE(has(remarks(8), "Dioon edule has no route"));
  EXPECT_EQ(why_not(crosses[8], {}), "no plants can be reckoned for it");
  const auto nothing = product({{"a", {0, book::Range{0, 1}, ""}}, {"b", {5, {}, ""}}});
  EXPECT_EQ(nothing.likely, 0);
  EXPECT_FALSE(nothing.range);
  EXPECT_EQ(nothing.source, "without the range of a, b");
}

TEST(CrossingRanges, NothingToChooseFromIsAChoiceWhereTheLimitsAllowIt) {
  BinaryProgram program;
  EXPECT_TRUE(choose(program).value()->chosen.empty());
  program.limits.push_back({{}, 0, 1});
  EXPECT_TRUE(choose(program).value()->proven);
  program.limits.back().low = 1;
  EXPECT_FALSE(choose(program).value());
  program.limits.back() = {{}, -2, -1};
  EXPECT_FALSE(choose(program).value());
  BinaryProgram both;
  both.values = {1, 1};
  both.kept = both.out = {1};
  EXPECT_FALSE(choose(both).value());
}

TEST(CrossingRanges, ThatNoneFitsIsToldOtherwiseThanThatNoneWasFoundInTheTime) {
  BinaryProgram odd; // even numbers never make an odd one
  odd.values = {1, 1, 1};
  odd.limits = {{{{0, 2}, {1, 2}, {2, 2}}, 3, 3}};
  EXPECT_FALSE(choose(odd).value());
  // Sums that have to be met exactly, hard for branch and cut: the market split of Cornuéjols and
  // Dawande (1998), from memory; the numbers are drawn here.
  constexpr std::size_t things = 50;
  BinaryProgram split;
  split.values.assign(things, 1);
  std::uint32_t drawn = 7;
  for (int sum = 0; sum < 6; ++sum) {
    BinaryProgram::Limit limit;
    int all = 0;
    for (std::size_t thing = 0; thing < things; ++thing) {
      drawn = drawn * 1'103'515'245 + 12'345;
      const int takes = static_cast<int>((drawn >> 16) % 100);
      all += takes;
      limit.terms.emplace_back(thing, takes);
    }
    limit.low = limit.high = all / 2;
    split.limits.push_back(limit);
  }
  const auto none = choose(split, 0.05);
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error(), none_found_within(0.05));

  auto input = small_crossing();
  CrossingWish wish;
  for (const auto aim : {Aim::most_plants, Aim::least_kinship, Aim::mixture}) {
    wish.aim = aim;
    wish.seconds = 0;
    const auto late = propose(input, possible_crosses(input).value(), wish);
    ASSERT_FALSE(late);
    EXPECT_EQ(late.error(), none_found_within(0));
    wish.seconds = 10;
    EXPECT_TRUE(propose(input, possible_crosses(input).value(), wish));
  }
  input.millilitres_a_cone = 11; // and where none fits
  const auto too_little = propose(input, possible_crosses(input).value(), wish);
  ASSERT_FALSE(too_little);
  EXPECT_TRUE(has(too_little.error().what, "no cross fits within the pollen and the room"));
}

} // namespace
} // namespace coneline::plan
