// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What may still come up in the trays of a cross, from all curves and spreads that fit its counts
// (stats/germination_posterior.h). A draw is one point of the posterior for the cross, and for each
// tray a share of its own, drawn as the tray's counts leave it: of g up, r taken out and u waiting
// at its last look, where the curve stood at H,
//
//   d_i ~ Beta(a + g, b + r) (1 - d_i H)^u,   a = d (1 - rho)/rho, b = (1 - d) (1 - rho)/rho
//   a waiting seed comes up between two days with  d_i (H2 - H1) / (1 - d_i H)
//
// A bad cone is so bad in all its trays, and a bad tray in all its months.

#include "core/plan/forecast_input.h"
#include "core/stats/germination_posterior.h"

#include <span>

namespace coneline::plan {

struct CountedTray {
  Code code;
  Date sown_on; ///< may lie ahead
  stats::Tray counts;
};

/// `points` are equally likely; a draw each. What came up since the last look, unseen, counts as
/// coming up in this month. Same points, trays and stream, same draws; trays of one cross that are
/// worked out apart need streams of their own.
CrossSprouting posterior_sprouting(std::span<const stats::PosteriorPoint> points,
                                   const std::vector<CountedTray>& trays, Date today, int months,
                                   std::uint32_t stream = 20'081);

} // namespace coneline::plan
