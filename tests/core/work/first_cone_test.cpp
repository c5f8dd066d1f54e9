// SPDX-License-Identifier: GPL-3.0-or-later
// The first cone of an empty book: all of it is entered, or nothing.
#include "core/store/proof.h"
#include "core/work/cone_course.h"
#include "core/work/due.h"
#include "core/work/first_cone.h"
#include "core/work/pollen.h"
#include "tests/core/day.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using tests::day;

class AFirstCone : public testing::Test {
 protected:
  AFirstCone() {
    wanted.plant = "Old Sentinel";
    wanted.taxon = "Cycas revoluta";
    wanted.seen = day("2026-06-01");
    wanted.scales = book::Scales::loose;
    wanted.today = day("2026-06-10");
  }

  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  ConeCourse only_cone() {
    return book
        .read([](store::Reading& reading) {
          return cone_courses(reading, reading.registers()).at(0);
        })
        .value();
  }
  void is_refused_whole() {
    EXPECT_FALSE(first_cone(book, wanted));
    EXPECT_TRUE(registers().plants.empty());
    EXPECT_TRUE(registers().taxa.empty());
    EXPECT_TRUE(registers().cones.empty());
    EXPECT_TRUE(registers().pollen_lots.empty());
    EXPECT_EQ(store::prove(book).value().entries, 0);
  }

  tests::Scratch scratch;
  store::Book book =
      store::Book::make(scratch.at("new.coneline"), {"Hill", 17, false, day("2026-01-01")}).value();
  FirstCone wanted;
};

TEST_F(AFirstCone, StandsWithItsPlantAndTheLookAtItsScales) {
  const auto done = first_cone(book, wanted).value();
  ASSERT_EQ(done.made.size(), 1U);
  const auto course = only_cone();
  EXPECT_EQ(course.line.cone.code, done.made[0]);
  EXPECT_EQ(course.line.cone.first_seen, day("2026-06-01"));
  ASSERT_EQ(course.looks.size(), 1U);
  EXPECT_EQ(course.looks[0].scales, book::Scales::loose);
  EXPECT_EQ(course.looks[0].date, day("2026-06-10"));
  EXPECT_TRUE(course.line.passes.empty());
  ASSERT_EQ(registers().plants.size(), 1U);
  EXPECT_EQ(registers().plants[0].sex, book::Sex::female);
  EXPECT_TRUE(store::prove(book).value().faults.empty());
}

TEST_F(AFirstCone, TakesPollenOfAMaleThatBecomesThePlantOfTheBook) {
  wanted.pass = {"Blue Knight", day("2026-06-04"), day("2026-06-08"), book::PollinationMethod::wet};
  ASSERT_TRUE(first_cone(book, wanted));
  ASSERT_EQ(registers().plants.size(), 2U);
  EXPECT_EQ(registers().plants[1].name, "Blue Knight");
  EXPECT_EQ(registers().plants[1].sex, book::Sex::male);
  ASSERT_EQ(registers().pollen_lots.size(), 1U);
  EXPECT_EQ(registers().pollen_lots[0].collected, day("2026-06-04"));
  EXPECT_EQ(only_cone().line.passes, std::vector<Date>{day("2026-06-08")});
  // The second pass is due two days after the first (common practice, no source).
  const auto due = book.read([&](store::Reading& reading) {
                         return due_on(reading, reading.registers(), day("2026-06-10"));
                       })
                       .value();
  EXPECT_TRUE(
      std::ranges::any_of(due, [](const Due& each) { return each.kind == DueKind::pollinate; }));
}

TEST_F(AFirstCone, TakesPollenOfAFatherNobodyKnows) {
  wanted.scales = book::Scales::closed;
  wanted.pass = {"", day("2026-06-08"), day("2026-06-08"), {}};
  ASSERT_TRUE(first_cone(book, wanted));
  EXPECT_TRUE(registers().pollen_lots.empty());
  EXPECT_EQ(only_cone().line.passes.size(), 1U);
  EXPECT_EQ(only_cone().closed, day("2026-06-10"));
}

TEST_F(AFirstCone, GuessesTheTaxonOfAMaleNobodyDescribedAndSaysSo) {
  wanted.pass = {"Blue Knight", day("2026-06-04"), day("2026-06-08"), {}};
  ASSERT_TRUE(first_cone(book, wanted));
  const auto plants = registers().plants;
  EXPECT_EQ(book::named(plants, "Old Sentinel")->taxon_certainty, book::Certainty::certain);
  EXPECT_EQ(book::named(plants, "Blue Knight")->taxon_certainty, book::Certainty::unsure);
}

