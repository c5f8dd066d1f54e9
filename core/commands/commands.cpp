// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"

#include "core/commands/book_file.h"
#include "core/commands/germination.h"

namespace coneline::commands {

void add_core_commands(CommandLine& line) {
  add_amends(line);
  add_book_file(line);
  add_check(line);
  add_forecast(line);
  add_copies(line);
  add_what_if(line);
  add_coverage(line);
  add_figures(line);
  add_coming(line);
  add_crosses(line);
  add_diary_looks(line);
  add_diary_verbs(line);
  add_due(line);
  add_germination(line);
  add_growing_verbs(line);
  add_imperfect_test(line);
  add_learning(line);
  add_leaves(line);
  add_looks(line);
  add_mix(line);
  add_needs(line);
  add_opening(line);
  add_order(line);
  add_placing(line);
  add_plan_records(line);
  add_registers(line);
  add_report(line);
  add_round(line);
  add_season(line);
  add_seed_verbs(line);
  add_self(line);
  add_sorting(line);
  add_sowing(line);
  add_space(line);
  add_target(line);
  add_table(line);
  add_take_in_table(line);
  add_temperature(line);
  add_trays(line);
  add_why(line);
  add_tell(line);
  line.about_group("amend", "Put right what was entered; what stood before is kept");
  line.about_group("enter", "Enter what lots refer to: taxa, plants, places, pots, mixes, pollen");
  line.about_group("report", "Reports to print or to hand on");
  line.about_group("round", "Walk past the trays, scanning and counting");
  line.about_group("temperature", "What loggers measured where");
  line.about_group("trays", "Which trays are done");
}

} // namespace coneline::commands
