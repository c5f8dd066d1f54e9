// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Looks for the three squares that mark the corners of a QR code: dark, light, dark, light, dark in
// lengths 1:1:3:1:1 along any line through the middle, whatever the turn.

#include "labels/read/gray.h"

#include <vector>

namespace coneline::labels {

/// One square: its middle, the mean width of a module along the two axes, in pixels, and how many
/// rows met it.
struct Finder {
  Point middle;
  double module = 0;
  int rows = 0;
  double sureness = 0; ///< share of the rows that its core should meet; set by who knows the scale
};

/// Squares whose modules are about 2 to 10 pixels. `step` is the distance of the rows looked at.
std::vector<Finder> find_finders(GrayView picture, int step);

} // namespace coneline::labels
