// SPDX-License-Identifier: GPL-3.0-or-later
// Answers of a line or two off the usual way: trays that are done, corrections of a plant, names of
// origins, what a lot came from when its making was taken back, labels nobody saw, the ripe cone.
#include "core/work/cone_course.h"
#include "core/work/correct.h"
#include "core/work/labels_to_renew.h"
#include "core/work/line_back.h"
#include "core/work/origin_said.h"
#include "core/work/temperature.h"
#include "core/work/trays_done.h"
#include "tests/core/work/small_nursery.h"

#include <cmath>

namespace coneline::work {
namespace {

using book::State;
using tests::day;

class SmallAnswers : public testing::Test {
 protected:
  book::Plant mothers_row() {
    return nursery.ask([&](store::Reading& reading) { return reading.registers().plant(mother); });
  }
  Result<Done> corrected(const Edit& edit) {
    return correct(nursery.book(), {mothers_row().code, edit, {day("2025-12-01"), "", ""}});
  }
  std::vector<ConeCourse> courses() {
    return nursery.ask(
        [](store::Reading& reading) { return cone_courses(reading, reading.registers()); });
  }

  tests::SmallNursery nursery;
  book::PlantId mother = nursery.plant("Old Sentinel", book::Sex::female);
};

TEST_F(SmallAnswers, TraysDoneAreSaidWithWhatAnotherMonthCosts) {
  const auto batch = nursery.harvest(nursery.cone(mother), "2024-12-01", 60);
  const auto tray = nursery.sow(batch, "2025-01-01", 40);
  for (const auto& [on, up] : {std::pair("2025-02-01", 20), std::pair("2025-03-01", 8),
                               std::pair("2025-05-01", 0), std::pair("2025-09-01", 0)})
    nursery.inspect(tray, on, up);
  const auto ask = [&](const DoneHabits& habits, std::optional<Code> only = {}) {
    return nursery.book().read([&](store::Reading& reading) {
      return trays_done(reading, day("2026-06-01"), habits, only);
    });
  };
  DoneHabits habits;
  auto all = ask(habits).value();
  ASSERT_EQ(all.size(), 1U);
  EXPECT_FALSE(all[0].cents_a_month);
  EXPECT_EQ(all[0].seedlings, 28);
  EXPECT_NEAR(all[0].square_metres, 0.12, 1e-9); // 0.4 × 0.3 m
  habits.cents_a_square_metre_month = 500;
  habits.done_below = 0.999999;
  all = ask(habits).value();
  EXPECT_NEAR(*all[0].cents_a_month, 60, 1e-9);
  EXPECT_NE(all[0].told.find("costs 0.60 of bench"), std::string::npos) << all[0].told;
  EXPECT_TRUE(all[0].done);
  EXPECT_NE(all[0].told.find("28 seedlings still stand in it: pot them first."), std::string::npos);
  EXPECT_EQ(ask(habits, nursery.lot_of(tray).code)->size(), 1U);
  EXPECT_TRUE(ask(habits, Code::of(Kind::tray, 17, 99).value())->empty());
  habits.cents_a_square_metre_month = -1;
  EXPECT_FALSE(ask(habits));
  for (const double below : {0.0, 1.0}) {
    DoneHabits wrong;
    wrong.done_below = below;
    EXPECT_FALSE(ask(wrong)) << below;
  }
}

TEST_F(SmallAnswers, ACorrectionSaysEveryFieldThatChanged) {
  const auto place = nursery.write([](store::Writing& writing) {
    return writing
        .put(book::Place{{},
                         writing.next_code(Kind::place).value(),
                         "Bench",
                         book::PlaceKind::bench,
                         {},
                         0,
                         0,
                         {},
                         0})
        .value();
  });
  const auto done = corrected([&](book::Plant& plant, const book::Registers&) -> Result<void> {
    plant.acquired = day("2019-05-01");
    plant.place = place;
    plant.papers = {{"permit", "12", day("2019-04-01"), "the office", "one plant"},
                    {"invoice", "13", {}, "", ""}};
    plant.seed_parent_said = "a plant of the park";
    return {};
  });
  ASSERT_TRUE(done) << done.error().text();
  for (const auto* part :
       {"acquired of ", "'2019-05-01' instead of ''", "'Bench' instead of ''",
        "'permit 12 of 2019-04-01, the office (one plant); invoice 13' instead of ''",
        "'a plant of the park' instead of ''"})
    EXPECT_NE(done->told.find(part), std::string::npos) << done->told;
  EXPECT_EQ(mothers_row().papers.size(), 2U);
  const auto refused = corrected([](book::Plant&, const book::Registers&) -> Result<void> {
    return refuse(fault("not today"));
  });
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().what, "not today");
}

TEST_F(SmallAnswers, AParentIsACodeOfTheBookOrWords) {
  const auto registers = nursery.ask([](store::Reading& reading) { return reading.registers(); });
  const auto code = mothers_row().code.text();
  std::optional<book::PlantId> id;
  std::string said;
  ASSERT_TRUE(give_parent(code, registers, id, said));
  EXPECT_EQ(id, mother);
  EXPECT_TRUE(said.empty());
  for (const auto* words :
       {"Old Sentinel", "", "P", "P1", "Pa7", "P 17 at the gate", "7P17", "P1x"}) {
    ASSERT_TRUE(give_parent(words, registers, id, said)) << words;
    EXPECT_FALSE(id) << words;
    EXPECT_EQ(said, words);
  }
  auto mistyped = code;
  mistyped.back() = mistyped.back() == 'A' ? 'B' : 'A';
  EXPECT_FALSE(give_parent(mistyped, registers, id, said));
  mistyped.front() = 'p';
  EXPECT_FALSE(give_parent(mistyped, registers, id, said));
  EXPECT_TRUE(said.empty());
  const auto absent = give_parent(Code::of(Kind::plant, 17, 99)->text(), registers, id, said);
  ASSERT_FALSE(absent);
  EXPECT_NE(absent.error().text().find("there is no plant"), std::string::npos);
  // The code of something else is no parent: it stands as it was written.
  const auto tray = Code::of(Kind::tray, 17, 1)->text();
  ASSERT_TRUE(give_parent(tray, registers, id, said));
  EXPECT_EQ(said, tray);
}

TEST(OriginSaid, TakesPurchasesApartAndLeavesNamesAsTheyAre) {
  const auto code = Code::of(Kind::purchase, 17, 1).value();
  const book::Purchase purchase{{}, code, {}, "Kiln of Hill", day("2025-05-05"), ""};
  const auto name = purchase_name(purchase);
  EXPECT_EQ(origin_said(name, Days::iso), code.text() + " of 2025-05-05, from Kiln of Hill");
  auto nobody = purchase;
  nobody.supplier.clear();
  EXPECT_EQ(origin_said(purchase_name(nobody), Days::iso),
            code.text() + " of 2025-05-05, from an unnamed supplier");
  EXPECT_EQ(origin_said("Ada × unknown", Days::iso), "Ada × unknown");
  const auto tray = Code::of(Kind::tray, 17, 1)->text();
  for (const auto& plain :
       {std::string("Ada × Bo"), std::string("Queen of the Hill × Bo"), code.text() + " of Bo",
        code.text() + " of 2025-05-05; from Kiln", code.text() + " of 2025-13-05, from Kiln",
        tray + " of 2025-05-05, from Kiln"})
    EXPECT_EQ(origin_said(plain, Days::iso), plain);
}

TEST_F(SmallAnswers, ALotWhoseMakingWasTakenBackSaysSo) {
  const auto cone = nursery.cone(mother);
  const auto batch = nursery.harvest(cone, "2025-02-01", 50);
  const auto tray = nursery.lot(Kind::tray, cone);
  const auto sowing = nursery.enter(book::Verb::sow, "2025-03-01", tray,
                                    {{batch, State::unsorted, tray, State::sown, 40}});
  const auto split = nursery.lot(Kind::batch, cone);
  nursery.enter(book::Verb::move, "2025-03-02", split,
                {{batch, State::unsorted, split, State::unsorted, 5}});
  const auto what = [&](book::LotId lot) {
    return nursery.ask([&](store::Reading& reading) {
      return line_back(reading, reading.registers(), reading.lot(lot)).steps.back().what;
    });
  };
  EXPECT_EQ(what(tray), "sown");
  EXPECT_EQ(what(batch), "counted");
  EXPECT_EQ(what(split), "split off");
  nursery.reverse(sowing);
  EXPECT_EQ(what(tray), "taken back");
}

TEST_F(SmallAnswers, ALabelCountsFromItsLastSightOrPrint) {
  const auto batch = nursery.harvest(nursery.cone(mother), "2025-02-01", 50);
  const auto stale = [&](std::string_view today, int days) {
    return nursery.ask(
        [&](store::Reading& reading) { return labels_to_renew(reading, day(today), days); });
  };
  // The day of entry is what the book saw last of it: today by the computer's clock, so that only a
  // later day makes it old.
  EXPECT_TRUE(stale("2025-02-02", 100'000).empty());
  const auto old = stale("2199-01-01", 30);
  ASSERT_EQ(old.size(), 1U);
  EXPECT_EQ(old[0].code, nursery.lot_of(batch).code);
  EXPECT_FALSE(old[0].printed);
  EXPECT_EQ(old[0].times_printed, 0);
  nursery.write([&](store::Writing& writing) {
    static_cast<void>(writing.see({{}, batch, {}, day("2198-12-20"), {}, "", {}}).value());
    return true;
  });
  EXPECT_TRUE(stale("2199-01-01", 30).empty());
  EXPECT_EQ(stale("2199-03-01", 30).size(), 1U);
}

// Eleven to thirteen months by common practice; nine harvested cones of the book alone decide.
TEST_F(SmallAnswers, ARipeConeIsExpectedByTheTaxonThenByTheBook) {
  const auto standing = nursery.cone(mother, "2024-06-01");
  const auto of_standing = [&] {
    const auto all = courses();
    return *std::ranges::find_if(
        all, [&](const auto& course) { return course.line.cone.id == standing; });
  };
  EXPECT_DOUBLE_EQ(of_standing().ripe_months.low, 11);
  EXPECT_NE(of_standing().ripe_months.basis.find("common practice"), std::string::npos);
  for (const auto* source : {"", "a book on cycads"}) {
    nursery.write([&](store::Writing& writing) {
      auto taxon = writing.registers().taxa.front();
      taxon.ripening = {book::Range{10, 14}, source};
      return writing.put(taxon).value();
    });
    EXPECT_DOUBLE_EQ(of_standing().ripe_months.high, 14);
    EXPECT_EQ(of_standing().ripe_months.basis,
              *source == 0 ? "the taxon" : "the taxon (a book on cycads)");
  }
  nursery.harvest(nursery.cone(mother, "2023-06-01"), "2024-12-01", 50); // 549 days: 18.04 months
  EXPECT_NEAR(of_standing().ripe_months.high, 18.04, 0.01);
  EXPECT_NE(of_standing().ripe_months.basis.find("and 1 cone of this book"), std::string::npos);
  for (int i = 0; i < 8; ++i)
    nursery.harvest(nursery.cone(mother, "2023-06-01"), "2024-06-01", 50); // 366 days: 12.02
  EXPECT_NEAR(of_standing().ripe_months.low, 12.02, 0.01);
  EXPECT_EQ(of_standing().ripe_months.basis, "9 cones of this book");
}

} // namespace
} // namespace coneline::work
