// SPDX-License-Identifier: GPL-3.0-or-later
// Entries that say nothing or too much: refused with what is wrong, and nothing is written.
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::store {
namespace {

using book::Verb;

class EntryRanges : public testing::Test {
 protected:
  EntryRanges() : book_(tests::make_first_cone(scratch_.at("t.coneline"), first)) {
    rows = book_.read([](Reading& reading) { return reading.registers(); }).value();
  }

  std::size_t entries() {
    return book_.read([](Reading& reading) { return reading.last_entries(1000).size(); }).value();
  }
  std::string enter(const book::Entry& entry) {
    const auto before = entries();
    const auto done = book_.write([&](Writing& writing) { return writing.enter(entry); });
    EXPECT_EQ(entries(), before + (done ? 1 : 0));
    return done ? "written" : done.error().what;
  }
  std::string enter(Verb verb, book::Detail detail) {
    book::Entry entry;
    entry.verb = verb;
    entry.date = tests::day("2026-02-02");
    entry.detail = std::move(detail);
    if (verb == Verb::pollinate || verb == Verb::check_scales)
      entry.cone = rows.cones[0].id;
    return enter(entry);
  }

  tests::Scratch scratch_;
  tests::FirstCone first;
  Book book_;
  book::Registers rows;
};

TEST_F(EntryRanges, APollenNoteHasAmountsAboveZeroAndBothCounts) {
  const auto note = [&](std::optional<double> millilitres, std::optional<std::int64_t> counted,
                        std::optional<std::int64_t> germinated) {
    return enter(Verb::test_pollen,
                 book::PollenNote{rows.pollen_lots[0].id, millilitres, counted, germinated, ""});
  };
  EXPECT_EQ(note(0.5, {}, {}), "written");
  EXPECT_EQ(note({}, 50, 0), "written");
  EXPECT_EQ(note({}, 50, 50), "written");
  EXPECT_EQ(note(0, {}, {}), "0 ml of pollen");
  EXPECT_EQ(note(-1, {}, {}), "-1 ml of pollen");
  EXPECT_EQ(note(HUGE_VAL, {}, {}), "inf ml of pollen");
  EXPECT_EQ(note({}, 50, {}), "a viability test counts grains and those that germinated");
  EXPECT_EQ(note({}, {}, 3), "a viability test counts grains and those that germinated");
  EXPECT_EQ(note({}, 0, 0), "0 germinated of 0 counted");
  EXPECT_EQ(note({}, 50, -1), "-1 germinated of 50 counted");
  EXPECT_EQ(note({}, 50, 51), "51 germinated of 50 counted");
}

TEST_F(EntryRanges, AConesFertileScalesAreCountedOrNot) {
  const auto look = [&](std::optional<std::int64_t> scales) {
    return enter(Verb::check_scales, book::ConeLook{book::Scales::loose, scales});
  };
  EXPECT_EQ(look({}), "written");
  EXPECT_EQ(look(1), "written");
  EXPECT_EQ(look(0), "0 fertile scales");
}

TEST_F(EntryRanges, ANoteOfAPlantSaysOneOfTwoThings) {
  const auto note = [&](std::optional<book::MaleCone> cone, std::optional<book::PlaceId> to) {
    return enter(Verb::watch_male_cone, book::PlantNote{rows.plants[1].id, cone, to});
  };
  const std::string one = "a note of a plant says what its male cone is like, or where it shall go";
  EXPECT_EQ(note(book::MaleCone::shedding, {}), "written");
  EXPECT_EQ(note({}, rows.places[0].id), "written");
  EXPECT_EQ(note({}, {}), one);
  EXPECT_EQ(note(book::MaleCone::shedding, rows.places[0].id), one);
}

TEST_F(EntryRanges, WhatIsPutOffHasADayAndWhatIsDismissedHasNone) {
  const auto answer = [&](Verb verb, std::string due, std::optional<Date> until) {
    return enter(verb, book::DueAnswer{std::move(due), until});
  };
  const auto later = tests::day("2026-02-09");
  const std::string both = "what is put off has a day, and what is dismissed has none";
  EXPECT_EQ(answer(Verb::put_off, "inspect T171X", later), "written");
  EXPECT_EQ(answer(Verb::dismiss, "inspect T171X", {}), "written");
  EXPECT_EQ(answer(Verb::put_off, "", later), "an answer to nothing that was due");
  EXPECT_EQ(answer(Verb::put_off, "inspect T171X", {}), both);
  EXPECT_EQ(answer(Verb::dismiss, "inspect T171X", later), both);
}

TEST_F(EntryRanges, APollinationHasPollenOrSaysThatNobodyKnows) {
  const auto pass = [&](std::vector<book::PollenUsed> pollen) {
    return enter(Verb::pollinate,
                 book::Pollination{book::PollinationMethod::dry, std::move(pollen)});
  };
  EXPECT_EQ(pass({{}}), "written"); // the father is not known
  EXPECT_EQ(pass({{rows.pollen_lots[0].id, 0.5}, {{}, {}}}), "written");
  EXPECT_EQ(pass({}), "a pollination without pollen");
  EXPECT_EQ(pass({{rows.pollen_lots[0].id, 0.0}}), "0 ml of pollen");
  EXPECT_EQ(pass({{rows.pollen_lots[0].id, HUGE_VAL}}), "inf ml of pollen");
}

TEST_F(EntryRanges, WeightsAreAboveZero) {
  const auto weigh = [&](std::vector<double> hundreds, double grams) {
    return enter(Verb::inspect, book::Weighing{std::move(hundreds), grams});
  };
  EXPECT_EQ(weigh({15.2, 14.9}, 30), "written");
  EXPECT_EQ(weigh({15.2, 0}, 30), "100 seeds of 0 g, all of it 30 g");
  EXPECT_EQ(weigh({15.2}, 0), "100 seeds of 15.2 g, all of it 0 g");
  EXPECT_EQ(weigh({15.2}, HUGE_VAL), "100 seeds of 15.2 g, all of it inf g");
}

TEST_F(EntryRanges, SoakingAndStoresAreWithinWhatAFileMaySay) {
  EXPECT_EQ(enter(Verb::clean, book::Cleaning{0}), "written");
  EXPECT_EQ(enter(Verb::clean, book::Cleaning{1'000'000}), "written");
  EXPECT_EQ(enter(Verb::clean, book::Cleaning{1'000'001}), "1000001 days of soaking");
  EXPECT_EQ(enter(Verb::clean, book::Cleaning{-1}), "-1 days of soaking");
  EXPECT_EQ(enter(Verb::store, book::Keeping{"box", -5.5, {}, {}}), "written");
  EXPECT_EQ(enter(Verb::store, book::Keeping{"box", std::nan(""), {}, {}}), "seed kept at nan °C");
}

TEST_F(EntryRanges, APlaceNeedsALotAndAReversalWhatItReverses) {
  book::Entry entry;
  entry.date = tests::day("2026-02-02");
  entry.place = rows.places[1].id;
  EXPECT_EQ(enter(entry), "a place without a lot to stand there");
  entry.place.reset();
  entry.verb = Verb::reverse;
  const std::string names = "a reversal names the entry it reverses, and nothing else does";
  EXPECT_EQ(enter(entry), names);
  entry.verb = Verb::inspect;
  entry.reverses = first.harvest;
  EXPECT_EQ(enter(entry), names);
}

TEST_F(EntryRanges, AReversalIsTheMirrorOfAnEntryThatStands) {
  const auto made =
      book_.read([&](Reading& reading) { return reading.entry(first.harvest); }).value();
  book::Entry back;
  back.verb = Verb::reverse;
  back.reverses = first.harvest;
  back.date = made.date;
  back.lot = made.lot;
  back.movements = made.movements;
  const auto no_mirror = fmt::format("this is not the mirror of entry {}", first.harvest.value);
  EXPECT_EQ(enter(back), no_mirror);
  for (auto& movement : back.movements)
    std::swap(movement.from, movement.to);
  back.date = made.date.plus_days(1);
  EXPECT_EQ(enter(back), no_mirror);
  back.date = made.date;
  auto missing = back;
  missing.reverses = book::EntryId{999};
  EXPECT_NE(enter(missing), "written");
  EXPECT_EQ(enter(back), "written");
  EXPECT_EQ(enter(back), fmt::format("entry {} was reversed already, by entry {}",
                                     first.harvest.value, first.harvest.value + 1));
  auto again = back;
  again.reverses = book::EntryId{first.harvest.value + 1};
  EXPECT_EQ(enter(again), fmt::format("entry {} is itself a reversal", first.harvest.value + 1));
}

} // namespace
} // namespace coneline::store
