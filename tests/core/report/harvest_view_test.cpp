// SPDX-License-Identifier: GPL-3.0-or-later
// The harvest table: every seed accounted for at every moment, what is judged, learned and decided.
#include "core/report/harvest_view.h"
#include "core/store/proof.h"
#include "core/work/clean.h"
#include "core/work/due.h"
#include "core/work/float_history.h"
#include "core/work/harvest.h"
#include "core/work/harvest_table.h"
#include "core/work/inspect.h"
#include "core/work/keep.h"
#include "core/work/leave.h"
#include "core/work/recheck.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "core/work/stores.h"
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

class Table : public testing::Test {
 protected:
  Table() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  HarvestTable now(std::string_view on = "2026-02-20") {
    auto table = book.read([&](store::Reading& reading) {
      return harvest_table(reading, reading.registers(), first.batch, day(on));
    });
    EXPECT_TRUE(table) << table.error().text();
    EXPECT_EQ(table->not_accounted_for(), 0);
    return *table;
  }
  void count(What what, std::int64_t one, std::int64_t two, std::string_view on = "2026-02-05") {
    const auto done = enter(book, first.batch, {what, n(one), n(two)}, {day(on), "", ""});
    ASSERT_TRUE(done) << done.error().text();
    now();
  }
  void float_test_is(book::FloatTest test) {
    auto taxon = registers().taxa.front();
    taxon.float_test = {test, "for this test"};
    ASSERT_TRUE(book.write([&](store::Writing& writing) { return writing.put(taxon); }));
  }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  report::HarvestView view(const report::HarvestAsked& asked = {}) {
    const auto ground = book.read([&](store::Reading& reading) {
      return report::harvest_ground(reading, first.batch, day("2026-02-20"));
    });
    EXPECT_TRUE(ground) << ground.error().text();
    auto seen = report::harvest_view(*ground, asked);
    EXPECT_TRUE(seen) << seen.error().text();
    return *seen;
  }
  template <class Given>
  void refused(const Result<Given>& result, std::string_view why) {
    ASSERT_FALSE(result);
    EXPECT_NE(result.error().text().find(why), std::string::npos) << result.error().text();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(Table, AHarvestIsAccountedForToTheSeedAtEveryMoment) {
  const auto seeds = now().counted;
  ASSERT_GE(seeds, 100);
  count(What::lost, 3, 0);
  EXPECT_EQ(now().unsorted, seeds - 3);
  count(What::floated, 60, seeds - 3 - 60);
  EXPECT_EQ(now().unsorted, 0);
  count(What::again, 5, 0);
  EXPECT_EQ(now().filled.seeds, 65);
  count(What::sinkers, 8, 2);
  count(What::floaters, 0, 10);
  const auto table = now();
  EXPECT_EQ(table.filled.seeds, 65);
  EXPECT_EQ(table.filled.on_hand, 55);
  EXPECT_EQ(table.empty.seeds, seeds - 68);
  EXPECT_EQ(table.empty.opened, 10);
  EXPECT_EQ(table.opened(), 20);
  EXPECT_EQ(table.lost, 3);
  EXPECT_EQ(table.floated.size(), 2U);
  EXPECT_TRUE(store::prove(book).value().holds());
}

// The numbers of the command line's own example: 180 sank, 9 of 10 opened filled; 60 floated, none
// of 10. Reckoned there, not here.
TEST_F(Table, CountingIsReckonedWithBeforeItIsInTheBook) {
  HarvestTable table;
  table.counted = table.unsorted = 240;
  ASSERT_TRUE(table.add({What::floated, n(180), n(60)}));
  ASSERT_TRUE(table.add({What::sinkers, n(9), n(1)}));
  ASSERT_TRUE(table.add({What::floaters, n(0), n(10)}));
  EXPECT_EQ(table.not_accounted_for(), 0);
  const auto judged = table.judged(0.95).value();
  EXPECT_EQ(judged.sank.low, 102);
  EXPECT_EQ(judged.sank.high, 179);
  EXPECT_EQ(judged.floated.high, 17);
  EXPECT_EQ(judged.batch.estimate, 162.0);
}

TEST_F(Table, MoreThanThereIsIsRefusedAndNothingIsLost) {
  const auto seeds = now().counted;
  const Noted noted{day("2026-02-05"), "", ""};
  refused(enter(book, first.batch, {What::floated, n(seeds), n(1)}, noted), "too many");
  refused(enter(book, first.batch, {What::lost, n(seeds + 4), n(0)}, noted), "");
  count(What::floated, seeds - 20, 20);
  refused(enter(book, first.batch, {What::floaters, n(3), n(18)}, noted), "1 too many");
  refused(enter(book, first.batch, {What::again, n(21), n(0)}, noted), "1 too many");
  refused(work::open(book, {first.batch, State::judged_empty, n(2), n(3), noted}), "1 too many");
  auto table = now();
  for (const auto what : {What::floaters, What::again})
    EXPECT_FALSE(table.add({what, n(21), n(0)}));
  EXPECT_FALSE(table.add({What::sinkers, n(seeds), n(0)}));
  EXPECT_EQ(now().empty.on_hand, 20);
  EXPECT_TRUE(store::prove(book).value().holds());
}

TEST_F(Table, FloatersGoOnlyWhenOpenedOrTheTestHoldsOrTheGrowerIsSure) {
  const auto seeds = now().counted;
  count(What::floated, seeds - 40, 40);
  Leave wanted{first.batch, WayOut::discarded,          State::judged_empty, n(5), "",
               {},          {day("2026-02-06"), "", ""}};
  for (const auto test : {book::FloatTest::unknown, book::FloatTest::unreliable}) {
    float_test_is(test);
    refused(leave(book, wanted), "none of the 40 floaters");
  }
  EXPECT_EQ(now().discarded, 0);
  wanted.floaters = Floaters::grower_is_sure;
  EXPECT_TRUE(leave(book, wanted));
  wanted.floaters = Floaters::ask_for_opened;
  count(What::floaters, 0, 10);
  const auto done = leave(book, wanted);
  ASSERT_TRUE(done);
  EXPECT_NE(done->cautions.front().find("may be filled"), std::string::npos);
  float_test_is(book::FloatTest::reliable);
  EXPECT_TRUE(leave(book, wanted));
}

TEST_F(Table, TheNextStepFollowsTheWork) {
  const auto seeds = now().counted;
  EXPECT_NE(view().next.find("fleshy coat"), std::string::npos);
  ASSERT_TRUE(clean(book, {first.batch, 2, n(0), {day("2026-02-19"), "", ""}}));
  EXPECT_NE(view().next.find("change the water"), std::string::npos);
  const auto due = book.read([&](store::Reading& reading) {
                         return due_on(reading, reading.registers(), day("2026-02-20"));
                       })
                       .value();
  EXPECT_NE(std::ranges::find(due, DueKind::water, &Due::kind), due.end());
  ASSERT_TRUE(clean(book, {first.batch, 0, n(0), {day("2026-02-20"), "", "water changed"}}));
  const auto after = book.read([&](store::Reading& reading) {
                           return due_on(reading, reading.registers(), day("2026-02-20"));
                         })
                         .value();
  EXPECT_EQ(std::ranges::find(after, DueKind::water, &Due::kind), after.end());
  count(What::floated, seeds - 40, 40, "2026-02-20");
  EXPECT_NE(view().next.find("Cut some floaters open"), std::string::npos);
}

TEST_F(Table, TheSameCountsLeadToDifferentAdviceForDifferentTaxa) {
  const auto seeds = now().counted;
  count(What::floated, seeds - 60, 60);
  count(What::floaters, 0, 10);
  count(What::sinkers, 9, 1);
  report::HarvestAsked asked;
  asked.figures.plant_worth = 5;
  asked.figures.seed_cost = 4; // a break-even far above what may be filled
  float_test_is(book::FloatTest::reliable);
  ASSERT_TRUE(view(asked).decision) << view(asked).decision_told;
  EXPECT_EQ(view(asked).decision->advice, plan::FloatersAdvice::discard);
  asked.figures.seed_cost = 0.3;
  float_test_is(book::FloatTest::unknown);
  EXPECT_NE(view(asked).decision->advice, plan::FloatersAdvice::discard);
}

TEST_F(Table, TheBookSuggestsAndTheGrowerAccepts) {
  const auto seeds = now().counted;
  float_test_is(book::FloatTest::unknown);
  count(What::floated, seeds - 160, 160);
  count(What::sinkers, 9, 1);
  count(What::floaters, 0, 120);
  const auto taxon = registers().taxa.front().name;
  const auto history = view().history;
  EXPECT_EQ(history.verdict, stats::FloatVerdict::trusted) << history.told;
  EXPECT_NE(history.told.find("Of 120 floaters cut open 0 were filled"), std::string::npos)
      << history.told;
  EXPECT_EQ(registers().taxa.front().float_test.value, book::FloatTest::unknown)
      << "never by itself";
  ASSERT_TRUE(accept_float_test(book, taxon, day("2026-02-20")));
  EXPECT_EQ(registers().taxa.front().float_test.value, book::FloatTest::reliable);
  EXPECT_NE(registers().taxa.front().float_test.source.find("this book as of 2026-02-20"),
            std::string::npos);
  refused(accept_float_test(book, taxon, day("2026-02-20")), "nothing to accept");
  refused(accept_float_test(book, "No such plant", day("2026-02-20")), "there is no taxon");
}

TEST_F(Table, WhatFloatersBecameInTraysIsLearnedToo) {
  const auto seeds = now().counted;
  count(What::floated, seeds - 60, 60);
  const auto sown = sow(book, {first.batch,
                               State::judged_empty,
                               n(40),
                               1,
                               "seed tray",
                               "gritty",
                               first.bench,
                               {day("2026-02-10"), "", ""}});
  ASSERT_TRUE(sown) << sown.error().text();
  const auto before = view().history;
  EXPECT_EQ(before.floated.tried, 0) << "all of it still waits";
  EXPECT_EQ(before.floated_waiting, 40);
  ASSERT_TRUE(inspect(book, {sown->made.front(), n(20), n(0), n(15), {day("2026-02-15"), "", ""}}));
  const auto after = view().history;
  EXPECT_EQ(after.floated.tried, 35);
  EXPECT_EQ(after.floated.came_up, 20);
  EXPECT_EQ(after.floated_waiting, 5);
  EXPECT_EQ(after.verdict, stats::FloatVerdict::not_trusted);
}

TEST_F(Table, SeedIsCountedByWeight) {
  const auto cone = book.write([&](store::Writing& writing) -> Result<Code> {
                          const auto all = writing.registers();
                          auto code = writing.next_code(Kind::cone);
                          return writing.put(book::Cone{{}, *code, all.cones.front().plant, {}, ""})
                              .map([&](auto) { return *code; });
                        })
                        .value();
  Harvest wanted{cone,
                 Count{},
                 {day("2026-03-01"), "", ""},
                 book::Weighing{{15.0, 15.4, 15.2, 14.9, 15.5, 15.1, 15.4, 15.1}, 304}};
  const auto done = harvest(book, wanted);
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_NE(done->told.find("2000 seeds"), std::string::npos) << done->told;
  const auto entry =
      book.read([&](store::Reading& reading) { return reading.entry(done->entries.front()); });
  const auto& weighed = std::get<book::Weighing>(entry->detail);
  EXPECT_EQ(weighed.hundreds, wanted.weighed->hundreds);
  EXPECT_EQ(weighed.grams, 304);
  wanted.weighed->hundreds.back() = -1;
  refused(harvest(book, wanted), "");
  wanted.weighed->hundreds.back() = 30;
  refused(harvest(book, wanted), "eight more");
}

TEST_F(Table, StoredSeedIsLookedAtAgain) {
  const auto seeds = now().counted;
  const Recheck early{first.batch, n(2), {}, {}, {day("2026-03-01"), "", ""}};
  refused(recheck(book, early), "in no store");
  ASSERT_TRUE(keep(book, {first.batch,
                          "box of dry perlite",
                          5.0,
                          day("2026-03-01"),
                          {},
                          {},
                          {day("2026-02-05"), "", ""}}));
  const auto done = recheck(book, early);
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_NE(done->told.find("2 dead"), std::string::npos);
  const auto table = now("2026-03-02");
  EXPECT_EQ(table.kept->store, "box of dry perlite");
  EXPECT_EQ(table.kept->until_from, day("2026-04-01")) << "in a month, when no day is given";
  EXPECT_EQ(table.on_hand(), seeds - 2);
  refused(recheck(book, {first.batch, n(seeds), {}, {}, {day("2026-03-02"), "", ""}}), "");
  refused(recheck(book, {first.batch, n(0), {}, day("2026-03-01"), {day("2026-03-02"), "", ""}}),
          "later day");
}

TEST_F(Table, StoresAreHeldSideBySideByWhatCameUp) {
  ASSERT_TRUE(
      keep(book, {first.batch, "refrigerator", 5.0, {}, {}, {}, {day("2026-02-05"), "", ""}}));
  const auto sown = sow(book, {first.batch,
                               State::unsorted,
                               n(40),
                               2,
                               "seed tray",
                               "gritty",
                               first.bench,
                               {day("2026-03-10"), "", ""}});
  ASSERT_TRUE(sown);
  for (const auto& tray : sown->made)
    ASSERT_TRUE(inspect(book, {tray, n(9), n(0), n(6), {day("2026-05-01"), "", ""}}));
  const auto kept = book.read([&](store::Reading& reading) {
                          return kept_batches(reading, reading.registers(), day("2026-06-01"));
                        })
                        .value();
  ASSERT_EQ(kept.size(), 1U);
  const auto stores = compare_stores(kept, registers(), 0.95);
  ASSERT_EQ(stores.size(), 1U);
  EXPECT_EQ(stores.front().store, "refrigerator");
  EXPECT_EQ(stores.front().tried, 30);
  EXPECT_EQ(stores.front().came_up, 18);
  EXPECT_EQ(stores.front().waiting, 10);
  EXPECT_NEAR(*stores.front().share.share, 0.6, 1e-12);
  EXPECT_FALSE(own_after_ripening(kept, kept.front().taxon)) << "one batch is not enough";
  const std::vector<KeptBatch> three{{kept.front().batch, {1}, "tin", 2, {{10, 5}}, 0},
                                     {kept.front().batch, {1}, "tin", 6, {{100, 90}}, 0},
                                     {kept.front().batch, {1}, "tin", 9, {{10, 5}}, 0}};
  EXPECT_EQ(own_after_ripening(three, {1})->low, 6);
  EXPECT_EQ(own_after_ripening(three, {1})->high, 6);
}

} // namespace
} // namespace coneline::work
