// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The frame of a command that writes one verb: book, day, person and note, then the verb's own
// options.

#include "core/commands/book_options.h"
#include "core/work/doubts.h"

#include <memory>

namespace coneline::commands {

/// Adds the command; `Options` has a member `define(Command&)` for its own options and
/// `run(store::Book&, work::Noted) -> Result<work::Done>`.
template <class Options>
void add_verb(CommandLine& line, const std::string& name, const std::string& help) {
  struct All {
    BookOption book;
    NotedOptions noted;
    Options own;
  };
  auto options = std::make_shared<All>();
  auto& command = line.add(name, help, [options]() -> Result<Answer> {
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

} // namespace coneline::commands
