// SPDX-License-Identifier: GPL-3.0-or-later
// Which work is done with what caution, and that every verb says its own.
#include "core/work/cautions.h"
#include "core/work/clean.h"
#include "core/work/cone_course.h"
#include "core/work/harvest.h"
#include "core/work/inspect.h"
#include "core/work/keep.h"
#include "core/work/leave.h"
#include "core/work/pollen.h"
#include "core/work/pollinate.h"
#include "core/work/pot.h"
#include "core/work/recheck.h"
#include "core/work/relocate.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace coneline::work {
namespace {

using book::State;
using book::Verb;
using tests::day;

bool has(Verb verb, const char* caution) {
  return std::ranges::count(cautions_of(verb), caution) == 1;
}

TEST(Cautions, AreSaidOfTheWorkThatCanHurt) {
  for (const auto verb : {Verb::harvest, Verb::clean, Verb::sort, Verb::open, Verb::store,
                          Verb::sow, Verb::sell, Verb::discard, Verb::buy_in, Verb::plant_out})
    EXPECT_TRUE(has(verb, caution::poison)) << book::word(verb);
  for (const auto verb :
       {Verb::pollinate, Verb::check_scales, Verb::watch_male_cone, Verb::collect_pollen,
        Verb::harvest, Verb::pot, Verb::pot_on, Verb::plant_out})
    EXPECT_TRUE(has(verb, caution::spines)) << book::word(verb);
  for (const auto verb : {Verb::sow, Verb::pot, Verb::pot_on})
    EXPECT_TRUE(has(verb, caution::dust)) << book::word(verb);
  for (const auto verb : {Verb::pot, Verb::pot_on, Verb::move, Verb::plan_move, Verb::plant_out})
    EXPECT_TRUE(has(verb, caution::lifting)) << book::word(verb);
  for (const auto verb : {Verb::sell, Verb::buy_in})
    EXPECT_TRUE(has(verb, caution::permit)) << book::word(verb);
  EXPECT_TRUE(has(Verb::clean, caution::drill));
  EXPECT_TRUE(has(Verb::sow, caution::heat));
  EXPECT_TRUE(has(Verb::harvest, caution::powders));
  for (const auto verb : {Verb::recount, Verb::reverse, Verb::correct, Verb::print_label})
    EXPECT_TRUE(cautions_of(verb).empty()) << book::word(verb);
}

TEST(Cautions, AreShortAndNoneComesTwice) {
  for (const auto& [verb, word] : book::Words<Verb>::all) {
    const auto all = cautions_told(verb);
    EXPECT_EQ(std::set<std::string>(all.begin(), all.end()).size(), all.size()) << word;
    for (const auto& caution : all)
      EXPECT_LE(caution.size(), 200U) << caution;
  }
}

TEST(Cautions, EveryVerbSaysItsOwn) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  auto book = tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto on = [](std::string_view iso) { return Noted{day(iso), "", ""}; };
  const auto n = [](std::int64_t count) { return Count::sure(count); };
  const auto says = [](const Result<Done>& done, Verb verb) {
    ASSERT_TRUE(done) << done.error().text();
    EXPECT_EQ(done->cautions, cautions_told(verb)) << book::word(verb);
  };
  const auto passed = pollinate(
      book, {first.mother, book::PollinationMethod::dry, {{first.pollen, {}}}, on("2026-03-09")});
  says(passed, Verb::pollinate);
  ASSERT_TRUE(passed);
  const auto cone = passed->made.at(0);
  says(check_scales(book, {cone, book::Scales::loose, {}, on("2026-03-09")}), Verb::check_scales);
  says(watch_male_cone(book, {first.father, book::MaleCone::shedding, on("2026-03-09")}),
       Verb::watch_male_cone);
  says(collect_pollen(book, {first.father, 1.0, "box", on("2026-03-09")}), Verb::collect_pollen);
  says(harvest(book, {cone, n(50), on("2026-03-10")}), Verb::harvest);
  says(clean(book, {first.batch, 3, n(1), on("2026-03-10")}), Verb::clean);
  says(sow(book, {first.batch, {}, n(20), 1, "seed tray", "gritty", {}, on("2026-03-11")}),
       Verb::sow);
  says(buy_in(book, {"Cycas revoluta", "Kiln", n(9), {}, {}, on("2026-03-11")}), Verb::buy_in);
  says(leave(book, {first.batch, WayOut::sold, State::unsorted, n(2), "", {}, on("2026-03-12")}),
       Verb::sell);
  says(leave(book,
             {first.batch, WayOut::discarded, State::unsorted, n(2), "", {}, on("2026-03-12")}),
       Verb::discard);
  says(leave(book, {first.batch, WayOut::dead, State::unsorted, n(2), "", {}, on("2026-03-12")}),
       Verb::lose);
  says(keep(book, {first.batch, "box", {}, {}, {}, {}, on("2026-03-13")}), Verb::store);
  says(open(book, {first.batch, State::unsorted, n(4), n(3), on("2026-03-14")}), Verb::open);
}

} // namespace
} // namespace coneline::work
