// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is measured, and its units. The book is metric; the United States' customary units are for
// showing and typing. Conversions are exact by definition (NIST Special Publication 811, 2008
// edition, Appendix B): 1 in = 25.4 mm, 1 US gal = 231 in³ = 3.785411784 L, 1 lb = 0.45359237 kg,
// 1 ft² = 0.09290304 m², °F = 1.8 °C + 32.

#include <string_view>

namespace coneline {

/// Each is kept in the unit it is named by.
enum class Quantity { litres, millimetres, square_metres, celsius, kilograms };
enum class UnitSystem { metric, us };

/// A kept value in a system's unit; unchanged for metric.
double in_units(UnitSystem system, Quantity quantity, double kept);
/// A value in a system's unit as it is kept.
double from_units(UnitSystem system, Quantity quantity, double given);
/// A price or anything else for one unit: 10 for a litre is 37.85 for a US gallon.
double for_one_unit(UnitSystem system, Quantity quantity, double for_one_kept);
double for_one_kept(UnitSystem system, Quantity quantity, double for_one_unit);

/// "L", "US gal", "mm", "in", "m²", "ft²", "°C", "°F", "kg", "lb".
std::string_view unit_word(UnitSystem system, Quantity quantity);

} // namespace coneline
