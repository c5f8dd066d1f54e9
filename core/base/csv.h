// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A small strict reader and writer of comma-separated values (RFC 4180): quoted fields, CRLF or LF,
// UTF-8 with or without a byte-order mark. A table knows its file and the line each row began on,
// so that a fault can be placed.

#include "core/base/fault.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace coneline {

/// One row. `line` is the line of the file it begins on, the header being line 1.
struct CsvRow {
  std::size_t line = 0;
  std::vector<std::string> fields;
};

struct CsvTable {
  std::string file; ///< the name that faults carry
  std::vector<std::string> columns;
  std::vector<CsvRow> rows; ///< each with as many fields as there are columns

  /// The position of a column, or nothing.
  [[nodiscard]] std::optional<std::size_t> column(std::string_view name) const;
  [[nodiscard]] Where where(const CsvRow& row, std::string_view column) const;
};

/// Reads a whole text. Fails on: no header, a repeated or empty column name, a row with more or
/// fewer fields than the header, a quote that is not closed or stands inside an unquoted field,
/// text after a closing quote, bytes that are no UTF-8, a NUL. Empty lines at the end are passed
/// over; elsewhere they are faults when there is more than one column.
Result<CsvTable> read_csv(std::string_view text, std::string file);

/// The same from a file. Also fails when the file cannot be read or is larger than 512 MB.
Result<CsvTable> read_csv_file(const std::filesystem::path& path);

/// "semicolons" or "tabs", where the header is one column that holds some: the file was meant to
/// have several.
std::optional<std::string> other_separator(const CsvTable& table);

/// A field as written: quoted when it holds a comma, quote, line break or blank at its ends.
std::string csv_field(std::string_view value);

/// A row with LF at its end.
std::string csv_line(const std::vector<std::string>& fields);

/// A text that a spreadsheet would run (it begins with = + - @, tab or carriage return, or with an
/// apostrophe) gets an apostrophe in front; `from_spreadsheet` takes it off again, so that every
/// text comes back as it was.
std::string for_spreadsheet(std::string_view value);
std::string from_spreadsheet(std::string_view value);

/// True when the bytes are well-formed UTF-8 without NUL.
bool is_utf8(std::string_view text);

} // namespace coneline
