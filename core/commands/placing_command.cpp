// SPDX-License-Identifier: GPL-3.0-or-later
// placing: which lot stands where, month by month, with as few moves as possible.
#include "core/base/month.h"
#include "core/commands/commands.h"
#include "core/commands/placing_options.h"
#include "core/commands/table.h"
#include "core/report/placing_paper.h"
#include "core/report/title_said.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  PlacingOptions placing;
  std::string csv;
  std::string xlsx;
};

std::string table_of(const Placed& placed, const report::PlanPaper& paper) {
  const auto& title = placed.input.registers.title;
  std::string text = fmt::format("Benches of {}, {} months\n", report::title_said(title),
                                 placed.placing.months.size());
  for (const auto& sentence : paper.sentences)
    text += sentence + "\n";
  Table table({"month", "lot", "pot", "from", "to"});
  for (const auto& move : placed.placing.moves) {
    const auto& piece = placed.input.pieces[move.piece];
    table.row({iso_month(placed.placing.months[move.month]), piece.code.text(),
               placed.input.registers.pot(piece.pot).name,
               move.from ? placed.input.registers.place(*move.from).name : "–",
               placed.input.registers.place(move.to).name});
  }
  text += placed.placing.moves.empty() ? "Nothing has to be moved or put anywhere.\n"
                                       : "\nTo do\n" + table.text();
  for (const auto& caution : paper.cautions)
    text += "Caution: " + caution + "\n";
  return text;
}

Result<Answer> run(const Asked& asked, std::ostream& messages) {
  const auto placed = asked.placing.placed(messages);
  if (!placed)
    return refuse(placed.error());
  const auto paper = report::placing_paper(placed->input, placed->placing);
  if (!asked.csv.empty())
    if (auto written = report::write_whole(
            asked.csv, report::csv_of(paper.tables.back(), placed->input.registers.title));
        !written)
      return refuse(written.error());
  if (!asked.xlsx.empty()) {
    const auto sheets = report::xlsx_of(paper);
    if (!sheets)
      return refuse(sheets.error());
    if (auto written = report::write_whole(asked.xlsx, *sheets); !written)
      return refuse(written.error());
  }
  return Answer{report::placing_json(placed->input, placed->placing), table_of(*placed, paper)};
}

} // namespace

void add_placing(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("placing", "Which lot stands where, with as few moves as possible",
                           [asked, &line] { return run(*asked, line.messages()); });
  asked->placing.add_to(command);
  command.add_option("--csv", asked->csv, "A file to write the bench list to as well");
  command.add_option("--xlsx", asked->xlsx, "A spreadsheet to write it to");
}

} // namespace coneline::commands
