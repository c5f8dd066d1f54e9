// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/quantity.h"

namespace coneline {

namespace {

/// How much of the kept unit makes one customary unit; a degree for temperatures.
double size_of(Quantity quantity) {
  switch (quantity) {
  case Quantity::litres:
    return 3.785411784;
  case Quantity::millimetres:
    return 25.4;
  case Quantity::square_metres:
    return 0.09290304;
  case Quantity::celsius:
    return 1 / 1.8;
  case Quantity::kilograms:
    return 0.45359237;
  }
  return 1;
}

} // namespace

double in_units(UnitSystem system, Quantity quantity, double kept) {
  if (system == UnitSystem::metric)
    return kept;
  return quantity == Quantity::celsius ? 1.8 * kept + 32 : kept / size_of(quantity);
}

double from_units(UnitSystem system, Quantity quantity, double given) {
  if (system == UnitSystem::metric)
    return given;
  return quantity == Quantity::celsius ? (given - 32) / 1.8 : given * size_of(quantity);
}

double for_one_unit(UnitSystem system, Quantity quantity, double for_one_kept) {
  return system == UnitSystem::metric ? for_one_kept : for_one_kept * size_of(quantity);
}

double for_one_kept(UnitSystem system, Quantity quantity, double for_one_unit) {
  return system == UnitSystem::metric ? for_one_unit : for_one_unit / size_of(quantity);
}

std::string_view unit_word(UnitSystem system, Quantity quantity) {
  const bool us = system == UnitSystem::us;
  switch (quantity) {
  case Quantity::litres:
    return us ? "US gal" : "L";
  case Quantity::millimetres:
    return us ? "in" : "mm";
  case Quantity::square_metres:
    return us ? "ft²" : "m²";
  case Quantity::celsius:
    return us ? "°F" : "°C";
  case Quantity::kilograms:
    return us ? "lb" : "kg";
  }
  return "";
}

} // namespace coneline
