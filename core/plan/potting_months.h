// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Months of the year as one number, as a figure of the book keeps them: a bit a month, January the
// lowest. 4095 is the whole year.

#include <algorithm>
#include <array>

namespace coneline::plan {

inline double months_as_number(const std::array<bool, 12>& months) {
  unsigned bits = 0;
  for (unsigned month = 0; month < 12; ++month)
    bits |= months.at(month) ? 1U << month : 0U;
  return bits;
}

inline std::array<bool, 12> months_of_number(double number) {
  std::array<bool, 12> months{};
  const auto bits = static_cast<unsigned>(std::clamp(number, 0.0, 4095.0));
  for (unsigned month = 0; month < 12; ++month)
    months.at(month) = (bits >> month & 1U) != 0;
  return months;
}

} // namespace coneline::plan
