// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/needs_input.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using book::State;
using tests::day;
using tests::SmallNursery;

plan::NeedsInput input_of(SmallNursery& nursery, std::string_view today) {
  return nursery.ask([&](store::Reading& reading) { return needs_input(reading, day(today), 12); });
}

class FromABook : public testing::Test {
 protected:
  FromABook() {
    nursery.inspect(tray, "2025-05-01", 20, 8, 3);
    nursery.enter(book::Verb::pot, "2025-08-01", group,
                  {{tray, State::leaf, group, State::plant, 6}});
    nursery.enter(book::Verb::lose, "2025-09-01", group,
                  {{group, State::plant, group, State::dead, 1}});
  }

  SmallNursery nursery;
  book::ConeId cone = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
  book::LotId batch = nursery.harvest(cone, "2025-02-01", 100);
  book::LotId tray = nursery.sow(batch, "2025-03-01", 40);
  book::LotId group = nursery.lot(Kind::pot_group, cone);
};

TEST_F(FromABook, TakesWhatStandsToday) {
  const auto input = input_of(nursery, "2025-12-01");
  ASSERT_EQ(input.trays.size(), 1U);
  EXPECT_EQ(input.trays[0].sown, 40);
  EXPECT_EQ(input.trays[0].sown_on, day("2025-03-01"));
  EXPECT_EQ(input.trays[0].germinated, 20); // also those that were potted
  EXPECT_EQ(input.trays[0].waiting, 17);    // 40 less 20 up and 3 dead
  EXPECT_EQ(input.trays[0].seedlings, 14);
  ASSERT_EQ(input.groups.size(), 1U);
  EXPECT_EQ(input.groups[0].plants, 5);
  EXPECT_EQ(input.groups[0].since, day("2025-08-01"));
  EXPECT_EQ(input.groups[0].cross, "Old Sentinel × Blue Twin");
  EXPECT_EQ(input.seeds_not_sown, 60);
  EXPECT_EQ(input.today, day("2025-12-01"));
  EXPECT_EQ(input.months, 12);
}

TEST_F(FromABook, OnAnEarlierDayIsWhatStoodThen) {
  const auto input = input_of(nursery, "2025-04-01");
  ASSERT_EQ(input.trays.size(), 1U);
  EXPECT_EQ(input.trays[0].waiting, 40);
  EXPECT_EQ(input.trays[0].germinated, 0);
  EXPECT_TRUE(input.groups.empty());
}

TEST_F(FromABook, ReversedPottingIsAsIfItHadNotBeen) {
  const auto other = nursery.lot(Kind::pot_group, cone);
  nursery.reverse(nursery.enter(book::Verb::pot, "2025-08-02", other,
                                {{tray, State::root, other, State::plant, 4}}));
  const auto input = input_of(nursery, "2025-12-01");
  EXPECT_EQ(input.groups.size(), 1U);
  EXPECT_EQ(input.trays[0].seedlings, 14);
}

TEST_F(FromABook, PlantsThatARecountFoundStandSinceToday) {
  const auto found = nursery.lot(Kind::pot_group, cone);
  nursery.enter(book::Verb::recount, "2025-10-01", found,
                {{found, State::unexplained, found, State::plant, 2}});
  const auto input = input_of(nursery, "2025-12-01");
  ASSERT_EQ(input.groups.size(), 2U);
  EXPECT_EQ(input.groups[1].plants, 2);
  EXPECT_EQ(input.groups[1].since, day("2025-12-01"));
}

TEST_F(FromABook, APlanOfItHasEveryPlant) {
  nursery.write([&](store::Writing& writing) {
    return writing
        .put(book::Route{{},
                         nursery.taxon(),
                         0.5,
                         {1, 6},
                         "test",
                         {{nursery.tray_pot(), nursery.mix(), {6, 6}, 0.9, book::Light::shade, "t"},
                          {nursery.pot(), nursery.mix(), {6, 6}, 0.8, book::Light::shade, "t"}}})
        .value();
  });
  const auto plan = plan::needs(input_of(nursery, "2025-12-01")).value();
  EXPECT_DOUBLE_EQ(plan.sums.here, 14 + 5);
  EXPECT_TRUE(plan.left_out.empty());
}

} // namespace
} // namespace coneline::report
