// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve_likelihood.h"

#include <cmath>

namespace coneline::stats {

Eigen::Matrix2d CurveEvaluated::profile_information() const {
  Eigen::Matrix2d inner = information.bottomRightCorner<2, 2>();
  if (!boundary) {
    const Eigen::Vector2d cross = information.bottomLeftCorner<2, 1>();
    inner -= cross * cross.transpose() / information(0, 0);
  }
  return inner;
}

CurveLikelihood::CurveLikelihood(const IntervalCounts& counts, Family family, Germinable germinable)
    : counts_(counts), family_(family), fixed_(germinable == Germinable::all),
      germinated_(counts.germinated()), at_(counts.bounds.size()) {
  for (std::size_t i = 1; i < counts.bounds.size(); ++i)
    log_days_.push_back(std::log(counts.bounds[i]));
}

void CurveLikelihood::fill_values(const CurvePlace& place) {
  const double shape = std::exp(place[0]);
  for (std::size_t i = 1; i < at_.size(); ++i) {
    const auto [below, above] = parts(family_, shape * (log_days_[i - 1] - place[1]));
    at_[i].below = below;
    at_[i].above = above;
  }
}

double CurveLikelihood::value(const CurvePlace& place) {
  fill_values(place);
  return value_at(best_germinable());
}

double CurveLikelihood::value(const CurvePlace& place, double germinable) {
  fill_values(place);
  return value_at(germinable);
}

CurveEvaluated CurveLikelihood::evaluate(const CurvePlace& place) {
  fill(place);
  CurveEvaluated result;
  result.germinable = best_germinable();
  result.boundary = result.germinable == 1;
  result.log_likelihood = value_at(result.germinable);
  if (result.log_likelihood > impossible)
    derive(result);
  return result;
}

double CurveLikelihood::value_at(double germinable) const {
  double sum = germinated_ * std::log(germinable);
  for (const auto& cell : counts_.seen)
    sum += cell.seeds * std::log(between(cell));
  for (const auto& cell : counts_.waiting)
    sum += cell.seeds * std::log((1 - germinable) + germinable * at_[cell.since].above);
  if (counts_.removed > 0)
    sum += counts_.removed * std::log1p(-germinable);
  return std::isfinite(sum) ? sum : impossible;
}

void CurveLikelihood::fill(const CurvePlace& place) {
  const double shape = std::exp(place[0]);
  for (std::size_t i = 1; i < at_.size(); ++i) {
    const double z = shape * (log_days_[i - 1] - place[1]);
    const auto h = height(family_, z);
    auto& at = at_[i];
    at.below = h.below;
    at.above = h.above;
    at.slope = {h.slope == 0 ? 0 : h.slope * z, -h.slope * shape};
    const double along = h.slope == 0 ? 0 : h.bend * z + h.slope;
    at.bend << (h.slope == 0 ? 0 : z * along), -shape * along, -shape * along,
        h.bend * shape * shape;
  }
}

/// Probability of the interval, taken on the side where fewer digits are lost.
double CurveLikelihood::between(const IntervalCounts::Seen& cell) const {
  const auto& from = at_[cell.from];
  const auto& to = at_[cell.to];
  return from.above < 0.5 ? from.above - to.above : to.below - from.below;
}

double CurveLikelihood::score(double germinable) const {
  double sum = germinated_ / germinable;
  if (counts_.removed > 0)
    sum -= counts_.removed / (1 - germinable);
  for (const auto& cell : counts_.waiting) {
    const auto& at = at_[cell.since];
    if (at.below > 0)
      sum -= cell.seeds * at.below / ((1 - germinable) + germinable * at.above);
  }
  return sum;
}

/// The score falls from plus infinity at 0, so it has one root below 1 or none. A root that is 1
/// but for the rounding of its terms is 1.
double CurveLikelihood::best_germinable() const {
  constexpr double rounding = 1e-12;
  if (fixed_ || (counts_.removed == 0 && score(1) >= -rounding * germinated_))
    return 1;
  double low = germinated_ / counts_.sown();
  double high = 1;
  double germinable = low;
  for (int step = 0; step < 100; ++step) {
    const double here = score(germinable);
    (here >= 0 ? low : high) = germinable;
    const double next = germinable + here / steepness(germinable);
    const double chosen = next > low && next < high ? next : (low + high) / 2;
    if (std::abs(chosen - germinable) <= 1e-15 * germinable)
      break;
    germinable = chosen;
  }
  return germinable;
}

double CurveLikelihood::steepness(double germinable) const {
  double sum = germinated_ / (germinable * germinable);
  if (counts_.removed > 0)
    sum += counts_.removed / ((1 - germinable) * (1 - germinable));
  for (const auto& cell : counts_.waiting) {
    const auto& at = at_[cell.since];
    const double part = at.below / ((1 - germinable) + germinable * at.above);
    sum += cell.seeds * part * part;
  }
  return sum;
}

void CurveLikelihood::derive(CurveEvaluated& result) const {
  Eigen::Matrix2d bend = Eigen::Matrix2d::Zero();
  Eigen::Vector2d cross = Eigen::Vector2d::Zero();
  const double d = result.germinable;
  for (const auto& cell : counts_.seen) {
    const double share = between(cell);
    const Eigen::Vector2d slope = (at_[cell.to].slope - at_[cell.from].slope) / share;
    result.slope += cell.seeds * slope;
    bend += cell.seeds *
            ((at_[cell.to].bend - at_[cell.from].bend) / share - slope * slope.transpose());
  }
  for (const auto& cell : counts_.waiting) {
    const auto& at = at_[cell.since];
    const double rest = (1 - d) + d * at.above;
    const Eigen::Vector2d slope = d * at.slope / rest;
    result.slope -= cell.seeds * slope;
    bend -= cell.seeds * (d * at.bend / rest + slope * slope.transpose());
    cross -= cell.seeds * at.slope / (rest * rest);
  }
  result.information(0, 0) = steepness(d);
  result.information.bottomLeftCorner<2, 1>() = -cross;
  result.information.topRightCorner<1, 2>() = -cross.transpose();
  result.information.bottomRightCorner<2, 2>() = -bend;
}

} // namespace coneline::stats
