// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The sowings that a book lets expect: seed at hand, and seed of the cones that ripen.

#include "core/plan/forecast_input.h"
#include "core/store/reading.h"

namespace coneline::report {

/// What is counted in beside what stands.
struct SowingsWanted {
  bool seed = false;  ///< judged filled, in batches
  bool cones = false; ///< ripening on the plants
};

/// Adds them to the input, which was read with the same `reading`. Seed at hand is sown as soon as
/// it has ripened on (the middle of its taxon's months from harvest). Cones that are not counted
/// are named in the input's remarks, and so is what rests on common practice alone.
void add_sowings(plan::ForecastInput& input, store::Reading& reading, const SowingsWanted& wanted);

} // namespace coneline::report
