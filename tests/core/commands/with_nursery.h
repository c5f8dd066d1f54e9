// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/commands/run_command.h"
#include "tests/core/work/small_nursery.h"

#include <sstream>

namespace coneline::commands {

/// A well-formed code that the small nursery does not have.
inline std::string absent(Kind kind) {
  return Code::of(kind, 17, 99).value().text();
}

/// A nursery of its own, and commands run on its book.
class WithNursery : public testing::Test {
 protected:
  int run(std::vector<std::string> arguments) {
    out_.str("");
    err_.str("");
    arguments.insert(arguments.end(), {"--book", nursery_.at("book.coneline").string()});
    ran_ = run_words(std::move(arguments));
    out_ << ran_.out;
    err_ << ran_.err;
    return ran_.status;
  }
  [[nodiscard]] Json json() const { return ran_.json(); }

  tests::SmallNursery nursery_;
  Ran ran_;
  std::ostringstream out_;
  std::ostringstream err_;
};

} // namespace coneline::commands
