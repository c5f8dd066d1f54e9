// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Do two groups of trays differ, in how much germinated and in how it went over time?

#include "core/stats/curve_fit.h"
#include "core/stats/share_posterior.h"

#include <optional>
#include <span>
#include <vector>

namespace coneline::stats {

/// share(a) - share(b) with its range and the test that it is 0.
struct Difference {
  double difference = 0;
  double low = -1;
  double high = 1;
  double p_value = 1;
};

/// The limits of the two shares are put together as by Newcombe 1998, Statistics in Medicine
/// 17:873-890, method 10; the p-value is 1 minus the confidence at which the range just reaches 0,
/// so range and test always agree.
///
/// The limits of each share count the spread between trays, one rho for both groups (see
/// share_posterior.h). With one tray in each group nothing tells of a spread: then they are
/// Wilson's, and the answer is about those two trays only.
Difference difference_of(const GroupShare& a, const GroupShare& b, double confidence);

/// Likelihood-ratio test that both groups follow one curve of `family`: twice the likelihood that
/// two curves gain over one, against chi-square with three degrees of freedom. `curve_a` and
/// `curve_b` are fits of that family. Spread between trays is not counted in it.
double p_value_of_one_curve(const IntervalCounts& a, const CurveFit& curve_a,
                            const IntervalCounts& b, const CurveFit& curve_b);

/// Holm's adjustment for so many tests (Holm 1979, Scandinavian J. Statistics 6:65-70), in the
/// order given.
std::vector<double> holm(std::span<const double> p_values);

} // namespace coneline::stats
