// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/commands/run_command.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::commands {

/// A well-formed code that the small nursery does not have.
inline std::string absent(Kind kind) {
  return Code::of(kind, 17, 99).value().text();
}

/// A nursery of its own, and commands run on its book.
class WithNursery : public RunsCommands {
 protected:
  int run(std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--book", nursery_.at("book.coneline").string()});
    return RunsCommands::run(std::move(arguments));
  }

  tests::SmallNursery nursery_;
};

} // namespace coneline::commands
