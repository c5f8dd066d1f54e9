// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Cells of a tray that hold at least one plant.

#include "core/base/fault.h"

#include <cstdint>

namespace coneline::plan {

/// 1 - (1 - g)^k: the share of cells in which at least one of `seeds_a_cell` seeds germinates, each
/// with probability `germination`. Fails on a germination outside 0 to 1 and seeds below zero.
Result<double> occupied_share(double germination, std::int64_t seeds_a_cell);

} // namespace coneline::plan
