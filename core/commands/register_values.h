// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a row of a register is given on the command line, entered or amended.

#include "core/book/names.h"

#include <fmt/format.h>

#include <string>

namespace coneline::commands {

/// The name of a further row, squeezed. Fails where a row has it, or one that reads alike, and says
/// which command changes that row. `kind` is the register's word and the command's: "pot".
template <class Row>
Result<std::string> further_name(const std::vector<Row>& rows, const std::string& given,
                                 std::string_view kind) {
  auto name = book::name_for(rows, given);
  if (name && book::named(rows, *name) != nullptr)
    return refuse(fault(fmt::format("there is a {} '{}' already", kind, *name),
                        fmt::format("Choose another name, or change that one: coneline amend {} "
                                    "'{}'.",
                                    kind, *name)));
  return name;
}

/// "bark=4".
Result<book::MixPart> part_given(const std::string& text);

/// "6-12" or "12", months; nothing where the text is empty.
Result<std::optional<book::Range>> range_given(const std::string& text);

/// "pot:mix:months:survival:light".
Result<book::RouteStep> step_given(const book::Registers& registers, const std::string& text,
                                   const std::string& source);

/// Fails where the side of a place is meant in metres: nothing stands on a few millimetres.
Result<void> is_in_millimetres(double side);

} // namespace coneline::commands
