// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Cells, dates and numbers as loggers write them. Private to this room.

#include "core/exchange/logger_file.h"

namespace coneline::exchange {

struct LoggerRow {
  std::size_t line = 0;
  std::vector<std::string> cells; ///< blanks at their ends taken off
};

/// Rows of at least one cell; quotes as in CSV. Latin-1 is made UTF-8 first.
std::vector<LoggerRow> logger_rows(const std::string& text, char delimiter);

/// Of comma, semicolon and tab the one most rows have.
char likely_delimiter(const std::string& text);

/// The three numbers of a date and the time after it, before it is known which is which.
struct LoggerTime {
  int first = 0;
  int second = 0;
  int third = 0;
  bool year_first = false;
  bool dotted = false;
  int seconds = 0; ///< of the day
};
/// Nothing where it is no date, or no date with a time.
std::optional<LoggerTime> logger_time(std::string_view text);

Result<Moment> moment_of(const LoggerTime& time, DateOrder order);

/// Nothing where it is no number.
std::optional<double> logger_number(std::string_view text, char decimal);

/// What loggers write where they could not measure.
bool is_no_reading(std::string_view text);

std::string lower(std::string_view text);
/// Without the blanks at its ends.
std::string trimmed(std::string_view text);
std::string from_latin_1(std::string_view text);

} // namespace coneline::exchange
