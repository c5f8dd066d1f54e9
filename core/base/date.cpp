// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/date.h"

#include <fmt/format.h>

#include <cmath>
#include <ctime>

namespace coneline {

namespace {
constexpr int first_year = 1900;
constexpr int last_year = 2199;

std::chrono::year_month_day ymd(int days) {
  return std::chrono::year_month_day{std::chrono::sys_days{std::chrono::days{days}}};
}

int to_days(const std::chrono::year_month_day& day) {
  return static_cast<int>(std::chrono::sys_days{day}.time_since_epoch().count());
}

/// All digits, or -1.
int digits(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9')
      return -1;
    value = value * 10 + (c - '0');
  }
  return value;
}
} // namespace

Result<Date> Date::of(int year, unsigned month, unsigned day) {
  if (year < first_year || year > last_year)
    return refuse(
        fault(fmt::format("the year {} lies outside {} to {}", year, first_year, last_year),
              "Check the year."));
  const auto date = std::chrono::year_month_day{std::chrono::year{year}, std::chrono::month{month},
                                                std::chrono::day{day}};
  if (!date.ok())
    return refuse(fault(fmt::format("there is no day {:04}-{:02}-{:02}", year, month, day),
                        "Check month and day."));
  return Date(to_days(date));
}

Result<Date> Date::parse(std::string_view text) {
  const auto not_a_date = [&] {
    return refuse(
        fault(fmt::format("'{}' is no date", text), "Write year-month-day, such as 2026-03-09."));
  };
  if (text.size() != 10 || text[4] != '-' || text[7] != '-')
    return not_a_date();
  const int year = digits(text.substr(0, 4));
  const int month = digits(text.substr(5, 2));
  const int day = digits(text.substr(8, 2));
  if (year < 0 || month < 0 || day < 0)
    return not_a_date();
  return of(year, static_cast<unsigned>(month), static_cast<unsigned>(day));
}

Date Date::from_days(int days) {
  return Date(days);
}

Date Date::today() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  return Date(
      to_days(std::chrono::year{local.tm_year + 1900} / (local.tm_mon + 1) / local.tm_mday));
}

int Date::year() const {
  return static_cast<int>(ymd(days_).year());
}
unsigned Date::month() const {
  return static_cast<unsigned>(ymd(days_).month());
}
unsigned Date::day() const {
  return static_cast<unsigned>(ymd(days_).day());
}

std::string Date::iso() const {
  return fmt::format("{:04}-{:02}-{:02}", year(), month(), day());
}

Date Date::plus_months(int months) const {
  const auto from = ymd(days_);
  const auto month =
      std::chrono::year_month{from.year(), from.month()} + std::chrono::months{months};
  const auto last = std::chrono::year_month_day{month / std::chrono::last}.day();
  return Date(to_days(month / std::min(from.day(), last)));
}

Date Date::plus_part_months(double months) const {
  const double whole = std::floor(months);
  return plus_months(static_cast<int>(whole))
      .plus_days(static_cast<int>(std::lround((months - whole) * 30)));
}

Date Date::first_of_month() const {
  const auto from = ymd(days_);
  return Date(to_days(from.year() / from.month() / std::chrono::day{1}));
}

int months_between(Date from, Date to) {
  return (to.year() - from.year()) * 12 + static_cast<int>(to.month()) -
         static_cast<int>(from.month());
}

} // namespace coneline
