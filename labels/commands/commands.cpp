// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/commands/commands.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <filesystem>

namespace coneline::labels {

void add_pdf_out(commands::Command& command, std::string& out) {
  const auto read = [&out](const std::string& file) -> Result<void> {
    auto ending = std::filesystem::path(file).extension().string();
    std::ranges::transform(ending, ending.begin(),
                           [](unsigned char letter) { return std::tolower(letter); });
    if (ending != ".pdf")
      return refuse(
          usage_fault(fmt::format("'{}' does not end with .pdf, and a PDF is written", file),
                      "Give its name that ending."));
    out = file;
    return {};
  };
  command.add_read("--out", read, "The PDF to write").required();
}

void add_label_commands(commands::CommandLine& line) {
  add_label_book_commands(line);
  add_papers_command(line);
  add_plan_paper_commands(line);
  add_print_commands(line);
  add_read_command(line);
  add_report_pdf_command(line);
  add_round_pictures_command(line);
  line.about_group("labels",
                   "Labels: print them on sheets, keep stocks, layouts and printers, and read "
                   "codes in pictures");
  line.about_group("paper",
                   "The plan of the months to come as a PDF: forecast, order list, benches");
}

} // namespace coneline::labels
