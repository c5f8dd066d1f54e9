// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The rows of an older spreadsheet as lines that can be brought in. Private to this room.

#include "core/base/csv.h"
#include "core/exchange/faults.h"
#include "core/exchange/table_fields.h"
#include "core/work/bring_in.h"

namespace coneline::exchange {

struct TableLines {
  std::vector<work::BroughtIn> lines;
  std::vector<const CsvRow*> rows; ///< the row of each line
};

/// The column a field is matched to, or the field's own word where one value holds for all rows.
std::string column_of(const TableMatch& match, TableField field);

/// Reads every row; a row with a cell that cannot be read is left out, with a fault for each such
/// cell. Fails where the file's dates do not tell whether the day or the month comes first.
Result<TableLines> read_lines(const CsvTable& table, const TableMatch& match, Faults& faults);

} // namespace coneline::exchange
