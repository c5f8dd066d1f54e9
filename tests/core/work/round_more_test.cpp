// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds and sightings off the usual way: rounds that are not there or have ended, labels twice,
// lots that are no trays, what was seen in two places, what stands nowhere.
#include "core/store/proof.h"
#include "core/work/harvest.h"
#include "core/work/labels_to_renew.h"
#include "core/work/leave.h"
#include "core/work/relocate.h"
#include "core/work/reverse.h"
#include "core/work/round.h"
#include "core/work/seen_there.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using tests::day;

class RoundsOffTheWay : public testing::Test {
 protected:
  RoundsOffTheWay() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {
    other = book.write([&](store::Writing& writing) -> Result<Code> {
                  auto code = writing.next_code(Kind::place).value();
                  const auto house = writing.registers().places.front().id;
                  return writing
                      .put(book::Place{{},
                                       code,
                                       "Other bench",
                                       book::PlaceKind::bench,
                                       house,
                                       3000,
                                       1200,
                                       book::Light::part_shade,
                                       3})
                      .map([&](auto) { return code; });
                })
                .value();
    trays = sown(90, 3, first.bench);
  }
  std::vector<Code> sown(std::int64_t seeds, int in, std::optional<Code> place) {
    return sow(book, {first.batch, book::State::unsorted, Count::sure(seeds), in, "seed tray",
                      "gritty", place, on("2026-02-10")})
        ->made;
  }
  static Noted on(std::string_view iso = "2026-03-10") { return {day(iso), "", ""}; }
  Code house() {
    return book
        .read([](store::Reading& reading) { return reading.registers().places.front().code; })
        .value();
  }
  RoundView view(book::RoundId id) {
    return book
        .read([&](store::Reading& reading) {
          return view_round(reading, reading.registers(), round_of(reading, id).value());
        })
        .value();
  }
  Result<ScanDone> scan(book::RoundId round, const Code& code) {
    return scan_in_round(book, round, code.text(), on());
  }
  Result<SeenThere> pictures(const Code& place, const std::vector<ReadLabel>& labels) {
    return book.read([&](store::Reading& reading) {
      return seen_in_pictures(reading, reading.registers(), place, labels);
    });
  }
  Result<SeenThere> log(const std::optional<Code>& place, const std::vector<ReadLabel>& labels) {
    return book.read([&](store::Reading& reading) {
      return seen_in_log(reading, reading.registers(), place, labels);
    });
  }
  template <class Given>
  static void refused(const Result<Given>& result, std::string_view why) {
    ASSERT_FALSE(result);
    EXPECT_NE(result.error().text().find(why), std::string::npos) << result.error().text();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
  Code other;
  std::vector<Code> trays;
};

TEST_F(RoundsOffTheWay, NothingIsDoneOnARoundThatIsNotThereOrHasEnded) {
  const auto round = begin_round(book, {first.bench, on()}).value();
  ASSERT_TRUE(end_round(book, round, on()));
  const auto entries = store::prove(book).value().entries;
  for (const auto& [id, why] : {std::pair(round, "this round ended on 2026-03-10"),
                                std::pair(book::RoundId{99}, "there is no round 99")}) {
    refused(scan_in_round(book, id, trays[0].text(), on()), why);
    refused(scan_and_look(book, id, trays[0].text(), {1, 0, 0}, on()), why);
    refused(tap_in_round(book, id, {1, 0, 0}), why);
    refused(finish_look(book, id, on()), why);
    refused(leave_bench(book, id), why);
    refused(undo_in_round(book, id, on()), why);
    refused(end_round(book, id, on()), why);
  }
  EXPECT_EQ(store::prove(book).value().entries, entries);
  refused(begin_round(book, {Code::of(Kind::place, 17, 99).value(), on()}), "there is no place");
}

TEST_F(RoundsOffTheWay, ALabelScannedTwiceIsHeardOnce) {
  const auto round = begin_round(book, {first.bench, on()}).value();
  refused(finish_look(book, round, on()), "no tray is in the hand");
  refused(tap_in_round(book, round, {1, 0, 0}), "counts without a tray in the hand");
  ASSERT_TRUE(scan(round, other));
  const auto bench = scan(round, other);
  EXPECT_EQ(bench->heard, Heard::again);
  EXPECT_EQ(bench->done.told, "Other bench was scanned already");
  ASSERT_TRUE(scan(round, trays[0]));
  const auto tray = scan(round, trays[0]);
  EXPECT_EQ(tray->heard, Heard::again);
  EXPECT_NE(tray->done.told.find("is in the hand already"), std::string::npos);
  EXPECT_EQ(view(round).moved, 1);
  // A look at the tray in the hand is told as the look, not as the repeated scan.
  const auto looked = scan_and_look(book, round, trays[0].text(), {2, 0, 0}, on());
  ASSERT_TRUE(looked) << looked.error().text();
  EXPECT_EQ(looked->done.told.find("already"), std::string::npos) << looked->done.told;
  EXPECT_EQ(view(round).found.roots, 2);
  EXPECT_EQ(view(round).next, trays[1]);
  refused(scan_and_look(book, round, "", {1, 0, 0}, on()), "no code was given");
}

TEST_F(RoundsOffTheWay, LotsThatAreNoTraysAreSeenAndMovedButNotCounted) {
  const auto round = begin_round(book, {first.bench, on()}).value();
  ASSERT_TRUE(scan(round, other));
  const auto seed = scan(round, first.batch); // it stands nowhere yet
  ASSERT_TRUE(seed) << seed.error().text();
  EXPECT_EQ(seed->heard, Heard::other_lot);
  EXPECT_NE(seed->done.told.find("not counted on a round"), std::string::npos);
  EXPECT_FALSE(view(round).in_hand);
  refused(scan_and_look(book, round, first.batch.text(), {1, 0, 0}, on()), "is no tray");
  ASSERT_TRUE(leave_bench(book, round));
  ASSERT_TRUE(scan(round, trays[2])); // stays where it stands
  const auto end = view(round);
  EXPECT_EQ(end.moved, 1); // the seed
  EXPECT_EQ(end.planned, 3);
  ASSERT_EQ(end.trays.size(), 4U);
  EXPECT_FALSE(end.trays[3].planned);
  EXPECT_EQ(end.seen, 1);
  EXPECT_EQ(end.next, trays[0]); // after the last one the round begins again at the first
}

TEST_F(RoundsOffTheWay, ATrayThatIsTakenBackOrEmptiedMeanwhileIsNotMissed) {
  const auto loose = sown(20, 1, std::nullopt);
  const auto round = begin_round(book, {house(), on()}).value();
  EXPECT_EQ(view(round).planned, 3); // the one without a place is in no house
  ASSERT_TRUE(leave(
      book,
      {trays[1], WayOut::dead, book::State::sown, Count::sure(30), "", {}, on("2026-03-11")}));
  const auto sowing = book.read([&](store::Reading& reading) {
                            return reading.entries_of(reading.lot(trays[2]).value().id).front().id;
                          })
                          .value();
  ASSERT_TRUE(reverse(book, {sowing, "", ""}));
  const auto now = view(round);
  EXPECT_EQ(now.planned, 3);
  EXPECT_EQ(now.not_found, 1);
  EXPECT_EQ(now.next, trays[0]);
  EXPECT_FALSE(now.trays[1].holds);
  EXPECT_EQ(now.trays[2].code, trays[2]);
  EXPECT_FALSE(now.undoable);
  ASSERT_TRUE(scan(round, trays[0]));
  ASSERT_TRUE(tap_in_round(book, round, {1, 0, 0}));
  EXPECT_TRUE(view(round).undoable);
}

TEST_F(RoundsOffTheWay, WithoutAPlaceARoundTakesWhatIsDue) {
  refused(begin_round(book, {std::nullopt, on("2026-02-10")}),
          "no tray is due for a look on 2026-02-10");
  const auto round = begin_round(book, {std::nullopt, on()});
  ASSERT_TRUE(round) << round.error().text();
  EXPECT_EQ(view(*round).planned, 3);
}

TEST_F(RoundsOffTheWay, ALogTellsWhereEachWasScannedAfterWhichBench) {
  const auto on_day = day("2026-03-05");
  const auto loose = sown(20, 1, std::nullopt);
  const auto found = log(std::nullopt, {{trays[2].text(), "log", on_day}, // where the book has it
                                        {loose[0].text(), "log", on_day}, // the book has it nowhere
                                        {other.text(), "log", on_day},
                                        {trays[0].text(), "log", on_day},
                                        {first.cone.text(), "log", on_day},
                                        {"HELLO", "log", on_day},
                                        {"HELLO", "log", on_day}, // told once
                                        {first.bench.text(), "log", on_day}});
  ASSERT_TRUE(found);
  EXPECT_EQ(found->seen.size(), 2U);
  ASSERT_EQ(found->moves.size(), 1U);
  EXPECT_EQ(found->moves[0].code, trays[0]);
  ASSERT_EQ(found->unplaced.size(), 3U);
  EXPECT_NE(found->unplaced[0].why.find("has no place in the book"), std::string::npos);
  EXPECT_NE(found->unplaced[1].why.find("label of a cone"), std::string::npos);
  ASSERT_EQ(found->not_seen.size(), 1U); // of the two benches passed
  EXPECT_EQ(found->not_seen[0].code, trays[1]);
  EXPECT_FALSE(found->not_seen[0].last_seen);
  const auto begun = log(other, {{trays[0].text(), "log", on_day}});
  ASSERT_EQ(begun->moves.size(), 1U);
  ASSERT_TRUE(note_seen(book, *begun, book::SeenBy::log));
  const auto later = log(first.bench, {});
  ASSERT_EQ(later->not_seen.size(), 3U);
  EXPECT_EQ(later->not_seen[0].last_seen, on_day);
  refused(log(first.cone, {}), "is no place of this book");
  refused(pictures(first.cone, {}), "is no place of this book");
}

TEST_F(RoundsOffTheWay, PicturesThatContradictAreSaidToBeDoubtful) {
  const auto on_day = day("2026-03-05");
  // On one day in two places.
  auto found = pictures(house(), {{first.bench.text(), "a.jpg", on_day},
                                  {trays[0].text(), "a.jpg", on_day},
                                  {other.text(), "b.jpg", on_day},
                                  {trays[0].text(), "b.jpg", on_day}});
  ASSERT_EQ(found->moves.size(), 1U);
  EXPECT_EQ(found->moves[0].doubt, "on the same day it was seen on Bench too (a.jpg)");
  // An older picture says nothing against a younger one.
  found = pictures(house(), {{first.bench.text(), "a.jpg", on_day},
                             {trays[0].text(), "a.jpg", on_day},
                             {other.text(), "b.jpg", day("2026-03-01")},
                             {trays[0].text(), "b.jpg", day("2026-03-01")}});
  EXPECT_TRUE(found->moves.empty());
  ASSERT_EQ(found->seen.size(), 1U);
  EXPECT_EQ(found->seen[0].source, "a.jpg");
  // A bench that is not in the place the pictures were taken of.
  found = pictures(other, {{first.bench.text(), "c.jpg", on_day}});
  ASSERT_EQ(found->unplaced.size(), 1U);
  EXPECT_NE(found->unplaced[0].why.find("Bench is not within Other bench"), std::string::npos);
  // What has ended is not seen.
  ASSERT_TRUE(leave(
      book,
      {trays[1], WayOut::dead, book::State::sown, Count::sure(30), "", {}, on("2026-03-01")}));
  found = pictures(other, {{trays[1].text(), "d.jpg", on_day}});
  ASSERT_EQ(found->unplaced.size(), 1U);
  EXPECT_NE(found->unplaced[0].why.find("has ended"), std::string::npos);
}

TEST_F(RoundsOffTheWay, WhatWasMovedSinceIsProposedWithDoubtOrNotAtAll) {
  ASSERT_TRUE(relocate(book, Relocate{{trays[0]}, other, on("2026-03-08")}));
  // Seen on the other bench before the book has it there: the book knows.
  auto found = pictures(other, {{trays[0].text(), "a.jpg", day("2026-03-05")}});
  EXPECT_TRUE(found->moves.empty());
  // Seen in a third place before that: the later move stands against it.
  const auto bay = book.write([&](store::Writing& writing) -> Result<Code> {
                         auto code = writing.next_code(Kind::place).value();
                         return writing
                             .put(book::Place{{},
                                              code,
                                              "Shade",
                                              book::PlaceKind::bench,
                                              {},
                                              1000,
                                              1000,
                                              book::Light::shade,
                                              9})
                             .map([&](auto) { return code; });
                       })
                       .value();
  found = pictures(bay, {{trays[0].text(), "a.jpg", day("2026-03-05")}});
  ASSERT_EQ(found->moves.size(), 1U);
  EXPECT_EQ(found->moves[0].doubt, "the book has it on Other bench since then");
  const auto none = accept_moves(book, {}, "");
  EXPECT_EQ(none->told, "nothing to move");
  EXPECT_EQ(accept_moves(book, found->moves, "Ann")->told, "1 lot moved");
  auto impossible = found->moves;
  impossible[0].code = Code::of(Kind::tray, 17, 99).value();
  refused(accept_moves(book, impossible, ""), "there is no");
}

} // namespace
} // namespace coneline::work
