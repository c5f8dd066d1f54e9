// SPDX-License-Identifier: GPL-3.0-or-later
// The harvest table off the usual way: what is lacking for an answer, what is only being counted,
// and the next step all the way down to an empty table.
#include "core/report/harvest_view.h"
#include "core/work/clean.h"
#include "core/work/float_history.h"
#include "core/work/inspect.h"
#include "core/work/keep.h"
#include "core/work/leave.h"
#include "core/work/recount.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using book::State;
using tests::day;
using What = TableCount::What;

Count n(std::int64_t count) {
  return Count::sure(count);
}

class Steps : public testing::Test {
 protected:
  Steps() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  static Noted on(std::string_view iso) { return {day(iso), "", ""}; }
  report::HarvestGround ground(std::string_view today = "2026-02-20") {
    return book
        .read([&](store::Reading& reading) {
          return report::harvest_ground(reading, first.batch, day(today));
        })
        .value();
  }
  std::string next(std::string_view today = "2026-02-20", const report::HarvestAsked& asked = {}) {
    return report::harvest_view(ground(today), asked).value().next;
  }
  void count(What what, std::int64_t one, std::int64_t two, std::string_view day_on) {
    const auto done = enter(book, first.batch, {what, n(one), n(two)}, on(day_on));
    ASSERT_TRUE(done) << done.error().text();
  }
  static void refused(const report::HarvestGround& given, const report::HarvestAsked& asked,
                      std::string_view why) {
    const auto view = report::harvest_view(given, asked);
    ASSERT_FALSE(view) << why;
    EXPECT_NE(view.error().text().find(why), std::string::npos) << view.error().text();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(Steps, LeadFromTheFleshyCoatToTheEmptyTable) {
  EXPECT_NE(next().find("fleshy coat"), std::string::npos);
  ASSERT_TRUE(clean(book, {first.batch, 0, n(0), on("2026-02-10")}));
  EXPECT_EQ(next(), "Float the 500 unsorted seeds: count what sinks and what floats.");
  count(What::floated, 400, 100, "2026-02-11");
  // Never soaked and floated once: dry seed floats falsely.
  EXPECT_NE(next().find("Dry seed floats falsely"), std::string::npos);
  count(What::again, 60, 0, "2026-02-13");
  EXPECT_NE(next().find("Cut some floaters open"), std::string::npos);
  count(What::floaters, 1, 9, "2026-02-14");
  EXPECT_NE(next().find("Cut a few of those judged filled"), std::string::npos);
  count(What::sinkers, 9, 1, "2026-02-14");
  EXPECT_EQ(next(), "Store them to ripen on, or sow.");
  report::HarvestAsked asked;
  asked.figures.plant_worth = 10;
  asked.figures.seed_cost = 0.1;
  const auto decided = report::harvest_view(ground(), asked).value();
  ASSERT_TRUE(decided.decision);
  EXPECT_EQ(decided.next, decided.decision->why);
  ASSERT_TRUE(keep(book, {first.batch, "box", {}, {}, {}, {}, on("2026-02-15")}));
  EXPECT_NE(next().find("look at the stored seed again"), std::string::npos);
  ASSERT_TRUE(leave(
      book, {first.batch, WayOut::dead, State::judged_filled, n(450), "", {}, on("2026-02-16")}));
  ASSERT_TRUE(leave(
      book, {first.batch, WayOut::dead, State::judged_empty, n(30), "", {}, on("2026-02-16")}));
  EXPECT_EQ(next(), "Nothing of it is left on the table.");
  EXPECT_EQ(ground().table.not_accounted_for(), 0);
}

TEST_F(Steps, SoakingIsOverOnItsDay) {
  ASSERT_TRUE(clean(book, {first.batch, 3, n(0), on("2026-02-18")}));
  EXPECT_NE(next("2026-02-20").find("They soak until 2026-02-21"), std::string::npos);
  EXPECT_EQ(next("2026-02-21"), "They have soaked: take them out and float them.");
  EXPECT_NE(next("2026-02-22").find("Float the 500"), std::string::npos);
  count(What::floated, 400, 100, "2026-02-21");
  EXPECT_NE(next("2026-02-21").find("Cut some floaters open"), std::string::npos);
}

TEST_F(Steps, WhatIsBeingCountedIsReckonedWithAndCheckedAgainstTheTable) {
  ASSERT_TRUE(clean(book, {first.batch, 0, n(0), on("2026-02-10")}));
  report::HarvestAsked asked;
  asked.counting = TableCount{What::floated, n(300), n(200)};
  const auto view = report::harvest_view(ground(), asked).value();
  EXPECT_EQ(view.table.unsorted, 0);
  EXPECT_EQ(view.table.filled.on_hand, 300);
  EXPECT_EQ(view.table.empty.seeds, 200);
  asked.counting = TableCount{What::floated, n(300), n(201)};
  refused(ground(), asked, "500 unsorted seeds are on the table, and 501 are counted: 1 too many");
  asked.counting = TableCount{What::again, n(1), {}};
  refused(ground(), asked, "0 floaters are on the table");
  asked.counting = TableCount{What::sinkers, n(1), {}};
  refused(ground(), asked, "0 sinkers are on the table");
  count(What::floated, 300, 200, "2026-02-11");
  asked.counting = TableCount{What::again, n(50), {}};
  const auto again = report::harvest_view(ground(), asked).value();
  EXPECT_EQ(again.table.filled.on_hand, 350);
  EXPECT_EQ(again.table.filled.seeds, 350);
  EXPECT_EQ(again.table.empty.on_hand, 150);
  EXPECT_EQ(again.table.empty.seeds, 150);
  EXPECT_EQ(again.table.not_accounted_for(), 0);
  asked.counting = TableCount{What::lost, n(5), {}};
  refused(ground(), asked, "5 too many");
  EXPECT_EQ(ground().table.empty.on_hand, 200); // nothing of all that is in the book
}

TEST_F(Steps, RefusesFiguresThatCannotBe) {
  for (const double share : {0.0, 1.0}) {
    report::HarvestAsked asked;
    asked.assurance = share;
    refused(ground(), asked, "assurance");
    asked = {};
    asked.confidence = share;
    refused(ground(), asked, "confidence");
  }
  count(What::floated, 400, 100, "2026-02-11");
  report::HarvestAsked asked;
  asked.figures.plant_worth = -1;
  asked.figures.seed_cost = 1;
  refused(ground(), asked, "worth");
  const auto absent = book.read([&](store::Reading& reading) {
    return report::harvest_ground(reading, Code::of(Kind::batch, 17, 99).value(),
                                  day("2026-02-20"));
  });
  ASSERT_FALSE(absent);
  EXPECT_NE(absent.error().text().find("there is no"), std::string::npos);
}

// A seed's share of its tray: 5 l of 40 cells, 0.4 × 0.3 m of bench for the middle of 6 to 12
// months: 0.125 l × 8 + 0.003 m² × 9 months × 2 = 1 + 0.054.
TEST_F(Steps, ASownSeedCostsItsMixAndBenchWhereNobodySaidOtherwise) {
  count(What::floated, 400, 100, "2026-02-11");
  report::HarvestAsked asked;
  const auto told = [&] { return report::harvest_view(ground(), asked).value(); };
  EXPECT_NE(told().decision_told.find("Say what a plant is worth"), std::string::npos);
  asked.figures.plant_worth = 10;
  EXPECT_FALSE(told().seed_cost);
  asked.figures.litre_price = 8;
  EXPECT_FALSE(told().decision);
  asked.figures.bench_price = 2;
  ASSERT_TRUE(told().seed_cost);
  EXPECT_NEAR(*told().seed_cost, 1.054, 1e-9);
  EXPECT_TRUE(told().decision);
  asked.figures.seed_cost = 0.3;
  EXPECT_DOUBLE_EQ(*told().seed_cost, 0.3);
  auto without_route = ground();
  without_route.registers.routes.clear();
  const auto view = report::harvest_view(without_route, asked).value();
  EXPECT_EQ(view.decision_told, "For the floaters' worth the taxon needs a route.");
  EXPECT_FALSE(view.decision);
}

TEST_F(Steps, TheFiguresOfTheBookAreTaken) {
  EXPECT_EQ(report::figures_in(ground().registers), report::GrowersFigures{});
  ASSERT_TRUE(book.write([](store::Writing& writing) -> Result<void> {
    for (const auto& [name, value] :
         {std::pair(book::figure::plant_worth, 12.0), std::pair(book::figure::keep_cost, 0.5)})
      if (auto put = writing.put(book::Figure{name, value}); !put)
        return put;
    return {};
  }));
  const auto figures = report::figures_in(ground().registers);
  EXPECT_EQ(figures.plant_worth, 12);
  EXPECT_EQ(figures.keep_cost, 0.5);
  EXPECT_FALSE(figures.seed_cost);
}

TEST_F(Steps, OwnSownSinkersTellHowManyComeUp) {
  count(What::floated, 400, 100, "2026-02-11");
  const auto tray =
      sow(book,
          {first.batch, State::judged_filled, n(40), 1, "seed tray", {}, {}, on("2026-02-12")})
          ->made.at(0);
  ASSERT_TRUE(inspect(book, {tray, n(30), {}, n(10), on("2026-04-01")}));
  report::HarvestAsked asked;
  asked.figures.plant_worth = 10;
  asked.figures.seed_cost = 0.1;
  const auto before = report::harvest_view(ground("2026-02-20"), asked).value();
  const auto after = report::harvest_view(ground("2027-02-20"), asked).value();
  EXPECT_EQ(before.history.sank.tried, 0);
  EXPECT_EQ(after.history.sank.tried, 40);
  EXPECT_TRUE(before.decision && after.decision);
  EXPECT_EQ(after.table.sown, 40);
}

TEST_F(Steps, RecountsAndSeedJudgedOtherwiseStayAccountedFor) {
  count(What::floated, 400, 100, "2026-02-11");
  ASSERT_TRUE(recount(book, {first.batch, State::judged_filled, n(405), on("2026-02-12")}));
  ASSERT_TRUE(recount(book, {first.batch, State::judged_empty, n(97), on("2026-02-12")}));
  ASSERT_TRUE(open(book, {first.batch, State::judged_filled, n(4), n(4), on("2026-02-13")}));
  const auto table = ground().table;
  EXPECT_EQ(table.counted, 505); // the five that a recount found came in too
  EXPECT_EQ(table.other, 3);
  EXPECT_EQ(table.not_accounted_for(), 0);
  EXPECT_EQ(table.filled.on_hand, 401);
}

} // namespace
} // namespace coneline::work
