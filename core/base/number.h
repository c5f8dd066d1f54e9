// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Numbers as they are read from and written to files: always with a point, whatever the locale.

#include "core/base/fault.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace coneline {

/// A whole number that counts nothing alive (days, cells, a turn) lies between this and its
/// opposite, in a book and in its files alike.
inline constexpr std::int64_t most_whole = 1'000'000;

/// A whole number in digits with an optional minus. Refuses blanks, decimals, a plus, an empty
/// text.
Result<std::int64_t> parse_whole(std::string_view text);

/// A finite number: digits, point, optional exponent. Refuses a decimal comma and says so.
Result<double> parse_real(std::string_view text);

/// The shortest text that reads back as the same number: 0.1, 22.5, 3.
std::string write_real(double value);

} // namespace coneline
