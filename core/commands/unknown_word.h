// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is said of a word on the command line that nothing is called by, and of one that is missing.

#include "core/commands/command_words.h"

#include <string>

namespace coneline::commands {

/// `called` is what the command was called by, "coneline report"; `word` stands behind it and is
/// neither a command below it nor an option of it. Says which ones are nearest.
std::string unknown_told(const std::string& called, const CommandWords& command,
                         const std::string& word);

/// Of a group that was called without one of its commands; nothing for what is no group.
std::string missing_told(const std::string& called, const CommandWords& command);

} // namespace coneline::commands
