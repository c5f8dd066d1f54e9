// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/straighten.h"

#include <algorithm>
#include <cmath>

namespace coneline::labels {

GrayImage straightened(GrayView picture, double scale, const Candidate& candidate, int pixels) {
  const int side = (candidate.modules + 2 * kept_around) * pixels;
  GrayImage upright(side, side);
  const double step = 1.0 / pixels;
  const auto origin = candidate.at(-kept_around + step / 2, -kept_around + step / 2);
  const auto across = candidate.at(-kept_around + step * 1.5, -kept_around + step / 2);
  const auto down = candidate.at(-kept_around + step / 2, -kept_around + step * 1.5);
  const double widest = picture.width - 1.001;
  const double highest = picture.height - 1.001;
  for (int y = 0; y < side; ++y) {
    auto* out = upright.row(y);
    for (int x = 0; x < side; ++x) {
      // A pixel's value stands at its middle, half a pixel from its corner.
      const double at_x = (origin.x + x * (across.x - origin.x) + y * (down.x - origin.x)) * scale;
      const double at_y = (origin.y + x * (across.y - origin.y) + y * (down.y - origin.y)) * scale;
      const double sx = std::clamp(at_x - 0.5, 0.0, widest);
      const double sy = std::clamp(at_y - 0.5, 0.0, highest);
      const int left = static_cast<int>(sx);
      const int top = static_cast<int>(sy);
      const double fx = sx - left;
      const double fy = sy - top;
      const auto* upper = picture.row(top) + left;
      const auto* lower = picture.row(top + 1) + left;
      const double above = upper[0] + fx * (upper[1] - upper[0]);
      const double under = lower[0] + fx * (lower[1] - lower[0]);
      out[x] = static_cast<std::uint8_t>(above + fy * (under - above) + 0.5);
    }
  }
  return upright;
}

} // namespace coneline::labels
