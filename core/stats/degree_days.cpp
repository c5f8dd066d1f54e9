// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/degree_days.h"

#include <algorithm>

namespace coneline::stats {

std::string_view degree_days_word(DegreeDays method) {
  switch (method) {
  case DegreeDays::average:
    return "average";
  case DegreeDays::clipped:
    return "clipped";
  case DegreeDays::triangle:
    return "triangle";
  case DegreeDays::readings:
    return "readings";
  }
  return "";
}

std::optional<DegreeDays> degree_days_named(std::string_view word) {
  for (const auto method : all_degree_days)
    if (degree_days_word(method) == word)
      return method;
  return std::nullopt;
}

double degree_days(DegreeDays method, const DayTemperature& day, double base) {
  const double low = day.low - base;
  const double high = day.high - base;
  switch (method) {
  case DegreeDays::average:
    return std::max(0.0, (low + high) / 2);
  case DegreeDays::clipped:
    return (std::max(0.0, low) + std::max(0.0, high)) / 2;
  case DegreeDays::triangle:
    if (low >= 0)
      return (low + high) / 2;
    return high <= 0 ? 0 : high * high / (2 * (high - low));
  case DegreeDays::readings:
    return day.above_base;
  }
  return 0;
}

} // namespace coneline::stats
