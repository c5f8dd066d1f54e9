// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// An older spreadsheet into a book, its columns matched by hand: a dry run that says of every row
// what would come of it and of every fault where it stands; then all of it, or none.

#include "core/base/csv.h"
#include "core/exchange/faults.h"
#include "core/exchange/import_season.h"
#include "core/exchange/table_fields.h"
#include "core/work/bring_in.h"

namespace coneline::exchange {

struct TableRowTaken {
  std::size_t line = 0;
  std::string told; ///< "tray T1742Q: 40 seeds of Old Gate × Tall Male, sown 2025-05-10"
  std::vector<Code> made;
};

struct TableTaken {
  std::vector<TableRowTaken> rows; ///< those that came in, or would; none at fault among them
  Faults faults;                   ///< any: nothing came in
  std::vector<std::string> taxa;   ///< new in the book
  std::vector<std::string> plants;
  std::vector<std::string> places;
  std::vector<std::string> pots;
  std::vector<std::string> look_at;   ///< what may be meant otherwise
  std::vector<std::string> left_out;  ///< columns matched to nothing
  std::vector<book::EntryId> entries; ///< what reversing takes back
};

/// Fails where the match names a column that the table has not, or nothing says what the rows are
/// or how many (a fault of the match, not of a row), or the book cannot be written, or it
/// was stopped. Faults of rows
/// are in `faults`, each with file, line and column. `today` is the last day that can have been.
/// `progress` is asked after each row; stopped, nothing came in.
Result<TableTaken> take_in_table(const CsvTable& table, const TableMatch& match, store::Book& book,
                                 Import how, Date today, const Progress& progress = {});

} // namespace coneline::exchange
