// SPDX-License-Identifier: GPL-3.0-or-later
// What is due, from an invented nursery's book: when, how it is told, and what becomes of it when
// it is answered, put off or dismissed.
#include "core/work/due.h"
#include "tests/core/work/small_nursery.h"

#include <algorithm>

namespace coneline::work {
namespace {

using tests::day;

/// A tray sown on 1 January 2026 whose 8 seedlings may go into pots of 1 litre from six months on,
/// and five plants in such pots that may go on into larger ones from a year on.
class DueTest : public testing::Test {
 protected:
  DueTest() {
    nursery_.write([&](store::Writing& writing) {
      large_ =
          writing.put(book::Pot{{}, "5 L", 5, book::Shape::round, 200, 200, 1, "test"}).value();
      const auto step = [&](book::PotId pot, double low, double high) {
        return book::RouteStep{pot, nursery_.mix(),     book::Range::of(low, high).value(),
                               1,   book::Light::shade, "test"};
      };
      return writing
          .put(book::Route{{},
                           nursery_.taxon(),
                           0.6,
                           book::Range::of(1, 9).value(),
                           "test",
                           {step(nursery_.tray_pot(), 6, 12), step(nursery_.pot(), 12, 24),
                            step(large_, 24, 36)}})
          .value();
    });
    mother_ = nursery_.plant("Grey Lady", book::Sex::female);
    cone_ = nursery_.cone(mother_);
    batch_ = nursery_.harvest(cone_, "2025-12-01", 100);
    tray_ = nursery_.sow(batch_, "2026-01-01", 50);
    nursery_.inspect(tray_, "2026-04-01", 14, 0);
    nursery_.inspect(tray_, "2026-05-01", 0, 13);
    group_ = nursery_.lot(Kind::pot_group, cone_);
    nursery_.enter(book::Verb::pot, "2026-05-02", group_,
                   {{tray_, book::State::leaf, group_, book::State::plant, 5}});
  }

  std::vector<Due> due(std::string_view on, const DueHabits& habits = {}) {
    return nursery_.ask([&](store::Reading& reading) {
      return due_on(reading, reading.registers(), day(on), habits);
    });
  }
  std::optional<Due> find(DueKind kind, const Code& code, std::string_view on) {
    const auto all = due(on);
    const auto found = std::ranges::find_if(
        all, [&](const Due& each) { return each.kind == kind && each.code == code; });
    return found == all.end() ? std::nullopt : std::optional(*found);
  }
  void soak(std::string_view on, int days) {
    book::Entry entry;
    entry.verb = book::Verb::clean;
    entry.date = day(on);
    entry.lot = batch_;
    entry.detail = book::Cleaning{days};
    nursery_.enter(entry);
  }
  book::EntryId judged(std::string_view on, std::int64_t filled) {
    book::Entry entry;
    entry.verb = book::Verb::sort;
    entry.date = day(on);
    entry.lot = batch_;
    entry.detail = book::Sorting{book::SeedTest::floating};
    entry.movements = {{{batch_, book::State::unsorted},
                        {batch_, book::State::judged_filled},
                        Count::sure(filled)}};
    return nursery_.enter(entry);
  }
  Code code(book::LotId lot) { return nursery_.lot_of(lot).code; }
  Code cone_code() {
    return nursery_.ask(
        [&](store::Reading& reading) { return reading.registers().cone(cone_).code; });
  }

