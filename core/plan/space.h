// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How many round pots really stand on a bench, every one whole on it.
//
// Density by area promises more: 10 x 10 ft of bench with 6-inch pots touching hold 400 in a
// square and 429 staggered, where the density of the staggered pattern would say 462.
//
// Square: rows and columns one spacing (pot + gap) apart, centre to centre. Staggered: pots one
// spacing apart in a row, the next row half a spacing on and sqrt(3)/2 spacings away, so that each
// pot is one spacing from all its neighbours; rows hold n and n pots, or n and n - 1, in turn. Rows
// run along the length or the width, whichever holds more. The gap is between pots, not at the rim.
//
// Lengths are taken as whole thousandths of a millimetre, which nobody measures on a bench: 20 pots
// of 152.4 mm are then exactly 3048 mm, which they are not in doubles.

#include "core/base/fault.h"

#include <cstdint>

namespace coneline::plan {

enum class Pattern { square, staggered };

/// All in millimetres.
struct Bench {
  double length = 0;
  double width = 0;
  double pot = 0; ///< largest outside diameter
  double gap = 0; ///< between neighbouring pots
};

enum class RowsAlong { length, width };

struct Stand {
  std::int64_t pots = 0;
  double per_square_metre = 0; ///< pots by the bench's area
  RowsAlong along = RowsAlong::length;
  std::int64_t rows = 0;
  std::int64_t in_a_row = 0;    ///< in the first, third, ... row
  std::int64_t in_the_next = 0; ///< in the second, fourth, ... row
};

/// A pot larger than the bench gives 0 pots: that is the answer, not a fault.
/// Fails unless length and width are above 0, the pot is at least 1 mm, the gap is not below 0, and
/// none is above 1 000 000 mm.
Result<Stand> pots_on_bench(const Bench& bench, Pattern pattern);

} // namespace coneline::plan
