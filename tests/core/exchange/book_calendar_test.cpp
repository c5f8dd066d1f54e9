// SPDX-License-Identifier: GPL-3.0-or-later
// A book's calendar file and what comes back from a calendar program; lines that are none.
#include "core/exchange/book_calendar.h"
#include "core/exchange/calendar_lines.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::exchange {
namespace {

using tests::day;

class CalendarOfABook : public testing::Test {
 protected:
  CalendarOfABook() : book_(tests::make_first_cone(scratch_.at("t.coneline"), first)) {
    EXPECT_TRUE(work::want_label(book_, first.batch, {day("2026-02-09"), "Ana", ""}));
  }

  static constexpr std::string_view today = "2026-02-10";
  std::vector<work::Due> due() {
    return book_
        .read([](store::Reading& reading) {
          return work::due_on(reading, reading.registers(), day(today));
        })
        .value();
  }
  /// The work of a kind, as the book lists it.
  work::Due due(work::DueKind kind) {
    const auto all = due();
    const auto found = std::ranges::find(all, kind, &work::Due::kind);
    EXPECT_NE(found, all.end());
    return found == all.end() ? work::Due{} : *found;
  }
  BookCalendar calendar() {
    const auto all = due();
    return book_
        .read([&](store::Reading& reading) {
          return book_calendar(reading, reading.registers(), all, day(today), CalendarAs::todo);
        })
        .value();
  }
  /// A file with one to-do of this key and these lines.
  std::string one(const std::string& key, const std::string& lines) {
    const auto title = book_.read([](store::Reading& reading) { return reading.title(); }).value();
    return "BEGIN:VCALENDAR\r\nBEGIN:VTODO\r\nUID:" + calendar_uid(title, key) + "\r\n" + lines +
           "END:VTODO\r\nEND:VCALENDAR\r\n";
  }
  std::string take_in(const std::string& text, const std::string& note = {}) {
    std::ofstream(scratch_.at("due.ics"), std::ios::binary) << text;
    const auto done =
        take_in_calendar(book_, scratch_.at("due.ics").string(), {day(today), "Ana", note});
    return done ? done->told : done.error().text();
  }
  book::Entry last() {
    return book_.read([](store::Reading& reading) { return reading.last_entries(1).at(0); })
        .value();
  }

