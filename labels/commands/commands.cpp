// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/commands/commands.h"

namespace coneline::labels {

void add_label_commands(commands::CommandLine& line) {
  add_label_book_commands(line);
  add_papers_command(line);
  add_print_commands(line);
  add_read_command(line);
  add_report_pdf_command(line);
  add_round_pictures_command(line);
}

} // namespace coneline::labels
