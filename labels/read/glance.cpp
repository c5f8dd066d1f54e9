// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/glance.h"

#include "labels/read/pattern.h"

#include <array>

namespace coneline::labels {

namespace {

constexpr double least_alike = 0.72; // a slant moves the outer modules of a square

} // namespace

double square_likeness(GrayView picture, double scale, const Candidate& candidate, int top,
                       int left) {
  std::array<double, square_modules * square_modules> values{};
  double dark = 0;
  double light = 0;
  std::size_t i = 0;
  for (int row = 0; row < square_modules; ++row)
    for (int column = 0; column < square_modules; ++column) {
      const auto place = candidate.at(left + column + 0.5, top + row + 0.5);
      const int x = std::clamp(static_cast<int>(place.x * scale), 0, picture.width - 1);
      const int y = std::clamp(static_cast<int>(place.y * scale), 0, picture.height - 1);
      values[i] = picture.row(y)[x];
      (dark_in_square(row, column) ? dark : light) += values[i];
      ++i;
    }
  constexpr int dark_modules = 33;
  const double limit =
      (dark / dark_modules + light / (static_cast<double>(values.size()) - dark_modules)) / 2;
  int same = 0;
  for (i = 0; i < values.size(); ++i) {
    const int row = static_cast<int>(i) / square_modules;
    const int column = static_cast<int>(i) % square_modules;
    same += (values[i] < limit) == dark_in_square(row, column) ? 1 : 0;
  }
  return same / static_cast<double>(values.size());
}

bool worth_reading(GrayView picture, double scale, const Candidate& candidate) {
  const int far = candidate.modules - square_modules;
  double sum = 0;
  for (const auto& [top, left] : {std::pair(0, 0), std::pair(0, far), std::pair(far, 0)})
    sum += square_likeness(picture, scale, candidate, top, left);
  return sum / 3 > least_alike;
}

} // namespace coneline::labels
