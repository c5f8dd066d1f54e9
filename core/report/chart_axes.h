// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Round numbers for the axes of a chart.

#include <algorithm>
#include <cmath>

namespace coneline::report {

/// 1, 2 or 5 times a power of ten, at least 1, so that at most eight steps reach the end.
inline double round_step(double end) {
  const double rough = end / 8;
  const double power = std::pow(10, std::floor(std::log10(rough)));
  for (const double times : {1.0, 2.0, 5.0})
    if (times * power >= rough)
      return std::max(1.0, times * power);
  return std::max(1.0, 10 * power);
}

/// The top of an axis of shares: a fifth, two fifths, three fifths or the whole, at least `most`.
inline double round_top(double most) {
  for (const double top : {0.2, 0.4, 0.6, 0.8})
    if (most <= top)
      return top;
  return 1;
}

} // namespace coneline::report
