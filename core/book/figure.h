// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A figure that the grower reckons with, asked once and kept: what a plant is worth, what a sown
// seed costs.

#include <string>

namespace coneline::book {

struct Figure {
  std::string name; ///< one of a kind in the book
  double value = 0;
};

} // namespace coneline::book
