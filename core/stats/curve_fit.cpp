// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve_fit.h"

#include "core/stats/curve_likelihood.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace coneline::stats {

namespace {

/// How far the search may go: a curve steeper or flatter than that is no different to the counts.
struct Limits {
  CurvePlace low;
  CurvePlace high;

  explicit Limits(const IntervalCounts& counts)
      : low(std::log(0.01), std::log(counts.bounds[1]) - 40),
        high(std::log(1e4), std::log(counts.bounds.back()) + 40) {}

  [[nodiscard]] CurvePlace within(const CurvePlace& place) const {
    return place.cwiseMax(low).cwiseMin(high);
  }
  [[nodiscard]] bool touches(const CurvePlace& place) const {
    return (place.array() <= low.array()).any() || (place.array() >= high.array()).any();
  }
};

/// Newton step uphill; where the likelihood is not curved downwards, its curvature is turned round.
CurvePlace uphill(const CurveEvaluated& here) {
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> axes(here.profile_information());
  Eigen::Vector2d along = axes.eigenvectors().transpose() * here.slope;
  const double least = 1e-10 * std::max(1e-3, axes.eigenvalues().cwiseAbs().maxCoeff());
  along = along.cwiseQuotient(axes.eigenvalues().cwiseAbs().cwiseMax(least));
  return axes.eigenvectors() * along;
}

struct Found {
  CurvePlace place;
  CurveEvaluated evaluated;
};

Found climb(CurveLikelihood& likelihood, const Limits& limits, CurvePlace place) {
  constexpr int most_steps = 200;
  constexpr double settled = 1e-13;
  auto here = likelihood.evaluate(place);
  for (int step = 0; step < most_steps; ++step) {
    CurvePlace move = uphill(here);
    move /= std::max({1.0, std::abs(move[0]), std::abs(move[1]) * std::exp(place[0]) / 4});
    const double gain = move.dot(here.slope);
    if (!(gain > settled * std::max(1.0, std::abs(here.log_likelihood))))
      break;
    double part = 1;
    CurvePlace next = limits.within(place + move);
    while (likelihood.value(next) < here.log_likelihood + 1e-4 * part * gain && part > 1e-12) {
      part /= 2;
      next = limits.within(place + part * move);
    }
    if (part <= 1e-12 || next == place)
      break;
    place = next;
    here = likelihood.evaluate(place);
  }
  // A last full step: near the top it gains digits of the place that the value no longer shows.
  const CurvePlace last = limits.within(place + uphill(here));
  if (const auto there = likelihood.evaluate(last);
      there.slope.norm() < here.slope.norm() && there.log_likelihood >= here.log_likelihood - 1e-9)
    return {last, there};
  return {place, here};
}

/// Places to begin from: mean and spread of the logarithms of the days seen, and around them, also
/// far later and flatter, as when a tray has only begun.
std::vector<CurvePlace> beginnings(const IntervalCounts& counts, Family family) {
  double seeds = 0;
  double sum = 0;
  double squares = 0;
  for (const auto& cell : counts.seen) {
    const double to = counts.bounds[cell.to];
    const double from = cell.from == 0 ? to / 3 : counts.bounds[cell.from];
    const double middle = (std::log(from) + std::log(to)) / 2;
    const double width = std::log(to) - std::log(from);
    seeds += cell.seeds;
    sum += cell.seeds * middle;
    squares += cell.seeds * (middle * middle + width * width / 12);
  }
  const double mean = sum / seeds;
  const double spread = std::sqrt(std::max(squares / seeds - mean * mean, 1e-6));
  const double unit = family == Family::log_logistic ? std::numbers::pi / std::numbers::sqrt3
                      : family == Family::weibull    ? std::numbers::pi / std::sqrt(6)
                                                     : 1;
  const double mid = family == Family::weibull ? mean + 0.577 * spread / unit : mean;
  std::vector<CurvePlace> places;
  for (const double steeper : {1.0, 0.5, 2.0, 0.25})
    for (const double later : {0.0, 1.0, 3.0})
      places.emplace_back(std::log(steeper * unit / spread), mid + later * spread);
  return places;
}

/// The highest place reached from the best `tries` of the places given.
Found highest(CurveLikelihood& likelihood, const Limits& limits,
              const std::vector<CurvePlace>& places, std::size_t tries) {
  std::vector<std::pair<double, CurvePlace>> starts;
  for (const auto& place : places) {
    const auto inside = limits.within(place);
    starts.emplace_back(likelihood.value(inside), inside);
  }
  std::ranges::stable_sort(starts, std::greater{}, &std::pair<double, CurvePlace>::first);
  Found best = climb(likelihood, limits, starts.front().second);
  for (std::size_t i = 1; i < std::min(tries, starts.size()); ++i)
    if (starts[i].first > impossible)
      if (auto found = climb(likelihood, limits, starts[i].second);
          found.evaluated.log_likelihood > best.evaluated.log_likelihood + 1e-9)
        best = found;
  return best;
}

void add_errors(CurveFit& fit, const Found& found) {
  const auto& information = found.evaluated.information;
  const auto variances = [](const auto& matrix) -> std::optional<Eigen::VectorXd> {
    const Eigen::LLT<Eigen::MatrixXd> factor(matrix);
    if (factor.info() != Eigen::Success)
      return std::nullopt;
    return factor.solve(Eigen::MatrixXd::Identity(matrix.rows(), matrix.rows())).diagonal();
  };
  if (fit.boundary) {
    if (const auto v = variances(Eigen::MatrixXd(information.bottomRightCorner<2, 2>()))) {
      fit.shape_error = fit.curve.shape * std::sqrt((*v)[0]);
      fit.scale_error = fit.curve.scale * std::sqrt((*v)[1]);
    }
  } else if (const auto v = variances(Eigen::MatrixXd(information))) {
    fit.germinable_error = std::sqrt((*v)[0]);
    fit.shape_error = fit.curve.shape * std::sqrt((*v)[1]);
    fit.scale_error = fit.curve.scale * std::sqrt((*v)[2]);
  }
}

bool fits(const IntervalCounts& counts, Germinable germinable) {
  return !counts.seen.empty() && counts.latest_begin() >= counts.earliest_end() &&
         (germinable == Germinable::estimated || counts.removed == 0);
}

CurveFit fit_from(const IntervalCounts& counts, Family family, const Found& found) {
  CurveFit fit;
  fit.curve = {family, found.evaluated.germinable, std::exp(found.place[0]),
               std::exp(found.place[1])};
  fit.log_likelihood = found.evaluated.log_likelihood;
  fit.boundary = found.evaluated.boundary;
  const bool steep_without_limit = counts.latest_begin() == counts.earliest_end();
  if (steep_without_limit) {
    if (!fit.boundary)
      fit.germinable_error = 1 / std::sqrt(found.evaluated.information(0, 0));
  } else if (!Limits(counts).touches(found.place)) {
    add_errors(fit, found);
  }
  return fit;
}

} // namespace

