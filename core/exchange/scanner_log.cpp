// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/scanner_log.h"

#include "core/base/csv.h"
#include "core/base/phrase.h"
#include "core/exchange/faults.h"
#include "core/work/scan_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <fstream>
#include <sstream>

namespace coneline::exchange {

namespace {

constexpr int repeat_seconds = 3;

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// The numbers of a text such as 2026-11-20 or 14:05:00, which may have only `between` in between.
std::optional<std::vector<int>> numbers(std::string_view text, char between) {
  std::vector<int> found;
  while (true) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || text.empty() || !is_digit(text.front()))
      return std::nullopt;
    found.push_back(number);
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    if (text.empty())
      return found;
    if (text.front() != between)
      return std::nullopt;
    text.remove_prefix(1);
  }
}

/// Nothing: no time at all. A fault: one that no clock shows.
std::optional<Result<int>> read_time(std::string_view text) {
  while (!text.empty() && (text.back() == 'Z' || text.back() == 'z'))
    text.remove_suffix(1);
  if (const auto zone = text.find_first_of("+-"); zone != std::string_view::npos)
    text = text.substr(0, zone);
  if (const auto part = text.find('.'); part != std::string_view::npos)
    text = text.substr(0, part);
  const auto parts = numbers(text, ':');
  if (!parts || parts->size() < 2 || parts->size() > 3)
    return std::nullopt;
  const int second = parts->size() == 3 ? (*parts)[2] : 0;
  if ((*parts)[0] > 23 || (*parts)[1] > 59 || second > 59)
    return refuse(fault(phrase("'{}' is no time", text), "Correct the time."));
  return (*parts)[0] * 3600 + (*parts)[1] * 60 + second;
}

Result<Date> day_of(int year, int month, int day) {
  return Date::of(year, static_cast<unsigned>(month), static_cast<unsigned>(day));
}

/// 20261120, 140500 or both in one, as some scanners write them.
std::optional<std::string> spread(std::string_view digits, bool after_date) {
  if (!std::ranges::all_of(digits, is_digit))
    return std::nullopt;
  if (digits.size() == 8 && (digits.starts_with("19") || digits.starts_with("20")))
    return fmt::format("{}-{}-{}", digits.substr(0, 4), digits.substr(4, 2), digits.substr(6));
  if (digits.size() == 6 && after_date)
    return fmt::format("{}:{}:{}", digits.substr(0, 2), digits.substr(2, 2), digits.substr(4));
  if (digits.size() == 14)
    return fmt::format("{}-{}-{}T{}:{}:{}", digits.substr(0, 4), digits.substr(4, 2),
                       digits.substr(6, 2), digits.substr(8, 2), digits.substr(10, 2),
                       digits.substr(12));
  return std::nullopt;
}

/// Nothing: no date at all.
std::optional<Result<Date>> read_date(std::string_view text) {
  for (const char between : {'-', '/', '.'}) {
    const auto parts = numbers(text, between);
    if (!parts || parts->size() != 3)
      continue;
    const auto [a, b, c] = std::array{(*parts)[0], (*parts)[1], (*parts)[2]};
    if (a > 999)
      return day_of(a, b, c);
    if (c < 1000)
      return refuse(fault(phrase("'{}' has a year of fewer than four digits", text),
                          "Set the scanner to write 2026-11-20."));
    if (between != '/')
      return day_of(c, b, a);
    if (a > 12 || a == b)
      return day_of(c, b, a);
    if (b > 12)
      return day_of(c, a, b);
    return refuse(fault(phrase("'{}' can be two days", text),
                        "Set the scanner to write 2026-11-20, or correct the line."));
  }
  return std::nullopt;
}

/// A field that says nothing here: a count of 1, the kind of symbol.
bool says_nothing(std::string_view field) {
  static constexpr std::array<std::string_view, 8> kinds{
      "QR", "QRCODE", "QR CODE", "QR-CODE", "DATAMATRIX", "DATA MATRIX", "CODE128", "CODE 128"};
  std::string capitals(field);
  std::ranges::transform(capitals, capitals.begin(), [](char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c;
  });
  return field.empty() || std::ranges::all_of(field, is_digit) ||
         std::ranges::find(kinds, capitals) != kinds.end();
}

std::vector<std::string> fields_of(std::string_view line) {
  char between = ' ';
  for (const char c : {';', '\t', ','})
    if (line.find(c) != std::string_view::npos) {
      between = c;
      break;
    }
  std::vector<std::string> fields;
  std::string field;
  bool quoted = false;
  const auto take = [&] {
    const auto first = field.find_first_not_of(" \t");
    if (first != std::string::npos)
      fields.push_back(field.substr(first, field.find_last_not_of(" \t") + 1 - first));
    field.clear();
  };
  for (const char c : line) {
    if (c == '"')
      quoted = !quoted;
    else if (c == between && !quoted)
      take();
    else
      field += c;
  }
  take();
  return fields;
}

