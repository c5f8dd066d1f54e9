// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Cases at the edge, in which figures are missing or rest on little, said in plain words.

#include "core/stats/curve_fit.h"
#include "core/stats/germination_data.h"
#include "core/stats/interval_counts.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace coneline::stats {

/// A curve whose end is in sight has come to this share of its height by the last look.
inline constexpr double end_in_sight = 0.9;

/// What there is to say of a group, `counts` and `fit` being its own; empty when nothing is. That
/// nothing was sown, never looked at, nothing came up, all came up at once, everything sown came
/// up, the end of the curve is not yet in sight, the germinable share runs to 1.
std::vector<std::string> boundaries_of(std::span<const Tray> trays, const IntervalCounts& counts,
                                       const std::optional<CurveFit>& fit);

} // namespace coneline::stats
