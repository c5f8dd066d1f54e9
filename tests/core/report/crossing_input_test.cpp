// SPDX-License-Identifier: GPL-3.0-or-later
// From the book to a choice of crosses: which cones and pollen there are, what a cone gives and
// what that rests on, and why something cannot be used.
#include "core/plan/crossing.h"
#include "core/report/crossing_report.h"
#include "tests/core/report/crossing_ground.h"

namespace coneline::report {
namespace {

using tests::day;
using Crossing = tests::CrossingGround;

TEST_F(Crossing, RefusesFemalesThatAreNone) {
  CrossingAsked asked;
  asked.females = {Code::of(Kind::plant, 17, 99).value()};
  EXPECT_NE(given(asked).error().text().find("is no plant of this book"), std::string::npos);
  asked.females = {first.father};
  EXPECT_NE(given(asked).error().text().find("(Father) is a male plant"), std::string::npos);
}

TEST_F(Crossing, TakesConesThatStandAndSaysWhyOthersAreLeftOut) {
  const auto fresh = cone_of(first.mother);
  const auto looked = cone_of(first.mother);
  look(looked, "2026-03-01", book::Scales::loose);
  look(looked, "2026-04-01", book::Scales::tight); // after the day asked about
  const auto taking = cone_of(first.mother);
  pass(taking, "2026-03-05", 0.5);
  const auto late = cone_of(first.mother);
  pass(late, "2026-02-01", 0.2); // 37 days before
  const auto closed = cone_of(first.mother);
  look(closed, "2026-03-02", book::Scales::closed);
  const auto closes = cone_of(first.mother);
  look(closes, "2026-03-20", book::Scales::closed); // not yet
  const auto unseen = cone_of(first.mother, "2026-03-11");
  const auto input = given({}).value();
  EXPECT_EQ(input.females.size(), 4U);
  EXPECT_EQ(female(input, fresh.code)->when, "not pollinated yet");
  EXPECT_EQ(female(input, looked.code)->when, "loose on 2026-03-01, not pollinated yet");
  EXPECT_EQ(female(input, taking.code)->when, "first pass 2026-03-05");
  EXPECT_EQ(female(input, closes.code)->when, "not pollinated yet");
  EXPECT_EQ(why(input, late.code), "its first pass was 37 days ago");
  EXPECT_EQ(why(input, closed.code), "it closed on 2026-03-02");
  EXPECT_EQ(female(input, unseen.code), nullptr);
  EXPECT_EQ(female(input, first.cone), nullptr); // harvested
  EXPECT_EQ(input.left_out.size(), 2U);
  // The middle of what two cones took: 0.5 of 0.2 and 0.5.
  EXPECT_DOUBLE_EQ(input.millilitres_a_cone, 0.5);
  const auto possible = plan::possible_crosses(input).value();
  EXPECT_NE(cross_meant(input, possible, late.code, first.pollen)
                .error()
                .text()
                .find("cannot be used: its first pass was 37 days ago"),
            std::string::npos);
  EXPECT_NE(cross_meant(input, possible, first.cone, first.pollen)
                .error()
                .text()
                .find("is no cone to choose from"),
            std::string::npos);
  const auto meant = cross_meant(input, possible, taking.code, first.pollen).value();
  EXPECT_EQ(input.females[possible[meant].female].code, taking.code);
  EXPECT_NE(cross_meant(input, possible, taking.code, first.mother)
                .error()
                .text()
                .find("is a female plant: it gives no pollen"),
            std::string::npos);
  EXPECT_NE(cross_meant(input, possible, taking.code, first.father)
                .error()
                .text()
                .find("is a plant, not a pollen lot"),
            std::string::npos);
}

TEST_F(Crossing, OfEveryFemaleTakesEachOnce) {
  const auto other = book.write([&](store::Writing& writing) -> Result<Code> {
                           auto plant = writing.registers().plants.front();
                           plant.id = {};
                           plant.code = writing.next_code(Kind::plant).value();
                           plant.name = "Sister";
                           return writing.put(plant).map([&](auto) { return plant.code; });
                         })
                         .value();
  const auto standing = cone_of(first.mother);
  CrossingAsked asked;
  asked.every_female = true;
  const auto input = given(asked).value();
  EXPECT_EQ(input.females.size(), 2U);
  EXPECT_NE(female(input, standing.code), nullptr); // the mother's cone, not the mother too
  EXPECT_EQ(female(input, other)->when, "expected");
}

// 500 seeds of the first cone. Of fertile scales, two seeds each are the most.
TEST_F(Crossing, SaysWhatAConeGivesAndWhatThatRestsOn) {
  const auto scaled = cone_of(first.mother);
  look(scaled, "2026-03-01", book::Scales::loose, 100);
  auto input = given({}).value();
  const auto& seeds = female(input, scaled.code)->seeds;
  EXPECT_DOUBLE_EQ(seeds->likely, 200);
  EXPECT_NE(seeds->source.find("100 fertile scales, two seeds each at most, 1 earlier cone of "
                               "Cycas revoluta"),
            std::string::npos)
      << seeds->source;
  EXPECT_FALSE(seeds->range); // one cone says nothing of a range
  // An earlier cone with counted scales, half set: 90 of 2 × 90. So is the next.
  const auto counted = cone_of(first.mother);
  look(counted, "2025-02-01", book::Scales::loose, 90);
  harvest(counted, "2025-12-01", 90);
  input = given({}).value();
  EXPECT_NEAR(female(input, scaled.code)->seeds->likely, 100, 1e-9);
  // From three cones of the plant on they alone tell, with a range.
  harvest(cone_of(first.mother), "2025-12-02", 300);
  input = given(of_mother()).value();
  const auto& own = female(input, first.mother)->seeds;
  EXPECT_NEAR(own->likely, std::cbrt(500.0 * 90 * 300), 1e-6); // the geometric mean
  EXPECT_NE(own->source.find("3 earlier cones of " + first.mother.text()), std::string::npos);
  ASSERT_TRUE(own->range);
  EXPECT_LT(own->range->low, own->likely);
  // Before the harvests nobody knows; what the grower says is taken then.
  auto asked = of_mother();
  asked.today = day("2025-02-01");
  EXPECT_FALSE(female(given(asked).value(), first.mother)->seeds);
  asked.seeds_a_cone = 250;
  EXPECT_DOUBLE_EQ(female(given(asked).value(), first.mother)->seeds->likely, 250);
}

// 40 of 500 were sown in each tray: 8 in 100.
TEST_F(Crossing, CountsTheShareThatIsSownAndWhatCameUp) {
  tray_over(20);
  auto asked = of_mother();
  asked.today = day("2026-05-01"); // sprouting until August by the route: 1 to 6 months
  auto input = given(asked).value();
  EXPECT_NEAR(female(input, first.mother)->seeds->likely, 40, 1e-9);
  EXPECT_NE(female(input, first.mother)->seeds->source.find("of which 8 % were sown"),
            std::string::npos);
  tray_over(24);
  asked.today = day("2026-12-01");
  EXPECT_TRUE(given(asked).value().germination.empty()); // two trays are too few
  tray_over(28);
  input = given(asked).value();
  ASSERT_EQ(input.germination.size(), 1U);
  const auto& share = input.germination.begin()->second;
  EXPECT_NEAR(share.likely, 0.6, 0.01); // 72 of 120
  EXPECT_LT(share.range->low, 0.6);
  EXPECT_GT(share.range->high, 0.6);
}

TEST_F(Crossing, OfTraysInWhichNothingCameUpTakesTheRoutesValue) {
  for (int i = 0; i < 3; ++i)
    tray_over(0);
  auto asked = of_mother();
  asked.today = day("2026-12-01");
  EXPECT_TRUE(given(asked).value().germination.empty());
}

TEST_F(Crossing, SaysWhyPollenCannotBeUsed) {
  const auto note = [&](book::Verb verb, std::string_view on, const book::PollenNote& detail) {
    book::Entry entry;
    entry.verb = verb;
    entry.date = day(on);
    entry.detail = detail;
    enter(entry);
  };
  const auto lot = registers().pollen_lots.front().id;
  note(book::Verb::test_pollen, "2026-02-01", {lot, {}, 100, 60, ""});
  note(book::Verb::test_pollen, "2026-04-01", {lot, {}, 100, 10, ""}); // after the day
  auto input = given(of_mother()).value();
  ASSERT_EQ(input.pollen.size(), 1U);
  EXPECT_DOUBLE_EQ(input.pollen[0].viability->likely, 0.6);
  EXPECT_DOUBLE_EQ(*input.pollen[0].millilitres, 3.5);
  EXPECT_DOUBLE_EQ(input.millilitres_a_cone, 1.5); // assumed, since no pass was measured
  auto asked = of_mother();
  asked.millilitres_a_cone = 2;
  asked.today = day("2025-01-01");
  input = given(asked).value();
  EXPECT_TRUE(input.pollen.empty());
  EXPECT_DOUBLE_EQ(input.millilitres_a_cone, 2);
  EXPECT_EQ(why(input, first.pollen),
            "it is collected on 2025-01-20, later than the day asked about");
  note(book::Verb::discard_pollen, "2026-03-01", {lot, 3.5, {}, {}, ""});
  EXPECT_EQ(why(given(of_mother()).value(), first.pollen),
            "it has run out: 3.5 ml collected, 3.5 ml used");
  note(book::Verb::discard_pollen, "2026-03-02", {lot, {}, {}, {}, ""});
  EXPECT_EQ(why(given(of_mother()).value(), first.pollen), "it is gone since 2026-03-02");
  auto father = *book::coded(registers().plants, first.father);
  father.sex = book::Sex::female;
  put(father);
  EXPECT_NE(why(given(of_mother()).value(), first.pollen).find("a female plant"),
            std::string::npos);
}

TEST_F(Crossing, AsksAboutRoomAsItIsTold) {
  const auto remarks = [&](const CrossingAsked& asked) {
    std::string all;
    const auto input = given(asked).value();
    for (const auto& remark : input.remarks)
      all += remark + "\n";
    return all;
  };
  auto asked = of_mother();
  EXPECT_TRUE(given(asked).value().room); // the bench: 3 × 1.2 m
  EXPECT_NE(remarks(asked).find("Room: what the measured places offer"), std::string::npos);
  asked.room = std::map<book::Light, double>{{book::Light::sun, 2}};
  EXPECT_DOUBLE_EQ(given(asked).value().room->at(book::Light::sun), 2);
  asked.any_room = true;
  EXPECT_FALSE(given(asked).value().room);
  EXPECT_NE(remarks(asked).find("Room on the benches is not asked about."), std::string::npos);
  auto bench = *book::coded(registers().places, first.bench);
  bench.length_mm = bench.width_mm = 0;
  put(bench);
  EXPECT_FALSE(given(of_mother()).value().room);
  EXPECT_NE(remarks(of_mother()).find("No place of the book is measured"), std::string::npos);
}

TEST_F(Crossing, IsWrittenWithNullForWhatNobodyKnows) {
  auto lot = registers().pollen_lots.front();
  lot.millilitres.reset();
  put(lot);
  put(book::Taxon{{}, "Unheard nowhere", {}, {}, {}, {}, {}, {}}); // no plant of it
  cone_of(first.mother, "2026-03-01");
  auto asked = of_mother();
  asked.any_room = true;
  const auto input = given(asked).value();
  const auto possible = plan::possible_crosses(input).value();
  for (const auto& [aim, word] :
       {std::pair(plan::Aim::most_plants, "plants"), std::pair(plan::Aim::least_kinship, "kinship"),
        std::pair(plan::Aim::mixture, "mixture")}) {
    plan::CrossingWish wish;
    wish.aim = aim;
    wish.forbidden = {1};
    const auto proposal = plan::propose(input, possible, wish).value();
    const auto json = crossing_json(input, possible, wish, proposal);
    EXPECT_EQ(json["aim"], word);
    EXPECT_EQ(json["kinship_weight"].is_null(), aim != plan::Aim::mixture);
    EXPECT_TRUE(json["room"].is_null());
    EXPECT_TRUE(json["pollen"][0]["millilitres_left"].is_null());
    EXPECT_TRUE(json["pollen"][0]["viability"].is_null());
    EXPECT_EQ(json["crosses"][1]["forbidden"], true);
    EXPECT_EQ(json["crosses"][0]["proposed"], true);
    EXPECT_EQ(json["taxa"].size(), 1U);
  }
  EXPECT_EQ(estimate_text(std::nullopt), "not known");
  EXPECT_EQ(estimate_text(plan::Estimate{31, std::nullopt, ""}), "likely 31");
  EXPECT_EQ(estimate_text(plan::Estimate{31, book::Range{12, 60}, ""}), "12–60, likely 31");
  plan::Proposal proposal;
  proposal.measure = "plants";
  proposal.sum = 90;
  proposal.bound = 100;
  proposal.gap = 0.11;
  EXPECT_EQ(bound_text(proposal), "plants 90, bound 100: at most 11 % from the best");
}

} // namespace
} // namespace coneline::report
