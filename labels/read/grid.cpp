// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/grid.h"

#include "labels/read/straighten.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace coneline::labels {

namespace {

constexpr double to_middle = 3.5; // modules from a code's corner to the middle of its square
constexpr int square = 7;         // modules a side of a square
constexpr double least_likeness = 0.8;

/// A grid seen at a slant: its three squares lie where they lie upright, and p and q say by how
/// much the far sides are drawn together (0 from straight above).
struct Slant {
  double p = 0;
  double q = 0;
};

class Grid {
 public:
  Grid(GrayView upright, int modules, int pixels)
      : upright_(upright), modules_(modules), pixels_(pixels), legs_(modules - 2 * to_middle) {}

  /// The pixels of a place given in modules from the code's own corner.
  [[nodiscard]] Point at(Slant slant, double across, double down) const {
    const double s = (across - to_middle) / legs_;
    const double t = (down - to_middle) / legs_;
    const double depth = 1 + slant.p * s + slant.q * t;
    return {pixel((1 + slant.p) * s / depth * legs_ + to_middle),
            pixel((1 + slant.q) * t / depth * legs_ + to_middle)};
  }

  /// The mean lightness in the middle of a module.
  [[nodiscard]] double light(Slant slant, int row, int column) const {
    const auto place = at(slant, column + 0.5, row + 0.5);
    const int x = static_cast<int>(place.x);
    const int y = static_cast<int>(place.y);
    if (x < 1 || y < 1 || x + 1 >= upright_.width || y + 1 >= upright_.height)
      return 255;
    int sum = 0;
    for (int dy = -1; dy <= 1; ++dy) {
      const auto* pixel = upright_.row(y + dy) + x;
      sum += pixel[-1] + pixel[0] + pixel[1];
    }
    return sum / 9.0;
  }

  [[nodiscard]] double pixel(double module) const { return (module + kept_around) * pixels_; }
  [[nodiscard]] int modules() const { return modules_; }
  [[nodiscard]] int pixels() const { return pixels_; }
  [[nodiscard]] GrayView upright() const { return upright_; }

 private:
  GrayView upright_;
  int modules_;
  int pixels_;
  double legs_;
};

/// 1 dark, 0 light, -1 not the same in every code.
int common_colour(int row, int column, int modules) {
  const bool low_row = row <= square;
  const bool low_column = column <= square;
  const bool high_row = row >= modules - square - 1;
  const bool high_column = column >= modules - square - 1;
  if ((low_row && (low_column || high_column)) || (high_row && low_column)) {
    const int r = high_row ? modules - 1 - row : row;
    const int c = high_column ? modules - 1 - column : column;
    if (r == square || c == square)
      return 0;
    const int ring = std::max(std::abs(r - 3), std::abs(c - 3));
    return ring == 2 ? 0 : 1;
  }
  if (row == 6 || column == 6)
    return (row + column) % 2 == 0 ? 1 : 0;
  return -1;
}

/// The lightness between dark and light in each of the three squares, and by a plane through them
/// everywhere: light falls unevenly.
struct Limit {
  double corner = 0;
  double right = 0;
  double below = 0;

