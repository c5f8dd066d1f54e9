// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The commands of labels. Each has a file of its own, named after it.

#include "core/commands/command_line.h"

namespace coneline::labels {

/// Adds every command of this room.
void add_label_commands(commands::CommandLine& line);

void add_read_command(commands::CommandLine& line);

} // namespace coneline::labels
