// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// coneline germination FILE.csv: measures of every tray, and what each group of trays tells.

#include "core/commands/command_line.h"
#include "core/stats/germination_figures.h"

namespace coneline::commands {

void add_germination(CommandLine& line);

/// The figures as the command gives them. `trays` are those the figures were made from.
Answer germination_answer(std::span<const stats::Tray> trays,
                          const stats::GerminationFigures& figures,
                          const stats::GerminationOptions& options);

} // namespace coneline::commands
