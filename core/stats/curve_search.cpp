// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve_search.h"

#include <algorithm>
#include <cmath>

namespace coneline::stats {

namespace {
constexpr double shift = 0.01;     ///< of rho, as in germination_prior.h
constexpr double least_rho = 1e-4; ///< what is less is no different to the counts
} // namespace

double coordinate_of_rho(double rho) {
  return std::log(rho + shift);
}

SearchPoint search_point(Family family, double log_last, const Point& at) {
  SearchPoint point;
  point.up = 1 / (1 + std::exp(-at[0]));
  const auto progress = parts(family, at[1]);
  const double shape = std::exp(at[2]);
  point.curve = {family, point.up / progress.below, shape, std::exp(log_last - at[1] / shape)};
  point.rho = std::exp(at[3]) - shift;
  const double germinable = point.curve.germinable;
  point.possible = progress.below > 0 && germinable < 1 && germinable > 0 &&
                   point.rho > least_rho && point.rho < 0.95 && std::abs(at[1] / shape) < 50 &&
                   std::abs(at[2]) < 12;
  return point;
}

LogitUp logit_up(const IntervalCounts& counts) {
  const double germinated = counts.germinated();
  const double rest = counts.sown() - germinated;
  return {std::log((germinated + 0.5) / (rest + 0.5)),
          1 / (germinated + 0.5) + 1 / (rest + 0.5) + 0.02};
}

Proposal around_fit(const CurveFit& fit, double log_last, const LogitUp& up, double rho,
                    double rho_variance) {
  const auto part = [](const std::optional<double>& error, double value, double most) {
    return std::min(most, 1.3 * error.value_or(value) / value);
  };
  const double shape_spread = part(fit.shape_error, fit.curve.shape, 0.7);
  const double scale_spread = part(fit.scale_error, fit.curve.scale, 1.0);
  const double shape = std::min(fit.curve.shape, 50.0);
  const double z = std::clamp(shape * (log_last - std::log(fit.curve.scale)), -8.0, 40.0);
  Proposal near{{up.value, z, std::log(shape), rho}, Eigen::Matrix4d::Zero()};
  near.covariance.diagonal() << up.variance,
      z * z * shape_spread * shape_spread + shape * shape * scale_spread * scale_spread + 0.01,
      shape_spread * shape_spread, rho_variance;
  near.covariance(1, 2) = near.covariance(2, 1) = z * shape_spread * shape_spread;
  return near;
}

CurveEvidence::CurveEvidence(std::span<const Tray> trays, IntervalCounts counts)
    : counts_(std::move(counts)), at_(counts_.bounds.size()) {
  for (const double bound : counts_.bounds)
    log_days_.push_back(std::log(bound));
  for (const auto& tray : trays) {
    if (tray.sown == 0)
      continue;
    const auto bound =
        std::ranges::lower_bound(counts_.bounds, tray.last_day()) - counts_.bounds.begin();
    ends_.push_back({static_cast<double>(tray.germinated()), static_cast<double>(tray.removed()),
                     static_cast<double>(tray.waiting())});
    bounds_.push_back(tray.waiting() > 0 ? static_cast<std::size_t>(bound) : 0);
  }
}

double CurveEvidence::times(const Curve& curve) {
  const double log_scale = std::log(curve.scale);
  for (std::size_t i = 1; i < at_.size(); ++i)
    at_[i] = parts(curve.family, curve.shape * (log_days_[i] - log_scale));
  double sum = 0;
  for (const auto& cell : counts_.seen) {
    const auto& from = at_[cell.from];
    const auto& to = at_[cell.to];
    sum += cell.seeds * std::log(from.above < 0.5 ? from.above - to.above : to.below - from.below);
  }
  return sum;
}

} // namespace coneline::stats
