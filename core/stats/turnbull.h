// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The non-parametric maximum-likelihood estimate of germination times that are known only between
// looks (Turnbull 1976, J. Royal Statistical Society B 38:290-295). No shape of curve is assumed:
// it says how much of the seed must have germinated in which stretches of time.

#include "core/stats/interval_counts.h"

#include <vector>

namespace coneline::stats {

/// Share of all seed sown that germinated after `from` and by `to`; where within, the counts do not
/// tell.
struct Step {
  double from = 0;
  double to = 0;
  double mass = 0; ///< above 0
};

struct Stepwise {
  std::vector<Step> steps; ///< in order of time, not overlapping
  double never_seen = 0;   ///< share left over: it may come later, or never
  double log_likelihood = 0;
  /// How far the log-likelihood can lie below its highest value, by the optimality conditions.
  double short_of_best = 0;
};

/// Removed seeds count as never germinating. Empty counts give no steps.
Stepwise stepwise(const IntervalCounts& counts);

} // namespace coneline::stats
