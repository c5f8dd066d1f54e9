// SPDX-License-Identifier: GPL-3.0-or-later
// A program that links all of core, and nothing else, loads no Qt library.
#include "core/commands/commands.h"

#include <fstream>
#include <iostream>
#include <sstream>

int main() {
  std::ostringstream out;
  std::ostringstream err;
  coneline::commands::CommandLine line(out, err);
  coneline::commands::add_core_commands(line);
  if (line.run({"sowing", "--plants", "100", "--stages", "0.6", "--json"}).value_or(1) != 0) {
    std::cerr << "core does not work alone: " << err.str();
    return 1;
  }
  std::ifstream maps("/proc/self/maps");
  std::size_t libraries = 0;
  for (std::string mapped; std::getline(maps, mapped);) {
    if (mapped.find("libQt") != std::string::npos) {
      std::cerr << "core alone loads " << mapped << '\n';
      return 1;
    }
    libraries += mapped.find(".so") != std::string::npos ? 1 : 0;
  }
  std::cout << libraries << " mapped parts of libraries, none of Qt\n";
  return libraries > 0 ? 0 : 1;
}
