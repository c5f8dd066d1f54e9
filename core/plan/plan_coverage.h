// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Nurseries that are drawn, forecast, and run forward plant by plant by rules of their own: does
// what then happened lie in the 80 % range 80 times in 100? The grower of such a nursery knows what
// one knows: the route, two past seasons of each step, and the counts of the looks at each tray.
// What is true of a cross (share, curve, spread between trays), of a step and of a season is drawn
// once a nursery and hidden from the forecast.

#include "core/base/fault.h"

#include <functional>
#include <string>
#include <vector>

namespace coneline::plan {

struct PlanCoverageWanted {
  int nurseries = 500;
  int runs = 600; ///< futures drawn for each
  unsigned seed = 1000;
};

/// A truth that many futures share is counted by the part of them that lies between the points of
/// 10 and 90 %, since a range of a count that is often the same number cannot hold exactly 80 % of
/// the futures; `inclusive` counts it as in. What is certain is not counted.
struct PlanCoverageRow {
  std::string of;
  double cells = 0;     ///< months, or years, of all nurseries
  double held = 0;      ///< share
  double inclusive = 0; ///< share
};

/// `go_on` is told the nurseries done; false stops, and what is done counts. Same seed, same rows.
Result<std::vector<PlanCoverageRow>> plan_coverage(const PlanCoverageWanted& wanted,
                                                   const std::function<bool(int)>& go_on);

} // namespace coneline::plan