TEST_F(AFirstCone, HasThePollensCollectionAmongItsEntriesSoThatItCanBeTakenBack) {
  wanted.pass = {"Blue Knight", day("2026-06-04"), day("2026-06-08"), {}};
  const auto done = first_cone(book, wanted).value();
  EXPECT_EQ(done.entries.size(), 3U); // collection, pass, look
  const auto collected = book.read([&](store::Reading& reading) {
                               return reading.entry(done.entries.front()).value();
                             })
                             .value();
  EXPECT_EQ(collected.verb, book::Verb::collect_pollen);
  EXPECT_EQ(collected.date, day("2026-06-04"));
  const auto lines =
      book.read([](store::Reading& reading) { return pollen_lines(reading, reading.registers()); })
          .value();
  ASSERT_EQ(lines.size(), 1U);
  EXPECT_TRUE(lines[0].there());
  EXPECT_FALSE(lines[0].collected) << "nobody measured it";
  EXPECT_EQ(lines[0].passes, 1);
  EXPECT_TRUE(store::prove(book).value().faults.empty());
}

TEST_F(AFirstCone, OfPlantsTheBookHasAlreadyMakesNoSecondRows) {
  wanted.pass = {"Blue Knight", day("2026-06-04"), day("2026-06-08"), {}};
  wanted.origin = "Hill nursery";
  ASSERT_TRUE(first_cone(book, wanted));
  wanted.origin = "Valley nursery";
  ASSERT_TRUE(first_cone(book, wanted));
  const auto now = registers();
  EXPECT_EQ(now.plants.size(), 2U);
  EXPECT_EQ(now.taxa.size(), 1U);
  ASSERT_EQ(now.cones.size(), 2U);
  EXPECT_EQ(now.cones[1].plant, now.plants[0].id);
  EXPECT_EQ(now.cones[1].note, "origin of the plant: Valley nursery");
  EXPECT_EQ(now.pollen_lots[1].plant, now.plants[1].id);
}

TEST_F(AFirstCone, OfAPlantTheBookHasAsAnotherTaxonOrSexIsRefused) {
  wanted.pass = {"Blue Knight", day("2026-06-04"), day("2026-06-08"), {}};
  ASSERT_TRUE(first_cone(book, wanted));
  wanted.taxon = "Cycas rumphii";
  const auto other = first_cone(book, wanted);
  ASSERT_FALSE(other);
  EXPECT_NE(other.error().what.find("is in the book as Cycas revoluta"), std::string::npos);
  wanted.taxon = "Cycas revoluta";
  wanted.plant = "Blue Knight";
  wanted.pass.reset();
  const auto male = first_cone(book, wanted);
  ASSERT_FALSE(male);
  EXPECT_NE(male.error().what.find("is a male plant"), std::string::npos);
  EXPECT_EQ(registers().cones.size(), 1U);
  EXPECT_EQ(registers().taxa.size(), 1U);
}

TEST_F(AFirstCone, IsRefusedWholeWhereOnePlantIsBothParents) {
  wanted.pass = {"Old Sentinel", day("2026-06-04"), day("2026-06-08"), {}};
  is_refused_whole();
}

TEST_F(AFirstCone, IsRefusedWholeOnADayAfterToday) {
  wanted.seen = day("2026-06-13");
  EXPECT_EQ(first_cone(book, wanted).error().what, "2026-06-13 is 3 days from now");
  is_refused_whole();
  wanted.seen = day("2026-06-01");
  wanted.pass = {"Blue Knight", day("2026-06-04"), day("2026-06-11"), {}};
  is_refused_whole();
  wanted.pass = {"", day("2026-06-11"), day("2026-06-11"), {}};
  EXPECT_EQ(first_cone(book, wanted).error().what, "2026-06-11 is 1 day from now");
  is_refused_whole();
}

TEST_F(AFirstCone, IsRefusedWholeWithoutATaxon) {
  wanted.taxon.clear();
  is_refused_whole();
}

TEST_F(AFirstCone, IsRefusedWholeWherePollenCameBeforeTheConeWasSeen) {
  wanted.pass = {"Blue Knight", day("2026-05-20"), day("2026-05-30"), {}};
  is_refused_whole();
}

TEST_F(AFirstCone, IsRefusedWholeWherePollenWasCollectedAfterItWasUsed) {
  wanted.pass = {"Blue Knight", day("2026-06-09"), day("2026-06-08"), {}};
  is_refused_whole();
}

} // namespace
} // namespace coneline::work
