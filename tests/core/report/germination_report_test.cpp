// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/germination_report.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using book::State;
using tests::day;
using tests::SmallNursery;

class Germination : public testing::Test {
 protected:
  GerminationReport on(std::string_view as_of) {
    return nursery.book()
        .read([&](store::Reading& reading) { return germination_report(reading, {day(as_of)}); })
        .value();
  }
  void give_route() {
    nursery.write([&](store::Writing& writing) {
      return writing
          .put(book::Route{
              {},
              nursery.taxon(),
              0.5,
              {1, 6},
              "test",
              {{nursery.tray_pot(), nursery.mix(), {6, 6}, 0.9, book::Light::part_shade, "test"}}})
          .value();
    });
  }

  SmallNursery nursery;
  book::PlantId mother = nursery.plant("Old Sentinel", book::Sex::female);
  book::ConeId cone = nursery.cone(mother);
  book::LotId batch = nursery.harvest(cone, "2025-02-01", 500);
  book::LotId tray = nursery.sow(batch, "2025-03-01", 40);
};

TEST_F(Germination, TakesTheConesOfOneCrossTogether) {
  const auto later = nursery.harvest(nursery.cone(mother, "2025-06-01"), "2026-02-01", 100);
  nursery.inspect(tray, "2025-03-11", 10);
  nursery.inspect(nursery.sow(later, "2026-03-01", 60), "2026-03-21", 30);
  const auto report = on("2026-04-01");
  ASSERT_EQ(report.crosses.size(), 1U);
  const auto& cross = report.crosses[0];
  EXPECT_EQ(cross.name, "Old Sentinel × Blue Twin");
  EXPECT_EQ(cross.taxon, "Cycas revoluta");
  EXPECT_EQ(cross.figures.sown, 100);
  EXPECT_EQ(cross.figures.germinated, 40);
  ASSERT_EQ(cross.trays.size(), 2U);
  EXPECT_NE(cross.trays[0].seen.origin.code, cross.trays[1].seen.origin.code);
  // by hand: (10 × 10 + 30 × 20) / 40 days; half of 40 is reached at 10 + 10 × 10/30 days
  EXPECT_DOUBLE_EQ(cross.together.mean_time.value(), 17.5);
  EXPECT_NEAR(cross.together.t50_farooq.value(), 10 + 10.0 / 3, 1e-9);
  ASSERT_EQ(cross.curve.size(), 3U);
  EXPECT_DOUBLE_EQ(cross.curve[1].share, 0.1);
  EXPECT_DOUBLE_EQ(cross.curve[2].share, 0.4);
}

TEST_F(Germination, ShowsWhatTheBookKnowsBesideTheCrosssOwnFigures) {
  for (const auto* name : {"Blue Ada", "Blue Berta", "Blue Carla", "Blue Dora", "Blue Emma"}) {
    const auto other = nursery.cone(nursery.plant(name, book::Sex::female));
    const auto sown = nursery.sow(nursery.harvest(other, "2024-02-01", 200), "2024-03-01", 100);
    for (const auto* on : {"2024-04-10", "2024-04-20", "2024-04-30"})
      nursery.inspect(sown, on, 20);
    nursery.inspect(sown, "2024-12-01", 0, 0, 40);
  }
  nursery.inspect(tray, "2025-04-10", 3);
  const auto report = on("2025-04-15");
  const auto& young =
      *std::ranges::find(report.crosses, "Old Sentinel × Blue Twin", &CrossReport::name);
  ASSERT_TRUE(young.known);
  EXPECT_TRUE(young.known->beforehand.starts_with("5 other crosses")) << young.known->beforehand;
  const auto& own = young.figures.still_expected;
  EXPECT_LT(young.known->seeds.high - young.known->seeds.low, own.high - own.low)
      << "earlier crosses narrow what is to come";
  EXPECT_EQ(young.expected().high, young.known->seeds.high);
  const auto& over = *std::ranges::find(report.crosses, "Blue Ada × Blue Twin", &CrossReport::name);
  EXPECT_FALSE(over.known);
  EXPECT_EQ(over.expected().high, 0);
}

TEST_F(Germination, SaysPlainlyThatNothingCameUp) {
  nursery.inspect(tray, "2025-05-01", 0, 0, 40);
  const auto report = on("2025-06-01");
  const auto& cross = report.crosses.at(0);
  EXPECT_EQ(cross.told, "Nothing came up. No seed is left in the trays.");
  EXPECT_EQ(cross.trays[0].told, "nothing came up; no seed left in it");
  EXPECT_EQ(cross.figures.final.share, 0.0);
  EXPECT_GT(cross.figures.final.range->high, 0.0);
  EXPECT_FALSE(cross.together.mean_time);
  EXPECT_FALSE(cross.together.t50_farooq);
}

