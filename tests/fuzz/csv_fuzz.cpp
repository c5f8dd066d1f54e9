// SPDX-License-Identifier: GPL-3.0-or-later
// The CSV reader: what it reads comes back from its own writer, whatever stood in it.
#include "core/base/csv.h"
#include "tests/fuzz/must.h"

using coneline::fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = coneline::read_csv(coneline::fuzz::text_of(data, size), "fuzz.csv");
  if (!read) {
    must(!read.error().what.empty(), "a refusal says why");
    return 0;
  }
  auto text = coneline::csv_line(read->columns);
  for (const auto& row : read->rows) {
    must(row.fields.size() == read->columns.size(), "each row has as many fields as columns");
    text += coneline::csv_line(row.fields);
    for (const auto& field : row.fields)
      must(coneline::from_spreadsheet(coneline::for_spreadsheet(field)) == field,
           "a text for spreadsheets comes back");
  }
  static_cast<void>(coneline::other_separator(*read));
  const auto again = coneline::read_csv(text, "again.csv");
  must(again.has_value(), "what was written is read");
  must(again->columns == read->columns, "the columns come back");
  must(again->rows.size() == read->rows.size(), "every row comes back");
  for (std::size_t row = 0; row < again->rows.size(); ++row)
    must(again->rows[row].fields == read->rows[row].fields, "every field comes back");
  return 0;
}