  tests::Scratch scratch_;
  tests::FirstCone first;
  store::Book book_;
};

TEST_F(CalendarOfABook, WhatIsAsItWasChangesNothing) {
  const auto before = last().id;
  const auto file = calendar();
  EXPECT_EQ(file.settled, 0U);
  EXPECT_EQ(take_in(file.text), fmt::format("0 taken in, {} as they are, 0 of other calendars "
                                            "passed over",
                                            due().size()));
  EXPECT_EQ(last().id, before);
}

TEST_F(CalendarOfABook, ATickIsTakenWhereNothingMoreIsToBeSaid) {
  const auto label = due(work::DueKind::print_label);
  ASSERT_TRUE(label.done_at_once);
  EXPECT_EQ(take_in(one(label.key, "COMPLETED:20260209T100000Z\r\n")),
            "1 taken in, 0 as they are, 0 of other calendars passed over");
  EXPECT_EQ(last().verb, book::Verb::print_label);
  EXPECT_EQ(last().date, day("2026-02-09"));
}

TEST_F(CalendarOfABook, ATickOfTomorrowIsOneOfToday) {
  const auto label = due(work::DueKind::print_label);
  take_in(one(label.key, "COMPLETED:20260301T100000Z\r\n"));
  EXPECT_EQ(last().date, day(today));
}

TEST_F(CalendarOfABook, ATickThatDoesNotSayEnoughIsTold) {
  const auto before = last().id;
  const auto clean = due(work::DueKind::clean);
  const auto told = take_in(one(clean.key, "STATUS:COMPLETED\r\n"));
  EXPECT_NE(told.find("0 taken in, 0 as they are"), std::string::npos) << told;
  EXPECT_NE(
      told.find("still to be entered:\n  line 2: " + clean.key + " is ticked in the calendar"),
      std::string::npos)
      << told;
  EXPECT_EQ(last().id, before);
}

TEST_F(CalendarOfABook, WhatIsStruckIsDismissedWithItsReason) {
  const auto clean = due(work::DueKind::clean);
  EXPECT_NE(take_in(one(clean.key, "STATUS:CANCELLED\r\n")).find("1 taken in"), std::string::npos);
  EXPECT_EQ(last().verb, book::Verb::dismiss);
  EXPECT_EQ(last().note, "in the calendar");
  EXPECT_EQ(calendar().settled, 1U);
}

TEST_F(CalendarOfABook, WhatIsMovedLaterIsPutOffAndEarlierStays) {
  const auto clean = due(work::DueKind::clean);
  for (const char* earlier : {"20260201", "20260207", "20260210"})
    EXPECT_NE(take_in(one(clean.key, fmt::format("DTSTART;VALUE=DATE:{}\r\n", earlier)))
                  .find("0 taken in, 1 as they are"),
              std::string::npos)
        << earlier;
  EXPECT_NE(take_in(one(clean.key, "")).find("0 taken in, 1 as they are"), std::string::npos);
  EXPECT_NE(take_in(one(clean.key, "DTSTART;VALUE=DATE:20260215\r\n"), "rain").find("1 taken in"),
            std::string::npos);
  EXPECT_EQ(last().verb, book::Verb::put_off);
  EXPECT_EQ(last().note, "rain");
  EXPECT_EQ(std::get<book::DueAnswer>(last().detail).until, day("2026-02-15"));
}

TEST_F(CalendarOfABook, WhatIsNoCalendarChangesNothing) {
  const auto before = last().id;
  EXPECT_NE(take_in("Dear grower").find("is no line of a calendar"), std::string::npos);
  const auto missing = take_in_calendar(book_, scratch_.at("none.ics").string(), {});
  ASSERT_FALSE(missing);
  EXPECT_NE(missing.error().what.find("none.ics' cannot be read"), std::string::npos);
  EXPECT_NE(take_in(one("water B171X 9", "STATUS:CANCELLED\r\n")).find("1 as they are"),
            std::string::npos)
      << "work that is not due any more";
  EXPECT_EQ(last().id, before);
}

/// What is read of one to-do or event with these lines, its UID that of the book.
CalendarLine read_line(const std::string& kind, const std::string& lines) {
  const book::Title title{"Test nursery", 17, true, day("2026-01-01")};
  const auto read = read_calendar("BEGIN:VCALENDAR\r\nBEGIN:" + kind +
                                      "\r\nUID:" + calendar_uid(title, "a 100 % job") + "\r\n" +
                                      lines + "END:" + kind + "\r\nEND:VCALENDAR\r\n",
                                  "due.ics", title);
  EXPECT_TRUE(read) << read.error().text();
  return read && read->lines.size() == 1 ? read->lines[0] : CalendarLine{};
}

TEST(CalendarLine, DaysAndStatesAreReadWhereTheyAreGiven) {
  const auto bare = read_line("VEVENT", "");
  EXPECT_EQ(bare.key, "a 100 % job");
  EXPECT_FALSE(bare.from || bare.to || bare.completed || bare.cancelled);
  EXPECT_EQ(bare.line, 2U);
  // RFC 5545, 3.6.1: the end of an event is the day after its last.
  const auto event =
      read_line("VEVENT", "DTSTART;VALUE=DATE:20260309\r\nDTEND;VALUE=DATE:20260312\r\n");
  EXPECT_EQ(event.from, day("2026-03-09"));
  EXPECT_EQ(event.to, day("2026-03-11"));
  EXPECT_FALSE(read_line("VEVENT", "STATUS:COMPLETED\r\n").completed) << "no state of an event";
  EXPECT_TRUE(read_line("VEVENT", "STATUS:CANCELLED\r\n").cancelled);
  const auto ticked = read_line("VTODO", "STATUS:COMPLETED\r\n");
  EXPECT_TRUE(ticked.completed);
  EXPECT_FALSE(ticked.completed_on);
  const auto done = read_line("VTODO", "COMPLETED:20260309T140500Z\r\nSEQUENCE:3\r\n");
  EXPECT_TRUE(done.completed);
  EXPECT_EQ(done.completed_on, day("2026-03-09"));
  EXPECT_EQ(done.sequence, 3);
}

TEST(CalendarLine, WhatHasNoNameOfOursIsPassedOver) {
  const book::Title title{"Test nursery", 17, true, day("2026-01-01")};
  const auto read = read_calendar("BEGIN:VCALENDAR\r\nBEGIN:VTODO\r\nSUMMARY:x\r\nEND:VTODO\r\n"
                                  "BEGIN:VJOURNAL\r\nUID:y\r\nEND:VJOURNAL\r\nEND:VCALENDAR\r\n",
                                  "due.ics", title)
                        .value();
  EXPECT_EQ(read.of_others, 1) << "a journal is neither a to-do nor an event";
  EXPECT_TRUE(read.lines.empty());
}

TEST(CalendarLine, OfManyBrokenLinesTheFirstAndTheNextAreNamed) {
  const auto read = read_calendar("BEGIN:VCALENDAR\nno line\nnor this\nEND:VCALENDAR\n", "due.ics",
                                  {"Test nursery", 17, true, day("2026-01-01")});
  ASSERT_FALSE(read);
  EXPECT_EQ(read.error().what,
            "'no line' is no line of a calendar (and 1 more, the next on line 3)");
}

/// The faults of lines within a calendar, each "LINE WHAT".
std::string broken(const std::string& lines) {
  std::string all;
  for (const auto& fault : broken_lines("BEGIN:VCALENDAR\n" + lines + "END:VCALENDAR\n", "due.ics"))
    all += fmt::format("{} {}; ", fault.where->line, fault.what);
  return all;
}

// RFC 5545, 3.1: a line that begins with a blank or tab goes on with the one before; 3.2: a
// parameter in quotes may hold colons.
TEST(CalendarLines, WhatTheStandardAllowsIsNoFault) {
  for (const char* good :
       {"SUMMARY:a\n b\n\tc\n", "ATTENDEE;CN=\"a:b\":mailto:x\n", "x-own-1:y\n", "summary:x\n",
        "DTSTART:20260309\n", "DTSTART:20260309T140500\n", "DUE:20260309T140500Z\n", "\r\n\n",
        "BEGIN:VTIMEZONE\nDTSTART:soon\nEND:VTIMEZONE\n"})
    EXPECT_EQ(broken(good), "") << good;
}

TEST(CalendarLines, WhatIsNoneIsNamedByItsLine) {
  EXPECT_EQ(broken("no line\n"), "2 'no line' is no line of a calendar; ");
  EXPECT_EQ(broken("SUMMARY\n"), "2 'SUMMARY' is no line of a calendar; ");
  EXPECT_EQ(broken("A;B=\"c:d\n"), "2 'A;B=\"c:d' is no line of a calendar; ");
  EXPECT_EQ(broken(":x\n"), "2 ':x' is no line of a calendar; ");
  for (const char* day : {"2026030", "20260230", "20260309T14050", "20260309T1405001Z",
                          "20260309X140500", "20260309T14x500", "20260309T1405/0"})
    EXPECT_EQ(broken(fmt::format("DTSTART:{}\n", day)),
              fmt::format("2 DTSTART '{}' is no day; ", day));
  EXPECT_EQ(broken("END:VTODO\n"), "2 END:VTODO without its BEGIN; ");
  EXPECT_EQ(broken("BEGIN:VTODO\n"),
            "3 END:VCALENDAR without its BEGIN; 1 BEGIN:VCALENDAR without its END; 2 BEGIN:VTODO "
            "without its END; ");
}

TEST(CalendarLines, AFileThatBeginsOtherwiseIsNoCalendar) {
  const auto first = [](const char* text) {
    const auto faults = broken_lines(text, "due.ics");
    return faults.empty() ? "" : faults.back().what;
  };
  EXPECT_EQ(first(""), "this is no iCalendar file");
  EXPECT_EQ(first("SUMMARY:x\n"), "this is no iCalendar file");
  EXPECT_EQ(broken_lines(" folded\n", "due.ics").front().what,
            "' folded' is no line of a calendar");
  EXPECT_EQ(component_lines("BEGIN:VCALENDAR\nBEGIN:VEVENT\nEND:VEVENT\nBEGIN:VTODO\n"),
            (std::vector<std::size_t>{2, 4}));
}

} // namespace
} // namespace coneline::exchange
