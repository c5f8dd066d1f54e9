// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is due as an iCalendar file (RFC 5545), written and read by libical.
//
// Each piece of work is a to-do with a day (VTODO with DTSTART and DUE), or for calendars that show
// no to-dos an all-day event (VEVENT). Its UID follows from the book and the work, so that taking a
// newer file in again updates; SEQUENCE counts how often it was put off, and one more once it is
// settled; DTSTAMP is the moment of writing, which decides between equal ones. What was done or
// dismissed lately is in the file as COMPLETED or CANCELLED, since a calendar keeps what a newer
// file leaves out.

#include "core/book/title.h"
#include "core/work/due.h"

#include <vector>

namespace coneline::exchange {

enum class CalendarAs { todo, event };

struct CalendarGiven {
  book::Title title;
  std::vector<work::Due> due;
  std::vector<work::Settled> settled;
  CalendarAs as = CalendarAs::todo;
  std::string stamp; ///< UTC, "20260309T140500Z"
};

/// The whole file, lines ended and folded as the standard says. UTF-8.
std::string calendar_text(const CalendarGiven& given);

/// The UID of a piece of work in this book.
std::string calendar_uid(const book::Title& title, std::string_view key);

/// One piece of work as the calendar has it now.
struct CalendarLine {
  std::string key;
  std::optional<Date> from; ///< DTSTART
  std::optional<Date> to;   ///< DUE, or the last day of an event
  bool completed = false;
  std::optional<Date> completed_on;
  bool cancelled = false;
  int sequence = 0;
  std::size_t line = 0; ///< where it begins
};

struct CalendarRead {
  std::vector<CalendarLine> lines;
  int of_others = 0; ///< to-dos and events that are not this book's
};

/// Fails on a broken line, naming it and how many more there are; nothing is taken then.
Result<CalendarRead> read_calendar(std::string_view text, const std::string& file,
                                   const book::Title& title);

} // namespace coneline::exchange
