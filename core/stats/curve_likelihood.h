// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The likelihood of interval counts under a curve, with its derivatives. The germinable share has
// its best value for any shape and scale, which one equation gives, so it takes no part in the
// search for them: it cannot run off, and its limit of 1 is met exactly.

#include "core/stats/curve_fit.h"

#include <Eigen/Dense>

#include <limits>
#include <vector>

namespace coneline::stats {

inline constexpr double impossible = -std::numeric_limits<double>::infinity();

/// ln shape and ln scale.
using CurvePlace = Eigen::Vector2d;

struct CurveEvaluated {
  double log_likelihood = impossible;
  double germinable = 0; ///< at its best
  bool boundary = false; ///< germinable is 1
  Eigen::Vector2d slope = Eigen::Vector2d::Zero();
  Eigen::Matrix3d information = Eigen::Matrix3d::Zero(); ///< by germinable, ln shape, ln scale

  /// Second derivatives of the likelihood with the germinable share at its best, sign turned.
  [[nodiscard]] Eigen::Matrix2d profile_information() const;
};

class CurveLikelihood {
 public:
  /// `counts` outlive the object.
  CurveLikelihood(const IntervalCounts& counts, Family family, Germinable germinable);

  /// With the germinable share at its best; the value alone is much cheaper.
  double value(const CurvePlace& place);
  CurveEvaluated evaluate(const CurvePlace& place);
  /// With a share that is given.
  double value(const CurvePlace& place, double germinable);

 private:
  /// H at a bound, with its derivatives by ln shape and ln scale.
  struct AtBound {
    double below = 0;
    double above = 1;
    Eigen::Vector2d slope = Eigen::Vector2d::Zero();
    Eigen::Matrix2d bend = Eigen::Matrix2d::Zero();
  };

  void fill_values(const CurvePlace& place);
  void fill(const CurvePlace& place);
  [[nodiscard]] double value_at(double germinable) const;
  [[nodiscard]] double between(const IntervalCounts::Seen& cell) const;
  [[nodiscard]] double score(double germinable) const;
  [[nodiscard]] double steepness(double germinable) const;
  [[nodiscard]] double best_germinable() const;
  void derive(CurveEvaluated& result) const;

  const IntervalCounts& counts_;
  Family family_;
  bool fixed_;
  double germinated_;
  std::vector<double> log_days_; ///< of the bounds after the first
  std::vector<AtBound> at_;
};

} // namespace coneline::stats
