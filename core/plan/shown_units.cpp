// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shown_units.h"

#include "core/base/phrase.h"

namespace coneline::plan {

namespace {

std::string unit(Quantity quantity) {
  return std::string(unit_word(language().units(), quantity));
}

} // namespace

double in_readers_units(Shown shown, double value) {
  const auto system = language().units();
  switch (shown) {
  case Shown::into:
  case Shown::standing:
  case Shown::ready:
    return value;
  case Shown::mix:
  case Shown::part:
    return in_units(system, Quantity::litres, value);
  case Shown::square_metres:
  case Shown::place_metres:
  case Shown::unplaced_metres:
    return in_units(system, Quantity::square_metres, value);
  case Shown::load:
  case Shown::place_load:
    return in_units(system, Quantity::kilograms, value) /
           in_units(system, Quantity::square_metres, 1);
  }
  return value;
}

std::string readers_unit(Shown shown) {
  switch (shown) {
  case Shown::into:
  case Shown::standing:
  case Shown::ready:
    return phrase("plants");
  case Shown::mix:
  case Shown::part:
    return unit(Quantity::litres);
  case Shown::square_metres:
  case Shown::place_metres:
  case Shown::unplaced_metres:
    return unit(Quantity::square_metres);
  case Shown::load:
  case Shown::place_load:
    return unit(Quantity::kilograms) + "/" + unit(Quantity::square_metres);
  }
  return {};
}

} // namespace coneline::plan
