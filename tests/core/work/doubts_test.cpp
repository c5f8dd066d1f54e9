// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/cone_course.h"
#include "core/work/doubts.h"
#include "core/work/pollinate.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using tests::day;

class Doubts : public testing::Test {
 protected:
  std::vector<std::string> of(book::EntryId id, std::string_view today = "2026-01-01") {
    return doubts(nursery.book(), {{id}, {}, "", {}}, day(today));
  }
  book::EntryId last() {
    return nursery.ask([](store::Reading& reading) { return reading.last_entries(1).front().id; });
  }

  tests::SmallNursery nursery;
  book::ConeId cone = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
};

TEST_F(Doubts, AreTwoHarvestsOfOneDayThatSayTheSame) {
  nursery.harvest(cone, "2025-03-01", 260);
  const auto first = last();
  EXPECT_TRUE(of(first).empty());
  nursery.harvest(cone, "2025-03-01", 260);
  const auto again = of(last());
  ASSERT_EQ(again.size(), 1U);
  EXPECT_NE(again[0].find(fmt::format("Entry {} of the same day", first.value)), std::string::npos)
      << again[0];
  // In parts, on another day, or of another cone it is no slip.
  nursery.harvest(cone, "2025-03-01", 12);
  EXPECT_TRUE(of(last()).empty());
  nursery.harvest(cone, "2025-03-02", 260);
  EXPECT_TRUE(of(last()).empty());
  nursery.harvest(nursery.cone(nursery.plant("Tall Piet", book::Sex::female)), "2025-03-01", 260);
  EXPECT_TRUE(of(last()).empty());
}

TEST_F(Doubts, AreTwoLooksOfOneDayUntilOneIsReversed) {
  const auto tray = nursery.sow(nursery.harvest(cone, "2025-03-01", 60), "2025-04-01", 40);
  const auto first = nursery.inspect(tray, "2025-06-01", 5);
  const auto second = nursery.inspect(tray, "2025-06-01", 5);
  EXPECT_EQ(of(second).size(), 1U);
  nursery.reverse(first);
  EXPECT_TRUE(of(second).empty());
  EXPECT_TRUE(of(last()).empty());
}

TEST_F(Doubts, AreOfASecondConeWhileTheFirstIsPollinated) {
  const auto plant = nursery.plant("Tall Piet", book::Sex::female);
  const auto code =
      nursery.ask([&](store::Reading& reading) { return reading.registers().plant(plant).code; });
  const auto pass = [&](std::string_view on) {
    return pollinate(nursery.book(), {code, book::PollinationMethod::dry, {{}}, {day(on), "", ""}})
        .value();
  };
  const auto told = [&](const Done& done) {
    return doubts(nursery.book(), done, day("2027-01-01"));
  };
  EXPECT_TRUE(told(pass("2025-05-01")).empty());
  const auto second = pass("2025-05-03");
  ASSERT_EQ(told(second).size(), 1U);
  EXPECT_NE(told(second)[0].find("pollinated 2 days before"), std::string::npos) << told(second)[0];
  const auto cones = [&] {
    return nursery
        .ask([](store::Reading& reading) { return cone_courses(reading, reading.registers()); })
        .size();
  };
  EXPECT_EQ(cones(), 3U);
  nursery.reverse(second.entries.front());
  EXPECT_EQ(cones(), 2U) << "a cone that came with the pass alone goes with it";
  EXPECT_TRUE(told(pass("2026-05-03")).empty()) << "a year later it is another cone";
}

TEST_F(Doubts, AreOfADayToCome) {
  const auto tray = nursery.sow(nursery.harvest(cone, "2025-03-01", 60), "2025-04-01", 40);
  const auto look = nursery.inspect(tray, "2025-06-01", 5);
  EXPECT_TRUE(of(look, "2025-06-01").empty());
  EXPECT_TRUE(of(look, "2025-05-31").empty()) << "tomorrow here is today elsewhere";
  const auto told = of(look, "2024-06-01");
  ASSERT_EQ(told.size(), 1U);
  EXPECT_NE(told[0].find("365 days from now"), std::string::npos) << told[0];
}

} // namespace
} // namespace coneline::work
