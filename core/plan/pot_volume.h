// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The litres of a pot from its measures. A pot class is no volume: measure inside, and to where it
// is filled.

#include "core/base/fault.h"

namespace coneline::plan {

/// Inside measures in millimetres.
struct PotMeasures {
  double top = 0;    ///< diameter
  double bottom = 0; ///< diameter
  double height = 0;
};

/// A cone frustum: pi / 12 * height * (bottom^2 + bottom * top + top^2), in litres (Hershey 1988,
/// HortScience 23:623). Top 300, bottom 240, height 260 give 14.948. The bottom can be 0.
/// Fails on a measure below zero or above 10 000 mm, and on a top or height of 0.
Result<double> pot_litres(const PotMeasures& pot);

} // namespace coneline::plan
