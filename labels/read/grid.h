// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Reads the modules of a straightened candidate one by one. The three squares fix where the grid
// lies; how their own widths differ tells the slant at which the label was seen, and with it where
// the fourth corner is, which has no mark of its own in a small code.

#include "labels/read/decode.h"
#include "labels/read/gray.h"

#include <optional>

namespace coneline::labels {

/// What the grid gave. Of the modules that every QR code has alike, the shares that look as they
/// should: about 0.5 where there is no code.
struct GridReading {
  std::optional<Sighting> seen; ///< corners in pixels of the straightened picture
  double squares = 0;           ///< the three squares and their light borders
  double dots = 0;              ///< the two dotted lines between them

  /// Whether it looks like a code enough to be worth a closer look.
  [[nodiscard]] bool promising() const { return squares > 0.75 && dots > 0.69; }
};

/// How hard a promising candidate is tried. `careful` takes some milliseconds: it doubts the slant,
/// which a spoilt square tells wrongly, and the limit between dark and light, on which side of
/// which a half-dried blot falls.
enum class Care { usual, careful };

/// `upright` is a straightened candidate of `modules` a side, `pixels` a module, with `kept_around`
/// blank modules around.
GridReading read_grid(GrayView upright, int modules, int pixels, Care care = Care::usual);

} // namespace coneline::labels
