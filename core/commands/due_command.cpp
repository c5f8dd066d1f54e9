// SPDX-License-Identifier: GPL-3.0-or-later
// The list of what is due, its answers (put-off, dismiss, done) and its calendar file.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/table.h"
#include "core/commands/verb_command.h"
#include "core/exchange/book_calendar.h"
#include "core/report/whole_file.h"
#include "core/work/due.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

struct DueOptions {
  BookOption book;
  std::string on;
  int ahead = 0;
  bool by_day = false;
  std::string calendar;
  std::string as = "todo";
};

Answer listed(const std::vector<work::Due>& all, Date day) {
  Answer given;
  given.json = {{"as_of", day.iso()}, {"due", Json::array()}};
  Table table({"due", "code", "what", "", "key"});
  for (const auto& due : all) {
    given.json["due"].push_back({{"key", due.key},
                                 {"kind", book::word(due.kind)},
                                 {"code", due.code.text()},
                                 {"from", due.from.iso()},
                                 {"to", due.to ? Json(due.to->iso()) : Json()},
                                 {"told", due.told},
                                 {"missed", due.missed.empty() ? Json() : Json(due.missed)},
                                 {"put_off", due.times_put_off},
                                 {"done_at_once", due.done_at_once}});
    table.row({due.from.iso(), due.code.text(), due.told, due.missed, due.key});
  }
  given.table = all.empty() ? fmt::format("Nothing is due on {}.\n", day.iso()) : table.text();
  return given;
}

Result<Answer> due(const DueOptions& options) {
  auto day = date_or_today(options.on, "--on");
  if (!day)
    return refuse(day.error());
  if (options.as != "todo" && options.as != "event")
    return refuse(usage_fault(fmt::format("--as {}", options.as), "Give todo or event."));
  if (options.ahead < 0 || options.ahead > work::most_days_ahead)
    return refuse(usage_fault(fmt::format("--ahead {}", options.ahead),
                              fmt::format("Give 0 to {} days.", work::most_days_ahead)));
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  return book->read([&](store::Reading& reading) -> Result<Answer> {
    const auto registers = reading.registers();
    work::DueHabits habits;
    habits.days_ahead = options.ahead;
    auto all = work::due_on(reading, registers, *day, habits);
    if (options.by_day)
      all = work::by_day(std::move(all));
    auto given = listed(all, *day);
    if (options.calendar.empty())
      return given;
    const auto [text, settled] = exchange::book_calendar(
        reading, registers, all, *day,
        options.as == "todo" ? exchange::CalendarAs::todo : exchange::CalendarAs::event);
    if (auto written = report::write_whole(options.calendar, text); !written)
      return refuse(written.error());
    given.json["calendar"] = options.calendar;
    given.table +=
        fmt::format("{} due and {} settled in {}\n", all.size(), settled, options.calendar);
    return given;
  });
}

Result<std::string> key_meant(store::Book& book, const std::string& typed, Date day) {
  return book
      .read([&](store::Reading& reading) {
        return work::due_meant(reading, reading.registers(), typed, day);
      })
      .map([](const work::Due& due) { return due.key; });
}

struct PutOffOptions {
  std::string what;
  std::string until;

  void define(Command& command) {
    command.add_option("what", what, "A code, or the key in the list of what is due").required();
    command.add_option("--until", until, "The day it comes back").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto key = key_meant(book, what, noted.on);
    auto day = Date::parse(until);
    if (const auto wrong = first_fault(key, day))
      return refuse(*wrong);
    return work::answer_due(book, {*key, *day, std::move(noted)});
  }
};

struct DismissOptions {
  std::string what;

  void define(Command& command) {
    command.add_option("what", what, "A code, or the key in the list; --note says why").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto key = key_meant(book, what, noted.on);
    if (!key)
      return refuse(key.error());
    return work::answer_due(book, {*key, std::nullopt, std::move(noted)});
  }
};

struct DoneOptions {
  std::string what;

  void define(Command& command) {
    command.add_option("what", what, "A code, or the key in the list").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto key = key_meant(book, what, noted.on);
    if (!key)
      return refuse(key.error());
    return work::do_due(book, *key, noted);
  }
};

/// What a calendar says of one piece of work, taken into the book.
struct TakeIn {
  std::string file;

  void define(Command& command) {
    command.add_option("file", file, "The iCalendar file that the calendar program wrote")
        .required();
  }
  Result<work::Done> run(store::Book& book, const work::Noted& noted) const {
    return exchange::take_in_calendar(book, file, noted);
  }
};

} // namespace

void add_due(CommandLine& line) {
  auto options = std::make_shared<DueOptions>();
  auto& command =
      line.add("due", "What is due, in walking order", [options] { return due(*options); });
  options->book.add_to(command);
  command.add_option("--on", options->on, "The day; today when left out");
  command.add_option("--ahead", options->ahead, "Days ahead to list as well");
  command.add_flag("--by-day", options->by_day, "In the order of days instead");
  command.add_option("--calendar", options->calendar, "Write it as an iCalendar file too");
  command
      .add_option("--as", options->as, "In the calendar: todo, or event where to-dos do not show")
      .told_default();
  add_verb<PutOffOptions>(line, "put-off", "Put off something that is due");
  add_verb<DismissOptions>(line, "dismiss", "Strike something from the list, with a reason");
  add_verb<DoneOptions>(line, "done", "Do what needs nothing more than a tick");
  add_verb<TakeIn>(line, "take-in-calendar", "Take in what was moved or ticked in a calendar");
}

} // namespace coneline::commands
