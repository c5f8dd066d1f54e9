// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The germination report as rows: one a cross, one a tray, with the columns that CSV, spreadsheet
// and data dictionary share.

#include "core/report/germination_report.h"

#include <variant>

namespace coneline::report {

/// A word of the program: written as it is where programs read it (CSV), said where people do.
struct Word {
  std::string_view english;
};

/// A name that is a key: as it is where programs read it, said where people do.
struct Name {
  std::string key;
  std::string said;
};

/// A price: a number where programs read it, said with two decimals where people do.
struct Money {
  std::int64_t cents = 0;
};

/// Nothing where a value does not exist; a text is as it stands, not yet safe for a spreadsheet.
using Cell = std::variant<std::monostate, std::string, std::int64_t, double, Word, Name, Money>;

/// As programs read it: a field of a CSV that no spreadsheet runs.
std::string written(const Cell& cell);
/// As people read it.
std::string said(const Cell& cell);

struct Column {
  std::string_view name;
  std::string_view type; ///< text, date, whole, number, yes/no
  std::string_view unit;
  std::string_view meaning; ///< a text to be said
};

std::span<const Column> columns();

/// As many cells as there are columns.
std::vector<Cell> cells_of(const GerminationReport& report, const CrossReport& cross);
std::vector<Cell> cells_of(const GerminationReport& report, const CrossReport& cross,
                           const TrayReport& tray);

} // namespace coneline::report
