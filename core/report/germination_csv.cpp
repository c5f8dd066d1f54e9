// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/report/germination_rows.h"

namespace coneline::report {

namespace {

std::string line_of(const std::vector<Cell>& cells) {
  std::vector<std::string> fields;
  for (const auto& cell : cells)
    fields.push_back(written(cell));
  return csv_line(fields);
}

} // namespace

std::string germination_csv(const GerminationReport& report) {
  std::vector<std::string> header;
  for (const auto& column : columns())
    header.emplace_back(column.name);
  auto text = csv_line(header);
  for (const auto& cross : report.crosses) {
    text += line_of(cells_of(report, cross));
    for (const auto& tray : cross.trays)
      text += line_of(cells_of(report, cross, tray));
  }
  return text;
}

std::string germination_dictionary() {
  auto text = csv_line({"column", "type", "unit", "missing", "meaning"});
  for (const auto& column : columns())
    text += csv_line({std::string(column.name), std::string(column.type), std::string(column.unit),
                      "empty", phrase_of(column.meaning)});
  return text;
}

std::string germination_counts_csv(const GerminationReport& report) {
  auto text = csv_line({"group", "tray", "sown", "day", "germinated", "removed"});
  for (const auto& cross : report.crosses)
    for (const auto& tray : cross.trays)
      for (const auto& look : tray.seen.looks)
        text += csv_line({for_spreadsheet(cross.name), tray.seen.lot.code.text(),
                          std::to_string(tray.seen.sown), write_real(look.day),
                          std::to_string(look.germinated), std::to_string(look.removed)});
  return text;
}

} // namespace coneline::report
