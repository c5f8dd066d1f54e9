// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A count of seeds or plants: whole, never below zero. A difference of two counts is a plain signed
// number, since it may be negative; it becomes a count again only through Count::of.

#include "core/base/fault.h"

#include <compare>
#include <cstdint>

namespace coneline {

class Count {
 public:
  Count() = default; ///< zero

  /// Fails below 0 and above a thousand million, which no nursery counts.
  static Result<Count> of(std::int64_t value);
  /// Reads a whole number in digits alone: no sign, no decimals, no blanks.
  static Result<Count> parse(std::string_view text);
  /// For a number known to be a count, such as a literal. A negative one is a fault of the program
  /// and throws std::out_of_range.
  static Count sure(std::int64_t value);

  [[nodiscard]] std::int64_t value() const { return value_; }
  [[nodiscard]] bool none() const { return value_ == 0; }

  auto operator<=>(const Count&) const = default;
  friend Count operator+(Count a, Count b) { return Count(a.value_ + b.value_); }
  Count& operator+=(Count other) {
    value_ += other.value_;
    return *this;
  }
  friend std::int64_t operator-(Count a, Count b) { return a.value_ - b.value_; }

 private:
  explicit Count(std::int64_t value) : value_(value) {}
  std::int64_t value_ = 0;
};

} // namespace coneline
