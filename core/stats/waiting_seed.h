// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is known of one tray's waiting seed once the curve, the mean share and the spread are given;
// the formula is in still_expected.h.

namespace coneline::stats {

struct TrayEnd {
  double germinated = 0;
  double removed = 0;
  double waiting = 0;
};

/// Of the number still to come: the logarithm of the likelihood of the tray's counts, less the
/// part for the times, and mean and variance.
struct ToCome {
  double log_likelihood = 0;
  double mean = 0;
  double variance = 0;
};

/// `germinable` inside 0 to 1, `rho` inside 0 to 1, `ahead` the share of germinable seed that comes
/// after the last look.
ToCome to_come(const TrayEnd& tray, double germinable, double rho, double ahead);

} // namespace coneline::stats
