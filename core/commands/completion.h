// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Completion scripts for the shells, written from the command line's own words.

#include "core/commands/command_words.h"

namespace coneline::commands {

std::string bash_completion(const CommandWords& program);
std::string zsh_completion(const CommandWords& program);
std::string fish_completion(const CommandWords& program);

} // namespace coneline::commands
