// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Where lots and plants stand: a house holds benches, a bench holds bays.

#include "core/base/code.h"
#include "core/book/taxon.h"

#include <optional>

namespace coneline::book {

enum class PlaceKind { house, bench, bay };

struct Place {
  PlaceId id;
  Code code;
  std::string name; ///< one of a kind in the book
  PlaceKind kind = PlaceKind::bench;
  std::optional<PlaceId> within; ///< the house of a bench, the bench of a bay
  double length_mm = 0;          ///< 0 where nothing stands on it itself
  double width_mm = 0;
  Light light = Light::part_shade;
  int walk = 0; ///< its turn when one walks through the nursery

  /// m² that pots can stand on. Walkways are not counted: a house without measures of its own has
  /// none.
  [[nodiscard]] double square_metres() const { return length_mm * width_mm / 1e6; }
};

template <>
struct Words<PlaceKind> {
  static constexpr std::string_view what = "kind of place";
  static constexpr std::array<std::pair<PlaceKind, std::string_view>, 3> all{
      {{PlaceKind::house, "house"}, {PlaceKind::bench, "bench"}, {PlaceKind::bay, "bay"}}};
};

} // namespace coneline::book
