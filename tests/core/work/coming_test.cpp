// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/coming.h"
#include "core/work/root_and_leaf.h"
#include "core/work/trays_done.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using tests::day;
using tests::SmallNursery;

class StillToCome : public testing::Test {
 protected:
  /// A cross that came up as wanted: 50 sown, `roots` at each of the looks 30, 60, ... days on.
  book::LotId cross(const std::string& mother, const std::string& sown,
                    const std::vector<std::int64_t>& roots) {
    const auto cone = nursery.cone(nursery.plant(mother, book::Sex::female));
    const auto batch = nursery.harvest(cone, "2025-02-01", 50);
    const auto tray = nursery.sow(batch, sown, 50);
    int days = 0;
    for (const auto found : roots)
      nursery.inspect(tray, day(sown).plus_days(days += 30).iso(), found);
    return tray;
  }
  ComingBook coming_on(const std::string& as_of, const std::optional<Code>& only = std::nullopt) {
    return nursery.ask([&](store::Reading& reading) {
      return coming(reading, day(as_of), {0.8, {30}}, only).value();
    });
  }

  SmallNursery nursery;
};

TEST_F(StillToCome, LeansOnOtherCrossesOfTheTaxonButNotOnItself) {
  const auto fresh = cross("New Mother", "2026-03-01", {0});
  const auto before = coming_on("2026-04-01").crosses;
  ASSERT_EQ(before.size(), 1U);
  EXPECT_EQ(before[0].prior.crosses, 0U);
  for (const auto* mother : {"A", "B", "C", "D"})
    cross(mother, "2025-03-01", {0, 4, 20, 12, 3, 0, 0, 0});
  const auto book = coming_on("2026-04-01");
  ASSERT_EQ(book.crosses.size(), 5U);
  const auto& found = book.crosses.back();
  EXPECT_EQ(found.name, "New Mother × Blue Twin");
  EXPECT_EQ(found.prior.crosses, 4U);
  EXPECT_EQ(book.crosses.front().prior.crosses, 4U);
  // 39 of 50 came up in each of the others.
  EXPECT_NEAR(found.coming.seeds.mean, 39, 5);
  const auto width = [](const stats::Coming& coming) {
    return coming.seeds.high - coming.seeds.low;
  };
  EXPECT_LT(width(found.coming), width(before[0].coming) / 2)
      << before[0].coming.seeds.low << ' ' << before[0].coming.seeds.high;
  ASSERT_TRUE(found.coming.half && found.coming.half->median);
  EXPECT_NEAR(*found.coming.half->median, 60, 20); // day 90 after sowing, 31 of them gone
  EXPECT_EQ(coming_on("2026-04-01", nursery.lot_of(fresh).code).crosses.size(), 1U);
}

TEST_F(StillToCome, KnowsOnlyWhatWasKnownOnTheDay) {
  cross("A", "2025-03-01", {0, 10, 10});
  EXPECT_TRUE(coming_on("2025-02-01").crosses.empty());
  EXPECT_EQ(coming_on("2025-04-15").crosses.at(0).trays.at(0).germinated, 0);
  EXPECT_EQ(coming_on("2025-07-01").crosses.at(0).trays.at(0).germinated, 20);
}

TEST_F(StillToCome, ATrayIsDoneWhenOneMoreIsUnlikely) {
  const auto still = cross("A", "2025-03-01", {0, 10, 20, 5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0});
  const auto young = cross("B", "2026-05-01", {3, 9});
  const auto done_on = [&](const DoneHabits& habits, const std::optional<Code>& only = {}) {
    return nursery.ask([&](store::Reading& reading) {
      return trays_done(reading, day("2026-07-01"), habits, only).value();
    });
  };
  const auto trays = done_on({0.2, 450, 0.8});
  ASSERT_EQ(trays.size(), 2U);
  EXPECT_EQ(trays[0].tray.seen.lot.id, still); // least likely first
  EXPECT_TRUE(trays[0].done);
  EXPECT_EQ(trays[0].seedlings, 35);
  EXPECT_NE(trays[0].told.find("35 seedlings still stand in it"), std::string::npos);
  EXPECT_EQ(trays[1].tray.seen.lot.id, young);
  EXPECT_FALSE(trays[1].done);
  EXPECT_NEAR(trays[1].square_metres, 0.12, 1e-12); // 400 by 300 mm
  EXPECT_NEAR(*trays[1].cents_a_month, 54, 1e-9);
  EXPECT_NEAR(*trays[1].cents_a_seedling, 54 / trays[1].tray.coming.within.front().seeds.mean,
              1e-9);
  EXPECT_FALSE(done_on({1e-6, 450, 0.8})[0].done);
  EXPECT_FALSE(done_on({0.2, std::nullopt, 0.8})[0].cents_a_month);
  EXPECT_EQ(done_on({0.2, 450, 0.8}, nursery.lot_of(young).code).size(), 1U);
}

TEST_F(StillToCome, RefusesFiguresThatCannotBe) {
  nursery.ask([&](store::Reading& reading) {
    EXPECT_FALSE(coming(reading, day("2026-01-01"), {1, {30}}));
    EXPECT_FALSE(coming(reading, day("2026-01-01"), {0.8, {0}}));
    auto registers = reading.registers();
    EXPECT_EQ(done_habits(registers).done_below, 0.05);
    registers.figures = {{book::figure::done_below, 0.2}, {book::figure::bench_price, 4.5}};
    EXPECT_EQ(done_habits(registers).done_below, 0.2);
    EXPECT_EQ(done_habits(registers).cents_a_square_metre_month, 450);
    EXPECT_FALSE(trays_done(reading, day("2026-01-01"), {0, {}, 0.8}));
    EXPECT_FALSE(trays_done(reading, day("2026-01-01"), {0.05, -1, 0.8}));
    return true;
  });
}

// 10 roots on day 30, 10 on day 60; 12 leaves on day 90: the first ten waited 60 days, two waited
// 30, eight still wait.
TEST_F(StillToCome, RootsWithoutALeafStillWait) {
  const auto tray = cross("A", "2025-03-01", {10, 10});
  nursery.inspect(tray, "2025-05-30", 0, 12);
  const auto book = nursery.ask([&](store::Reading& reading) {
    return root_and_leaf(reading, day("2025-06-30"), 0.95).value();
  });
  ASSERT_EQ(book.crosses.size(), 1U);
  const auto& wait = book.crosses[0].wait;
  EXPECT_EQ(wait.roots, 20U);
  EXPECT_EQ(wait.leafed, 12U);
  EXPECT_EQ(std::ranges::count(wait.waits, stats::Wait{30, true}.time, &stats::Wait::time), 10);
  // Kaplan-Meier by hand: 18/20 wait on at 30 (8 leave unended there), then 0 of 10 at 60.
  EXPECT_EQ(wait.half, 60);
  EXPECT_EQ(book.crosses[0].root.germinated, 20);
  EXPECT_EQ(book.crosses[0].leaf.germinated, 12);
  EXPECT_TRUE(book.comparisons.empty());
}

} // namespace
} // namespace coneline::work
