// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A temperature logger's CSV, whatever its columns are called: lines before the header are passed
// over, the columns are found by their names or named by the grower, the date's order and the unit
// are asked for where the file does not tell.
//
//   "Plot: bench A"                        date_time    "Date Time"
//   Date Time;Temp (°C)              ->    temperature  "Temp (°C)", celsius
//   09.03.2026 14:00;24,5                  2026-03-09T14:00:00, 24.5

#include "core/base/moment.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace coneline::exchange {

enum class TemperatureUnit { celsius, fahrenheit };
enum class DateOrder { year_month_day, day_month_year, month_day_year };

/// What the grower states; the rest is found in the file.
struct LoggerOptions {
  std::string time_column; ///< date and time together, or the time where date_column is given
  std::string date_column; ///< the date alone
  std::string temperature_column;
  std::optional<TemperatureUnit> unit;
  std::optional<char> delimiter;
  std::optional<char> decimal; ///< '.' or ','
  std::optional<DateOrder> date_order;
};

struct LoggerReading {
  Moment at;
  double celsius = 0;
  std::size_t line = 0;
};

struct LoggerFile {
  std::vector<LoggerReading> readings; ///< by time, one a moment
  std::string time_column;             ///< as found
  std::string temperature_column;
  TemperatureUnit unit = TemperatureUnit::celsius;
  std::size_t without_reading = 0; ///< rows with a time and no number
  std::size_t out_of_order = 0;    ///< rows earlier than the row before
  std::size_t repeated = 0;        ///< rows that say again what stood there
  /// Rows with another temperature at a moment that stood there, such as in the hour that comes
  /// twice when clocks go back; the first is kept.
  std::vector<std::size_t> second_answers;
};

/// Fails, naming file, line and column: no such columns, several that could be meant, an unknown
/// unit or order of the date, a cell that cannot be read, no reading at all. A file that is no
/// UTF-8 is read as Latin-1, as loggers write the degree sign.
Result<LoggerFile> read_logger(const std::string& text, const std::string& name,
                               const LoggerOptions& options);
Result<LoggerFile> read_logger_file(const std::filesystem::path& path,
                                    const LoggerOptions& options);

} // namespace coneline::exchange
