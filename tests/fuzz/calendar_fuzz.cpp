// SPDX-License-Identifier: GPL-3.0-or-later
// Calendars that come back: every line is whole, or all is refused.
#include "core/exchange/calendar.h"
#include "tests/fuzz/must.h"

using coneline::fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const coneline::book::Title title{"Test nursery", 17, true,
                                           coneline::Date::parse("2026-01-01").value()};
  const auto read =
      coneline::exchange::read_calendar(coneline::fuzz::text_of(data, size), "due.ics", title);
  if (!read) {
    must(!read.error().what.empty(), "a refusal says why");
    return 0;
  }
  must(read->of_others >= 0 && read->lines.size() <= size, "no more to-dos than bytes");
  for (const auto& line : read->lines)
    must(!line.key.empty(), "a to-do of this book has a key");
  return 0;
}
