// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/logger_file.h"

#include "core/base/phrase.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/logger_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <map>

namespace coneline::exchange {

namespace {

using Cells = std::vector<std::string>;

struct Columns {
  std::size_t time = 0;
  std::optional<std::size_t> date;
  std::size_t temperature = 0;
};

bool holds(const std::string& cell, std::string_view part) {
  return lower(cell).find(part) != std::string::npos;
}

bool names_temperature(const std::string& cell) {
  return holds(cell, "temp") || holds(cell, "celsius") || holds(cell, "fahrenheit") ||
         holds(cell, "°c") || holds(cell, "°f");
}
bool names_date(const std::string& cell) {
  return holds(cell, "date") || holds(cell, "timestamp");
}
bool names_time(const std::string& cell) {
  return holds(cell, "time");
}

template <class Names>
std::vector<std::size_t> matching(const Cells& cells, Names names) {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < cells.size(); ++i)
    if (!cells[i].empty() && names(cells[i]))
      found.push_back(i);
  return found;
}

/// The column of a name that was given, or those whose name fits.
template <class Names>
std::vector<std::size_t> wanted(const Cells& cells, const std::string& given, Names names) {
  if (given.empty())
    return matching(cells, names);
  return matching(cells, [&](const std::string& cell) { return lower(cell) == lower(given); });
}

Fault several(const std::string& file, const LoggerRow& header,
              const std::vector<std::size_t>& which, std::string_view option) {
  Cells names;
  for (const auto place : which)
    names.push_back(header.cells[place]);
  return fault(phrase("several columns could be meant: {}",
                      fmt::format("{}", fmt::join(names, ", "))),
               phrase("Name one with {}.", option))
      .at({file, header.line, {}});
}

/// The columns in a row that may be the header; nothing when it is not.
Result<std::optional<Columns>> columns_in(const LoggerRow& row, const std::string& file,
                                          const LoggerOptions& options) {
  const auto temperatures = wanted(row.cells, options.temperature_column, names_temperature);
  auto dates = wanted(row.cells, options.date_column, names_date);
  auto times = wanted(row.cells, options.time_column, names_time);
  const auto both = [&](std::size_t place) { return std::ranges::count(dates, place) > 0; };
  if (row.cells.size() < 2 || temperatures.empty() || (dates.empty() && times.empty()))
    return std::optional<Columns>();
  if (temperatures.size() > 1)
    return refuse(several(file, row, temperatures, "--temperature-column"));
  Columns columns;
  columns.temperature = temperatures.front();
  if (!options.time_column.empty() && options.date_column.empty())
    dates.clear(); // the one named holds both
  if (dates.size() > 1)
    return refuse(several(file, row, dates, "--time-column"));
  if (!dates.empty())
    std::erase_if(times, both);
  if (times.size() > 1)
    return refuse(several(file, row, times, "--time-column"));
  if (dates.empty() || times.empty()) {
    columns.time = dates.empty() ? times.front() : dates.front();
  } else {
    columns.date = dates.front();
    columns.time = times.front();
  }
  return std::optional(columns);
}

std::optional<TemperatureUnit> unit_in(const std::string& name) {
  const auto small = lower(name);
  const auto ends = [&](std::string_view end) { return small.ends_with(end); };
  const auto has = [&](std::string_view part) { return small.find(part) != std::string::npos; };
  const bool celsius = has("°c") || has("celsius") || has("(c)") || has("[c]") || has("degc") ||
                       has("deg c") || ends("_c") || ends(" c");
  const bool fahrenheit = has("°f") || has("fahrenheit") || has("(f)") || has("[f]") ||
                          has("degf") || has("deg f") || ends("_f") || ends(" f");
  if (celsius == fahrenheit)
    return std::nullopt;
  return celsius ? TemperatureUnit::celsius : TemperatureUnit::fahrenheit;
}

/// One row of the file before its date is understood.
struct Raw {
  std::size_t line = 0;
  LoggerTime time;
  std::optional<double> value;
};

class Reader {
 public:
  Reader(const std::string& text, std::string name, const LoggerOptions& options)
      : name_(std::move(name)), options_(options),
        delimiter_(options.delimiter.value_or(likely_delimiter(text))),
        rows_(logger_rows(text, delimiter_)) {}

