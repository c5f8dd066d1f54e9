// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The manual page of the program (section 1), as man(7) source.

#include "core/commands/command_words.h"

namespace coneline::commands {

std::string manual_page(const CommandWords& program, const std::string& version);

} // namespace coneline::commands
