// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Runs a command the way the program does, and keeps what it said.

#include "core/commands/answer.h"

#include <gtest/gtest.h>

#include <sstream>
#include <string>
#include <vector>

namespace coneline::commands {

struct Ran {
  int status = -1;
  std::string out;
  std::string err;

  /// The one document on standard output; throws when it is none.
  [[nodiscard]] Json json() const;
};

// In a source of its own, since each test would else be a command line of its own to the compiler.
Ran run_words(std::vector<std::string> words);

/// Arguments are split at blanks.
Ran run_command(const std::string& arguments);

/// Runs it, expecting the status, silence on standard output and a message.
void expect_refused(const std::string& arguments, int status);

/// A test that looks at what its last command said.
class RunsCommands : public testing::Test {
 protected:
  /// The exit status.
  int run(std::vector<std::string> words);
  /// The one document on standard output; throws when it is none.
  [[nodiscard]] Json json() const;

  std::ostringstream out_;
  std::ostringstream err_;
};

} // namespace coneline::commands
