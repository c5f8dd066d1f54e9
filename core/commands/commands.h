// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The commands of core. Each has a file of its own, named after it.

#include "core/commands/command_line.h"

namespace coneline::commands {

/// Adds every command of this room.
void add_core_commands(CommandLine& line);

void add_amends(CommandLine& line);
void add_check(CommandLine& line);
void add_forecast(CommandLine& line);
void add_copies(CommandLine& line);
void add_coverage(CommandLine& line);
void add_figures(CommandLine& line);
void add_coming(CommandLine& line);
void add_crosses(CommandLine& line);
void add_diary_looks(CommandLine& line);
void add_diary_verbs(CommandLine& line);
void add_due(CommandLine& line);
void add_germination(CommandLine& line);
void add_growing_verbs(CommandLine& line);
void add_imperfect_test(CommandLine& line);
void add_learning(CommandLine& line);
void add_leaves(CommandLine& line);
void add_looks(CommandLine& line);
void add_mix(CommandLine& line);
void add_needs(CommandLine& line);
void add_opening(CommandLine& line);
void add_order(CommandLine& line);
void add_placing(CommandLine& line);
void add_plan_records(CommandLine& line);
void add_registers(CommandLine& line);
void add_report(CommandLine& line);
void add_round(CommandLine& line);
void add_season(CommandLine& line);
void add_seed_verbs(CommandLine& line);
void add_self(CommandLine& line);
void add_sorting(CommandLine& line);
void add_sowing(CommandLine& line);
void add_space(CommandLine& line);
void add_target(CommandLine& line);
void add_table(CommandLine& line);
void add_temperature(CommandLine& line);
void add_trays(CommandLine& line);
void add_what_if(CommandLine& line);
void add_why(CommandLine& line);
void add_tell(CommandLine& line);

} // namespace coneline::commands
