// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The regressions behind 'why': beta-binomial, on the logit, with Student's t for the ranges, its
// degrees of freedom being units less coefficients. Differences are shares: the mean over all seed
// of what the share would be with the one and with the other, everything else as it was; ranges by
// the delta method.

#include "core/work/why.h"

namespace coneline::work {

/// One more day, month or degree, nothing else looked at. Nothing with fewer than three units, or
/// where nothing or everything came up.
std::optional<WhySlope> slope_alone(const std::vector<const ExplainedTray*>& trays,
                                    Condition condition, double confidence);

/// Fills what is known of conditions held against each other. A condition takes part when most
/// trays know it, when it does not follow from those before it, and when the units are at least
/// twice as many as the coefficients; else `told` says why it does not.
void look_together(Why& why);

} // namespace coneline::work
