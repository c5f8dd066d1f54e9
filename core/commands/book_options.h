// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Options that commands with a book share: which book, and for verbs the day, the person and the
// note.

#include "core/commands/command_line.h"
#include "core/store/book.h"
#include "core/work/verb_done.h"

#include <string>

namespace coneline::commands {

struct BookOption {
  std::string path;
  /// --book FILE, or the environment variable CONELINE_BOOK.
  void add_to(Command& command);
  /// Opened to write, a copy of the book that was due and could not be made is told as a message.
  [[nodiscard]] Result<store::Book> open(store::Access access) const;

 private:
  std::ostream* messages_ = nullptr;
};

struct NotedOptions {
  std::string on;
  std::string who;
  std::string note;
  /// --on DATE (today when left out), --who, --note.
  void add_to(Command& command);
  [[nodiscard]] Result<work::Noted> noted() const;
};

/// The same fault, told of the option that brought it.
Fault of_option(std::string_view option, const Fault& fault);

/// A date given as an option; today when empty.
Result<Date> date_or_today(const std::string& given, std::string_view option);

/// A date given as an option; nothing when empty.
Result<std::optional<Date>> some_date(const std::string& given, std::string_view option);

/// A code as typed, which something in the book must have, or the whole name of a place or a plant,
/// which no other of them has.
Result<Code> code_given(store::Book& book, const std::string& typed);
Result<std::optional<Code>> code_given(store::Book& book, const std::optional<std::string>& typed);

/// One of a closed set of words, when given.
template <class Set>
Result<std::optional<Set>> word_given(const std::string& given) {
  if (given.empty())
    return std::nullopt;
  auto read = book::read_word<Set>(given);
  if (!read)
    return refuse(read.error());
  return *read;
}

/// What seed or plants of a lot are, when given; its fault names the states that a lot of its kind
/// holds. Nothing where the lot itself is at fault.
Result<std::optional<book::State>> state_given(const Result<Code>& lot, const std::string& given,
                                               std::string_view option);

/// What a verb did, as an answer, and what of it may be a slip.
Answer answer(const work::Done& done, const std::vector<std::string>& doubts = {});

} // namespace coneline::commands
