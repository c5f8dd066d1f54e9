// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is due: the next pass on a loose cone, a cone that may be ripe, seed to clean or whose
// after-ripening may be over, trays not looked at for a while, seedlings ready for a pot, pots to
// move on.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/store/reading.h"

namespace coneline::work {

enum class DueKind { pollinate, harvest, clean, water, sow, inspect, pot, pot_on };

struct Due {
  DueKind kind = DueKind::inspect;
  Code code;
  Date from;              ///< due from this day
  std::optional<Date> to; ///< the end of the range, where it is one
  std::string told;       ///< "second pass on C171K: dry pollen, every second or third day"
  int walk = 0;           ///< the place's turn when walking through; lots without a place come last
};

/// The habits behind the dates: common practice without a source, the grower's to change.
struct DueHabits {
  int days_between_passes = 2;
  int days_of_passes = 14; ///< no further pass is asked for after so long
  int days_between_looks = 14;
  int days_until_cleaned = 3;
};

/// Everything due on or before the day, in walking order, then by date.
std::vector<Due> due_on(store::Reading& reading, const book::Registers& registers, Date day,
                        const DueHabits& habits = {});

} // namespace coneline::work
