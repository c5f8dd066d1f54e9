// SPDX-License-Identifier: GPL-3.0-or-later
// The front door: puts the rooms together.
#include "core/commands/command_line.h"
#include "core/commands/commands.h"
#include "labels/commands/commands.h"

#include <iostream>

int main(int argc, char** argv) {
  coneline::commands::CommandLine command_line(std::cout, std::cerr);
  coneline::commands::add_core_commands(command_line);
  coneline::labels::add_label_commands(command_line);
  const auto status = command_line.run({argv + 1, argv + argc});
  return status.value_or(0);
}
