// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What every QR code has alike (ISO/IEC 18004): three squares of 7 modules with a light border, and
// a dotted line from the first to each of the others.

#include <algorithm>
#include <cstdlib>

namespace coneline::labels {

constexpr int square_modules = 7;
/// Modules from a code's corner to the middle of its square.
constexpr double to_square_middle = 3.5;

/// The colour of a module of a square, rows and columns counted from its corner.
constexpr bool dark_in_square(int row, int column) {
  const int ring = std::max(std::abs(row - 3), std::abs(column - 3));
  return ring != 2;
}

enum class Common { square, dots, none };

/// What a module belongs to.
constexpr Common common_part(int row, int column, int modules) {
  const int far = modules - square_modules - 1;
  const bool low_row = row <= square_modules;
  const bool low_column = column <= square_modules;
  if ((low_row && (low_column || column >= far)) || (row >= far && low_column))
    return Common::square;
  return row == 6 || column == 6 ? Common::dots : Common::none;
}

/// Whether a module of a square, its border or a dotted line is dark.
constexpr bool common_dark(int row, int column, int modules) {
  if (common_part(row, column, modules) == Common::dots)
    return (row + column) % 2 == 0;
  const int far = modules - square_modules - 1;
  const int r = row >= far ? modules - 1 - row : row;
  const int c = column >= far ? modules - 1 - column : column;
  return r != square_modules && c != square_modules && dark_in_square(r, c);
}

} // namespace coneline::labels
