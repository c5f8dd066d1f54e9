// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A calendar day without time or zone, written as ISO 8601: 2026-03-09.

#include "core/base/fault.h"

#include <chrono>
#include <compare>
#include <string>
#include <string_view>

namespace coneline {

/// A day of the Gregorian calendar from 1900-01-01 to 2199-12-31: wide enough for the oldest parent
/// plant and the longest plan, narrow enough that a slipped digit is refused.
class Date {
 public:
  Date() = default; ///< 1970-01-01; for containers only

  /// Fails on a day that does not exist (2026-02-30) or lies outside 1900 to 2199.
  static Result<Date> of(int year, unsigned month, unsigned day);
  /// Reads exactly YYYY-MM-DD. Everything else, also other ISO 8601 forms, is refused with the
  /// value named.
  static Result<Date> parse(std::string_view text);
  /// From days since 1970-01-01; used for what the program itself has computed. This and what
  /// is reckoned from a day below may leave 1900 to 2199; `parse` reads no such day back.
  static Date from_days(int days);
  /// The computer's own day, local time.
  static Date today();

  [[nodiscard]] int days() const { return days_; } ///< days since 1970-01-01
  [[nodiscard]] int year() const;
  [[nodiscard]] unsigned month() const; ///< 1 to 12
  [[nodiscard]] unsigned day() const;   ///< 1 to 31
  [[nodiscard]] std::string iso() const;
  /// As who reads it writes days; ISO on the command line. For sentences, never for files.
  [[nodiscard]] std::string said() const;

  [[nodiscard]] Date plus_days(int days) const { return from_days(days_ + days); }
  /// The same day of the month some months on; the last day of the month where that day does not
  /// exist.
  [[nodiscard]] Date plus_months(int months) const;
  /// Whole months by the calendar, a part of a month as that part of 30 days; for ranges such
  /// as 1.5 months.
  [[nodiscard]] Date plus_part_months(double months) const;
  [[nodiscard]] Date first_of_month() const;

  auto operator<=>(const Date&) const = default;

 private:
  explicit Date(int days) : days_(days) {}
  int days_ = 0;
};

/// Days from `from` to `to`; negative when `to` is earlier.
inline int days_between(Date from, Date to) {
  return to.days() - from.days();
}

/// Whole calendar months from the month of `from` to the month of `to`.
int months_between(Date from, Date to);

} // namespace coneline
