// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A linear program, some of whose numbers are whole, solved by branch and cut; with the bound that
// says how far from the best the answer can be at most.

#include "core/base/fault.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace coneline::plan {

struct Solved {
  std::vector<double> values; ///< by column; whole ones exactly whole
  double cost = 0;
  double bound = 0;    ///< no answer costs less
  bool proven = false; ///< to be the best but for the gap that was good enough
  /// (cost - bound) / cost; 0 where the answer is proven to be the best.
  [[nodiscard]] double gap() const;
};

class IntegerProgram {
 public:
  static constexpr double endless = std::numeric_limits<double>::infinity();
  enum class Takes { any, whole };

  /// A number to be found, from low to high, that costs so much each. Returns its place.
  std::size_t column(double cost, double low, double high, Takes takes = Takes::any);

  struct Term {
    std::size_t column = 0;
    double times = 0;
  };
  /// low <= sum of the terms <= high.
  void row(double low, double high, const std::vector<Term>& terms);

  /// The least cost within so many seconds. Nothing when no numbers fulfil all rows; a fault when
  /// none were found in the time, or the solver gave up.
  /// An answer within `gap` of the bound is good enough.
  struct Gap {
    double share = 1e-6;
    double cost = 1e-6;
  };
  [[nodiscard]] Result<std::optional<Solved>> least_cost(double seconds, Gap gap) const;
  [[nodiscard]] Result<std::optional<Solved>> least_cost(double seconds = 20) const {
    return least_cost(seconds, {});
  }

 private:
  struct Column {
    double cost = 0;
    double low = 0;
    double high = 0;
    Takes takes = Takes::any;
    std::vector<std::pair<int, double>> rows;
  };
  std::vector<Column> columns_;
  std::vector<std::pair<double, double>> rows_;
};

} // namespace coneline::plan
