// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/old_table.h"

#include "core/base/phrase.h"
#include "core/exchange/logger_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace coneline::exchange {

namespace {

Result<std::string> as_text(const std::string& given, const std::string& name) {
  const std::string_view text = given;
  if (text.starts_with("PK\x03\x04") || text.starts_with("\xD0\xCF\x11\xE0"))
    return refuse(fault("a spreadsheet program's own file",
                        "Open it there and save the sheet as CSV (UTF-8), then take in that file.")
                      .at({name, 0, {}}));
  if (text.starts_with("\xEF\xBB\xBF"))
    return std::string(text.substr(3));
  if (text.find('\0') != std::string_view::npos)
    return refuse(fault("this is no text", "Save the sheet as CSV (UTF-8).").at({name, 0, {}}));
  return is_utf8(text) ? given : from_latin_1(text);
}

Result<std::vector<CsvRow>> split(const std::string& text, char delimiter,
                                  const std::string& name) {
  std::vector<CsvRow> rows;
  CsvRow row{1, {}};
  std::string cell;
  std::size_t line = 1;
  std::size_t opened = 0; // the line of an open quote
  const auto end_cell = [&] {
    row.fields.push_back(trimmed(cell));
    cell.clear();
  };
  const auto end_row = [&] {
    end_cell();
    if (std::ranges::any_of(row.fields, [](const auto& field) { return !field.empty(); }))
      rows.push_back(std::move(row));
    row = {line, {}};
  };
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char letter = text[i];
    line += letter == '\n' ? 1 : 0;
    if (opened != 0 && letter == '"' && i + 1 < text.size() && text[i + 1] == '"') {
      cell += letter;
      ++i;
    } else if (letter == '"' && (opened != 0 || trimmed(cell).empty())) {
      opened = opened != 0 ? 0 : line;
    } else if (letter == '\n' && opened == 0) {
      end_row();
    } else if (letter == delimiter && opened == 0) {
      end_cell();
    } else {
      cell += letter;
    }
  }
  if (opened != 0)
    return refuse(fault("a quote is opened and never closed",
                        "Close it, or double a quote that belongs to the text.")
                      .at({name, opened, {}}));
  end_row();
  return rows;
}

Result<std::size_t> header_row(const std::vector<CsvRow>& rows, const TableLayout& layout,
                               const std::string& name) {
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto filled =
        std::ranges::count_if(rows[i].fields, [](const auto& field) { return !field.empty(); });
    if (layout.header ? rows[i].line == *layout.header : filled >= 2)
      return i;
  }
  return refuse(fault(layout.header ? phrase("there is nothing on line {}", *layout.header)
                                    : phrase("no header: no row with two filled cells"),
                      "The names of the columns stand in one row; say its line.")
                    .at({name, layout.header.value_or(1), {}}));
}

std::vector<std::string> columns_of(const CsvRow& header) {
  std::vector<std::string> columns;
  for (const auto& field : header.fields) {
    const bool known = field.empty() || std::ranges::find(columns, field) != columns.end();
    columns.push_back(known ? fmt::format("column {}", columns.size() + 1) : field);
  }
  return columns;
}

} // namespace

Result<CsvTable> read_old_table(const std::string& given, const std::string& name,
                                const TableLayout& layout) {
  auto text = as_text(given, name);
  if (!text)
    return refuse(text.error());
  auto rows = split(*text, layout.delimiter.value_or(likely_delimiter(*text)), name);
  if (!rows)
    return refuse(rows.error());
  auto header = header_row(*rows, layout, name);
  if (!header)
    return refuse(header.error());
  CsvTable table{name, columns_of((*rows)[*header]), {}};
  for (auto i = *header + 1; i < rows->size(); ++i) {
    auto& row = (*rows)[i];
    while (row.fields.size() > table.columns.size() && row.fields.back().empty())
      row.fields.pop_back();
    if (row.fields.size() > table.columns.size())
      return refuse(fault(phrase("the row has {} cells, the header {}", row.fields.size(),
                                 table.columns.size()),
                          "Check separators and quotes in this row, or say which line is the "
                          "header.")
                        .at({name, row.line, {}}));
    row.fields.resize(table.columns.size());
    table.rows.push_back(std::move(row));
  }
  if (table.rows.empty())
    return refuse(fault("no row below the header", "Is this the right file?")
                      .at({name, (*rows)[*header].line, {}}));
  return table;
}

Result<CsvTable> read_old_table_file(const std::filesystem::path& path, const TableLayout& layout) {
  constexpr std::uintmax_t largest = 64ULL * 1024 * 1024;
  std::error_code error;
  const auto size = std::filesystem::file_size(path, error);
  if (error)
    return refuse(fault(phrase("'{}' cannot be read: {}", path.string(), error.message()),
                        "Check the name."));
  if (size > largest)
    return refuse(
        fault(phrase("'{}' has {} MB, more than {} MB", path.string(), size >> 20U, largest >> 20U),
              "Split it."));
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  if (!in)
    return refuse(fault(phrase("'{}' is empty or cannot be read", path.string()),
                        "Check that it may be read."));
  return read_old_table(text.str(), path.filename().string(), layout);
}

} // namespace coneline::exchange
