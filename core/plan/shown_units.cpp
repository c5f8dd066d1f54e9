// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shown_units.h"

#include "core/base/phrase.h"

namespace coneline::plan {

namespace {

/// What a series is counted in: plants, or a quantity, perhaps over another.
struct Unit {
  std::optional<Quantity> of;
  std::optional<Quantity> over;
};

Unit unit_of(Shown shown) {
  switch (shown) {
  case Shown::into:
  case Shown::standing:
  case Shown::ready:
    return {};
  case Shown::mix:
  case Shown::part:
    return {Quantity::litres, {}};
  case Shown::square_metres:
  case Shown::place_metres:
  case Shown::unplaced_metres:
    return {Quantity::square_metres, {}};
  case Shown::load:
  case Shown::place_load:
    return {Quantity::kilograms, Quantity::square_metres};
  }
  return {};
}

} // namespace

double in_readers_units(Shown shown, double value) {
  const auto system = language().units();
  const auto [of, over] = unit_of(shown);
  return (of ? in_units(system, *of, value) : value) / (over ? in_units(system, *over, 1) : 1);
}

std::string readers_unit(Shown shown) {
  const auto word = [](Quantity quantity) {
    return std::string(unit_word(language().units(), quantity));
  };
  const auto [of, over] = unit_of(shown);
  if (!of)
    return phrase("plants");
  return over ? word(*of) + "/" + word(*over) : word(*of);
}

} // namespace coneline::plan
