// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How the trays of each level of a condition came up, side by side.

#include "core/report/germination_report.h"
#include "core/work/why.h"

namespace coneline::report {

struct LevelCurve {
  std::string level;
  std::vector<CurvePoint> curve; ///< all its trays as one, as CrossReport::curve
};

/// One curve a level of `condition`, in their order. Trays whose value is not known take no part.
std::vector<LevelCurve> why_curves(const work::Why& why, const work::WhyCondition& condition);

} // namespace coneline::report
