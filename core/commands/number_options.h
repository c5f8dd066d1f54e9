// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Options of the calculators, whose help calls a number NUMBER. Text that is no number is a wrong
// command line; a number that cannot be is for the calculation to refuse.

#include "core/commands/command_line.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace coneline::commands {

/// A whole number; one too long to hold becomes the largest or smallest there is.
Option whole_option(Command& command, const std::string& name, std::int64_t& target,
                    const std::string& help);

/// A number with or without decimals.
Option real_option(Command& command, const std::string& name, double& target,
                   const std::string& help);
/// The same, left empty where it is not given.
Option real_option(Command& command, const std::string& name, std::optional<double>& target,
                   const std::string& help);

/// Two whole numbers, as in 10:9.
Option pair_option(Command& command, const std::string& name,
                   std::pair<std::int64_t, std::int64_t>& target, const std::string& help);

/// A text split at its commas; "a,,b" has an empty piece in it.
std::vector<std::string> split_at_commas(std::string_view text);

} // namespace coneline::commands
