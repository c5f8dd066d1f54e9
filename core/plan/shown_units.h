// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Values of a forecast in the units of who reads them; what is kept and computed stays metric.

#include "core/plan/forecast_ways.h"

namespace coneline::plan {

double in_readers_units(Shown shown, double value);
/// "plants", "L", "m²", "kg/m²", or what stands for them in the reader's units.
std::string readers_unit(Shown shown);

} // namespace coneline::plan
