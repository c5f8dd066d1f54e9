// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How much to have of several goods so that, with a chosen assurance, none of them runs short in
// any month. The futures of the forecast are looked at whole: a run counts as short when anything
// runs short in it at any time.

#include "core/plan/forecast.h"

namespace coneline::plan {

struct AssuredNeeds {
  std::vector<ByMonth> litres; ///< by good and month
  double held = 0; ///< share of runs in which nothing runs short; at least the assurance
};

/// For the series of parts or mixes. By each month so much is in hand of each good as the same
/// share of runs has used of it by then; that share is the least with which the assurance is met.
/// Fails on an assurance outside 0 to 1.
Result<AssuredNeeds> assured_needs(const Forecast& forecast, const std::vector<std::size_t>& goods,
                                   double assurance);

} // namespace coneline::plan
