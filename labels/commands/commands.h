// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The commands of labels. Each has a file of its own, named after it.

#include "core/book/label.h"
#include "core/commands/command_line.h"
#include "core/report/label_words.h"
#include "labels/sheet/label_text.h"

namespace coneline::labels {

/// Adds every command of this room.
void add_label_commands(commands::CommandLine& line);

void add_papers_command(commands::CommandLine& line);
void add_label_book_commands(commands::CommandLine& line);
void add_plan_paper_commands(commands::CommandLine& line);
void add_print_commands(commands::CommandLine& line);
void add_read_command(commands::CommandLine& line);
void add_report_pdf_command(commands::CommandLine& line);
void add_round_pictures_command(commands::CommandLine& line);

/// --out FILE.pdf, which must be given and end so: a PDF under another ending opens nowhere.
void add_pdf_out(commands::Command& command, std::string& out);

/// What of the words a layout shows, with the caution that belongs on seed.
std::vector<LabelText> label_texts(const std::vector<report::LabelWords>& words,
                                   const book::LabelLayout& layout = {});

} // namespace coneline::labels