  [[nodiscard]] double at(int row, int column, int modules) const {
    const double legs = modules - 2 * to_middle;
    return corner + (right - corner) * (column + 0.5 - to_middle) / legs +
           (below - corner) * (row + 0.5 - to_middle) / legs;
  }
};

double limit_of_square(const Grid& grid, int top, int left) {
  double dark = 0;
  double light = 0;
  for (int row = 0; row < square; ++row)
    for (int column = 0; column < square; ++column) {
      const double value = grid.light({}, top + row, left + column);
      (common_colour(row, column, grid.modules()) == 1 ? dark : light) += value;
    }
  return (dark / 33 + light / 16) / 2; // 33 of the 49 modules are dark
}

Limit limits(const Grid& grid) {
  const int far = grid.modules() - square;
  return {limit_of_square(grid, 0, 0), limit_of_square(grid, 0, far),
          limit_of_square(grid, far, 0)};
}

/// The width of a square along a line through its middle, in pixels; the line runs along x or, with
/// the two exchanged, along y. Nothing when its edges are not met.
std::optional<double> width_of_square(const Grid& grid, Point middle, bool along_x, double limit) {
  const auto view = grid.upright();
  const auto value = [&](int along, int aside) {
    const int x = static_cast<int>(middle.x) + (along_x ? along : aside);
    const int y = static_cast<int>(middle.y) + (along_x ? aside : along);
    if (x < 0 || y < 0 || x >= view.width || y >= view.height)
      return 255.0;
    return static_cast<double>(view.row(y)[x]);
  };
  const auto mean = [&](int along) {
    double sum = 0;
    for (int aside = -grid.pixels(); aside <= grid.pixels(); ++aside)
      sum += value(along, aside);
    return sum / (2 * grid.pixels() + 1);
  };
  // From the core outwards the third change of colour is the outer edge.
  const auto edge = [&](int step) -> std::optional<double> {
    int changes = 0;
    double before = mean(0);
    for (int i = 1; i <= grid.pixels() * 6; ++i) {
      const double now = mean(i * step);
      if ((before < limit) != (now < limit) && ++changes == 3)
        return i - 1 + (limit - before) / (now - before);
      before = now;
    }
    return std::nullopt;
  };
  const auto ahead = edge(1);
  const auto back = edge(-1);
  if (!ahead || !back)
    return std::nullopt;
  return *ahead + *back;
}

/// A square that looks smaller than the corner's is further away.
Slant slant_of(const Grid& grid, const Limit& limit) {
  const double near = grid.pixel(to_middle);
  const double far = grid.pixel(grid.modules() - to_middle);
  const auto corner_wide = width_of_square(grid, {near, near}, true, limit.corner);
  const auto right_wide = width_of_square(grid, {far, near}, true, limit.right);
  const auto corner_high = width_of_square(grid, {near, near}, false, limit.corner);
  const auto below_high = width_of_square(grid, {near, far}, false, limit.below);
  Slant slant;
  if (corner_wide && right_wide)
    slant.p = std::clamp(std::sqrt(*corner_wide / *right_wide) - 1, -0.4, 0.4);
  if (corner_high && below_high)
    slant.q = std::clamp(std::sqrt(*corner_high / *below_high) - 1, -0.4, 0.4);
  return slant;
}

double likeness(const Grid& grid, const Limit& limit, Slant slant) {
  int alike = 0;
  int looked_at = 0;
  for (int row = 0; row < grid.modules(); ++row)
    for (int column = 0; column < grid.modules(); ++column) {
      const int colour = common_colour(row, column, grid.modules());
      if (colour < 0)
        continue;
      const bool dark =
          grid.light(slant, row, column) < limit.at(row, column, grid.modules());
      alike += dark == (colour == 1) ? 1 : 0;
      ++looked_at;
    }
  return static_cast<double>(alike) / looked_at;
}

std::optional<Sighting> decode(const Grid& grid, const Limit& limit, Slant slant) {
  constexpr int size = 2; // pixels a module
  const int modules = grid.modules();
  GrayImage clean((modules + 2 * kept_around) * size, (modules + 2 * kept_around) * size);
  for (int y = 0; y < clean.height(); ++y)
    for (int x = 0; x < clean.width(); ++x) {
      const int row = y / size - kept_around;
      const int column = x / size - kept_around;
      const bool inside = row >= 0 && column >= 0 && row < modules && column < modules;
      const bool dark =
          inside && grid.light(slant, row, column) < limit.at(row, column, modules);
      clean.row(y)[x] = dark ? 0 : 255;
    }
  auto seen = decode_clean_qr(clean.view());
  if (seen)
    seen->corners = {grid.at(slant, 0, 0), grid.at(slant, modules, 0),
                     grid.at(slant, modules, modules), grid.at(slant, 0, modules)};
  return seen;
}

} // namespace

GridReading read_grid(GrayView upright, int modules, int pixels) {
  const Grid grid(upright, modules, pixels);
  const auto limit = limits(grid);
  const auto slant = slant_of(grid, limit);
  GridReading reading{std::nullopt, likeness(grid, limit, slant)};
  if (reading.likeness < least_likeness)
    return reading;
  // The measured slant first, then its neighbourhood: half a module at the fourth corner each.
  constexpr std::array<std::pair<int, int>, 13> tries{{{0, 0},
                                                       {1, 0},
                                                       {-1, 0},
                                                       {0, 1},
                                                       {0, -1},
                                                       {1, 1},
                                                       {-1, -1},
                                                       {1, -1},
                                                       {-1, 1},
                                                       {2, 0},
                                                       {-2, 0},
                                                       {0, 2},
                                                       {0, -2}}};
  const double step = 0.6 / (modules - 2 * to_middle);
  for (const auto& [p, q] : tries) {
    reading.seen = decode(grid, limit, {slant.p + p * step, slant.q + q * step});
    if (reading.seen)
      return reading;
  }
  return reading;
}

} // namespace coneline::labels