class ReadLine {
 public:
  explicit ReadLine(std::size_t line) { scan_.line = line; }

  Result<LogScan> read(std::string_view line) {
    if (!is_utf8(line))
      return refuse(fault("the line is no UTF-8 text", "Take it out, or save the file as text."));
    for (const auto& field : fields_of(line))
      if (auto took = take(field); !took)
        return refuse(took.error());
    if (!found_ && !not_read_)
      return refuse(fault(phrase("'{}' holds no code", shortened(line)),
                          "Scan the label again, or type its code."));
    if (!found_)
      return refuse(*not_read_);
    if (scan_.second && !scan_.date && not_read_)
      return refuse(*not_read_);
    return scan_;
  }

 private:
  Result<void> take(const std::string& written) {
    const auto field = spread(written, scan_.date.has_value() && !scan_.second).value_or(written);
    if (const auto date = read_date(field))
      return keep(*date, scan_.date);
    if (const auto time = read_time(field))
      return keep(*time, scan_.second);
    if (const auto middle = field.find_first_of("T "); middle != std::string::npos && middle > 5) {
      const auto date = read_date(std::string_view(field).substr(0, middle));
      const auto time = read_time(std::string_view(field).substr(middle + 1));
      if (date && time)
        return keep(*date, scan_.date).and_then([&] { return keep(*time, scan_.second); });
    }
    const auto scanned = work::scan_text(field);
    const auto code = Code::parse(scanned.text);
    if (code && found_)
      return refuse(
          fault(phrase("two codes in one line, {} and {}", scan_.code.text(), code->text()),
                "A line is one scan."));
    if (code) {
      found_ = true;
      scan_.code = *code;
      scan_.note = scanned.note;
    } else if (!says_nothing(field) && !not_read_) {
      not_read_ = code.error();
    }
    return {};
  }

  template <class Value>
  Result<void> keep(const Result<Value>& read, std::optional<Value>& to) {
    if (!read)
      return refuse(read.error());
    if (to)
      return refuse(fault("two days or two times in one line", "A line is one scan."));
    to = *read;
    return {};
  }

  LogScan scan_;
  bool found_ = false;
  std::optional<Fault> not_read_; ///< a field that is neither code nor moment
};

bool is_repeat(const std::vector<LogScan>& scans, const LogScan& scan) {
  if (scans.empty() || scans.back().code != scan.code || !scan.second || !scans.back().second)
    return false;
  const auto later = *scan.second - *scans.back().second;
  return scans.back().date == scan.date && later >= 0 && later <= repeat_seconds;
}

} // namespace

ScannerLog read_scanner_log(std::string_view text, const std::string& file) {
  ScannerLog log{file, {}, 0, {}};
  if (text.starts_with("\xef\xbb\xbf"))
    text.remove_prefix(3);
  for (std::size_t number = 1; !text.empty(); ++number) {
    const auto end = text.find_first_of("\r\n");
    const auto line = text.substr(0, end);
    if (end == std::string_view::npos)
      text = {};
    else
      text.remove_prefix(end + (text.substr(end).starts_with("\r\n") ? 2 : 1));
    const bool heading = number == 1 && std::ranges::none_of(line, is_digit);
    if (heading || line.find_first_not_of(" \t,;") == std::string_view::npos)
      continue;
    auto scan = ReadLine(number).read(line);
    if (!scan)
      log.bad.push_back(scan.error().at({file, number, {}}));
    else if (is_repeat(log.scans, *scan))
      ++log.repeated;
    else
      log.scans.push_back(std::move(*scan));
  }
  return log;
}

Result<ScannerLog> read_scanner_log_file(const std::filesystem::path& path) {
  constexpr std::uintmax_t most = 16'000'000;
  std::error_code error;
  const auto size = std::filesystem::file_size(path, error);
  if (error)
    return refuse(fault(phrase("the log '{}' cannot be read: {}", path.string(), error.message()),
                        "Check its name."));
  if (size > most)
    return refuse(
        fault(phrase("the log '{}' has {} bytes, more than {}", path.string(), size, most),
              "Is it a scanner's log?"));
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  if (!in || text.str().empty())
    return refuse(fault(phrase("the log '{}' is empty or cannot be read", path.string()),
                        "Fetch it from the scanner again."));
  return read_scanner_log(text.str(), path.filename().string());
}

} // namespace coneline::exchange
