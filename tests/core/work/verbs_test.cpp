// SPDX-License-Identifier: GPL-3.0-or-later
// The verbs, one after the other along the line, and what each refuses.
#include "core/store/proof.h"
#include "core/work/clean.h"
#include "core/work/due.h"
#include "core/work/find_code.h"
#include "core/work/harvest.h"
#include "core/work/inspect.h"
#include "core/work/keep.h"
#include "core/work/leave.h"
#include "core/work/overview.h"
#include "core/work/pollinate.h"
#include "core/work/pot.h"
#include "core/work/recount.h"
#include "core/work/relocate.h"
#include "core/work/reverse.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using book::State;
using tests::day;

Count n(std::int64_t count) {
  return Count::sure(count);
}

class Verbs : public testing::Test {
 protected:
  Verbs() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  std::int64_t held(const Code& code, State state) {
    return book
        .read([&](store::Reading& reading) {
          for (const auto& balance : reading.balances_of(reading.lot(code).value().id))
            if (balance.account.state == state)
              return balance.count;
          return std::int64_t{0};
        })
        .value();
  }
  Code sown(std::int64_t seeds, std::string_view on = "2026-02-10") {
    auto done = sow(book, {first.batch,
                           State::unsorted,
                           n(seeds),
                           1,
                           "seed tray",
                           "gritty",
                           first.bench,
                           {day(on), "", ""}});
    EXPECT_TRUE(done) << done.error().text();
    return done->made.at(0);
  }
  void proven() {
    const auto proof = store::prove(book).value();
    EXPECT_TRUE(proof.holds()) << proof.faults.front();
  }
  template <class Verb>
  void refused(const Result<Verb>& result, std::string_view why) {
    ASSERT_FALSE(result);
    EXPECT_NE(result.error().text().find(why), std::string::npos) << result.error().text();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

// Common practice, no source: pollen goes in every second or third day for one to two weeks, until
// the cone tightens; about twelve months later the cone is ripe.
TEST_F(Verbs, PollinationPassesUntilTheConeTightensThenAYear) {
  Code cone = first.mother;
  for (const auto* on :
       {"2026-03-01", "2026-03-03", "2026-03-06", "2026-03-08", "2026-03-11", "2026-03-13"}) {
    const auto pass = pollinate(
        book, {cone, book::PollinationMethod::dry, {{first.pollen, 0.5}}, {day(on), "", ""}});
    ASSERT_TRUE(pass) << pass.error().text();
    if (!pass->made.empty())
      cone = pass->made.front();
  }
  EXPECT_EQ(cone.kind(), Kind::cone);
  refused(harvest(book, {cone, n(480), {day("2026-03-12"), "", ""}}),
          "pollinated on 2026-03-13, 1 days after");
  const auto due = [&](std::string_view on) {
    return book
        .read(
            [&](store::Reading& reading) { return due_on(reading, reading.registers(), day(on)); })
        .value();
  };
  const auto asks = [&](std::string_view on, DueKind kind) {
    return std::ranges::any_of(
        due(on), [&](const Due& each) { return each.code == cone && each.kind == kind; });
  };
  EXPECT_FALSE(asks("2026-03-14", DueKind::pollinate)) << "one day after a pass";
  EXPECT_TRUE(asks("2026-03-15", DueKind::pollinate)) << "two days after a pass";
  EXPECT_FALSE(asks("2026-04-15", DueKind::pollinate)) << "the cone is long closed";
  EXPECT_TRUE(asks("2027-03-01", DueKind::harvest)) << "a year later";
  const auto done = harvest(book, {cone, n(480), {day("2027-03-05"), "", ""}});
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_FALSE(done->cautions.empty());
  refused(
      pollinate(
          book,
          {cone, book::PollinationMethod::dry, {{first.pollen, {}}}, {day("2027-03-07"), "", ""}}),
      "was harvested on");
}

TEST_F(Verbs, AConeThatGaveNoSeedEndsWithTheReason) {
  const Noted noted{day("2026-03-01"), "", ""};
  const auto cone =
      pollinate(book, {first.mother, book::PollinationMethod::dry, {{first.pollen, 0.5}}, noted})
          ->made.at(0);
  const auto none = [&](std::string why) {
    return harvest(book, {cone, n(0), {day("2027-03-05"), "", std::move(why)}});
  };
  const auto line = [&] {
    return book
        .read([&](store::Reading& reading) {
          const auto lines = cone_lines(reading, reading.registers());
          return *std::ranges::find_if(
              lines, [&](const ConeLine& each) { return each.cone.code == cone; });
        })
        .value();
  };
  const auto due = [&] {
    return book
        .read([&](store::Reading& reading) {
          const auto all = due_on(reading, reading.registers(), day("2027-03-06"));
          return std::ranges::count(all, cone, &Due::code);
        })
        .value();
  };
  refused(none(""), "say in the note why");
  EXPECT_FALSE(line().harvested_on);
  EXPECT_EQ(due(), 1);
  const auto done = none("rotten");
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_EQ(done->told, cone.text() + " gave no seed: rotten");
  EXPECT_TRUE(done->made.empty());
  EXPECT_EQ(line().harvested_on, day("2027-03-05"));
  EXPECT_EQ(line().harvested, 0);
  EXPECT_EQ(due(), 0);
  refused(none("rotten"), "came off on 2027-03-05 and gave no seed");
  refused(harvest(book, {cone, n(9), {day("2027-03-06"), "", ""}}), "gave no seed");
  refused(
      pollinate(
          book,
          {cone, book::PollinationMethod::dry, {{first.pollen, {}}}, {day("2027-03-07"), "", ""}}),
      "was harvested on 2027-03-05");
  refused(harvest(book, {first.cone, n(0), {day("2026-02-02"), "", "rotten"}}),
          "was harvested on 2026-02-01 and gave seed");
  ASSERT_TRUE(reverse(book, {done->entries.at(0), "", ""}));
  EXPECT_FALSE(line().harvested_on);
  EXPECT_TRUE(harvest(book, {cone, n(9), {day("2027-03-06"), "", ""}}));
  proven();
}

TEST_F(Verbs, PollinateRefusesWhatCannotBe) {
  const Noted early{day("2025-01-19"), "", ""};
  refused(pollinate(book, {first.cone, book::PollinationMethod::dry, {{first.pollen, {}}}, early}),
          "1 days after this pollination");
  refused(pollinate(book, {first.father,
                           book::PollinationMethod::dry,
                           {{first.pollen, {}}},
                           {day("2026-01-01"), "", ""}}),
          "male");
  refused(
      pollinate(book, {first.cone, book::PollinationMethod::dry, {}, {day("2025-02-01"), "", ""}}),
      "without pollen");
  const auto unknown = pollinate(book, {first.cone,
                                        book::PollinationMethod::wet,
                                        {{std::nullopt, {}}, {first.pollen, 1.0}},
                                        {day("2025-02-01"), "", ""}});
  ASSERT_TRUE(unknown);
  const auto names =
      book.read([](store::Reading& reading) { return origin_names(reading, reading.registers()); })
          .value();
  EXPECT_EQ(names.begin()->second.name, "Mother × Father + unknown");
}

TEST_F(Verbs, TheWholeLine) {
  ASSERT_TRUE(clean(book, {first.batch, 3, n(12), {day("2026-02-03"), "", ""}}));
  ASSERT_TRUE(sort(book, {first.batch,
                          State::unsorted,
                          book::SeedTest::floating,
                          n(400),
                          n(88),
                          {day("2026-02-04"), "", ""}}));
  ASSERT_TRUE(
      open(book, {first.batch, State::judged_empty, n(10), n(1), {day("2026-02-04"), "", ""}}));
  const auto kept =
      keep(book, {first.batch, "refrigerator", 5.0, {}, {}, {}, {day("2026-02-05"), "", ""}});
  ASSERT_TRUE(kept) << kept.error().text();
  const auto trays = sow(book, {first.batch,
                                std::nullopt,
                                n(100),
                                3,
                                "seed tray",
                                "gritty",
                                first.bench,
                                {day("2026-03-01"), "", ""}});
  ASSERT_TRUE(trays) << trays.error().text();
  ASSERT_EQ(trays->made.size(), 3U);
  const auto tray = trays->made.front();
  EXPECT_EQ(held(tray, State::sown), 34);
  EXPECT_EQ(held(first.batch, State::judged_filled), 300);
  ASSERT_TRUE(inspect(book, {tray, n(6), n(0), n(0), {day("2026-05-01"), "", ""}}));
  ASSERT_TRUE(inspect(book, {tray, n(0), n(0), n(0), {day("2026-05-15"), "", ""}}));
  ASSERT_TRUE(inspect(book, {tray, n(0), n(8), n(2), {day("2026-06-15"), "", ""}}));
  EXPECT_EQ(held(tray, State::leaf), 8);
  EXPECT_EQ(held(tray, State::root), 0);
  EXPECT_EQ(held(tray, State::sown), 24);
  const auto potted = pot_up(
      book, {tray, {}, n(7), "1 L deep", "gritty", {}, first.bench, {day("2026-09-01"), "", ""}});
  ASSERT_TRUE(potted) << potted.error().text();
  const auto on = pot_up(
      book, {potted->made.front(), {}, {}, "10 L", "gritty", {}, {}, {day("2027-09-01"), "", ""}});
  ASSERT_TRUE(on) << on.error().text();
  ASSERT_TRUE(leave(
      book,
      {on->made.front(), WayOut::sold, {}, n(2), "A buyer", 4500, {day("2028-01-01"), "", ""}}));
  ASSERT_TRUE(leave(
      book,
      {on->made.front(), WayOut::planted_out, {}, n(4), "", {}, {day("2028-01-01"), "", ""}}));
  EXPECT_EQ(held(on->made.front(), State::plant), 1);
  const auto lot =
      book.read([&](store::Reading& reading) { return reading.lot(on->made.front()).value(); })
          .value();
  EXPECT_EQ(lot.judged, book::Judged::filled) << "what judged a seed stays with it";
  EXPECT_EQ(lot.judged_by, book::SeedTest::floating);
  proven();
}

TEST_F(Verbs, SowingTellsWhenItTookUnsortedSeedAndKnowsTheTestOfItsDay) {
  const auto sown_on = [&](std::string_view on, std::optional<State> from = {}) {
    return sow(book, {first.batch, from, n(20), 1, "seed tray", {}, {}, {day(on), "", ""}});
  };
  const std::string taken = "none was judged filled, so unsorted seed was taken";
  EXPECT_NE(sown_on("2026-02-02")->told.find(taken), std::string::npos);
  EXPECT_EQ(sown_on("2026-02-02", State::unsorted)->told.find(taken), std::string::npos);
  const auto sorted = [&](book::SeedTest test, std::string_view on) {
    ASSERT_TRUE(sort(book, {first.batch, State::unsorted, test, n(30), n(0), {day(on), "", ""}}));
  };
  sorted(book::SeedTest::floating, "2026-02-10");
  sorted(book::SeedTest::xray, "2026-03-10");
  const auto judged_by = [&](const Result<Done>& done) {
    return book
        .read([&](store::Reading& reading) {
          return reading.lot(done->made.at(0)).value().judged_by;
        })
        .value();
  };
  const auto early = sown_on("2026-02-20");
  EXPECT_EQ(early->told.find(taken), std::string::npos) << early->told;
  EXPECT_EQ(judged_by(early), book::SeedTest::floating) << "the other test was later";
  EXPECT_EQ(judged_by(sown_on("2026-03-11")), book::SeedTest::xray);
  proven();
}

TEST_F(Verbs, ChangedWaterIsToldAsThat) {
  ASSERT_TRUE(clean(book, {first.batch, 3, n(0), {day("2026-02-03"), "", ""}}));
  const auto done = change_water(book, {first.batch, {day("2026-02-04"), "", ""}});
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_EQ(done->told, "water of " + first.batch.text() + " changed");
  for (const auto& caution : done->cautions)
    EXPECT_EQ(caution.find("drill"), std::string::npos) << caution;
  const auto note = book.read([&](store::Reading& reading) {
                          return reading.entry(done->entries.at(0)).value().note;
                        })
                        .value();
  EXPECT_EQ(note, water_changed);
  refused(change_water(book, {first.bench, {day("2026-02-04"), "", ""}}), "not a batch");
}

TEST_F(Verbs, SowRefusesWhatIsNotThere) {
  const auto attempt = [&](std::int64_t seeds, int trays, std::string pot, std::string_view on) {
    return sow(
        book,
        {first.batch, State::unsorted, n(seeds), trays, std::move(pot), {}, {}, {day(on), "", ""}});
  };
  refused(attempt(160, 4, "seed tray", "2026-01-31"),
          "has 0 'unsorted' on 2026-01-31, and 160 are asked for: 160 too many");
  refused(attempt(501, 20, "seed tray", "2026-02-10"), "too many");
  refused(attempt(41, 1, "seed tray", "2026-02-10"), "1 too many");
  refused(attempt(10, 1, "bath tub", "2026-02-10"), "seed tray");
  refused(attempt(2, 3, "seed tray", "2026-02-10"), "leaves 1 of them empty");
  refused(attempt(2, 0, "seed tray", "2026-02-10"), "at least one");
  EXPECT_EQ(held(first.batch, State::unsorted), 500);
}

TEST_F(Verbs, ALookOnTheDayOfSowingSaysWhatBecomesOfIt) {
  const auto tray = sown(30); // on 2026-02-10
  const auto look = [&](std::int64_t roots, std::int64_t leaves, std::int64_t dead,
                        std::string_view on) {
    return inspect(book, {tray, n(roots), n(leaves), n(dead), {day(on), "", ""}})->told;
  };
  const std::string warned = "enter it from 2026-02-11 on";
  EXPECT_NE(look(2, 0, 0, "2026-02-10").find(warned), std::string::npos);
  EXPECT_NE(look(0, 1, 0, "2026-02-10").find(warned), std::string::npos);
  EXPECT_EQ(look(0, 0, 1, "2026-02-10"), "1 dead seed out in " + tray.text());
  EXPECT_EQ(look(2, 0, 0, "2026-02-11"), "2 new roots in " + tray.text());
}

TEST_F(Verbs, InspectRefusesWhatIsNotThere) {
  const auto tray = sown(30);
  refused(inspect(book, {tray, n(31), n(0), n(0), {day("2026-04-01"), "", ""}}), "1 too many");
  refused(inspect(book, {tray, n(20), n(31), n(0), {day("2026-04-01"), "", ""}}), "too many");
  refused(inspect(book, {tray, n(1), n(0), n(0), {day("2026-02-01"), "", ""}}),
          "was sown on 2026-02-10, 9 days after");
  refused(inspect(book, {first.batch, n(1), n(0), n(0), {day("2026-04-01"), "", ""}}),
          "is a batch, not a tray");
}

TEST_F(Verbs, MorePottedThanGerminatedIsRefused) {
  const auto tray = sown(30);
  ASSERT_TRUE(inspect(book, {tray, n(5), n(2), n(0), {day("2026-04-01"), "", ""}}));
  const auto pot = [&](std::optional<State> state, std::int64_t count, std::string_view on) {
    return pot_up(book, {tray, state, n(count), "1 L deep", {}, {}, {}, {day(on), "", ""}});
  };
  refused(pot({}, 6, "2026-05-01"),
          "has 5 to pot on 2026-05-01, and 6 are to be potted: 1 too many");
  refused(pot(State::leaf, 3, "2026-05-01"), "1 too many");
  refused(pot({}, 1, "2026-03-01"), "has 0 to pot");
  EXPECT_TRUE(pot({}, 5, "2026-05-01"));
  refused(pot_up(book, {tray, {}, {}, "1 L deep", {}, {}, {}, {day("2026-05-01"), "", ""}}),
          "nothing to pot");
}

TEST_F(Verbs, AGroupTakesOneConeOneJudgementOnePot) {
  const auto tray = sown(30);
  ASSERT_TRUE(sort(book, {first.batch,
                          State::unsorted,
                          book::SeedTest::floating,
                          n(100),
                          n(0),
                          {day("2026-02-11"), "", ""}}));
  const auto judged = sow(book, {first.batch,
                                 State::judged_filled,
                                 n(20),
                                 1,
                                 "seed tray",
                                 {},
                                 {},
                                 {day("2026-02-12"), "", ""}});
  ASSERT_TRUE(judged);
  for (const auto& each : {tray, judged->made.front()})
    ASSERT_TRUE(inspect(book, {each, n(5), n(0), n(0), {day("2026-04-01"), "", ""}}));
  const auto group =
      pot_up(book, {tray, {}, n(2), "1 L deep", {}, {}, {}, {day("2026-05-01"), "", ""}});
  ASSERT_TRUE(group);
  const auto into = group->made.front();
  EXPECT_TRUE(
      pot_up(book, {tray, {}, n(1), "1 L deep", {}, into, {}, {day("2026-05-02"), "", ""}}));
  EXPECT_EQ(held(into, State::plant), 3);
  refused(
      pot_up(
          book,
          {judged->made.front(), {}, n(1), "1 L deep", {}, into, {}, {day("2026-05-02"), "", ""}}),
      "judged");
  refused(pot_up(book, {tray, {}, n(1), "10 L", {}, into, {}, {day("2026-05-02"), "", ""}}),
          "not in '10 L'");
  refused(
      pot_up(book, {tray, {}, n(1), "1 L deep", "gritty", into, {}, {day("2026-05-02"), "", ""}}),
      into.text() + " has no mix in the book, and these come into 'gritty'");
}

TEST_F(Verbs, AGroupTakesOneMixAndOneTest) {
  const auto judged = [&](book::SeedTest test, std::string_view on) {
    EXPECT_TRUE(sort(book, {first.batch, State::unsorted, test, n(20), n(0), {day(on), "", ""}}));
    const auto tray =
        sow(book, {first.batch, {}, n(20), 1, "seed tray", {}, {}, {day(on), "", ""}})->made.at(0);
    EXPECT_TRUE(inspect(book, {tray, n(9), n(0), n(0), {day("2026-04-01"), "", ""}}));
    return tray;
  };
  const auto floated = judged(book::SeedTest::floating, "2026-02-11");
  const auto x_rayed = judged(book::SeedTest::xray, "2026-02-12");
  const auto pot = [&](const Code& tray, std::string mix, std::optional<Code> into) {
    return pot_up(book, {tray, {}, n(2), "1 L deep", mix, into, {}, {day("2026-05-01"), "", ""}});
  };
  ASSERT_TRUE(book.write([](store::Writing& writing) {
    return writing.put(book::Mix{{}, "fine", 0.1, 0.0, "test", {{"sand", 1}}});
  }));
  const auto group = pot(floated, "gritty", {})->made.at(0);
  refused(pot(floated, "fine", group), group.text() + " is in 'gritty', not in 'fine'");
  refused(pot(x_rayed, "gritty", group), group.text() + " holds seed judged by float");
  EXPECT_TRUE(pot(floated, "gritty", group));
}

TEST_F(Verbs, PottedPlantsStandWhereTheirSourceStoodUnlessToldOtherwise) {
  const auto tray = sown(30);
  const auto house = Code::of(Kind::place, 17, 1).value();
  ASSERT_TRUE(inspect(book, {tray, n(9), n(0), n(0), {day("2026-04-01"), "", ""}}));
  ASSERT_TRUE(relocate(book, {{tray}, house, {day("2026-08-01"), "", ""}}));
  const auto potted = [&](const Code& from, std::optional<Code> into, std::optional<Code> place,
                          std::string_view on) {
    const auto* pot = from.kind() == Kind::tray ? "1 L deep" : "10 L";
    return pot_up(book, {from, {}, n(2), pot, {}, into, place, {day(on), "", ""}});
  };
  const auto stands = [&](const Code& lot) {
    return book
        .read([&](store::Reading& reading) {
          return reading.registers().place(reading.places().at(reading.lot(lot).value().id)).name;
        })
        .value();
  };
  const auto group = potted(tray, {}, {}, "2026-06-01")->made.at(0);
  EXPECT_EQ(stands(group), "Bench") << "where the tray stood then";
  ASSERT_TRUE(potted(tray, group, {}, "2026-09-01"));
  EXPECT_EQ(stands(group), "Bench") << "a group is not moved by what is added";
  EXPECT_EQ(stands(potted(group, {}, {}, "2026-09-02")->made.at(0)), "Bench");
  EXPECT_EQ(stands(potted(tray, {}, house, "2026-09-03")->made.at(0)), "House");
  ASSERT_TRUE(potted(group, {}, {}, "2026-09-04"));
  refused(potted(group, {}, {}, "2026-09-05"), "has ended, nothing is left in this pot group");
  refused(pot_up(book, {group, {}, {}, "10 L", {}, {}, {}, {day("2026-09-05"), "", ""}}),
          "has ended, nothing is left in this pot group");
}

TEST_F(Verbs, OpenRefusesImpossibleCounts) {
  const Noted noted{day("2026-02-04"), "", ""};
  refused(open(book, {first.batch, State::unsorted, n(10), n(12), noted}), "2 too many");
  refused(open(book, {first.batch, State::unsorted, n(501), n(1), noted}), "1 too many");
  refused(open(book, {first.batch, State::unsorted, n(0), n(0), noted}), "no seed was opened");
  refused(
      sort(book, {first.batch, State::unsorted, book::SeedTest::floating, n(400), n(101), noted}),
      "1 too many");
  refused(sort(book, {first.batch, State::unsorted, book::SeedTest::cutting, n(4), n(1), noted}),
          "use 'open'");
}

TEST_F(Verbs, ARecountThatDiffersIsNotHidden) {
  const auto tray = sown(30);
  const auto missing = recount(book, {tray, {}, n(28), {day("2026-04-01"), "", ""}});
  ASSERT_TRUE(missing) << missing.error().text();
  EXPECT_NE(missing->told.find("2 missing, noted as unexplained"), std::string::npos)
      << missing->told;
  EXPECT_EQ(held(tray, State::unexplained), 2);
  const auto more = recount(book, {tray, {}, n(33), {day("2026-04-02"), "", ""}});
  ASSERT_TRUE(more);
  EXPECT_EQ(held(tray, State::unexplained), -3);
  EXPECT_NE(
      recount(book, {tray, {}, n(33), {day("2026-04-03"), "", ""}})->told.find("as the book says"),
      std::string::npos);
  proven();
}

TEST_F(Verbs, ReverseTakesBackOnceAndOnlyWhatHasNotGoneOn) {
  const auto done = sow(
      book,
      {first.batch, State::unsorted, n(30), 1, "seed tray", {}, {}, {day("2026-02-10"), "", ""}});
  const auto tray = done->made.front();
  const auto look = inspect(book, {tray, n(5), n(0), n(0), {day("2026-04-01"), "", ""}});
  refused(reverse(book, {done->entries.front(), "", ""}), "5");
  const auto in_the_way = reverse(book, {done->entries.front(), "", ""}).error();
  EXPECT_NE(
      in_the_way.remedy.find(fmt::format("is reversed as a whole. What took of it goes first, "
                                         "as far as it is in the way, the latest first: {}.",
                                         look->entries.front().value)),
      std::string::npos)
      << in_the_way.text();
  ASSERT_TRUE(reverse(book, {look->entries.front(), "me", "wrong tray"}));
  refused(reverse(book, {look->entries.front(), "", ""}), "reversed already");
  const auto back = reverse(book, {done->entries.front(), "", ""});
  ASSERT_TRUE(back) << back.error().text();
  refused(reverse(book, {back->entries.front(), "", ""}), "itself a reversal");
  refused(reverse(book, {{999}, "", ""}), "no entry 999");
  EXPECT_EQ(held(first.batch, State::unsorted), 500);
  refused(inspect(book, {tray, n(0), n(0), n(0), {day("2026-05-01"), "", ""}}),
          "its sowing was reversed");
  proven();
}

TEST_F(Verbs, ATrayStandsInTwoPlacesOverTime) {
  const auto tray = sown(30);
  const auto house = Code::of(Kind::place, 17, 1).value();
  ASSERT_TRUE(relocate(book, {{tray}, house, {day("2026-06-01"), "", ""}}));
  const auto at = [&](std::string_view on) {
    return book
        .read([&](store::Reading& reading) {
          return reading.registers()
              .place(reading.places(day(on)).at(reading.lot(tray).value().id))
              .name;
        })
        .value();
  };
  EXPECT_EQ(at("2026-05-31"), "Bench");
  EXPECT_EQ(at("2026-06-01"), "House");
  refused(
      relocate(book,
               {{tray, Code::of(Kind::tray, 17, 99).value()}, house, {day("2026-07-01"), "", ""}}),
      "there is no tray");
}

TEST_F(Verbs, AMoveIsOfALotThatIsThereAndTellsWhereItStandsNow) {
  const auto tray = sown(30);
  const auto house = Code::of(Kind::place, 17, 1).value();
  const auto move = [&](const Code& lot, const Code& to, std::string_view on) {
    return relocate(book, {{lot}, to, {day(on), "", ""}});
  };
  const auto entries = store::prove(book).value().entries;
  refused(move(tray, house, "2026-02-01"), "began on 2026-02-10, 9 days after 2026-02-01");
  EXPECT_EQ(store::prove(book).value().entries, entries);
  EXPECT_EQ(move(tray, house, "2026-06-01")->told, tray.text() + " now on House");
  EXPECT_EQ(move(tray, first.bench, "2026-05-01")->told,
            tray.text() + " on Bench from 2026-05-01; a later move has it on House now");
  ASSERT_TRUE(
      leave(book, {tray, WayOut::dead, State::sown, n(30), "", {}, {day("2026-07-01"), "", ""}}));
  refused(move(tray, first.bench, "2026-07-02"), "has ended");
  EXPECT_TRUE(move(tray, house, "2026-06-20")) << "it still stood there then";
  // What is found in it all the same is counted; in what never was, nothing is.
  EXPECT_TRUE(recount(book, {tray, State::sown, n(2), {day("2026-07-03"), "", ""}}));
  const auto wrong = sow(
      book,
      {first.batch, State::unsorted, n(20), 1, "seed tray", {}, {}, {day("2026-02-10"), "", ""}});
  refused(recount(book, {wrong->made.front(), State::sown, n(2), {day("2026-02-09"), "", ""}}),
          "began on 2026-02-10, 1 day after 2026-02-09");
  ASSERT_TRUE(reverse(book, {wrong->entries.front(), "", ""}));
  refused(recount(book, {wrong->made.front(), State::sown, n(2), {day("2026-03-01"), "", ""}}),
          "taken back");
  refused(move(wrong->made.front(), house, "2026-03-01"), "taken back");
  proven();
}

TEST_F(Verbs, WaysOutAskWhichOfSeveralStates) {
  const auto tray = sown(30);
  ASSERT_TRUE(inspect(book, {tray, n(5), n(2), n(0), {day("2026-04-01"), "", ""}}));
  const Noted noted{day("2026-04-02"), "", ""};
  refused(leave(book, {tray, WayOut::dead, {}, n(1), "", {}, noted}), "Say which is meant");
  refused(leave(book, {tray, WayOut::dead, State::leaf, n(3), "", {}, noted}), "1 too many");
  refused(leave(book, {tray, WayOut::planted_out, State::sown, n(3), "", {}, noted}),
          "cannot become 'planted out'");
  refused(leave(book, {tray, WayOut::sold, State::leaf, n(1), "", -5, noted}),
          "a price of -5 cents");
  EXPECT_TRUE(leave(book, {tray, WayOut::dead, State::leaf, n(2), "", {}, noted}));
}

TEST_F(Verbs, BoughtInPlantsBeginAtTheirPurchase) {
  const auto bought = buy_in(book, {"Cycas revoluta",
                                    "A nursery",
                                    n(12),
                                    "1 L deep",
                                    first.bench,
                                    {day("2026-02-01"), "", "said to be from seed"}});
  ASSERT_TRUE(bought) << bought.error().text();
  EXPECT_EQ(bought->made.front().kind(), Kind::pot_group);
  refused(buy_in(book, {"No such plant", "A nursery", n(12), {}, {}, {day("2026-02-01"), "", ""}}),
          "there is no taxon");
  refused(buy_in(book, {"Cycas revoluta", "A nursery", n(0), {}, {}, {day("2026-02-01"), "", ""}}),
          "nothing");
  proven();
}

TEST_F(Verbs, ATypedCodeWithAWrongCharacterOffersTheRightOne) {
  const auto tray = sown(30);
  auto wrong = tray.text();
  wrong[2] = '8';
  const auto found = book.read(
      [&](store::Reading& reading) { return find_code(reading, reading.registers(), wrong); });
  ASSERT_FALSE(found);
  EXPECT_EQ(found.error().remedy, fmt::format("Is {} meant?", tray.text()));
  const auto absent = Code::of(Kind::tray, 17, 77).value().text();
  EXPECT_FALSE(book.read(
      [&](store::Reading& reading) { return find_code(reading, reading.registers(), absent); }));
}

TEST_F(Verbs, KeptSeedComesUpWhenItMayHaveRipenedOn) {
  const auto kept =
      keep(book, {first.batch, "box of dry perlite", {}, {}, {}, {}, {day("2026-02-05"), "", ""}});
  ASSERT_TRUE(kept);
  const auto due = book.read([&](store::Reading& reading) {
                         return due_on(reading, reading.registers(), day("2026-08-01"));
                       })
                       .value();
  const auto sowing = std::ranges::find(due, DueKind::sow, &Due::kind);
  ASSERT_NE(sowing, due.end());
  EXPECT_EQ(sowing->from, day("2026-02-05"))
      << "0 months after a harvest on 2026-02-01, not before it was put by";
  EXPECT_EQ(sowing->to, day("2026-08-01"));
  refused(
      keep(book, {first.batch, "tin", {}, day("2026-01-01"), {}, {}, {day("2026-02-05"), "", ""}}),
      "35 days earlier");
}

} // namespace
} // namespace coneline::work
