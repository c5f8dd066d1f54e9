// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/germination.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using tests::day;
using tests::SmallNursery;

std::vector<ObservedTray> trays_on(SmallNursery& nursery, std::string_view as_of) {
  return nursery.ask([&](store::Reading& reading) {
    return observed_trays(reading, reading.registers(), day(as_of));
  });
}

class ObservedTrays : public testing::Test {
 protected:
  SmallNursery nursery;
  book::ConeId cone = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
  book::LotId batch = nursery.harvest(cone, "2025-02-01", 200);
  book::LotId tray = nursery.sow(batch, "2025-03-01", 40);
};

TEST_F(ObservedTrays, CountsDaysFromSowingAndKeepsLooksThatFoundNothing) {
  nursery.inspect(tray, "2025-03-31", 0);
  nursery.inspect(tray, "2025-04-10", 7, 0, 2);
  nursery.inspect(tray, "2025-05-10", 3, 5);
  const auto trays = trays_on(nursery, "2025-12-31");
  ASSERT_EQ(trays.size(), 1U);
  EXPECT_EQ(trays[0].sown, 40);
  EXPECT_EQ(trays[0].sown_on, day("2025-03-01"));
  EXPECT_EQ(trays[0].origin.name, "Old Sentinel × Blue Twin");
  ASSERT_EQ(trays[0].looks.size(), 3U);
  EXPECT_EQ(trays[0].looks[0].day, 30);
  EXPECT_EQ(trays[0].looks[0].germinated, 0);
  EXPECT_EQ(trays[0].looks[1].germinated, 7);
  EXPECT_EQ(trays[0].looks[1].removed, 2);
  EXPECT_EQ(trays[0].looks[2].germinated, 3);
  EXPECT_EQ(trays[0].looks[2].leaves, 5);
  EXPECT_EQ(trays[0].looks[2].straight_to_leaf, 0);
}

TEST_F(ObservedTrays, ALeafWithoutARootSeenBeforeIsAGerminatedSeed) {
  nursery.enter(book::Verb::inspect, "2025-06-01", tray,
                {{tray, book::State::sown, tray, book::State::leaf, 4}});
  const auto look = trays_on(nursery, "2025-12-31").at(0).looks.at(0);
  EXPECT_EQ(look.germinated, 4);
  EXPECT_EQ(look.leaves, 4);
  EXPECT_EQ(look.straight_to_leaf, 4);
}

TEST_F(ObservedTrays, WhatWasReversedDoesNotCount) {
  nursery.reverse(nursery.inspect(tray, "2025-04-10", 7));
  nursery.inspect(tray, "2025-04-12", 6);
  nursery.reverse(nursery.enter(book::Verb::sow, "2025-03-20", tray,
                                {{batch, book::State::unsorted, tray, book::State::sown, 100}}));
  const auto trays = trays_on(nursery, "2025-12-31");
  ASSERT_EQ(trays.size(), 1U);
  EXPECT_EQ(trays[0].sown, 40);
  ASSERT_EQ(trays[0].looks.size(), 1U);
  EXPECT_EQ(trays[0].looks[0].germinated, 6);
  EXPECT_EQ(trays[0].looks[0].date, day("2025-04-12"));
}

TEST_F(ObservedTrays, ATrayWhoseSowingWasReversedIsNone) {
  const auto other = nursery.lot(Kind::tray, cone);
  nursery.reverse(nursery.enter(book::Verb::sow, "2025-03-01", other,
                                {{batch, book::State::unsorted, other, book::State::sown, 10}}));
  EXPECT_EQ(trays_on(nursery, "2025-12-31").size(), 1U);
}

TEST_F(ObservedTrays, LeavesOutWhatWasEnteredForLaterDays) {
  nursery.inspect(tray, "2025-04-10", 7);
  nursery.inspect(tray, "2025-05-10", 3);
  nursery.sow(batch, "2025-06-01", 20);
  EXPECT_EQ(trays_on(nursery, "2025-02-28").size(), 0U);
  const auto then = trays_on(nursery, "2025-05-09");
  ASSERT_EQ(then.size(), 1U);
  EXPECT_EQ(then[0].looks.size(), 1U);
  EXPECT_EQ(trays_on(nursery, "2025-06-01").size(), 2U);
}

TEST_F(ObservedTrays, SeedMissingAtARecountIsRemoved) {
  nursery.enter(book::Verb::recount, "2025-04-01", tray,
                {{tray, book::State::sown, tray, book::State::unexplained, 3}});
  const auto look = trays_on(nursery, "2025-12-31").at(0).looks.at(0);
  EXPECT_EQ(look.removed, 3);
  EXPECT_EQ(look.germinated, 0);
}

} // namespace
} // namespace coneline::work
