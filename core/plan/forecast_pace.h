// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Seed that comes up sooner or later than its cross has shown so far, as on a hot bench.

#include "core/plan/forecast_times.h"

namespace coneline::plan {

/// From today on a tray's seed takes `pace` times as long to come up: what would have come up t
/// months from today comes up pace × t months from today. Within a month it comes up evenly. What
/// lay beyond the listed months and now falls within them is taken from the cross's curve, where it
/// has one. No share changes.
void take_pace(CrossSprouting& cross, std::size_t tray, Date sown_on, const Calendar& calendar,
               double pace);

} // namespace coneline::plan
