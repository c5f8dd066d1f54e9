// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/logger_text.h"

#include "core/base/csv.h"
#include "core/base/number.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>

namespace coneline::exchange {

std::string from_latin_1(std::string_view text) {
  std::string made;
  for (const char letter : text) {
    const auto byte = static_cast<unsigned char>(letter);
    if (byte < 0x80U) {
      made += letter;
    } else {
      made += static_cast<char>(0xC0U | (byte >> 6U));
      made += static_cast<char>(0x80U | (byte & 0x3FU));
    }
  }
  return made;
}

std::string trimmed(std::string_view text) {
  constexpr std::string_view blanks = " \t\r\n";
  const auto from = text.find_first_not_of(blanks);
  if (from == std::string_view::npos)
    return "";
  return std::string(text.substr(from, text.find_last_not_of(blanks) - from + 1));
}

namespace {

/// Takes a whole number of 1 to 4 digits off the front; -1 where there is none.
int take_number(std::string_view& text) {
  int value = -1;
  const auto most = text.substr(0, 4);
  const auto [end, error] = std::from_chars(most.data(), most.data() + most.size(), value);
  if (error != std::errc{} || value < 0)
    return -1;
  text.remove_prefix(static_cast<std::size_t>(end - most.data()));
  return value;
}

bool take(std::string_view& text, char letter) {
  if (text.empty() || text.front() != letter)
    return false;
  text.remove_prefix(1);
  return true;
}

/// "14:05", "14:05:30", "14:05:30.000", "02:05 PM", an offset or Z after it passed over: the clock
/// counts.
std::optional<int> seconds_of(std::string_view text) {
  const int hour = take_number(text);
  if (hour < 0 || hour > 23 || !take(text, ':'))
    return std::nullopt;
  const int minute = take_number(text);
  int second = 0;
  if (take(text, ':'))
    second = take_number(text);
  if (minute < 0 || minute > 59 || second < 0 || second > 59)
    return std::nullopt;
  if (take(text, '.'))
    while (!text.empty() && text.front() >= '0' && text.front() <= '9')
      text.remove_prefix(1);
  const auto rest = lower(trimmed(text));
  if (rest == "am" || rest == "pm" || rest == "a.m." || rest == "p.m.") {
    if (hour < 1 || hour > 12)
      return std::nullopt;
    return (hour % 12 + (rest.front() == 'p' ? 12 : 0)) * 3600 + minute * 60 + second;
  }
  const bool offset = !rest.empty() && (rest.front() == '+' || rest.front() == '-');
  if (!rest.empty() && rest != "z" && rest != "utc" && !offset)
    return std::nullopt;
  return hour * 3600 + minute * 60 + second;
}

} // namespace

std::string lower(std::string_view text) {
  std::string made(text);
  std::ranges::transform(made, made.begin(), [](char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
  });
  return made;
}

std::vector<LoggerRow> logger_rows(const std::string& given, char delimiter) {
  std::string_view text = given;
  if (text.starts_with("\xEF\xBB\xBF"))
    text.remove_prefix(3);
  const std::string made = is_utf8(text) ? std::string(text) : from_latin_1(text);
  std::vector<LoggerRow> rows;
  LoggerRow row{1, {}};
  std::string cell;
  std::size_t line = 1;
  bool quoted = false;
  const auto end_row = [&] {
    row.cells.push_back(trimmed(cell));
    cell.clear();
    if (row.cells.size() > 1 || !row.cells.front().empty())
      rows.push_back(std::move(row));
    row = {line, {}};
  };
  for (std::size_t i = 0; i < made.size(); ++i) {
    const char letter = made[i];
    line += letter == '\n' ? 1 : 0;
    if (letter == '"' && quoted && i + 1 < made.size() && made[i + 1] == '"') {
      cell += letter;
      ++i;
    } else if (letter == '"') {
      quoted = !quoted;
    } else if (letter == '\n') {
      quoted = false; // no cell of a logger runs over lines; a stray quote spoils one row only
      end_row();
    } else if (letter == delimiter && !quoted) {
      row.cells.push_back(trimmed(cell));
      cell.clear();
    } else {
      cell += letter;
    }
  }
  end_row();
  return rows;
}

char likely_delimiter(const std::string& text) {
  constexpr std::array candidates{';', '\t', ','};
  std::array<std::size_t, candidates.size()> lines{};
  std::size_t seen = 0;
  for (std::size_t at = 0; at < text.size() && seen < 200; ++seen) {
    const auto end = std::min(text.find('\n', at), text.size());
    const std::string_view one(text.data() + at, end - at);
    for (std::size_t i = 0; i < candidates.size(); ++i)
      lines.at(i) += one.find(candidates.at(i)) != std::string_view::npos ? 1 : 0;
    at = end + 1;
  }
  // A comma may be the decimal one, so the others come first where they are as frequent.
  return candidates.at(static_cast<std::size_t>(std::ranges::max_element(lines) - lines.begin()));
}

std::optional<LoggerTime> logger_time(std::string_view text) {
  LoggerTime time;
  const auto given = text;
  time.first = take_number(text);
  time.year_first = given.size() - text.size() == 4;
  if (time.first < 0 || text.empty())
    return std::nullopt;
  const char between = text.front();
  if (between != '-' && between != '/' && between != '.')
    return std::nullopt;
  time.dotted = between == '.';
  if (!take(text, between) || (time.second = take_number(text)) < 0 || !take(text, between) ||
      (time.third = take_number(text)) < 0)
    return std::nullopt;
  take(text, ',');
  if (!take(text, 'T'))
    while (take(text, ' ')) {
    }
  if (text.empty())
    return std::nullopt;
  const auto seconds = seconds_of(text);
  if (!seconds)
    return std::nullopt;
  time.seconds = *seconds;
  return time;
}

Result<Moment> moment_of(const LoggerTime& time, DateOrder order) {
  int year = time.first;
  int month = time.second;
  int day = time.third;
  if (order == DateOrder::day_month_year) {
    day = time.first;
    year = time.third;
  } else if (order == DateOrder::month_day_year) {
    month = time.first;
    day = time.second;
    year = time.third;
  }
  if (year < 100)
    year += 2000;
  return Date::of(year, static_cast<unsigned>(month), static_cast<unsigned>(day))
      .map([&](Date date) {
        return Moment{date, time.seconds};
      });
}

std::optional<double> logger_number(std::string_view text, char decimal) {
  std::string plain(text);
  if (decimal == ',') {
    if (plain.find('.') != std::string::npos)
      return std::nullopt;
    std::ranges::replace(plain, ',', '.');
  }
  if (plain.starts_with("+"))
    plain.erase(0, 1);
  const auto read = parse_real(plain);
  return read ? std::optional(*read) : std::nullopt;
}

bool is_no_reading(std::string_view text) {
  constexpr std::array<std::string_view, 13> words{
      "", "nan", "na", "n/a", "null", "-", "--", "---", "err", "error", "n.a.", "fault", "no data"};
  return std::ranges::find(words, lower(text)) != words.end();
}

} // namespace coneline::exchange
