// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/finder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace coneline::labels {

namespace {

constexpr int block = 8;           // pixels a side of a threshold's own square
constexpr int reach = 4;           // blocks to each side that its mean is taken over
constexpr double most_module = 14; // pixels; larger ones are found in a halved picture

/// 1 where the pixel is darker than the mean of its surroundings by a little, 0 elsewhere. The
/// little keeps blank paper from breaking up into grain.
GrayImage dark_pixels(GrayView picture) {
  const int across = (picture.width + block - 1) / block;
  const int down = (picture.height + block - 1) / block;
  // Sums over all blocks above and to the left, with a row and column of zeros before them.
  std::vector<std::int64_t> sums(static_cast<std::size_t>((across + 1) * (down + 1)), 0);
  const auto at = [&](int bx, int by) -> std::int64_t& {
    return sums[static_cast<std::size_t>(by * (across + 1) + bx)];
  };
  std::vector<std::uint32_t> line(static_cast<std::size_t>(across));
  for (int by = 0; by < down; ++by) {
    std::ranges::fill(line, 0U);
    const int rows = std::min(block, picture.height - by * block);
    for (int y = 0; y < rows; ++y) {
      const auto* row = picture.row(by * block + y);
      const int whole = picture.width / block;
      for (int bx = 0; bx < whole; ++bx) {
        std::uint32_t sum = 0;
        for (int x = 0; x < block; ++x)
          sum += row[bx * block + x];
        line[static_cast<std::size_t>(bx)] += sum;
      }
      for (int x = whole * block; x < picture.width; ++x)
        line[static_cast<std::size_t>(whole)] += row[x];
    }
    std::int64_t so_far = 0;
    for (int bx = 0; bx < across; ++bx) {
      so_far += line[static_cast<std::size_t>(bx)];
      at(bx + 1, by + 1) = at(bx + 1, by) + so_far;
    }
  }
  GrayImage dark(picture.width, picture.height);
  std::vector<std::uint8_t> limits(static_cast<std::size_t>(across * block));
  for (int by = 0; by < down; ++by) {
    const int top = std::max(0, by - reach);
    const int bottom = std::min(down, by + reach + 1);
    const int high = std::min(bottom * block, picture.height) - top * block;
    for (int bx = 0; bx < across; ++bx) {
      const int left = std::max(0, bx - reach);
      const int right = std::min(across, bx + reach + 1);
      const int wide = std::min(right * block, picture.width) - left * block;
      const auto sum = at(right, bottom) - at(left, bottom) - at(right, top) + at(left, top);
      const auto mean = static_cast<double>(sum) / (static_cast<double>(wide) * high);
      const auto limit = static_cast<std::uint8_t>(std::clamp(mean * 0.97 - 2, 0.0, 255.0));
      std::fill_n(limits.begin() + bx * block, block, limit);
    }
    for (int y = by * block; y < std::min((by + 1) * block, picture.height); ++y) {
      const auto* in = picture.row(y);
      auto* out = dark.row(y);
      for (int x = 0; x < picture.width; ++x)
        out[x] = in[x] < limits[static_cast<std::size_t>(x)] ? 1 : 0;
    }
  }
  return dark;
}

/// The module that five runs stand for, or nothing when they are not about 1:1:3:1:1.
std::optional<double> module_of(const std::array<int, 5>& runs) {
  const double module = (runs[0] + runs[1] + runs[2] + runs[3] + runs[4]) / 7.0;
  if (module < 1.3 || module > most_module)
    return std::nullopt;
  const double slack = module * 0.55 + 0.7; // a pixel of rounding weighs more on small ones
  for (const auto i : {0U, 1U, 3U, 4U})
    if (std::abs(runs[i] - module) > slack)
      return std::nullopt;
  if (std::abs(runs[2] - 3 * module) > module + 0.8)
    return std::nullopt;
  return module;
}

/// A line through a pixel, in steps of one pixel along an axis.
struct Line {
  const std::uint8_t* here;
  std::int64_t step;
  int before; ///< pixels there are before it
  int after;
};

struct Crossing {
  double offset; ///< of the middle of the dark core, in pixels from the pixel's own edge
  double module;
};

/// Measures the five runs around a pixel of the dark core.
std::optional<Crossing> cross(const Line& line, double expected) {
  const int limit = static_cast<int>(expected * 6) + 3;
  std::array<int, 3> back{};
  std::array<int, 3> ahead{};
  const auto walk = [&](std::array<int, 3>& runs, std::int64_t step, int room) {
    int gone = 0;
    std::uint8_t colour = 1;
    const auto* pixel = line.here;
    for (auto& run : runs) {
      while (gone < room && gone < limit && *pixel == colour) {
        ++run;
        ++gone;
        if (gone < room)
          pixel += step;
      }
      colour ^= 1U;
    }
  };
  walk(back, -line.step, line.before + 1);
  walk(ahead, line.step, line.after + 1);
  const std::array<int, 5> runs{back[2], back[1], back[0] + ahead[0] - 1, ahead[1], ahead[2]};
  const auto module = module_of(runs);
  if (!module || *module < expected * 0.55 || *module > expected * 1.8)
    return std::nullopt;
  return Crossing{(ahead[0] - (back[0] - 1)) / 2.0, *module};
}

/// Checks a place met along a row down the column and along the row again.
std::optional<Finder> checked(const GrayView& dark, double x, int y, double module) {
  const int column = static_cast<int>(x);
  const Line down{dark.row(y) + column, dark.stride, y, dark.height - 1 - y};
  const auto vertical = cross(down, module);
  if (!vertical)
    return std::nullopt;
  const double middle_y = y + vertical->offset;
  const int row = std::clamp(static_cast<int>(middle_y), 0, dark.height - 1);
  const Line along{dark.row(row) + column, 1, column, dark.width - 1 - column};
  if (dark.row(row)[column] == 0)
    return std::nullopt;
  const auto horizontal = cross(along, module);
  if (!horizontal)
    return std::nullopt;
  return Finder{
      {column + horizontal->offset, middle_y}, (vertical->module + horizontal->module) / 2, 1};
}

/// Adds to a square already met nearby, or as a new one.
void gather(std::vector<Finder>& found, const Finder& met) {
  // Rows come from top to bottom, so what is near stands near the end.
  for (auto known = found.rbegin(); known != found.rend(); ++known) {
    if (std::abs(known->middle.x - met.middle.x) > 1.5 * met.module ||
        std::abs(known->middle.y - met.middle.y) > 1.5 * met.module)
      continue;
    const double weight = 1.0 / (known->rows + 1);
    known->middle.x += (met.middle.x - known->middle.x) * weight;
    known->middle.y += (met.middle.y - known->middle.y) * weight;
    known->module += (met.module - known->module) * weight;
    ++known->rows;
    return;
  }
  found.push_back(met);
}

} // namespace

std::vector<Finder> find_finders(GrayView picture, int step) {
  std::vector<Finder> found;
  if (picture.width < 21 || picture.height < 21)
    return found;
  const auto pixels = dark_pixels(picture);
  const auto dark = pixels.view();
  std::vector<int> edges; // where the colour changes, beginning with light
  for (int y = step / 2; y < dark.height; y += step) {
    const auto* row = dark.row(y);
    edges.assign(1, 0);
    std::uint8_t colour = 0;
    for (int x = 0; x < dark.width; ++x)
      if (row[x] != colour) {
        edges.push_back(x);
        colour ^= 1U;
      }
    edges.push_back(dark.width);
    // Run i reaches from edges[i] to edges[i + 1]; odd runs are dark.
    for (std::size_t i = 1; i + 5 < edges.size(); i += 2) {
      std::array<int, 5> runs{};
      for (std::size_t k = 0; k < 5; ++k)
        runs[k] = edges[i + k + 1] - edges[i + k];
      const auto module = module_of(runs);
      if (!module)
        continue;
      const double x = (edges[i + 2] + edges[i + 3]) / 2.0;
      if (const auto finder = checked(dark, x, y, *module))
        gather(found, *finder);
    }
  }
  return found;
}

} // namespace coneline::labels
