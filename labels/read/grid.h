// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Reads the modules of a straightened candidate one by one. The three squares fix where the grid
// lies; how their own widths differ tells the slant at which the label was seen, and with it where
// the fourth corner is, which has no mark of its own in a small code.

#include "labels/read/decode.h"
#include "labels/read/gray.h"

#include <optional>

namespace coneline::labels {

/// What the grid gave. `likeness` is the share of those modules that every QR code has alike (the
/// squares, their borders and the dotted lines between them) that look as they should: about 0.5
/// where there is no code.
struct GridReading {
  std::optional<Sighting> seen; ///< corners in pixels of the straightened picture
  double likeness = 0;
};

/// `upright` is a straightened candidate of `modules` a side, `pixels` a module, with `kept_around`
/// blank modules around.
GridReading read_grid(GrayView upright, int modules, int pixels);

} // namespace coneline::labels
