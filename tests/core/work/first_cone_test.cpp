// SPDX-License-Identifier: GPL-3.0-or-later
// The first cone of an empty book: all of it is entered, or nothing.
#include "core/store/proof.h"
#include "core/work/cone_course.h"
#include "core/work/due.h"
#include "core/work/first_cone.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

Date day(std::string_view iso) {
  return Date::parse(iso).value();
}

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
