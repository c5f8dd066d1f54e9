// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A range around a fitted curve, day by day: in which the share germinated by that day lies, were
// the cross sown again in many trays.
//
// The variance of logit F(t) follows from the covariance of germinable, shape and scale (inverse of
// the observed information) by its derivatives (delta method), and the range is taken on the logit,
// so that it stays between 0 and 1. Trays differ in their germinable share, not in how its seed
// comes over time, so the spread between trays adds (D - 1) d (1 - d) / n to the variance of the
// germinable share d, n being the seed sown and D the design effect 1 + (m - 1) rho with m the mean
// size of a tray weighted by its seed (Kish 1965, Survey Sampling, from memory). Each range is for
// its own day, not for the whole curve at once, and takes the family of the curve to be right.

#include "core/stats/curve_fit.h"
#include "core/stats/share_interval.h"

#include <array>
#include <optional>
#include <span>

namespace coneline::stats {

/// 1 + (m - 1) rho for trays of these sizes; 1 without seed.
double design_effect(std::span<const double> sown, double rho);

class CurveBand {
 public:
  /// `counts` are those the curve was fitted to. Nothing where they do not limit the curve.
  static std::optional<CurveBand> of(const IntervalCounts& counts, const CurveFit& fit,
                                     double design_effect, double confidence);

  /// From 0 to 0 at day 0.
  [[nodiscard]] Interval at(double day) const;

 private:
  CurveBand() = default;
  Curve curve_;
  bool boundary_ = false;
  double reach_ = 0; ///< standard errors on each side
  /// Covariance of germinable, ln shape and ln scale.
  std::array<std::array<double, 3>, 3> covariance_{};
};

} // namespace coneline::stats
