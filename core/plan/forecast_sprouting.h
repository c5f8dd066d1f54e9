// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What may still come up, from the route and the cross's own counts. The route gives the months in
// which seed comes up, evenly between its first and its last, and a share that is worth so many
// seeds; the cross's counts say how far its own share is from that. One share holds for all trays
// of a cross.
//
//   the share d of a cross:  Beta(w g, w (1 - g)) times, for each tray with k up and r taken out of
//   n sown,  (d H)^k (1 - d H)^(n - k - r) (1 - d)^r,  H being the part of the route's months that
//   had gone by at the tray's last look
//   a waiting seed comes up later with  d (1 - H) / (1 - d H)
//
// It takes the route's months for true. A cross that keeps another pace wants a curve of its own;
// whoever has one fills CrossSprouting from it instead.

#include "core/plan/forecast_input.h"

namespace coneline::plan {

struct SproutingTray {
  TrayStanding tray;
  std::int64_t removed = 0; ///< taken out ungerminated
  Date last_look;           ///< the day of sowing when there was none
};

/// Trays of one cross, whose taxon has this route; `draws` equally likely shares. Trays in which
/// nothing waits inform the share as well.
CrossSprouting route_sprouting(const book::Route& route, const std::vector<SproutingTray>& trays,
                               Date today, int months, double weight, int draws = 99);

/// What seed that is sown on a day to come brings, by draws of the share of its cross. `pace` times
/// the route's months.
CrossSprouting route_sowing(const book::Route& route, const std::vector<double>& shares,
                            Date sown_on, Date today, int months, double pace);

} // namespace coneline::plan
