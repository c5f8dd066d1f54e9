// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Outcomes of trays drawn at random.

#include "core/stats/simulated_cross.h"

namespace coneline::stats {

inline std::vector<Outcome> drawn_outcomes(Chance& draw, int trays, int seeds, double mean,
                                           double rho) {
  std::vector<Outcome> outcomes;
  for (int i = 0; i < trays; ++i)
    outcomes.push_back({seeds, draw.binomial(seeds, draw.share(mean, rho))});
  return outcomes;
}

} // namespace coneline::stats
