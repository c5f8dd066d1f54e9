// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Three finder squares in a right angle with even legs are where a QR code may be.

#include "labels/read/finder.h"

#include <array>
#include <cstddef>
#include <vector>

namespace coneline::labels {

/// Which of the three squares was not found but guessed.
enum class Missing { corner, right, below, none };

/// Where a code may stand, as a slanted grid: the middles of its three squares, and how many
/// modules it would have along a side.
struct Candidate {
  Point corner; ///< the square that the other two stand beside
  Point right;
  Point below;
  int modules = 21;
  std::array<std::size_t, 3> squares{}; ///< which ones, by their place in the list
  double misfit = 0; ///< 0 for a perfect right angle with equal legs of a whole number of modules
  Missing missing = Missing::none;

  /// The pixels of a place given in modules from the code's own top left corner.
  [[nodiscard]] Point at(double across, double down) const;
  [[nodiscard]] Point middle() const { return at(modules / 2.0, modules / 2.0); }
  /// The mean width of a module in pixels.
  [[nodiscard]] double module() const;
};

/// Every triple that may be a code of 21 to 57 modules (versions 1 to 10), best fits first.
std::vector<Candidate> find_candidates(const std::vector<Finder>& finders);

} // namespace coneline::labels
