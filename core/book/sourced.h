// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A value of the trade with where it comes from. Sources disagree, so the grower sees and edits
// both.

#include "core/base/fault.h"

#include <string>

namespace coneline::book {

template <class Value>
struct Sourced {
  Value value{};
  std::string
      source; ///< a publication, "own experience", "common practice"; empty while nobody has said

  bool operator==(const Sourced&) const = default;
};

/// From low to high, both included, in the unit the field says.
struct Range {
  double low = 0;
  double high = 0;

  /// Fails where low is below zero, not finite, or above high.
  static Result<Range> of(double low, double high);

  [[nodiscard]] double middle() const { return (low + high) / 2; }
  bool operator==(const Range&) const = default;
};

} // namespace coneline::book
