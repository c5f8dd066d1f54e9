// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The book's cover and its file, and an older spreadsheet taken into it.

#include "core/commands/command_line.h"

namespace coneline::commands {

void add_book_file(CommandLine& line);
void add_take_in_table(CommandLine& line);

} // namespace coneline::commands
