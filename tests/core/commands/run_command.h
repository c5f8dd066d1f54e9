// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Runs a command the way the program does, and keeps what it said.

#include "core/commands/answer.h"

#include <gtest/gtest.h>

#include <vector>

namespace coneline::commands {

struct Ran {
  int status = -1;
  std::string out;
  std::string err;

  /// The one document on standard output; throws when it is none.
  [[nodiscard]] Json json() const;
};

/// Without its own source each test would be a command line of its own to the compiler.
Ran run_words(std::vector<std::string> words);

/// Arguments are split at blanks.
Ran run_command(const std::string& arguments);

/// Runs it, expecting the status, silence on standard output and a message.
void expect_refused(const std::string& arguments, int status);

} // namespace coneline::commands
