// SPDX-License-Identifier: GPL-3.0-or-later
// The front door: puts the rooms together. Without a subcommand it opens the window.
#include "core/commands/command_line.h"
#include "core/commands/commands.h"
#include "labels/commands/commands.h"
#include "qml/window.h"

#include <iostream>

int main(int argc, char** argv) {
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  if (const auto wanted = coneline::window::window_wanted(arguments))
    return coneline::window::run(argc, argv, *wanted);
  coneline::commands::CommandLine command_line(std::cout, std::cerr);
  coneline::commands::add_core_commands(command_line);
  coneline::labels::add_label_commands(command_line);
  return command_line.run(arguments).value_or(0);
}
