// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Options for a plant's own parents and for how it stands.

#include "core/book/registers.h"
#include "core/commands/command_line.h"

namespace coneline::commands {

struct ParentOptions {
  std::optional<std::string> seed_parent;
  std::optional<std::string> pollen_parent;
  std::optional<std::string> certainty;
  std::optional<std::string> stands_in;

  void define(Command& command);
  /// A code is a plant of the register, anything else is kept in words; "" takes a parent away.
  /// Fails: no such plant, another word.
  Result<void> write_to(book::Plant& plant, const book::Registers& registers) const;
};

} // namespace coneline::commands
