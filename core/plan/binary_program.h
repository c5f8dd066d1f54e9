// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Choosing among things so that a sum of values is greatest and each limit is kept: a linear
// program whose variables are 0 or 1 (integer_program.h), with its bound.

#include "core/base/fault.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

namespace coneline::plan {

struct BinaryProgram {
  static constexpr double no_limit = std::numeric_limits<double>::infinity();

  /// low <= Σ term <= high; a term is (which, how much it takes).
  struct Limit {
    std::vector<std::pair<std::size_t, double>> terms;
    double low = -no_limit;
    double high = no_limit;
  };

  std::vector<double> values;    ///< one a variable; the sum over the chosen is made greatest
  std::vector<std::size_t> kept; ///< these are chosen
  std::vector<std::size_t> out;  ///< and these are not
  std::vector<Limit> limits;
};

struct Chosen {
  std::vector<bool> chosen;
  double value = 0;    ///< the sum of the chosen values
  double bound = 0;    ///< no choice has a greater sum; equal to `value` when proven
  bool proven = false; ///< no choice within the limits is better
};

/// That the time ran out, which says nothing of whether there is a choice.
Fault none_found_within(double seconds);

/// Nothing where no choice keeps the limits; `none_found_within` where the time ran out or the
/// solver gave up.
Result<std::optional<Chosen>> choose(const BinaryProgram& program, double seconds = 10);

} // namespace coneline::plan
