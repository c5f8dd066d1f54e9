// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The frame of a command that writes one verb: book, day, person and note, then the verb's own
// options.

#include "core/commands/book_options.h"
#include "core/work/doubts.h"

#include <memory>

namespace coneline::commands {

/// Adds the command with `add`, which takes what runs it and returns it; `Options` has a member
/// `define(Command&)` for its own options and `run(store::Book&, work::Noted) ->
/// Result<work::Done>`.
template <class Options, class Add>
void add_verb_by(Add add) {
  struct All {
    BookOption book;
    NotedOptions noted;
    Options own;
  };
  auto options = std::make_shared<All>();
  Command& command = add([options]() -> Result<Answer> {
    auto noted = options->noted.noted();
    if (!noted)
      return refuse(noted.error());
    auto book = options->book.open(store::Access::write);
    if (!book)
      return refuse(book.error());
    return options->own.run(*book, *noted).map([&](const work::Done& done) {
      return answer(done, work::doubts(*book, done, Date::today()));
    });
  });
  options->book.add_to(command);
  options->noted.add_to(command);
  options->own.define(command);
}

template <class Options>
void add_verb(CommandLine& line, const std::string& name, const std::string& help) {
  add_verb_by<Options>([&](auto run) -> Command& { return line.add(name, help, std::move(run)); });
}

/// The same below a group.
template <class Options>
void add_verb(CommandLine& line, const std::string& group, const std::string& name,
              const std::string& help) {
  add_verb_by<Options>(
      [&](auto run) -> Command& { return line.add(group, name, help, std::move(run)); });
}

} // namespace coneline::commands
