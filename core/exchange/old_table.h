// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A spreadsheet that somebody kept before there was a book, saved as CSV: whatever its separators,
// encoding and titles above the header. Nothing is known of what its columns mean; see
// table_fields.h.

#include "core/base/csv.h"

#include <filesystem>
#include <optional>

namespace coneline::exchange {

struct TableLayout {
  std::optional<char> delimiter;     ///< none: of comma, semicolon and tab the likeliest
  std::optional<std::size_t> header; ///< the header's line; none: the first with two filled cells
};

/// Rows without anything in them are passed over; rows shorter than the header are filled up.
/// Columns without a name or with one that stands already are called by their place ("column 4").
/// Cells lose blanks at their ends. Fails, naming file and line: not to be read, no text but a
/// spreadsheet program's own file, no header, a quote never closed, a row with more than the
/// header has.
Result<CsvTable> read_old_table(const std::string& text, const std::string& name,
                                const TableLayout& layout);
Result<CsvTable> read_old_table_file(const std::filesystem::path& path, const TableLayout& layout);

} // namespace coneline::exchange
