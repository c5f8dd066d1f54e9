// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/gray.h"

#include <algorithm>

namespace coneline::labels {

GrayView GrayView::part(int left, int top, int wide, int high) const {
  left = std::clamp(left, 0, width);
  top = std::clamp(top, 0, height);
  return {data + top * stride + left, std::clamp(wide, 0, width - left),
          std::clamp(high, 0, height - top), stride};
}

GrayImage halved(GrayView picture) {
  GrayImage half(picture.width / 2, picture.height / 2);
  for (int y = 0; y < half.height(); ++y) {
    const auto* upper = picture.row(2 * y);
    const auto* lower = picture.row(2 * y + 1);
    auto* out = half.row(y);
    for (int x = 0; x < half.width(); ++x)
      out[x] = static_cast<std::uint8_t>(
          (upper[2 * x] + upper[2 * x + 1] + lower[2 * x] + lower[2 * x + 1] + 2) / 4);
  }
  return half;
}

} // namespace coneline::labels
