// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// coneline export --book FILE FOLDER [--replace]
// coneline import --book FILE FOLDER [--dry-run]

#include "core/commands/command_line.h"

namespace coneline::commands {

/// Adds "export" and "import": a book as a folder of CSV files, and back into a new book.
void add_season_commands(CommandLine& line);

} // namespace coneline::commands
