// SPDX-License-Identifier: GPL-3.0-or-later
// A round step by step, what it refuses, and what is left of it when the program is killed.
#include "core/store/proof.h"
#include "core/work/find_code.h"
#include "core/work/leave.h"
#include "core/work/round.h"
#include "core/work/scan_text.h"
#include "core/work/seen_there.h"
#include "core/work/sow.h"
#include "core/work/tell_label.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

namespace coneline::work {
namespace {

using tests::day;

class Rounds : public testing::Test {
 protected:
  Rounds() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {
    other = book.write([&](store::Writing& writing) -> Result<Code> {
                  auto code = writing.next_code(Kind::place).value();
                  const auto house = writing.registers().places.front().id;
                  auto put = writing.put(book::Place{{},
                                                     code,
                                                     "Other bench",
                                                     book::PlaceKind::bench,
                                                     house,
                                                     3000,
                                                     1200,
                                                     book::Light::part_shade,
                                                     3});
                  if (!put)
                    return refuse(put.error());
                  return code;
                })
                .value();
    trays = sow(book, {first.batch,
                       book::State::unsorted,
                       Count::sure(120),
                       3,
                       "seed tray",
                       "gritty",
                       first.bench,
                       {day("2026-02-10"), "", ""}})
                ->made;
  }
  Noted on(std::string_view iso = "2026-03-10") { return {day(iso), "", ""}; }
  book::RoundId began() { return begin_round(book, {{}, on()}).value(); }
  Result<ScanDone> scan(book::RoundId round, const Code& code) {
    return scan_in_round(book, round, code.text(), on());
  }
  RoundView view(book::RoundId id) {
    return book
        .read([&](store::Reading& reading) {
          return view_round(reading, reading.registers(), round_of(reading, id).value());
        })
        .value();
  }
  std::string place_of(const Code& code) {
    return book
        .read([&](store::Reading& reading) {
          return reading.registers().place(reading.places().at(reading.lot(code).value().id)).name;
        })
        .value();
  }
  template <class Value>
  void refused(const Result<Value>& result, std::string_view why) {
    ASSERT_FALSE(result);
    EXPECT_NE(result.error().text().find(why), std::string::npos) << result.error().text();
  }
  void proven() {
    const auto proof = store::prove(book).value();
    EXPECT_TRUE(proof.holds()) << proof.faults.front();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
  Code other;
  std::vector<Code> trays;
};

TEST_F(Rounds, CountsMovesAndTellsWhatWasNotFound) {
  const auto round = began();
  EXPECT_EQ(view(round).planned, 3);
  ASSERT_TRUE(scan(round, trays[0]));
  ASSERT_TRUE(tap_in_round(book, round, {3, 1, 2}));
  // The next scan enters what was tapped.
  ASSERT_TRUE(scan(round, other));
  ASSERT_TRUE(scan(round, trays[1])); // moved, since a bench was scanned before it
  ASSERT_TRUE(finish_look(book, round, on()));
  ASSERT_TRUE(end_round(book, round, on()));
  const auto end = view(round);
  EXPECT_EQ(end.counted, 2);
  EXPECT_EQ(end.moved, 1);
  EXPECT_EQ(end.not_found, 1);
  EXPECT_EQ(end.found, (book::Tapped{3, 1, 2}));
  EXPECT_FALSE(end.trays[2].seen);
  EXPECT_EQ(place_of(trays[0]), "Bench");
  EXPECT_EQ(place_of(trays[1]), "Other bench");
  refused(scan(round, trays[2]), "ended on 2026-03-10");
  proven();
}

TEST_F(Rounds, TakesBackTapsThenLooksThenMoves) {
  const auto round = began();
  ASSERT_TRUE(scan(round, other));
  ASSERT_TRUE(scan(round, trays[0]));
  ASSERT_TRUE(tap_in_round(book, round, {2, 1, 1}));
  ASSERT_TRUE(finish_look(book, round, on()));
  ASSERT_TRUE(undo_in_round(book, round, on())); // the look: the tray is in the hand again
  EXPECT_EQ(view(round).in_hand, trays[0]);
  EXPECT_EQ(view(round).round.tapped, (book::Tapped{2, 1, 1}));
  EXPECT_EQ(view(round).counted, 0);
  ASSERT_TRUE(undo_in_round(book, round, on())); // the taps
  EXPECT_TRUE(view(round).round.tapped.none());
  ASSERT_TRUE(undo_in_round(book, round, on())); // the move
  EXPECT_EQ(place_of(trays[0]), "Bench");
  refused(undo_in_round(book, round, on()), "nothing of this round");
  proven();
}

TEST_F(Rounds, WhatIsTakenBackForGoodIsNotEnteredAgain) {
  const auto round = began();
  ASSERT_TRUE(scan_and_look(book, round, trays[0].text(), {1, 0, 0}, on()));
  ASSERT_TRUE(undo_in_round(book, round, on(), TakenBack::for_good));
  EXPECT_FALSE(view(round).in_hand);
  ASSERT_TRUE(scan(round, trays[1]));
  const auto end = end_round(book, round, on());
  ASSERT_TRUE(end);
  EXPECT_TRUE(end->entries.empty());
  EXPECT_EQ(view(round).counted, 0);
  proven();
}

TEST_F(Rounds, SaysPlainlyWhatIsNoTrayOfThisBook) {
  const auto round = began();
  ASSERT_TRUE(scan(round, trays[0]));
  ASSERT_TRUE(tap_in_round(book, round, {1, 0, 0}));
  const auto foreign =
      Code::of(Kind::tray, trays[0].series() == 99 ? 10 : trays[0].series() + 1, 1).value();
  refused(scan(round, foreign), "label of another book");
  refused(scan(round, Code::of(Kind::tray, trays[0].series(), 999).value()), "there is no tray");
  refused(scan(round, first.cone), "label of a cone");
  const auto whole = trays[1].text();
  const auto half = whole.substr(0, whole.size() - 1);
  refused(scan_in_round(book, round, half, on()), "");
  const std::string reversed(whole.rbegin(), whole.rend());
  refused(scan_in_round(book, round, reversed, on()), "");
  refused(scan_in_round(book, round, "", on()), "");
  refused(scan_in_round(book, round, "4006381333931", on()), "");
  ASSERT_TRUE(leave(
      book,
      {trays[2], WayOut::dead, book::State::sown, Count::sure(40), "", {}, on("2026-03-01")}));
  refused(scan(round, trays[2]), "has ended");
  // Nothing of what was in the hand was lost by any of these.
  EXPECT_EQ(view(round).in_hand, trays[0]);
  EXPECT_EQ(view(round).round.tapped, (book::Tapped{1, 0, 0}));
  proven();
}

TEST_F(Rounds, RefusesCountsThatATrayCannotHoldAndKeepsThem) {
  const auto round = began();
  ASSERT_TRUE(scan(round, trays[0]));
  ASSERT_TRUE(tap_in_round(book, round, {500, 0, 0}));
  EXPECT_FALSE(finish_look(book, round, on()));
  EXPECT_FALSE(scan(round, trays[1]));
  EXPECT_EQ(view(round).in_hand, trays[0]);
  EXPECT_EQ(view(round).round.tapped.roots, 500);
}

TEST_F(Rounds, TakesAScanWithItsCountsWholeOrNotAtAll) {
  const auto round = began();
  ASSERT_TRUE(scan(round, other));
  ASSERT_TRUE(scan(round, trays[0]));
  ASSERT_TRUE(tap_in_round(book, round, {1, 0, 0}));
  EXPECT_FALSE(scan_and_look(book, round, trays[1].text(), {500, 0, 0}, on()));
  refused(scan_and_look(book, round, first.bench.text(), {1, 0, 0}, on()), "no tray");
  // Neither was the tray before entered, nor this one moved, nor the bench left.
  EXPECT_EQ(view(round).in_hand, trays[0]);
  EXPECT_EQ(view(round).round.tapped.roots, 1);
  EXPECT_EQ(view(round).counted, 0);
  EXPECT_EQ(place_of(trays[1]), "Bench");
  ASSERT_TRUE(scan_and_look(book, round, trays[1].text(), {2, 0, 0}, on()));
  EXPECT_EQ(view(round).found.roots, 3);
  EXPECT_EQ(view(round).moved, 2);
  EXPECT_FALSE(view(round).in_hand);
  proven();
}

TEST_F(Rounds, GoesOnAfterTheProgramWasKilled) {
  const auto round = began();
  ASSERT_TRUE(scan(round, trays[0]));
  ASSERT_TRUE(tap_in_round(book, round, {1, 0, 0}));
  const auto path = book.path();
  const auto child = ::fork();
  ASSERT_GE(child, 0);
  if (child == 0) {
    auto mine = store::Book::open(path, store::Access::write).value();
    static_cast<void>(tap_in_round(mine, round, {4, 0, 0}));
    static_cast<void>(scan_in_round(mine, round, trays[1].text(), on())); // enters the 4
    static_cast<void>(tap_in_round(mine, round, {0, 0, 7}));
    ::raise(SIGKILL);
  }
  int status = 0;
  ASSERT_EQ(::waitpid(child, &status, 0), child);
  ASSERT_TRUE(WIFSIGNALED(status));
  auto again = store::Book::open(path, store::Access::write).value();
  const auto open = again.read([](store::Reading& reading) { return open_round(reading); }).value();
  ASSERT_TRUE(open);
  EXPECT_EQ(open->tapped, (book::Tapped{0, 0, 7}));
  const auto stands = view(round);
  EXPECT_EQ(stands.in_hand, trays[1]);
  EXPECT_EQ(stands.found.roots, 4);
  EXPECT_EQ(stands.next, trays[2]);
  ASSERT_TRUE(finish_look(again, round, on()));
  EXPECT_EQ(view(round).found, (book::Tapped{4, 0, 7}));
  proven();
}

TEST_F(Rounds, WalksAHouseAndTakesOneRoundAtATime) {
  const auto house =
      book.read([](store::Reading& reading) { return reading.registers().places.front().code; })
          .value();
  refused(begin_round(book, {other, on()}), "no tray stands on Other bench");
  refused(begin_round(book, {first.cone, on()}), "");
  ASSERT_TRUE(begin_round(book, {house, on()}));
  refused(begin_round(book, {house, on()}), "has not ended");
}

TEST_F(Rounds, ProposesMovesFromPicturesAndListsWhatWasNotSeen) {
  const auto on_day = day("2026-03-05");
  const auto ask = [&](const Code& place, const std::vector<ReadLabel>& labels) {
    return book
        .read([&](store::Reading& reading) {
          return seen_in_pictures(reading, reading.registers(), place, labels);
        })
        .value();
  };
  const std::vector<ReadLabel> labels{{trays[0].text(), "a.jpg", on_day},
                                      {"HELLO", "a.jpg", on_day},
                                      {trays[1].text(), "b.jpg", on_day},
                                      {first.father.text(), "b.jpg", on_day}};
  const auto found = ask(other, labels);
  EXPECT_EQ(found.seen.size(), 2U);
  EXPECT_EQ(found.moves.size(), 2U);
  EXPECT_EQ(found.unplaced.size(), 2U);
  EXPECT_TRUE(found.not_seen.empty()); // nothing stands there by the book
  ASSERT_EQ(note_seen(book, found, book::SeenBy::picture).value(), 2);
  EXPECT_EQ(note_seen(book, found, book::SeenBy::picture).value(), 0); // the same pictures again
  EXPECT_EQ(place_of(trays[0]), "Bench");                              // not moved by being seen
  ASSERT_TRUE(accept_moves(book, found.moves, ""));
  EXPECT_EQ(place_of(trays[0]), "Other bench");
  const auto bench = ask(first.bench, {});
  ASSERT_EQ(bench.not_seen.size(), 1U);
  EXPECT_EQ(bench.not_seen.front().code, trays[2]);
  // In the house they all stand where they may; a bench's own label says more exactly.
  const auto house =
      book.read([](store::Reading& reading) { return reading.registers().places.front().code; })
          .value();
  EXPECT_TRUE(ask(house, labels).moves.empty());
  const auto exact = ask(house, {{first.bench.text(), "c.jpg", day("2026-03-20")},
                                 {trays[0].text(), "c.jpg", day("2026-03-20")}});
  ASSERT_EQ(exact.moves.size(), 1U);
  proven();
}

TEST_F(Rounds, TellsAllALabelAnswers) {
  const auto told =
      book.read([&](store::Reading& reading) {
            return tell_label(reading, reading.registers(), trays[0], day("2026-03-10"));
          })
          .value();
  EXPECT_EQ(told.holds.front().second, 40);
  EXPECT_EQ(told.place, "Bench, House");
  ASSERT_TRUE(told.seed_parent);
  EXPECT_EQ(told.seed_parent->name, "Mother");
  ASSERT_EQ(told.line.size(), 3U); // cone, batch, tray
  EXPECT_EQ(told.line.front().code, first.cone);
  ASSERT_FALSE(told.due.empty());
  EXPECT_TRUE(told.ended.empty());
}

TEST_F(Rounds, TellsAPlantItsOwnPapersAndNotAsItsOwnParent) {
  const auto told =
      book.read([&](store::Reading& reading) {
            return tell_label(reading, reading.registers(), first.father, day("2026-03-10"));
          })
          .value();
  ASSERT_TRUE(told.itself);
  EXPECT_EQ(told.itself->code, first.father);
  EXPECT_FALSE(told.seed_parent);
  EXPECT_TRUE(told.pollen_parents.empty());
}

TEST(ScanText, TakesOffWhatScannersPutAround) {
  const auto code = Code::of(Kind::tray, 17, 42).value().text();
  EXPECT_EQ(scan_text(code + "\r\n").text, code);
  EXPECT_EQ(scan_text("]Q1" + code).text, code);
  EXPECT_EQ(scan_text("~" + code, "~").text, code);
  EXPECT_EQ(scan_text("\x02" + code + "\x03").text, code);
  EXPECT_EQ(scan_text("nonsense").text, "nonsense");
}

TEST(ScanText, UnderstandsAScannerSetToAnotherKeyboard) {
  for (int number = 1; number <= 200; ++number) {
    const auto code = Code::of(Kind::tray, 17, number).value().text();
    std::string french;
    std::string german;
    static const std::vector<std::string> row{"à", "&", "é", "\"", "'", "(", "-", "è", "_", "ç"};
    for (const char c : code) {
      const std::string letters = "AQZWM";
      const std::string come = "QAWZ?";
      const auto at = letters.find(c);
      french += c >= '0' && c <= '9'      ? row[static_cast<std::size_t>(c - '0')]
                : at == std::string::npos ? std::string(1, c)
                                          : std::string(1, come[at]);
      german += c == 'Y' ? 'Z' : c == 'Z' ? 'Y' : c;
    }
    EXPECT_EQ(scan_text(french).text, code) << french;
    EXPECT_EQ(scan_text(german).text, code) << german;
  }
}

TEST(RepeatedScan, IsOneWhileTheLabelStaysInView) {
  RepeatedScan repeated(std::chrono::milliseconds(1500));
  const auto at = [](int ms) { return std::chrono::milliseconds(ms); };
  EXPECT_TRUE(repeated.is_new("A", at(0)));
  EXPECT_FALSE(repeated.is_new("A", at(1000)));
  EXPECT_FALSE(repeated.is_new("A", at(2400)));
  EXPECT_TRUE(repeated.is_new("B", at(2500)));
  EXPECT_TRUE(repeated.is_new("A", at(2600)));
  EXPECT_TRUE(repeated.is_new("A", at(4200)));
}

} // namespace
} // namespace coneline::work
