// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/book_calendar.h"

#include "core/base/phrase.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <fstream>
#include <sstream>

namespace coneline::exchange {

namespace {

constexpr int days_of_settled = 60; // what was settled stays in the calendar file so long
constexpr int days_looked_ahead = 366;

Result<std::string> whole_text(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  if (!file || !(text << file.rdbuf()))
    return refuse(fault(phrase("'{}' cannot be read", path), "Check the name."));
  return text.str();
}

Result<work::Done> take(store::Book& book, const CalendarLine& line, const work::Due& due,
                        const work::Noted& noted) {
  if (line.completed) {
    auto done = noted;
    done.on = std::min(line.completed_on.value_or(noted.on), noted.on);
    if (due.done_at_once)
      return work::do_due(book, line.key, done);
    return refuse(fault(phrase("{} is ticked in the calendar", line.key),
                        "Enter what was done; the tick does not say it."));
  }
  auto reason = noted;
  if (reason.note.empty())
    reason.note = "in the calendar";
  if (line.cancelled)
    return work::answer_due(book, {line.key, std::nullopt, reason});
  if (line.from && *line.from > due.from && *line.from > noted.on)
    return work::answer_due(book, {line.key, line.from, reason});
  return work::Done{};
}

} // namespace

BookCalendar book_calendar(store::Reading& reading, const book::Registers& registers,
                           const std::vector<work::Due>& due, Date day, CalendarAs as) {
  const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  const auto settled =
      work::settled_since(reading, registers, day.plus_days(-days_of_settled), day);
  return {calendar_text({registers.title, due, settled, as, fmt::format("{:%Y%m%dT%H%M%S}Z", now)}),
          settled.size()};
}

Result<work::Done> take_in_calendar(store::Book& book, const std::string& file,
                                    const work::Noted& noted) {
  const auto text = whole_text(file);
  if (!text)
    return refuse(text.error());
  auto there = book.read([&](store::Reading& reading) {
    work::DueHabits habits;
    habits.days_ahead = days_looked_ahead;
    return std::pair(reading.title(), work::due_on(reading, reading.registers(), noted.on, habits));
  });
  if (!there)
    return refuse(there.error());
  const auto& [title, due] = *there;
  const auto read = read_calendar(*text, file, title);
  if (!read)
    return refuse(read.error());
  work::Done all;
  int as_is = 0;
  std::string by_hand;
  for (const auto& line : read->lines) {
    const auto found = std::ranges::find(due, line.key, &work::Due::key);
    if (found == due.end()) {
      ++as_is;
      continue;
    }
    auto done = take(book, line, *found, noted);
    if (!done)
      by_hand += fmt::format("\n  line {}: {}", line.line, done.error().text());
    else if (done->entries.empty())
      ++as_is;
    else
      all.entries.insert(all.entries.end(), done->entries.begin(), done->entries.end());
  }
  all.told = phrase("{} taken in, {} as they are, {} of other calendars passed over",
                    all.entries.size(), as_is, read->of_others) +
             (by_hand.empty() ? std::string() : phrase("; still to be entered:{}", by_hand));
  return all;
}

} // namespace coneline::exchange
