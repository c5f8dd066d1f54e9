// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Fits a curve to interval counts by maximum likelihood:
//
//   sum over seeds seen     ln(F(to) - F(from))
//   + seeds not seen        ln(1 - F(last look of their tray))
//   + seeds removed         ln(1 - germinable)
//
// without the multinomial constant. Chickweed of Ritz, Pipper & Streibig 2013 (European J. Agronomy
// 45:1-6): log-logistic, germinable .200, shape 20.77, scale 196.05 hours.

#include "core/stats/curve.h"
#include "core/stats/interval_counts.h"

#include <optional>

namespace coneline::stats {

/// Whether the germinable share is estimated or taken to be all of the seed.
enum class Germinable { estimated, all };

/// Standard errors are from the observed information, on the scale of the values themselves.
struct CurveFit {
  Curve curve;
  double log_likelihood = 0;
  /// Germinable is 1, at its limit (or taken to be): it has no standard error, and the others are
  /// those of a curve with germinable 1.
  bool boundary = false;
  /// Absent, too, where the counts set no limit to a value: when all seeds seen germinated just
  /// before or just after one look, any steep curve fits them equally well.
  std::optional<double> germinable_error;
  std::optional<double> shape_error;
  std::optional<double> scale_error;
};

/// Nothing when nothing germinated, when one moment lies in all the intervals seen (all fell in one
/// interval), or with Germinable::all when a seed was removed.
std::optional<CurveFit> fit_curve(const IntervalCounts& counts, Family family,
                                  Germinable germinable = Germinable::estimated);

/// The same for counts that hold those of the two curves given, both of one family: the search
/// begins between them, which is much faster.
std::optional<CurveFit> fit_curve_between(const IntervalCounts& counts, const Curve& a,
                                          const Curve& b);

/// The family of lowest AIC. All three have as many parameters, so it is the one of highest
/// likelihood; the first of all_families where they are equal.
std::optional<CurveFit> fit_best_curve(const IntervalCounts& counts);

/// The log-likelihood at any curve; minus infinity where the curve rules the counts out.
double log_likelihood(const IntervalCounts& counts, const Curve& curve);

} // namespace coneline::stats