  Result<LoggerFile> run() {
    return find_header()
        .and_then([&] { return find_unit(); })
        .and_then([&] { return read_rows(); })
        .and_then([&] { return find_order(); })
        .and_then([&](DateOrder order) { return put_in_order(order); });
  }

 private:
  [[nodiscard]] const LoggerRow& header() const { return rows_[header_]; }
  [[nodiscard]] const std::string& column(std::size_t place) const { return header().cells[place]; }

  Result<void> find_header() {
    constexpr std::size_t furthest = 60;
    for (header_ = 0; header_ < std::min(rows_.size(), furthest); ++header_) {
      auto columns = columns_in(rows_[header_], name_, options_);
      if (!columns)
        return refuse(columns.error());
      if (*columns) {
        columns_ = **columns;
        file_.time_column = columns_.date ? column(*columns_.date) + " + " + column(columns_.time)
                                          : column(columns_.time);
        file_.temperature_column = column(columns_.temperature);
        return {};
      }
    }
    return refuse(
        fault("no header with a column for date and time and one for temperature was found",
              "Name them with --time-column and --temperature-column; --delimiter says what stands "
              "between columns.")
            .at({name_, 0, {}}));
  }

  Result<void> find_unit() {
    const auto unit = options_.unit ? options_.unit : unit_in(file_.temperature_column);
    if (!unit)
      return refuse(
          fault("the unit of the temperatures is not said", "State it with --unit C or --unit F.")
              .at({name_, header().line, file_.temperature_column}));
    file_.unit = *unit;
    return {};
  }

  [[nodiscard]] char decimal() const {
    if (options_.decimal)
      return *options_.decimal;
    if (delimiter_ == ',')
      return '.';
    for (auto i = header_ + 1; i < rows_.size(); ++i)
      if (columns_.temperature < rows_[i].cells.size() &&
          rows_[i].cells[columns_.temperature].find(',') != std::string::npos)
        return ',';
    return '.';
  }

  Fault cell_fault(const LoggerRow& row, std::size_t place, std::string remedy) const {
    return fault(phrase("'{}' cannot be read", shortened(row.cells[place])), std::move(remedy))
        .at({name_, row.line, column(place)});
  }

  /// Where the date stands, with or without the time of day.
  [[nodiscard]] std::size_t date_column() const { return columns_.date.value_or(columns_.time); }

  /// The column to blame for a time that cannot be read: the date's, unless a date alone is read.
  [[nodiscard]] std::size_t wrong_of_time(const LoggerRow& row) const {
    return logger_time(row.cells[date_column()] + " 12:00") ? columns_.time : date_column();
  }

  Result<void> read_rows() {
    const char point = decimal();
    const auto last = std::max({columns_.time, columns_.temperature, columns_.date.value_or(0)});
    for (auto i = header_ + 1; i < rows_.size(); ++i) {
      const auto& row = rows_[i];
      if (row.cells.size() <= std::max(columns_.time, columns_.date.value_or(0)))
        return refuse(fault(phrase("the row has {} cells, at least {} are needed", row.cells.size(),
                                   last + 1),
                            "Complete the row, or take it out.")
                          .at({name_, row.line, {}}));
      const auto time =
          logger_time(columns_.date ? row.cells[*columns_.date] + " " + row.cells[columns_.time]
                                    : row.cells[columns_.time]);
      if (!time)
        return refuse(
            cell_fault(row, wrong_of_time(row),
                       "A date with a time of day is expected, such as 2026-03-09 14:05."));
      const std::string_view cell = columns_.temperature < row.cells.size()
                                        ? std::string_view(row.cells[columns_.temperature])
                                        : std::string_view();
      Raw raw{row.line, *time, logger_number(cell, point)};
      if (!raw.value && !is_no_reading(cell))
        return refuse(cell_fault(row, columns_.temperature,
                                 phrase("A number with a decimal '{}' is expected; --decimal "
                                        "says which.",
                                        point)));
      raws_.push_back(raw);
    }
    if (raws_.empty())
      return refuse(fault("no row after the header", "Check the file.").at({name_, 0, {}}));
    return {};
  }

