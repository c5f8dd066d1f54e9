// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What seed is sown in and plants stand in. A class name of the trade is no volume, so a pot has
// its real litres.

#include "core/book/id.h"
#include "core/book/words.h"

#include <string>

namespace coneline::book {

enum class Shape { round, rectangular };

struct Pot {
  PotId id;
  std::string name;  ///< one of a kind in the book
  double litres = 0; ///< of mix it really holds, all cells together
  Shape shape = Shape::round;
  double length_mm = 0; ///< outside, at the widest; the diameter when round
  double width_mm = 0;  ///< equal to the length when round
  int cells = 1;        ///< seeds or plants it takes: 1 for a pot, more for a tray
  std::string source;   ///< measured, or where the figures come from

  /// m² one takes on the bench: the rectangle around it.
  [[nodiscard]] double square_metres() const { return length_mm * width_mm / 1e6; }
};

template <>
struct Words<Shape> {
  static constexpr std::string_view what = "shape";
  static constexpr std::array<std::pair<Shape, std::string_view>, 2> all{
      {{Shape::round, "round"}, {Shape::rectangular, "rectangular"}}};
};

} // namespace coneline::book
