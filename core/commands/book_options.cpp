// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/book_options.h"

#include "core/work/find_code.h"

#include <fmt/format.h>

namespace coneline::commands {

void BookOption::add_to(Command& command) {
  command.add_option("--book", path, "The book's file").required().or_variable("CONELINE_BOOK");
}

Result<store::Book> BookOption::open(store::Access access) const {
  return store::Book::open(path, access);
}

void NotedOptions::add_to(Command& command) {
  command.add_option("--on", on, "The day it was done, such as 2026-03-09; today when left out");
  command.add_option("--who", who, "Who did it");
  command.add_option("--note", note, "What is worth remembering");
}

Result<std::optional<Date>> some_date(const std::string& given, std::string_view option) {
  if (given.empty())
    return std::nullopt;
  auto date = Date::parse(given);
  if (!date)
    return refuse(date.error().at({"", 0, std::string(option)}));
  return *date;
}

Result<Date> date_or_today(const std::string& given, std::string_view option) {
  auto date = some_date(given, option);
  if (!date)
    return refuse(date.error());
  return date->value_or(Date::today());
}

Result<work::Noted> NotedOptions::noted() const {
  auto date = date_or_today(on, "--on");
  if (!date)
    return refuse(date.error());
  return work::Noted{*date, who, note};
}

Result<Code> code_given(store::Book& book, const std::string& typed) {
  return book.read([&](store::Reading& reading) {
    return work::find_code(reading, reading.registers(), typed);
  });
}

Result<std::optional<Code>> code_given(store::Book& book, const std::optional<std::string>& typed) {
  if (!typed)
    return std::nullopt;
  auto code = code_given(book, *typed);
  if (!code)
    return refuse(code.error());
  return *code;
}

Answer answer(const work::Done& done, const std::vector<std::string>& doubts) {
  Answer given;
  given.json = {{"told", done.told},
                {"entries", Json::array()},
                {"made", Json::array()},
                {"cautions", done.cautions},
                {"doubts", doubts}};
  given.table = done.told + "\n";
  for (const auto& id : done.entries)
    given.json["entries"].push_back(id.value);
  for (const auto& code : done.made)
    given.json["made"].push_back(code.text());
  for (const auto& caution : done.cautions)
    given.table += "Caution: " + caution + "\n";
  if (!done.entries.empty())
    given.table += fmt::format(
        "Entry {}{}\n", done.entries.front().value,
        done.entries.size() > 1 ? fmt::format(" to {}", done.entries.back().value) : "");
  for (const auto& doubt : doubts)
    given.table += doubt + "\n";
  return given;
}

} // namespace coneline::commands