  tests::SmallNursery nursery_;
  book::PotId large_;
  book::PlantId mother_;
  book::ConeId cone_;
  book::LotId batch_;
  book::LotId tray_;
  book::LotId group_;
};

TEST_F(DueTest, SeedlingsMayGoIntoPotsFromTheEarlyEndOfTheirStep) {
  EXPECT_FALSE(find(DueKind::pot, code(tray_), "2026-06-30"));
  const auto pot = find(DueKind::pot, code(tray_), "2026-07-01");
  ASSERT_TRUE(pot);
  EXPECT_EQ(pot->from, day("2026-07-01"));
  EXPECT_EQ(pot->to, day("2027-01-01"));
  EXPECT_EQ(pot->told.substr(0, 13), "8 seedlings o");
  EXPECT_EQ(pot->missed, "");
  EXPECT_EQ(find(DueKind::pot, code(tray_), "2027-01-02")->missed, "late: 1 day");
}

/// Put in water on the 4th for three days.
TEST_F(DueTest, SoakingSeedIsDueUntilItIsTakenOut) {
  const Code batch = code(batch_);
  soak("2026-01-04", 3);
  const auto first = find(DueKind::water, batch, "2026-01-05");
  ASSERT_TRUE(first);
  EXPECT_EQ(first->to, day("2026-01-07"));
  EXPECT_NE(first->told.find("are soaking"), std::string::npos) << first->told;
  EXPECT_FALSE(find(DueKind::store, batch, "2026-03-01")) << "it is still in the water";
  const auto late = find(DueKind::water, batch, "2026-03-01");
  ASSERT_TRUE(late) << "seed is forgotten in the water";
  EXPECT_EQ(late->missed, "late: 53 days");
  EXPECT_NE(late->told.find("take them out"), std::string::npos) << late->told;
  soak("2026-01-07", 0); // taken out
  EXPECT_FALSE(find(DueKind::water, batch, "2026-03-01"));
}

TEST_F(DueTest, SeedThatWasJudgedSownOrPutByNoLongerSoaks) {
  const Code batch = code(batch_);
  const auto soaks = [&] { return find(DueKind::water, batch, "2026-01-09").has_value(); };
  soak("2026-01-04", 3);
  ASSERT_TRUE(soaks());
  const auto before = judged("2026-01-04", 20);
  EXPECT_TRUE(soaks()) << "judged before it went into the water";
  const auto after = judged("2026-01-08", 20);
  EXPECT_FALSE(soaks());
  nursery_.reverse(after);
  nursery_.reverse(before);
  ASSERT_TRUE(soaks());
  const auto sown = nursery_.sow(batch_, "2026-01-08", 10);
  EXPECT_FALSE(soaks());
  nursery_.reverse(
      nursery_.ask([&](store::Reading& reading) { return reading.entries_of(sown).front().id; }));
  ASSERT_TRUE(soaks());
  book::Entry store;
  store.verb = book::Verb::store;
  store.date = day("2026-01-08");
  store.lot = batch_;
  store.detail = book::Keeping{"refrigerator", 5.0, {}, {}};
  nursery_.enter(store);
  EXPECT_FALSE(soaks());
  EXPECT_FALSE(find(DueKind::store, batch, "2027-01-09")) << "put by, with no day to look at it";
  EXPECT_FALSE(find(DueKind::sow, batch, "2027-01-09"));
}

/// Of 50 unsorted seeds 30 are judged filled, and a part of them is sown.
TEST_F(DueTest, SeedThatIsNeitherPutByNorSownWaits) {
  const Code batch = code(batch_);
  soak("2026-01-04", 0);
  EXPECT_FALSE(find(DueKind::store, batch, "2026-01-17"));
  const auto clean = find(DueKind::store, batch, "2026-01-18");
  ASSERT_TRUE(clean);
  EXPECT_EQ(clean->told.substr(0, 19), "50 clean seeds of G") << clean->told;
  judged("2026-01-10", 30);
  const auto tray = nursery_.lot(Kind::tray, cone_);
  nursery_.enter(book::Verb::sow, "2026-01-20", tray,
                 {{batch_, book::State::judged_filled, tray, book::State::sown, 22}});
  EXPECT_FALSE(find(DueKind::store, batch, "2026-02-02"));
  const auto left = find(DueKind::store, batch, "2026-02-03");
  ASSERT_TRUE(left);
  EXPECT_EQ(left->told.substr(0, 18), "8 judged filled of") << left->told;
  EXPECT_EQ(find(DueKind::store, batch, "2026-02-11")->missed, "late: 8 days");
  nursery_.enter(book::Verb::sow, "2026-02-12", tray,
                 {{batch_, book::State::judged_filled, tray, book::State::sown, 8},
                  {batch_, book::State::unsorted, tray, book::State::sown, 20}});
  EXPECT_FALSE(find(DueKind::store, batch, "2026-04-01"));
}

TEST_F(DueTest, OneSeedlingIsToldAsOne) {
  nursery_.enter(book::Verb::pot, "2026-06-01", group_,
                 {{tray_, book::State::leaf, group_, book::State::plant, 7}});
  EXPECT_EQ(find(DueKind::pot, code(tray_), "2026-07-01")->told.substr(0, 14), "1 seedling of ");
}

TEST_F(DueTest, PlantsMoveOnIntoTheNextPotOfTheirRoute) {
  EXPECT_FALSE(find(DueKind::pot_on, code(group_), "2027-05-01"));
  const auto on = find(DueKind::pot_on, code(group_), "2027-05-02");
  ASSERT_TRUE(on);
  EXPECT_EQ(on->to, day("2028-05-02"));
  EXPECT_NE(on->told.find("into '5 L'"), std::string::npos) << on->told;
  EXPECT_EQ(on->told.substr(0, 9), "5 plants ");
}

/// 8 seedlings into pots of one litre; the five plants are not due for as long again.
TEST_F(DueTest, MixIsToBeReadyAMonthAheadOfThePots) {
  const auto mix = [&](std::string_view on) {
    return find(DueKind::have_mix_ready, code(tray_), on);
  };
  EXPECT_FALSE(mix("2026-05-31"));
  const auto first = mix("2026-06-01");
  ASSERT_TRUE(first);
  EXPECT_EQ(first->from, day("2026-06-01"));
  EXPECT_EQ(first->told.substr(0, 31), "8 L of 'cycad mix' for 8 plants") << first->told;
}

/// By May 2027 both are to be potted: 8 L for the seedlings, 25 L for the plants.
TEST_F(DueTest, MixOfAllThatIsToBePottedIsOneThing) {
  const auto mix = find(DueKind::have_mix_ready, code(tray_), "2027-05-02");
  ASSERT_TRUE(mix);
  EXPECT_EQ(mix->told.substr(0, 33), "33 L of 'cycad mix' for 13 plants") << mix->told;
  EXPECT_FALSE(find(DueKind::have_mix_ready, code(group_), "2027-05-02"));
}

TEST_F(DueTest, ALabelThatWasAskedForIsDueUntilItIsPrinted) {
  for (const auto& wanted : {code(tray_), cone_code()}) {
    ASSERT_TRUE(want_label(nursery_.book(), wanted, {day("2026-06-10"), "", ""}));
    const auto label = find(DueKind::print_label, wanted, "2026-06-10");
    ASSERT_TRUE(label) << wanted.text();
    EXPECT_TRUE(label->done_at_once);
    EXPECT_NE(label->told.find("a new label for " + wanted.text()), std::string::npos);
    ASSERT_TRUE(do_due(nursery_.book(), label->key, {day("2026-06-11"), "", ""}));
    EXPECT_FALSE(find(DueKind::print_label, wanted, "2026-06-11")) << wanted.text();
  }
  EXPECT_FALSE(want_label(nursery_.book(), Code::of(Kind::tray, 17, 99).value(),
                          {day("2026-06-10"), "", ""}));
  EXPECT_FALSE(want_label(nursery_.book(), Code::of(Kind::cone, 17, 99).value(),
                          {day("2026-06-10"), "", ""}));
}

TEST_F(DueTest, IsPutOffOrDismissedForAReasonAlone) {
  const auto look = find(DueKind::inspect, code(tray_), "2026-06-01");
  ASSERT_TRUE(look);
  const Noted plain{day("2026-06-01"), "", ""};
  EXPECT_FALSE(answer_due(nursery_.book(), {"no such key", day("2026-06-09"), plain}));
  EXPECT_FALSE(answer_due(nursery_.book(), {look->key, day("2026-06-01"), plain})) << "not later";
  EXPECT_FALSE(answer_due(nursery_.book(), {look->key, std::nullopt, plain})) << "without a reason";
  EXPECT_FALSE(do_due(nursery_.book(), look->key, plain)) << "needs more than a tick";
  ASSERT_TRUE(answer_due(nursery_.book(), {look->key, day("2026-06-09"), plain}));
  EXPECT_FALSE(find(DueKind::inspect, code(tray_), "2026-06-08"));
  EXPECT_EQ(find(DueKind::inspect, code(tray_), "2026-06-09")->times_put_off, 1);
  ASSERT_TRUE(
      answer_due(nursery_.book(), {look->key, std::nullopt, {day("2026-06-09"), "", "away"}}));
  EXPECT_FALSE(find(DueKind::inspect, code(tray_), "2026-07-09"));
}

TEST_F(DueTest, WhatIsMeantIsSaidByACodeAKindWithItOrTheKey) {
  const auto meant = [&](const std::string& typed) {
    return nursery_.book().read([&](store::Reading& reading) {
      return due_meant(reading, reading.registers(), typed, day("2026-08-01"));
    });
  };
  const auto tray = code(tray_).text();
  const auto several = meant(tray);
  ASSERT_FALSE(several);
  EXPECT_NE(several.error().text().find("'pot " + tray), std::string::npos)
      << several.error().text();
  ASSERT_TRUE(meant("pot " + tray));
  EXPECT_EQ(meant("pot " + tray)->kind, DueKind::pot);
  EXPECT_EQ(meant(meant("inspect " + tray)->key)->kind, DueKind::inspect);
  EXPECT_FALSE(meant("nothing of the kind"));
}

TEST_F(DueTest, WhatWasDoneOrDismissedIsSettledInItsDays) {
  const auto look = find(DueKind::inspect, code(tray_), "2026-06-01").value();
  ASSERT_TRUE(
      answer_due(nursery_.book(), {look.key, std::nullopt, {day("2026-06-01"), "", "away"}}));
  const auto settled = [&](std::string_view first, std::string_view last) {
    return nursery_.ask([&](store::Reading& reading) {
      return settled_since(reading, reading.registers(), day(first), day(last));
    });
  };
  const auto june = settled("2026-06-01", "2026-06-30");
  ASSERT_EQ(june.size(), 1U);
  EXPECT_EQ(june[0].key, look.key);
  EXPECT_TRUE(june[0].dismissed);
  EXPECT_EQ(june[0].told, "away");
  const auto spring = settled("2026-04-01", "2026-05-31");
  ASSERT_EQ(spring.size(), 2U) << "the two looks at the tray";
  EXPECT_EQ(spring[0].key, "inspect " + code(tray_).text() + " 0");
  EXPECT_EQ(spring[1].told, "inspect " + code(tray_).text());
  EXPECT_FALSE(spring[1].dismissed);
}

TEST_F(DueTest, StandsInWalkingOrderOrInThatOfDays) {
  DueHabits far;
  far.days_ahead = 400;
  const auto all = due("2026-06-01", far);
  ASSERT_GT(all.size(), 3U);
  const auto ordered = by_day(all);
  EXPECT_TRUE(std::ranges::is_sorted(ordered, {}, &Due::from));
  EXPECT_TRUE(std::ranges::is_sorted(all, {}, &Due::walk));
}

} // namespace
} // namespace coneline::work
