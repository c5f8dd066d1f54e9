// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/plan_paper.h"

#include "core/base/csv.h"
#include "core/base/heading.h"
#include "core/base/phrase.h"
#include "core/report/spreadsheet.h"
#include "core/report/title_said.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::report {

namespace {

std::vector<std::string> said(const std::vector<Cell>& cells) {
  std::vector<std::string> texts;
  std::ranges::transform(cells, std::back_inserter(texts),
                         [](const Cell& cell) { return said(cell); });
  return texts;
}

/// A tab or line end within a cell would make two cells or rows of it.
std::string on_one_line(std::string text) {
  std::ranges::replace_if(
      text, [](char c) { return c == '\t' || c == '\n' || c == '\r'; }, ' ');
  return text;
}

} // namespace

Cell unit_heading(std::string_view metric, std::string readers_unit) {
  return language().units() == UnitSystem::metric ? Cell(Word{metric}) : Cell(readers_unit);
}

std::string foot_of(const book::Title& title, Date today) {
  return fmt::format("{}  ·  {}", title_said(title), today.iso());
}

std::string csv_of(const PlanTable& table, const book::Title& title) {
  std::vector<std::string> header;
  for (const auto& heading : table.header) {
    auto name = written(heading);
    std::ranges::replace(name, ' ', '_');
    header.push_back(name);
  }
  header.emplace_back("invented");
  auto text = csv_line(header);
  for (const auto& row : table.rows) {
    std::vector<std::string> fields;
    for (const auto& cell : row)
      fields.push_back(written(cell));
    fields.emplace_back(title.invented ? "yes" : "no");
    text += csv_line(fields);
  }
  return text;
}

Result<std::string> xlsx_of(const PlanPaper& paper) {
  return Spreadsheet::written([&](Spreadsheet& book) {
    for (const auto& table : paper.tables) {
      auto& sheet = book.sheet(table.name, table.header);
      for (const auto& row : table.rows)
        sheet.row(row);
    }
    auto& words = book.sheet(as_heading("to know"), {paper.title});
    words.row({paper.foot});
    for (const auto& sentence : paper.sentences)
      words.row({sentence});
    for (const auto& caution : paper.cautions)
      words.row({caution});
  });
}

Result<void>
write_paper(const PlanPaper& paper, const book::Title& title, const std::filesystem::path& path,
            const std::function<Result<int>(const std::string&, const PlanPaper&)>& pdf) {
  const auto ending = path.extension();
  if (ending == ".xlsx") {
    const auto bytes = xlsx_of(paper);
    return bytes ? write_whole(path, *bytes) : refuse(bytes.error());
  }
  if (ending == ".csv" && !paper.tables.empty())
    return write_whole(path, csv_of(paper.tables.front(), title));
  const auto pages = pdf(path.string(), paper);
  return pages ? Result<void>() : refuse(pages.error());
}

std::vector<PapersSection> sections_of(const PlanPaper& paper) {
  std::vector<PapersSection> sections;
  const auto lines_of = [](const std::vector<std::string>& sentences) {
    std::vector<std::pair<std::string, std::string>> lines;
    for (const auto& sentence : sentences)
      lines.emplace_back("", sentence);
    return lines;
  };
  sections.push_back({paper.title, lines_of(paper.sentences), {}, {}, false});
  for (const auto& table : paper.tables) {
    PapersSection section{table.name, {}, said(table.header), {}, false};
    for (const auto& row : table.rows)
      section.rows.push_back(said(row));
    sections.push_back(std::move(section));
  }
  if (!paper.cautions.empty())
    sections.push_back({phrase("Take care"), lines_of(paper.cautions), {}, {}, true});
  return sections;
}

std::string tabbed(const PlanTable& table) {
  std::string text;
  const auto line = [&](const std::vector<std::string>& fields) {
    for (std::size_t at = 0; at < fields.size(); ++at)
      text += (at == 0 ? "" : "\t") + on_one_line(fields[at]);
    text += '\n';
  };
  line(said(table.header));
  for (const auto& row : table.rows)
    line(said(row));
  return text;
}

} // namespace coneline::report
