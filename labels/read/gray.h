// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A picture as the reader sees it: one byte of lightness a pixel.

#include <cstdint>
#include <vector>

namespace coneline::labels {

/// A point in pixels; (0, 0) is the top left corner of the top left pixel, y runs down.
struct Point {
  double x = 0;
  double y = 0;
};

/// Pixels owned by someone else. `stride` is the bytes from one row to the next.
struct GrayView {
  const std::uint8_t* data = nullptr;
  int width = 0;
  int height = 0;
  std::int64_t stride = 0;

  [[nodiscard]] const std::uint8_t* row(int y) const { return data + y * stride; }
  /// The part from (left, top), cut off where this ends.
  [[nodiscard]] GrayView part(int left, int top, int wide, int high) const;
};

class GrayImage {
 public:
  GrayImage() = default;
  GrayImage(int width, int height)
      : width_(width), height_(height),
        pixels_(static_cast<std::size_t>(width) * static_cast<std::size_t>(height)) {}

  [[nodiscard]] int width() const { return width_; }
  [[nodiscard]] int height() const { return height_; }
  [[nodiscard]] std::uint8_t* row(int y) {
    return pixels_.data() + static_cast<std::int64_t>(y) * width_;
  }
  [[nodiscard]] GrayView view() const { return {pixels_.data(), width_, height_, width_}; }

 private:
  int width_ = 0;
  int height_ = 0;
  std::vector<std::uint8_t> pixels_;
};

/// Half as wide and high, each pixel the mean of four. An odd last row or column is left out.
GrayImage halved(GrayView picture);

} // namespace coneline::labels
