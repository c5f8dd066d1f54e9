// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/occupied_cells.h"

#include "core/base/phrase.h"
#include "core/stats/probability.h"

#include <fmt/format.h>

#include <cmath>

namespace coneline::plan {

Result<double> occupied_share(double germination, std::int64_t seeds_a_cell) {
  if (seeds_a_cell < 0)
    return refuse(fault(phrase("{} seeds a cell cannot be", seeds_a_cell),
                        "Give how many are sown in each cell."));
  return stats::from_0_to_1(germination, "the germination").transform([&](double g) {
    return 1 - std::pow(1 - g, static_cast<double>(seeds_a_cell));
  });
}

} // namespace coneline::plan
