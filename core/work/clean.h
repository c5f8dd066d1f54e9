// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The fleshy coat holds inhibitors and comes off; what is broken or lost on the way is counted.

#include "core/work/verb_done.h"

#include <string_view>

namespace coneline::work {

struct Clean {
  Code batch;
  int soak_days = 0;
  Count lost;
  Noted noted;
};

Result<Done> clean(store::Book& book, const Clean& wanted);

/// Fresh water for seed that soaks: a cleaning in which nothing is lost and no new soaking begins.
struct ChangeWater {
  Code batch;
  Noted noted; ///< without a note it gets `water_changed`
};
/// In the book, so the same in every language.
inline constexpr std::string_view water_changed = "water changed";

Result<Done> change_water(store::Book& book, const ChangeWater& wanted);

} // namespace coneline::work