std::optional<CurveFit> fit_curve(const IntervalCounts& counts, Family family,
                                  Germinable germinable) {
  constexpr std::size_t tries = 3;
  if (!fits(counts, germinable))
    return std::nullopt;
  CurveLikelihood likelihood(counts, family, germinable);
  const auto found = highest(likelihood, Limits(counts), beginnings(counts, family), tries);
  return fit_from(counts, family, found);
}

std::optional<CurveFit> fit_curve_between(const IntervalCounts& counts, const Curve& a,
                                          const Curve& b) {
  if (!fits(counts, Germinable::estimated))
    return std::nullopt;
  CurveLikelihood likelihood(counts, a.family, Germinable::estimated);
  const CurvePlace at_a{std::log(a.shape), std::log(a.scale)};
  const CurvePlace at_b{std::log(b.shape), std::log(b.scale)};
  const CurvePlace flatter{std::min(at_a[0], at_b[0]) - 0.5, (at_a[1] + at_b[1]) / 2};
  const auto found =
      highest(likelihood, Limits(counts), {at_a, at_b, (at_a + at_b) / 2, flatter}, 1);
  return fit_from(counts, a.family, found);
}

std::optional<CurveFit> fit_best_curve(const IntervalCounts& counts) {
  std::optional<CurveFit> best;
  for (const auto family : all_families)
    if (auto fit = fit_curve(counts, family);
        fit && (!best || fit->log_likelihood > best->log_likelihood))
      best = fit;
  return best;
}

double log_likelihood(const IntervalCounts& counts, const Curve& curve) {
  CurveLikelihood likelihood(counts, curve.family, Germinable::estimated);
  return likelihood.value({std::log(curve.shape), std::log(curve.scale)}, curve.germinable);
}

} // namespace coneline::stats
