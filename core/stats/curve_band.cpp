// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve_band.h"

#include "core/stats/curve_likelihood.h"

#include <boost/math/distributions/normal.hpp>

#include <cmath>

namespace coneline::stats {

double design_effect(std::span<const double> sown, double rho) {
  double seeds = 0;
  double squares = 0;
  for (const double size : sown) {
    seeds += size;
    squares += size * size;
  }
  return seeds > 0 ? 1 + std::max(0.0, squares / seeds - 1) * rho : 1;
}

std::optional<CurveBand> CurveBand::of(const IntervalCounts& counts, const CurveFit& fit,
                                       double design_effect, double confidence) {
  CurveLikelihood likelihood(counts, fit.curve.family,
                             fit.boundary ? Germinable::all : Germinable::estimated);
  const auto evaluated =
      likelihood.evaluate({std::log(fit.curve.shape), std::log(fit.curve.scale)});
  const Eigen::Index first = fit.boundary ? 1 : 0;
  const Eigen::MatrixXd information = evaluated.information.bottomRightCorner(3 - first, 3 - first);
  const Eigen::LDLT<Eigen::MatrixXd> solved(information);
  if (!information.allFinite() || !solved.isPositive() || solved.rcond() < 1e-13)
    return std::nullopt;
  const Eigen::MatrixXd inverse = solved.solve(Eigen::MatrixXd::Identity(3 - first, 3 - first));
  CurveBand band;
  band.curve_ = fit.curve;
  band.boundary_ = fit.boundary;
  band.reach_ = boost::math::quantile(boost::math::normal(), (1 + confidence) / 2);
  for (Eigen::Index i = first; i < 3; ++i)
    for (Eigen::Index j = first; j < 3; ++j)
      band.covariance_.at(static_cast<std::size_t>(i)).at(static_cast<std::size_t>(j)) =
          inverse(i - first, j - first);
  const double d = fit.curve.germinable;
  band.covariance_[0][0] += (design_effect - 1) * d * (1 - d) / counts.sown();
  return band;
}

Interval CurveBand::at(double day) const {
  if (!(day > 0))
    return {0, 0};
  const double z = curve_.shape * std::log(day / curve_.scale);
  const auto h = height(curve_.family, z);
  const double share = curve_.germinable * h.below;
  if (!(share > 0) || !(share < 1))
    return {std::max(share, 0.0), std::min(share, 1.0)};
  // By germinable, ln shape and ln scale.
  const std::array<double, 3> slope{boundary_ ? 0 : h.below, curve_.germinable * h.slope * z,
                                    -curve_.germinable * h.slope * curve_.shape};
  double variance = 0;
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j)
      variance += slope.at(i) * covariance_.at(i).at(j) * slope.at(j);
  const double logit = std::log(share / (1 - share));
  const double reach = reach_ * std::sqrt(std::max(0.0, variance)) / (share * (1 - share));
  const auto back = [](double value) { return 1 / (1 + std::exp(-value)); };
  return {back(logit - reach), back(logit + reach)};
}

} // namespace coneline::stats
