// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How many more will ever come up, of the seed that has neither germinated nor been removed.
//
// The seed of tray i has a germinable share d_i of its own, drawn from the beta distribution with
// the group's mean d and spread rho; all follow one curve in time. Given d, rho and the curve, the
// number still to come in a tray is known exactly: of u seeds waiting since the last look, with g
// germinated and r removed,
//
//   P(y more) ~ C(u, y) B(a + g + y, b + r + u - y) (1 - H)^y,  a = d (1-rho)/rho, b = (1-d)
//   (1-rho)/rho,
//
// H being the progress of the curve by the last look. Nothing of d, rho and the curve is taken for
// certain: the answer averages over all that fit the counts, and over the families of curve, each
// as well as it fits. Log-logistic and log-normal curves are next to alike, with a long end of late
// seed; a Weibull curve has a short one. So that late seed is not counted twice, the two share one
// half of the prior and the Weibull curve has the other (Chipman, George & McCulloch 2001, IMS
// Lecture Notes 38:65-134, on models that are alike; from memory). Where the counts say little,
// weak priors do, and the range is wide:
//
//   d      any share alike
//   rho    exponential with a mean of 0.065
//   shape  log-normal around 4, a factor of e to either side
//   scale  log-normal around the day of the last look, a factor of 3.3 to either side
//
// So there is an answer, if a wide one, also when nothing has germinated, or all at one look, and
// no curve can be fitted.

#include "core/stats/curve_fit.h"
#include "core/stats/interval_counts.h"
#include "core/stats/share_interval.h"

#include <cstdint>
#include <optional>
#include <span>

namespace coneline::stats {

struct StillExpected {
  std::int64_t median = 0;
  std::int64_t low = 0; ///< with `high` the shortest range that holds the confidence
  std::int64_t high = 0;
  /// The share of such seed that will have come up in the end, if none is removed: the group's mean
  /// d, at the middle of what is possible and in the shortest range that holds the confidence.
  /// Nothing where no seed is waiting.
  std::optional<double> share;
  std::optional<Interval> share_range;
  /// Of the spread between trays in the end (rho), as much as shows by now: trays whose shares in
  /// the end are d ± s show F d ± F s while the curve is at F, and as a correlation that is
  /// rho F (1 - d) / (1 - F d). The mean over what is possible; 1 where no seed is waiting.
  double diluted = 1;

  bool operator==(const StillExpected&) const = default;
};

/// A family to reckon with, and its best fit if there is one.
struct FamilyFit {
  Family family = Family::log_logistic;
  std::optional<CurveFit> fit;
};

/// For the trays of one group, `counts` being theirs. At least one family. All zero when no seed is
/// waiting.
StillExpected still_expected(std::span<const Tray> trays, const IntervalCounts& counts,
                             std::span<const FamilyFit> families, double confidence);

} // namespace coneline::stats
