// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/plan_paper.h"

#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/report/spreadsheet.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::report {

namespace {

std::string text_of(const Cell& cell) {
  struct Written {
    std::string operator()(std::monostate) const { return ""; }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(double number) const { return write_real(number); }
  };
  return std::visit(Written{}, cell);
}

std::vector<Cell> cells(const std::vector<std::string>& texts) {
  return {texts.begin(), texts.end()};
}

/// A tab or line end within a cell would make two cells or rows of it.
std::string on_one_line(std::string text) {
  std::ranges::replace_if(
      text, [](char c) { return c == '\t' || c == '\n' || c == '\r'; }, ' ');
  return text;
}

} // namespace

std::string foot_of(const book::Title& title, Date today) {
  return fmt::format("{}{}  ·  {}", title.name, title.invented ? " (invented data)" : "",
                     today.iso());
}

std::string csv_of(const PlanTable& table, const book::Title& title) {
  std::vector<std::string> header;
  for (auto name : table.header) {
    std::ranges::replace(name, ' ', '_');
    header.push_back(for_spreadsheet(name));
  }
  header.emplace_back("invented");
  auto text = csv_line(header);
  for (const auto& row : table.rows) {
    std::vector<std::string> fields;
    for (const auto& cell : row)
      fields.push_back(std::holds_alternative<std::string>(cell) ? for_spreadsheet(text_of(cell))
                                                                 : text_of(cell));
    fields.emplace_back(title.invented ? "yes" : "no");
    text += csv_line(fields);
  }
  return text;
}

Result<std::string> xlsx_of(const PlanPaper& paper) {
  return Spreadsheet::written([&](Spreadsheet& book) {
    for (const auto& table : paper.tables) {
      auto& sheet = book.sheet(table.name, cells(table.header));
      for (const auto& row : table.rows)
        sheet.row(row);
    }
    auto& words = book.sheet("to know", {paper.title});
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
    PapersSection section{table.name, {}, table.header, {}, false};
    for (const auto& row : table.rows) {
      std::vector<std::string> texts;
      std::ranges::transform(row, std::back_inserter(texts), text_of);
      section.rows.push_back(std::move(texts));
    }
    sections.push_back(std::move(section));
  }
  if (!paper.cautions.empty())
    sections.push_back({"Take care", lines_of(paper.cautions), {}, {}, true});
  return sections;
}

std::string tabbed(const PlanTable& table) {
  std::string text;
  const auto line = [&](const std::vector<std::string>& fields) {
    for (std::size_t at = 0; at < fields.size(); ++at)
      text += (at == 0 ? "" : "\t") + on_one_line(fields[at]);
    text += '\n';
  };
  line(table.header);
  for (const auto& row : table.rows) {
    std::vector<std::string> fields;
    std::ranges::transform(row, std::back_inserter(fields), text_of);
    line(fields);
  }
  return text;
}

} // namespace coneline::report
