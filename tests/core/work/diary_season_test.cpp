// SPDX-License-Identifier: GPL-3.0-or-later
// A season played through from the first look at the scales to the harvest, and what the diary
// refuses on the way. Days between passes and months to ripeness are common practice, no source.
#include "core/store/proof.h"
#include "core/work/cone_course.h"
#include "core/work/correct.h"
#include "core/work/due.h"
#include "core/work/harvest.h"
#include "core/work/overview.h"
#include "core/work/pollen.h"
#include "core/work/pollinate.h"
#include "core/work/reverse.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using book::MaleCone;
using book::Scales;
using tests::day;

Noted on(std::string_view date, std::string note = {}) {
  return {day(date), "Ana", std::move(note)};
}

class Diary : public testing::Test {
 protected:
  Diary() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  Code new_cone(std::string_view seen) {
    return book
        .write([&](store::Writing& writing) -> Result<Code> {
          const auto code = writing.next_code(Kind::cone).value();
          const auto registers = writing.registers();
          const auto mother = book::coded(registers.plants, first.mother)->id;
          return writing.put(book::Cone{{}, code, mother, day(seen), ""}).map([&](auto) {
            return code;
          });
        })
        .value();
  }
  std::vector<Due> due(std::string_view date, int ahead = 0) {
    DueHabits habits;
    habits.days_ahead = ahead;
    return book
        .read([&](store::Reading& reading) {
          return due_on(reading, reading.registers(), day(date), habits);
        })
        .value();
  }
  std::optional<Due> find(std::string_view date, const Code& code, DueKind kind, int ahead = 0) {
    for (auto& each : due(date, ahead))
      if (each.code == code && each.kind == kind)
        return each;
    return std::nullopt;
  }
  ConeCourse course(const Code& cone) {
    return book
        .read([&](store::Reading& reading) {
          for (auto& each : cone_courses(reading, reading.registers()))
            if (each.line.cone.code == cone)
              return each;
          throw std::out_of_range("no such cone");
        })
        .value();
  }
  PollenLine pollen(const Code& lot) {
    return book
        .read([&](store::Reading& reading) {
          for (auto& each : pollen_lines(reading, reading.registers()))
            if (each.lot.code == lot)
              return each;
          throw std::out_of_range("no such lot");
        })
        .value();
  }
  Result<Done> pass(const Code& cone, const Code& lot, std::string_view date,
                    std::optional<double> ml) {
    return pollinate(book, {cone, book::PollinationMethod::dry, {{lot, ml}}, on(date)});
  }
  Result<Done> look(const Code& cone, Scales scales, std::string_view date) {
    return check_scales(book, {cone, scales, std::nullopt, on(date)});
  }
  template <class Given>
  void refused(const Result<Given>& result, std::string_view why) {
    ASSERT_FALSE(result);
    EXPECT_NE(result.error().text().find(why), std::string::npos) << result.error().text();
    EXPECT_FALSE(result.error().remedy.empty());
    const auto proof = store::prove(book).value();
    EXPECT_TRUE(proof.holds()) << proof.faults.front();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(Diary, ASeasonFromTheFirstLookToTheHarvest) {
  // The male comes loose, is taken off, and sheds.
  EXPECT_FALSE(find("2026-05-01", first.father, DueKind::collect_pollen));
  ASSERT_TRUE(watch_male_cone(book, {first.father, MaleCone::shedding, on("2026-05-01")}));
  EXPECT_TRUE(find("2026-05-01", first.father, DueKind::collect_pollen));
  const auto removed = watch_male_cone(book, {first.father, MaleCone::removed, on("2026-05-01")});
  ASSERT_TRUE(removed);
  ASSERT_EQ(removed->cautions.size(), 3U);
  EXPECT_NE(removed->cautions[1].find("spines"), std::string::npos);
  EXPECT_NE(removed->cautions[2].find("Sulfur"), std::string::npos);
  const auto lot =
      collect_pollen(book, {first.father, 2.0, "refrigerator, dry", on("2026-05-02")})->made.at(0);
  EXPECT_FALSE(find("2026-05-03", first.father, DueKind::collect_pollen)) << "one day after";
  EXPECT_TRUE(find("2026-05-04", first.father, DueKind::collect_pollen)) << "every second day";
  EXPECT_EQ(find("2026-05-04", first.father, DueKind::collect_pollen)->to, day("2026-05-05"));
  ASSERT_TRUE(collect_pollen(book, {lot, 1.5, "", on("2026-05-04")}));
  ASSERT_TRUE(watch_male_cone(book, {first.father, MaleCone::spent, on("2026-05-06")}));
  EXPECT_FALSE(find("2026-05-07", first.father, DueKind::collect_pollen));
  EXPECT_NEAR(*pollen(lot).left, 3.5, 1e-12);
  EXPECT_EQ(pollen(lot).old_from, day("2028-05-02")) << "two years in a refrigerator";

  // The female: tight, loose, three passes, closed.
  const auto cone = new_cone("2026-05-03");
  EXPECT_FALSE(find("2026-05-09", cone, DueKind::check_scales));
  EXPECT_TRUE(find("2026-05-10", cone, DueKind::check_scales));
  ASSERT_TRUE(look(cone, Scales::tight, "2026-05-10"));
  EXPECT_FALSE(find("2026-05-10", cone, DueKind::check_scales));
  EXPECT_FALSE(find("2026-05-10", cone, DueKind::pollinate)) << "still tight";
  ASSERT_TRUE(check_scales(book, {cone, Scales::loose, 150, on("2026-05-17")}));
  EXPECT_EQ(find("2026-05-17", cone, DueKind::pollinate)->key, "pollinate " + cone.text() + " 0");
  for (const auto* date : {"2026-05-17", "2026-05-19", "2026-05-22"})
    ASSERT_TRUE(pass(cone, lot, date, 0.5));
  EXPECT_FALSE(find("2026-05-23", cone, DueKind::pollinate));
  const auto next = find("2026-05-24", cone, DueKind::pollinate);
  ASSERT_TRUE(next);
  EXPECT_EQ(next->to, day("2026-05-25"));
  EXPECT_TRUE(next->missed.empty());
  EXPECT_EQ(find("2026-05-26", cone, DueKind::pollinate)->missed, "late: 1 day");
  EXPECT_NEAR(*pollen(lot).left, 2.0, 1e-12);
  ASSERT_TRUE(look(cone, Scales::closed, "2026-05-25"));
  EXPECT_FALSE(find("2026-05-26", cone, DueKind::pollinate));
  const auto now = course(cone);
  EXPECT_EQ(now.receptive_from, day("2026-05-17"));
  EXPECT_EQ(now.receptive_to, day("2026-05-22"));
  EXPECT_EQ(now.closed, day("2026-05-25"));
  ASSERT_TRUE(now.seeds);
  EXPECT_EQ(now.seeds->high, 300) << "two a fertile scale (Sydney eFlora, Macrozamia)";

  // Ten to fourteen months, widened by the harvested cone of this book; then checks, then harvest.
  ASSERT_TRUE(now.ripe_from);
  const auto early = now.ripe_from->iso();
  EXPECT_FALSE(find(now.ripe_from->plus_days(-1).iso(), cone, DueKind::harvest));
  EXPECT_TRUE(find(early, cone, DueKind::harvest));
  ASSERT_TRUE(look(cone, Scales::closed, early));
  EXPECT_FALSE(find(early, cone, DueKind::harvest)) << "looked at";
  EXPECT_TRUE(find(now.ripe_from->plus_days(7).iso(), cone, DueKind::harvest));
  const auto apart = now.ripe_from->plus_days(40);
  ASSERT_TRUE(look(cone, Scales::coming_apart, apart.iso()));
  EXPECT_NE(find(apart.iso(), cone, DueKind::harvest)->told.find("comes apart"), std::string::npos);
  const auto done = harvest(book, {cone, Count::sure(212), {apart, "", ""}});
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_FALSE(find(apart.iso(), cone, DueKind::harvest));
  const auto rows =
      book.read([](store::Reading& reading) { return pollen_by_age(reading, reading.registers()); })
          .value();
  const auto row = std::ranges::find(rows, "refrigerator, dry", &PollenAgeRow::store);
  ASSERT_NE(row, rows.end());
  EXPECT_EQ(row->years, 0);
  EXPECT_EQ(row->seeds_of_ceiling, 212);
  EXPECT_EQ(row->ceiling, 300);
  const auto proof = store::prove(book).value();
  EXPECT_TRUE(proof.holds()) << proof.faults.front();
}

TEST_F(Diary, PollenBeforeItWasCollectedOrAfterItRanOut) {
  const auto cone = new_cone("2026-05-01");
  refused(pass(cone, first.pollen, "2025-01-19", 0.5), "was collected on 2025-01-20, 1 days after");
  ASSERT_TRUE(pass(cone, first.pollen, "2026-05-10", 3.0));
  refused(pass(cone, first.pollen, "2026-05-12", 1.0), "has 0.5 ml on 2026-05-12, 0.5 ml less");
  refused(pass(cone, first.pollen, "2026-05-08", 1.0), "0.5 ml less");
  ASSERT_TRUE(pass(cone, first.pollen, "2026-05-12", 0.5));
  refused(pass(cone, first.pollen, "2026-05-14", std::nullopt), "it ran out");
  refused(discard_pollen(book, {first.pollen, std::nullopt, on("2026-05-15")}), "it ran out");
  ASSERT_TRUE(collect_pollen(book, {first.pollen, 1.0, "", on("2026-05-16")}));
  ASSERT_TRUE(pass(cone, first.pollen, "2026-05-16", 0.25));
  const auto thrown = discard_pollen(book, {first.pollen, std::nullopt, on("2026-05-17")});
  ASSERT_TRUE(thrown);
  refused(pass(cone, first.pollen, "2026-05-18", 0.1), "thrown away on 2026-05-17");
  ASSERT_TRUE(reverse(book, {thrown->entries.at(0), "", ""}));
  EXPECT_TRUE(pass(cone, first.pollen, "2026-05-18", 0.1));
}

TEST_F(Diary, ACollectionIsTakenBackOnlyWhereItsPollenWasNotUsed) {
  const auto collected =
      collect_pollen(book, {first.father, 2.0, "refrigerator", on("2026-05-01")}).value();
  const auto lot = collected.made.at(0);
  const auto more = collect_pollen(book, {lot, 1.0, "", on("2026-05-03")}).value().entries.at(0);
  const auto take_back = [&](book::EntryId entry) { return reverse(book, {entry, "", ""}); };
  const auto cone = new_cone("2026-05-01");
  const auto used = pass(cone, lot, "2026-05-10", 2.5);
  ASSERT_TRUE(used);
  refused(take_back(more), "has 0.5 ml too little on 2026-05-10");
  ASSERT_TRUE(take_back(used->entries.at(0)));
  const auto half = pass(cone, lot, "2026-05-10", 2.0);
  ASSERT_TRUE(half);
  const auto unmeasured = pass(cone, lot, "2026-05-12", std::nullopt);
  ASSERT_TRUE(unmeasured);
  refused(take_back(more), "nothing of " + lot.text() + " is left on 2026-05-12");
  ASSERT_TRUE(take_back(unmeasured->entries.at(0)));
  ASSERT_TRUE(take_back(more));
  refused(take_back(collected.entries.at(0)), "was used on 2026-05-10");
  ASSERT_TRUE(take_back(half->entries.at(0)));
  ASSERT_TRUE(take_back(collected.entries.at(0)));
}

TEST_F(Diary, AFemaleGivesNoPollenAndAClosedConeTakesNone) {
  refused(collect_pollen(book, {first.mother, 1.0, "", on("2026-05-01")}), "female");
  refused(watch_male_cone(book, {first.mother, MaleCone::shedding, on("2026-05-01")}), "female");
  const auto sex = [&](const Code& plant, book::Sex to) {
    return correct(book, {plant,
                          [to](book::Plant& row, const book::Registers&) -> Result<void> {
                            row.sex = to;
                            return {};
                          },
                          on("2026-05-01")});
  };
  refused(sex(first.father, book::Sex::female), "came from it");
  refused(sex(first.mother, book::Sex::male), "is a female cone of it");
  const auto cone = new_cone("2026-05-01");
  ASSERT_TRUE(pass(cone, first.pollen, "2026-05-10", 0.5));
  const auto closed = look(cone, Scales::closed, "2026-05-12");
  ASSERT_TRUE(closed);
  refused(pass(cone, first.pollen, "2026-05-14", 0.5), "closed on 2026-05-12, 2 days before");
  refused(look(cone, Scales::loose, "2026-05-14"), "closed on 2026-05-12");
  EXPECT_TRUE(pass(cone, first.pollen, "2026-05-12", 0.5)) << "on the day itself";
  ASSERT_TRUE(reverse(book, {closed->entries.at(0), "", ""}));
  EXPECT_TRUE(pass(cone, first.pollen, "2026-05-14", 0.5));
}

TEST_F(Diary, APlantIsNotItsOwnAncestor) {
  const auto parent = [&](const Code& of, const Code& is) {
    return correct(book, {of,
                          [is](book::Plant& row, const book::Registers& all) -> Result<void> {
                            row.seed_parent = book::coded(all.plants, is)->id;
                            return {};
                          },
                          on("2026-05-01")});
  };
  refused(parent(first.mother, first.mother), "its own ancestor");
  ASSERT_TRUE(parent(first.father, first.mother));
  refused(parent(first.mother, first.father), "its own ancestor");
}

TEST_F(Diary, WhatStoodBeforeIsKept) {
  const auto done =
      correct(book, {first.father,
                     [](book::Plant& row, const book::Registers&) -> Result<void> {
                       row.name = "Grey Twin";
                       row.papers.push_back({"permit", "12", day("2020-01-01"), "office", ""});
                       return {};
                     },
                     on("2026-05-01")});
  ASSERT_TRUE(done);
  const auto entries =
      book.read([&](store::Reading& reading) {
            const auto registers = reading.registers();
            return reading.entries_of(book::coded(registers.plants, first.father)->id);
          })
          .value();
  ASSERT_EQ(entries.size(), 1U);
  const auto& changes = std::get<book::Correction>(entries[0].detail).changes;
  ASSERT_EQ(changes.size(), 2U);
  EXPECT_EQ(changes[0].stood, "Father");
  EXPECT_EQ(changes[0].stands, "Grey Twin");
  EXPECT_EQ(changes[1].stands, "permit 12 of 2020-01-01, office");
  refused(reverse(book, {done->entries.at(0), "", ""}), "corrected the register");
  refused(correct(book, {first.father,
                         [](book::Plant&, const book::Registers&) -> Result<void> { return {}; },
                         on("2026-05-01")}),
          "nothing changes");
}

TEST_F(Diary, WhatIsDueIsPutOffDismissedAndBroughtBack) {
  const auto cone = new_cone("2026-05-01");
  const auto key = find("2026-05-08", cone, DueKind::check_scales)->key;
  refused(answer_due(book, {key, day("2026-05-08"), on("2026-05-08")}), "not after");
  refused(answer_due(book, {key, std::nullopt, on("2026-05-08")}), "without a reason");
  refused(answer_due(book, {"inspect T999X 0", std::nullopt, on("2026-05-08", "no")}), "not due");
  ASSERT_TRUE(answer_due(book, {key, day("2026-05-11"), on("2026-05-08", "rain")}));
  EXPECT_FALSE(find("2026-05-10", cone, DueKind::check_scales));
  const auto back = find("2026-05-11", cone, DueKind::check_scales);
  ASSERT_TRUE(back);
  EXPECT_EQ(back->from, day("2026-05-11"));
  EXPECT_EQ(back->times_put_off, 1);
  const auto struck = answer_due(book, {key, std::nullopt, on("2026-05-11", "aborted")});
  ASSERT_TRUE(struck);
  EXPECT_FALSE(find("2026-05-12", cone, DueKind::check_scales));
  ASSERT_TRUE(reverse(book, {struck->entries.at(0), "", ""}));
  EXPECT_TRUE(find("2026-05-12", cone, DueKind::check_scales));
}

TEST_F(Diary, PlantsInTheGroundMoveAfterWinterOnTheirHemisphere) {
  using book::Hemisphere;
  EXPECT_FALSE(moving_window(Hemisphere::not_known, day("2026-06-01")));
  EXPECT_EQ(moving_window(Hemisphere::northern, day("2026-06-01"))->from, day("2027-03-01"));
  EXPECT_EQ(moving_window(Hemisphere::northern, day("2026-04-30"))->from, day("2026-03-01"));
  EXPECT_EQ(moving_window(Hemisphere::southern, day("2026-06-01"))->from, day("2026-09-01"));
  ASSERT_TRUE(plan_move(book, first.father, first.bench, on("2026-06-01")));
  const auto now = find("2026-06-01", first.father, DueKind::move_plant);
  ASSERT_TRUE(now) << "nobody said that it stands in the ground";
  ASSERT_TRUE(book.write([&](store::Writing& writing) -> Result<void> {
    auto title = writing.title();
    title.hemisphere = Hemisphere::southern;
    return writing.put(title);
  }));
  ASSERT_TRUE(correct(book, {first.father,
                             [](book::Plant& row, const book::Registers&) -> Result<void> {
                               row.stands_in = book::StandsIn::ground;
                               return {};
                             },
                             on("2026-06-01")}));
  EXPECT_FALSE(find("2026-08-31", first.father, DueKind::move_plant));
  EXPECT_TRUE(find("2026-09-01", first.father, DueKind::move_plant));
  EXPECT_EQ(find("2026-11-01", first.father, DueKind::move_plant)->missed,
            "missed: the time for it ended on 2026-10-31");
  ASSERT_TRUE(do_due(book, now->key, on("2026-09-02")));
  EXPECT_FALSE(find("2026-09-03", first.father, DueKind::move_plant));
}

TEST_F(Diary, ALabelIsPrintedFromTheList) {
  ASSERT_TRUE(want_label(book, first.batch, on("2026-02-11")));
  const auto label = find("2026-02-12", first.batch, DueKind::print_label);
  ASSERT_TRUE(label);
  EXPECT_TRUE(label->done_at_once);
  ASSERT_TRUE(do_due(book, label->key, on("2026-02-12")));
  EXPECT_FALSE(find("2026-02-13", first.batch, DueKind::print_label));
  const auto clean = find("2026-03-12", first.batch, DueKind::clean);
  ASSERT_TRUE(clean);
  refused(do_due(book, clean->key, on("2026-03-12")), "needs more than a tick");
}

TEST_F(Diary, ViabilityHasARange) {
  refused(test_pollen(book, {first.pollen, 10, 11, "", on("2026-05-01")}), "11 germinated of 10");
  refused(test_pollen(book, {first.pollen, 10, 5, "", on("2025-01-01")}), "after this test");
  ASSERT_TRUE(test_pollen(book, {first.pollen, 263, 81, "10 % sugar", on("2026-05-01")}));
  const auto line = pollen(first.pollen);
  ASSERT_EQ(line.tests.size(), 1U);
  // Newcombe 1998, Statistics in Medicine 17:857-872: 81 of 263, Wilson's interval.
  EXPECT_NEAR(line.tests[0].range.low, 0.2553, 5e-5);
  EXPECT_NEAR(line.tests[0].range.high, 0.3662, 5e-5);
}

} // namespace
} // namespace coneline::work
