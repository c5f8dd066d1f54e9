// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What to do with the floaters: sow them, keep them until more is known, or discard them.
//
// A sown seed costs mix and bench; a filled one becomes a plant with some probability, and a plant
// is worth something. So sowing pays above a break-even share of filled seed,
//
//   break-even = cost of a sown seed / (worth of a plant x probability of a filled seed's plant).
//
// 50 floaters of which 4 to 12 are filled, each filled one a plant 6 times in 10, a plant worth 20,
// a sown seed costing 1: break-even 1 / (20 x 0.6) = 8.3 %; filled 8 to 24 %. That is below and
// above: open more, or keep them.

#include "core/base/fault.h"
#include "core/stats/share_interval.h"

#include <cstdint>
#include <string>
#include <vector>

namespace coneline::plan {

enum class FloatKnown { unknown, trusted, not_trusted };

struct FloatersAsked {
  std::int64_t seeds = 0; ///< floaters on hand
  double filled_low = 0;  ///< filled ones among them, 0 <= low <= middle <= high <= seeds
  double filled_middle = 0;
  double filled_high = 0;
  std::int64_t opened = 0;         ///< floaters of this batch cut open so far
  stats::Interval plant_of_filled; ///< probability that a filled seed becomes a plant
  double plant_of_filled_middle = 0;
  double worth = 0;     ///< of a plant, in the grower's money; above 0
  double cost = 0;      ///< of a sown seed; 0 or more
  double keep_cost = 0; ///< of keeping a seed until it is decided; 0 or more
  double assurance = 0.95;
  FloatKnown known = FloatKnown::unknown;
};

/// What a choice is expected to give, and the range for what is filled and what becomes of it.
struct Choice {
  double plants = 0;
  double plants_low = 0;
  double plants_high = 0;
  double cost = 0;
  double gain = 0; ///< worth of the plants less the cost
  double gain_low = 0;
  double gain_high = 0;
};

enum class FloatersAdvice { sow, open_more, keep, discard };

struct FloatersDecision {
  double break_even = 0; ///< share filled; above 1: sowing cannot pay
  Choice sow;
  Choice
      keep; ///< as many plants as sowing, later, if they are sown then; never sown: the cost alone
  Choice discard; ///< nothing costs, nothing comes
  std::int64_t open_more =
      0; ///< to cut so that a filled share of the break-even shows, at `assurance`
  FloatersAdvice advice = FloatersAdvice::open_more;
  std::string why; ///< plain words
};

/// Fails on figures outside their ranges.
Result<FloatersDecision> decide_on_floaters(const FloatersAsked& asked);

} // namespace coneline::plan
