// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A book's calendar file, and what came back from a calendar program.

#include "core/exchange/calendar.h"
#include "core/store/book.h"

namespace coneline::exchange {

struct BookCalendar {
  std::string text;        ///< the whole file
  std::size_t settled = 0; ///< done or dismissed lately, and said so in it
};

/// What is due as given, and what was settled in the sixty days before the day. Stamped with the
/// moment of the call.
BookCalendar book_calendar(store::Reading& reading, const book::Registers& registers,
                           const std::vector<work::Due>& due, Date day, CalendarAs as);

/// Takes in what was moved, ticked or struck in a calendar. What is ticked but needs more than a
/// tick is told, to be entered by hand. Fails: no such file, a broken line; nothing is taken then.
Result<work::Done> take_in_calendar(store::Book& book, const std::string& file,
                                    const work::Noted& noted);

} // namespace coneline::exchange