TEST_F(Germination, SaysThatTraysStillSprout) {
  give_route();
  nursery.inspect(tray, "2025-05-01", 10);
  const auto early = on("2025-06-01");
  EXPECT_EQ(early.crosses[0].trays[0].sprouting, Sprouting::still);
  EXPECT_EQ(early.crosses[0].trays[0].told,
            "still sprouting: 30 waiting, until 2025-09-01 by its route");
  EXPECT_EQ(early.crosses[0].told,
            "1 of 1 trays can still sprout, 30 seeds waiting: the share can rise.");
  const auto late = on("2025-09-01");
  EXPECT_EQ(late.crosses[0].trays[0].sprouting, Sprouting::past);
  EXPECT_EQ(late.crosses[0].told, "30 seeds wait past their route's months.");
}

TEST_F(Germination, WithoutARouteDoesNotPretendToKnowTheEnd) {
  nursery.inspect(tray, "2025-05-01", 10);
  const auto& report = on("2030-01-01");
  EXPECT_EQ(report.crosses[0].trays[0].sprouting, Sprouting::not_known);
  EXPECT_EQ(report.crosses[0].trays_sprouting, 1);
}

TEST_F(Germination, OfATrayNobodyLookedAtClaimsNothing) {
  const auto report = on("2025-06-01");
  EXPECT_EQ(report.crosses.at(0).trays[0].told, "not looked at yet");
  EXPECT_EQ(report.crosses[0].told, "Not looked at yet.");
}

TEST_F(Germination, IsThatOfItsDay) {
  nursery.inspect(tray, "2025-05-01", 10);
  nursery.inspect(tray, "2025-07-01", 5);
  EXPECT_EQ(on("2025-06-01").crosses.at(0).figures.germinated, 10);
  EXPECT_EQ(on("2025-07-01").crosses.at(0).figures.germinated, 15);
  EXPECT_TRUE(on("2025-02-01").crosses.empty());
}

TEST_F(Germination, TellsFirstLeavesApart) {
  nursery.inspect(tray, "2025-04-01", 4);    // day 31: four roots
  nursery.inspect(tray, "2025-04-21", 4, 3); // day 51: three of them in leaf, 20 days on
  nursery.inspect(tray, "2025-05-11", 0, 3); // the fourth after 40 days, two after 20
  nursery.enter(book::Verb::inspect, "2025-05-12", tray,
                {{tray, State::sown, tray, State::leaf, 2}}); // their roots were never seen
  const auto leaf = on("2025-06-01").crosses.at(0).leaf;
  EXPECT_EQ(leaf.leaves, 8);
  EXPECT_DOUBLE_EQ(leaf.share.share.value(), 0.2);
  EXPECT_LT(leaf.share.range->low, 0.2);
  EXPECT_DOUBLE_EQ(leaf.days_from_root.value(), 20);
}

TEST_F(Germination, CountsTheSpreadBetweenTraysInTheLeavesToo) {
  // 30 of 40 and 2 of 40 in leaf: taken as one tray of 80 the range would be far too narrow.
  const auto other = nursery.sow(batch, "2025-03-01", 40);
  nursery.inspect(tray, "2025-05-01", 30, 30);
  nursery.inspect(other, "2025-05-01", 2, 2);
  const auto leaf = on("2025-06-01").crosses.at(0).leaf;
  const auto as_one = stats::wilson(32, 80, 0.95).value();
  EXPECT_DOUBLE_EQ(leaf.share.share.value(), 0.4);
  EXPECT_LT(leaf.share.range->low, as_one.low - 0.05);
  EXPECT_GT(leaf.share.range->high, as_one.high + 0.05);
}

TEST_F(Germination, SaysNoDaysToTheLeafBeforeHalfHaveOne) {
  nursery.inspect(tray, "2025-04-01", 10);
  nursery.inspect(tray, "2025-04-21", 0, 4);
  EXPECT_FALSE(on("2025-06-01").crosses.at(0).leaf.days_from_root);
  nursery.inspect(tray, "2025-04-22", 0, 1);
  EXPECT_DOUBLE_EQ(on("2025-06-01").crosses.at(0).leaf.days_from_root.value(), 20);
}

TEST_F(Germination, NamesTraysItCannotWorkWith) {
  nursery.inspect(tray, "2025-03-01", 3); // up on the day of sowing
  const auto report = on("2025-06-01");
  EXPECT_TRUE(report.crosses.empty());
  ASSERT_EQ(report.left_out.size(), 1U);
  EXPECT_EQ(report.left_out[0].code, nursery.lot_of(tray).code);
  EXPECT_FALSE(report.left_out[0].why.empty());
}

TEST_F(Germination, RefusesAConfidenceThatIsNone) {
  const auto report = nursery.book().read([](store::Reading& reading) {
    return germination_report(reading, {day("2025-06-01"), 1.0});
  });
  ASSERT_FALSE(report);
  EXPECT_EQ(report.error().blame, Blame::usage);
}

} // namespace
} // namespace coneline::report
