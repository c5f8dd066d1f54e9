// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/book_options.h"

#include "core/base/near_words.h"
#include "core/work/find_code.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ostream>

namespace coneline::commands {

void BookOption::add_to(Command& command) {
  messages_ = &command.messages();
  command.add_option("--book", path, "The book's file").required().or_variable("CONELINE_BOOK");
}

Result<store::Book> BookOption::open(store::Access access) const {
  auto book = store::Book::open(path, access);
  if (book && book->not_copied() && messages_ != nullptr)
    *messages_ << fmt::format("No copy of the book could be made before this command: {} The next "
                              "one that writes to the book tries again.\n",
                              book->not_copied()->text());
  return book;
}

void NotedOptions::add_to(Command& command) {
  command.add_option("--on", on, "The day it was done, such as 2026-03-09; today when left out");
  command.add_option("--who", who, "Who did it");
  command.add_option("--note", note, "What is worth remembering");
}

Fault of_option(std::string_view option, const Fault& fault) {
  auto told = fault;
  told.what = fmt::format("{}: {}", option, fault.what);
  return told;
}

Result<std::optional<Date>> some_date(const std::string& given, std::string_view option) {
  if (given.empty())
    return std::nullopt;
  auto date = Date::parse(given);
  if (!date)
    return refuse(of_option(option, date.error()));
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

namespace {

using Named = std::vector<std::pair<std::string, Code>>;

/// Places and plants, what has a name of its own.
Named with_names(const book::Registers& registers) {
  Named all;
  for (const auto& place : registers.places)
    all.emplace_back(place.name, place.code);
  for (const auto& plant : registers.plants)
    all.emplace_back(plant.name, plant.code);
  return all;
}

/// Else what is wrong with it as a code, and which name is near it.
Result<Code> code_named(const Named& all, const std::string& name, const Fault& no_code) {
  std::vector<Code> found;
  std::vector<std::string> names;
  for (const auto& [called, code] : all) {
    names.push_back(called);
    if (called == name)
      found.push_back(code);
  }
  if (found.size() == 1)
    return found.front();
  if (!found.empty()) {
    std::vector<std::string> codes;
    for (const auto& code : found)
      codes.push_back(fmt::format("{} {}", kind_word(code.kind()), code.text()));
    return refuse(fault(fmt::format("several are called '{}': {}", name, fmt::join(codes, ", ")),
                        "Give the code of the one that is meant."));
  }
  const auto near = near_words(name, names);
  if (near.empty())
    return refuse(no_code);
  const auto meant = std::ranges::find(all, near.front(), &Named::value_type::first);
  return refuse(
      fault(no_code.what, fmt::format("Is {} ({}) meant?", meant->first, meant->second.text())));
}

} // namespace

Result<Code> code_given(store::Book& book, const std::string& typed) {
  return book.read([&](store::Reading& reading) -> Result<Code> {
    const auto registers = reading.registers();
    auto code = work::find_code(reading, registers, typed);
    if (code || Code::parse(typed)) // a code that the book lacks is no name
      return code;
    return code_named(with_names(registers), typed, code.error());
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

Result<std::optional<book::State>> state_given(const Result<Code>& lot, const std::string& given,
                                               std::string_view option) {
  if (given.empty() || !lot)
    return std::nullopt;
  if (const auto state = book::read_word<book::State>(given))
    return *state;
  std::vector<std::string_view> words;
  for (const auto& [state, word] : book::Words<book::State>::all)
    if (book::standing(state) == book::Standing::on_hand && book::holds(lot->kind(), state))
      words.push_back(word);
  return refuse(
      fault(fmt::format("{}: '{}' is no state of a {}", option, given, kind_word(lot->kind())),
            fmt::format("Use one of: {}.", fmt::join(words, ", "))));
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
