// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is still to come, as the commands `coming` and `trays done` write it.

#include "core/commands/command_line.h"
#include "core/work/coming.h"

namespace coneline::commands {

/// Counts with their ranges, days as dates; null where a day lies out of sight.
Json json_of(const stats::Coming& coming, Date as_of);

/// The prior on the scales of a grower: shares, days, rho, each with a range.
Json json_of(const stats::GerminationPrior& prior, double confidence);

} // namespace coneline::commands
