// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Values of a forecast as they stand on the screen, in the units people reckon in.

#include "core/plan/forecast.h"

#include <QString>

namespace coneline::window {

/// "plants", "L", "m²", "kg/m²", or what stands for them.
QString plan_unit(plan::Shown shown);
/// Without its unit; `value` as the plan has it, metric.
QString plan_value(plan::Shown shown, double value, int decimals);
/// "10 – 12 – 15"; a dash where there is nothing.
QString plan_range(plan::Shown shown, const plan::Likely& range, int decimals);

} // namespace coneline::window
