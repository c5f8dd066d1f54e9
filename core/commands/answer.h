// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a subcommand found.

#include <nlohmann/json.hpp>

#include <string>

namespace coneline::commands {

using Json = nlohmann::ordered_json;

/// `table` is for a person and ends with a line end. A command that did its work but found faults
/// (a book that does not prove, a picture that could not be read) sets `at_fault`: the answer is
/// printed and the exit status is 1.
struct Answer {
  Json json;
  std::string table;
  bool at_fault = false;
};

} // namespace coneline::commands
