// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Pots of several sizes together on one bench, in whole rows across it: what a bench really holds
// once more than one kind of pot stands on it.
//
// The bench is filled along its longer side, row after row; a row runs across the shorter side, so
// that all of it can be reached, and holds pots of one size, of whichever lots. Rows of one size
// stand in the bench's pattern, the gap is kept between all neighbours, none is needed at the rim.
// Rectangular pots and trays stand square, turned whichever way the bench holds more. One size
// alone and square holds what `pots_on_bench` says: 3048 x 3048 mm and 152.4 mm pots, 20 rows of
// 20.
//
// Lengths are whole thousandths of a millimetre, as in space.h.

#include "core/book/pot.h"
#include "core/plan/space.h"

namespace coneline::plan {

using Micrometres = std::int64_t;
Micrometres micrometres(double millimetres);

/// What pots stand on.
struct Ground {
  double length_mm = 0;
  double width_mm = 0;
  double gap_mm = 0;
  Pattern pattern = Pattern::square;

  /// All that rows may take, the gap behind the last one included: length + gap.
  [[nodiscard]] Micrometres room() const;
  [[nodiscard]] double square_metres() const { return length_mm * width_mm / 1e6; }
};

/// How pots of one size stand in rows.
struct Rows {
  std::int64_t in_a_row = 0;    ///< in the first, third ... row; 0 where not even one pot fits
  std::int64_t in_the_next = 0; ///< in the second, fourth ... row
  Micrometres first = 0;        ///< of the ground's room, that the first row takes
  Micrometres more = 0;         ///< and each further row

  [[nodiscard]] std::int64_t rows_for(std::int64_t pots) const; ///< in_a_row above 0
  [[nodiscard]] Micrometres room_for(std::int64_t pots) const;  ///< 0 for no pots
  [[nodiscard]] std::int64_t most(Micrometres room) const;      ///< pots, when alone
};

Rows rows_across(const Ground& ground, const book::Pot& pot);

} // namespace coneline::plan
