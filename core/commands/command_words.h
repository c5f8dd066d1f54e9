// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a command line consists of: its subcommands with their options, read from the very objects
// that parse it. Manual page and shell completion are written from it, so neither can tell of a
// verb that is gone or miss one that is new.

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace coneline::commands {

struct OptionWords {
  std::vector<std::string> names; ///< "--book", "-h"; none for a word that stands by its place
  std::string placed;             ///< the name of such a word, "batch"; else empty
  std::string about;
  std::string value;                ///< "TEXT", "INT", "FILE"; empty for a flag
  std::vector<std::string> choices; ///< the words it takes, where they are few
  std::string environment;          ///< the variable that stands in for it
  bool required = false;
};

struct CommandWords {
  std::string name; ///< "labels print"; empty for the program itself
  std::string about;
  std::vector<OptionWords> options;
  std::vector<CommandWords> commands; ///< below it, in the order of their names
};

/// All of it, from the program down.
CommandWords words_of(const CLI::App& program);

} // namespace coneline::commands
