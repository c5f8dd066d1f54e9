// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/grid.h"

#include "labels/read/pattern.h"
#include "labels/read/straighten.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace coneline::labels {

namespace {

constexpr double to_middle = to_square_middle;
constexpr int square = square_modules;

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

/// The lightness between dark and light in each of the three squares, and by a plane through them
/// everywhere: light falls unevenly.
struct Limit {
  double corner = 0;
  double right = 0;
  double below = 0;
  double contrast = 0; ///< light less dark, the mean of the squares

  [[nodiscard]] Limit shifted(double share) const {
    const double by = share * contrast;
    return {corner + by, right + by, below + by, contrast};
  }
  [[nodiscard]] double at(int row, int column, int modules) const {
    const double legs = modules - 2 * to_middle;
    return corner + (right - corner) * (column + 0.5 - to_middle) / legs +
           (below - corner) * (row + 0.5 - to_middle) / legs;
  }
};

struct Square {
  double dark = 0;
  double light = 0;

  [[nodiscard]] double limit() const { return (dark + light) / 2; }
};

Square square_at(const Grid& grid, int top, int left) {
  double dark = 0;
  double light = 0;
  for (int row = 0; row < square; ++row)
    for (int column = 0; column < square; ++column) {
      const double value = grid.light({}, top + row, left + column);
      (dark_in_square(row, column) ? dark : light) += value;
    }
  return {dark / 33, light / 16}; // of the 49 modules
}

Limit limits(const Grid& grid) {
  const int far = grid.modules() - square;
  const auto corner = square_at(grid, 0, 0);
  const auto right = square_at(grid, 0, far);
  const auto below = square_at(grid, far, 0);
  const double light = corner.light + right.light + below.light;
  const double dark = corner.dark + right.dark + below.dark;
  return {corner.limit(), right.limit(), below.limit(), (light - dark) / 3};
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

GridReading likeness(const Grid& grid, const Limit& limit, Slant slant) {
  struct Share {
    int alike = 0;
    int of = 0;
  };
  Share squares;
  Share dots;
  const int modules = grid.modules();
  for (int row = 0; row < modules; ++row)
    for (int column = 0; column < modules; ++column) {
      const auto part = common_part(row, column, modules);
      if (part == Common::none)
        continue;
      auto& share = part == Common::dots ? dots : squares;
      const bool dark = grid.light(slant, row, column) < limit.at(row, column, modules);
      share.alike += dark == common_dark(row, column, modules) ? 1 : 0;
      ++share.of;
    }
  return {std::nullopt, static_cast<double>(squares.alike) / squares.of,
          static_cast<double>(dots.alike) / dots.of};
}

std::optional<Sighting> decode(const Grid& grid, const Limit& limit, Slant slant) {
  constexpr int size = 2; // pixels a module
  const int modules = grid.modules();
  // What every code has alike is put in clean: the library does not look at a code whose squares
  // are dirty, and they say nothing.
  const auto is_dark = [&](int row, int column) {
    return common_part(row, column, modules) == Common::none
               ? grid.light(slant, row, column) < limit.at(row, column, modules)
               : common_dark(row, column, modules);
  };
  GrayImage clean((modules + 2 * kept_around) * size, (modules + 2 * kept_around) * size);
  for (int y = 0; y < clean.height(); ++y)
    for (int x = 0; x < clean.width(); ++x) {
      const int row = y / size - kept_around;
      const int column = x / size - kept_around;
      const bool inside = row >= 0 && column >= 0 && row < modules && column < modules;
      const bool dark = inside && is_dark(row, column);
      clean.row(y)[x] = dark ? 0 : 255;
    }
  auto seen = decode_clean_qr(clean.view());
  if (seen)
    seen->corners = {grid.at(slant, 0, 0), grid.at(slant, modules, 0),
                     grid.at(slant, modules, modules), grid.at(slant, 0, modules)};
  return seen;
}

/// Every slant around the measured one and around none, with every limit.
std::optional<Sighting> decode_carefully(const Grid& grid, const Limit& limit, Slant measured,
                                         double step) {
  for (const double shift : {0.0, -0.18, 0.18, -0.35})
    for (const auto& start : {measured, Slant{}})
      for (int p = -2; p <= 2; ++p)
        for (int q = -2; q <= 2; ++q)
          if (auto seen =
                  decode(grid, limit.shifted(shift), {start.p + p * step, start.q + q * step}))
            return seen;
  return std::nullopt;
}

} // namespace

GridReading read_grid(GrayView upright, int modules, int pixels, Care care) {
  const Grid grid(upright, modules, pixels);
  const auto limit = limits(grid);
  const auto slant = slant_of(grid, limit);
  auto reading = likeness(grid, limit, slant);
  const double step = 0.6 / (modules - 2 * to_middle);
  if (care == Care::careful) {
    reading.seen = decode_carefully(grid, limit, slant, step);
    return reading;
  }
  if (!reading.promising())
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
  for (const auto& [p, q] : tries) {
    reading.seen = decode(grid, limit, {slant.p + p * step, slant.q + q * step});
    if (reading.seen)
      return reading;
  }
  return reading;
}

} // namespace coneline::labels
