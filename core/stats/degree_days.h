// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Degree-days of one day above a base: how much warmth it brought.
//
//   average   max(0, (low + high)/2 - base)                      McMaster & Wilhelm 1997, method 1
//   clipped   low and high raised to the base where below, then averaged      the same, method 2
//   triangle  area above the base of a straight rise from low to high and back: the single triangle
//             of Zalom, Goodell, Wilson, Barnett & Bentley 1983
//   readings  mean over the day of max(0, T - base), straight lines between the logger's readings
//
// McMaster & Wilhelm 1997, Agricultural and Forest Meteorology 87:291-300. Zalom et al. 1983,
// "Degree-days: the calculation and use of heat units in pest management", University of California
// leaflet 21373. Both cited from memory. No upper threshold is used.

#include "core/stats/temperature_days.h"

#include <array>
#include <optional>
#include <string_view>

namespace coneline::stats {

enum class DegreeDays { average, clipped, triangle, readings };
inline constexpr std::array all_degree_days{DegreeDays::average, DegreeDays::clipped,
                                            DegreeDays::triangle, DegreeDays::readings};

std::string_view degree_days_word(DegreeDays method); ///< as above
std::optional<DegreeDays> degree_days_named(std::string_view word);

/// 0 or more, in °C times days. For `readings` the day must have been made with the same base.
double degree_days(DegreeDays method, const DayTemperature& day, double base);

} // namespace coneline::stats
