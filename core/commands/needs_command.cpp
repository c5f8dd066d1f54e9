// SPDX-License-Identifier: GPL-3.0-or-later
// needs: pots, mix and bench of the months to come.
#include "core/base/month.h"
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/report/forecast_report.h"
#include "core/report/needs_input.h"
#include "core/report/needs_report.h"
#include "core/report/title_said.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string as_of;
  int months = 24;
  std::string csv;
};

struct Column {
  std::string name;
  const plan::ByMonth* values;
};

/// Months down, one column each; nothing where there is no column.
std::string by_month(const std::string& title, const plan::Needs& needs,
                     const std::vector<Column>& columns, int decimals) {
  if (columns.empty())
    return "";
  std::vector<std::string> header{"month"};
  for (const auto& column : columns)
    header.push_back(column.name);
  Table table(header);
  for (std::size_t at = 0; at < needs.months.size(); ++at) {
    std::vector<std::string> cells{iso_month(needs.months[at])};
    for (const auto& column : columns)
      cells.push_back(shown((*column.values)[at], decimals));
    table.row(std::move(cells));
  }
  return "\n" + title + "\n" + table.text();
}

bool any(const plan::ByMonth& values) {
  return std::ranges::any_of(values, [](double value) { return value > 0; });
}

std::string ready_text(const plan::Needs& needs) {
  Table table({"ready", "cross", "plants"});
  bool some = false;
  for (std::size_t at = 0; at < needs.months.size(); ++at)
    for (const auto& cross : needs.ready)
      if (cross.plants[at] > 0) {
        some = true;
        table.row({iso_month(needs.months[at]), cross.cross, shown(cross.plants[at], 1)});
      }
  return some ? "\nPlants becoming ready\n" + table.text() : "";
}

std::string series_text(const plan::Needs& needs) {
  std::vector<Column> into;
  std::vector<Column> standing;
  std::vector<Column> litres;
  std::vector<Column> room;
  for (const auto& pot : needs.pots) {
    if (any(pot.into))
      into.push_back({pot.name, &pot.into});
    standing.push_back({pot.name, &pot.standing});
  }
  for (const auto& mix : needs.mixes)
    litres.push_back({mix.name, &mix.litres});
  for (const auto& part : needs.parts)
    litres.push_back({"of it " + part.name, &part.litres});
  for (const auto& space : needs.space)
    room.push_back(
        {fmt::format("{} (of {:.2f})", book::word(space.light), space.offered), &space.needed});
  return by_month("Plants into each pot", needs, into, 1) +
         by_month("Mix and its parts, litres", needs, litres, 1) +
         by_month("Plants standing at the month's end", needs, standing, 1) +
         by_month("Bench at the month's end, square metres", needs, room, 2);
}

std::string table_of(const plan::Needs& needs, const book::Title& title) {
  std::string text = fmt::format("Needs of {} months from {}, {}\n", needs.months.size(),
                                 needs.today.iso(), report::title_said(title));
  for (const auto& space : needs.space)
    text += space.told + "\n";
  text += series_text(needs) + ready_text(needs);
  const auto& sums = needs.sums;
  text += fmt::format("\n{:.1f} plants and seedlings here, {:.1f} to come up: {:.1f} growing, "
                      "{:.1f} ready, {:.1f} lost at the end.\n",
                      sums.here, sums.come_up, sums.growing, sums.ready, sums.lost);
  for (const auto& told : report::left_out_told(needs.left_out))
    text += told + "\n";
  for (const auto& remark : needs.remarks)
    text += remark + "\n";
  for (const auto& rule : report::needs_rules())
    text += rule + "\n";
  return text;
}

Result<Answer> run_needs(const Asked& asked) {
  const auto today = date_or_today(asked.as_of, "--as-of");
  if (!today)
    return refuse(today.error());
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto input = book->read(
      [&](store::Reading& reading) { return report::needs_input(reading, *today, asked.months); });
  if (!input)
    return refuse(input.error());
  const auto needs = plan::needs(*input);
  if (!needs)
    return refuse(needs.error());
  const auto& title = input->registers.title;
  if (!asked.csv.empty())
    if (auto written = report::write_whole(asked.csv, report::needs_csv(*needs, title)); !written)
      return refuse(written.error());
  return Answer{report::needs_json(*needs, title), table_of(*needs, title)};
}

} // namespace

void add_needs(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("needs", "Pots, mix and bench of the months to come",
                           [asked] { return run_needs(*asked); });
  asked->book.add_to(command);
  command.add_option("--as-of", asked->as_of, "The day to plan from; today when left out");
  command.add_option("--months", asked->months, "How many months, today's being the first")
      .told_default();
  command.add_option("--csv", asked->csv, "A file to write the values to as well, one row a value");
}

} // namespace coneline::commands