  /// The order of day and month, as far as the dates of the file tell.
  Result<DateOrder> find_order() const {
    if (options_.date_order)
      return *options_.date_order;
    if (raws_.front().time.year_first)
      return DateOrder::year_month_day;
    if (raws_.front().time.dotted)
      return DateOrder::day_month_year;
    const auto beyond_12 = [&](int LoggerTime::*part) {
      return std::ranges::find_if(raws_, [&](const Raw& raw) { return raw.time.*part > 12; });
    };
    const auto day_first = beyond_12(&LoggerTime::first);
    const auto day_second = beyond_12(&LoggerTime::second);
    if (day_first != raws_.end() && day_second != raws_.end())
      return refuse(
          fault(phrase("the day stands first here and second on line {}", day_second->line),
                "Write all dates one way.")
              .at({name_, day_first->line, column(date_column())}));
    if (day_first == raws_.end() && day_second == raws_.end())
      return refuse(fault("the file does not tell whether the day or the month comes first",
                          "State it with --date-order dmy or mdy.")
                        .at({name_, raws_.front().line, column(date_column())}));
    return day_first != raws_.end() ? DateOrder::day_month_year : DateOrder::month_day_year;
  }

  Result<LoggerFile> put_in_order(DateOrder order) {
    std::map<Moment, LoggerReading> by_time;
    std::optional<Moment> before;
    for (const auto& raw : raws_) {
      const auto at = moment_of(raw.time, order);
      if (!at)
        return refuse(at.error().at({name_, raw.line, column(date_column())}));
      file_.out_of_order += before && *at < *before ? 1 : 0;
      before = *at;
      if (!raw.value) {
        ++file_.without_reading;
        continue;
      }
      const double celsius =
          file_.unit == TemperatureUnit::celsius ? *raw.value : (*raw.value - 32) / 1.8;
      const auto [stands, fresh] = by_time.try_emplace(*at, LoggerReading{*at, celsius, raw.line});
      if (!fresh && stands->second.celsius == celsius)
        ++file_.repeated;
      else if (!fresh)
        file_.second_answers.push_back(raw.line);
    }
    if (by_time.empty())
      return refuse(fault("no row with a temperature", "Check the file.").at({name_, 0, {}}));
    for (const auto& [at, reading] : by_time)
      file_.readings.push_back(reading);
    return std::move(file_);
  }

  std::string name_;
  const LoggerOptions& options_;
  char delimiter_;
  std::vector<LoggerRow> rows_;
  std::size_t header_ = 0;
  Columns columns_;
  std::vector<Raw> raws_;
  LoggerFile file_;
};

} // namespace

Result<LoggerFile> read_logger(const std::string& text, const std::string& name,
                               const LoggerOptions& options) {
  return Reader(text, name, options).run();
}

Result<LoggerFile> read_logger_file(const std::filesystem::path& path,
                                    const LoggerOptions& options) {
  constexpr std::uintmax_t largest = 512ULL * 1024 * 1024;
  std::error_code error;
  const auto size = std::filesystem::file_size(path, error);
  if (error)
    return refuse(fault(phrase("'{}' cannot be read: {}", path.string(), error.message()),
                        "Check the name."));
  if (size > largest)
    return refuse(
        fault(phrase("'{}' has {} MB, more than 512 MB", path.string(), size >> 20U), "Split it."));
  std::ifstream in(path, std::ios::binary);
  std::string text(size, '\0');
  if (!in || !in.read(text.data(), static_cast<std::streamsize>(size)))
    return refuse(
        fault(phrase("'{}' cannot be read", path.string()), "Check that it may be read."));
  return read_logger(text, path.filename().string(), options);
}

} // namespace coneline::exchange
