// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve_fit.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace coneline::stats {

namespace {

constexpr double impossible = -std::numeric_limits<double>::infinity();

/// Where the search stands: ln shape and ln scale. The germinable share has its best value for
/// them, which one equation gives, so it takes no part in the search and cannot run off.
using Place = Eigen::Vector2d;

/// H at a bound, with its derivatives by ln shape and ln scale.
struct AtBound {
  double below = 0;
  double above = 1;
  Eigen::Vector2d slope = Eigen::Vector2d::Zero();
  Eigen::Matrix2d bend = Eigen::Matrix2d::Zero();
};

struct Evaluated {
  double log_likelihood = impossible;
  double germinable = 0;
  bool boundary = false;
  Eigen::Vector2d slope = Eigen::Vector2d::Zero();
  Eigen::Matrix3d information = Eigen::Matrix3d::Zero(); ///< by germinable, ln shape, ln scale

  /// Second derivatives of the likelihood with the germinable share at its best.
  [[nodiscard]] Eigen::Matrix2d profile_information() const {
    Eigen::Matrix2d inner = information.bottomRightCorner<2, 2>();
    if (!boundary) {
      const Eigen::Vector2d cross = information.bottomLeftCorner<2, 1>();
      inner -= cross * cross.transpose() / information(0, 0);
    }
    return inner;
  }
};

class Likelihood {
 public:
  Likelihood(const IntervalCounts& counts, Family family, Germinable germinable)
      : counts_(counts), family_(family), fixed_(germinable == Germinable::all),
        germinated_(counts.germinated()), at_(counts.bounds.size()) {
    for (std::size_t i = 1; i < counts.bounds.size(); ++i)
      log_days_.push_back(std::log(counts.bounds[i]));
  }

  /// The value alone; much cheaper than evaluate.
  double value(const Place& place) {
    const double shape = std::exp(place[0]);
    for (std::size_t i = 1; i < at_.size(); ++i) {
      const auto [below, above] = parts(family_, shape * (log_days_[i - 1] - place[1]));
      at_[i].below = below;
      at_[i].above = above;
    }
    return value_at(best_germinable());
  }

  Evaluated evaluate(const Place& place) {
    fill(place);
    Evaluated result;
    result.germinable = best_germinable();
    result.boundary = result.germinable == 1;
    result.log_likelihood = value_at(result.germinable);
    if (result.log_likelihood > impossible)
      derive(result);
    return result;
  }

  double value_at(double germinable) const {
    double sum = germinated_ * std::log(germinable);
    for (const auto& cell : counts_.seen)
      sum += cell.seeds * std::log(between(cell));
    for (const auto& cell : counts_.waiting)
      sum += cell.seeds * std::log((1 - germinable) + germinable * at_[cell.since].above);
    if (counts_.removed > 0)
      sum += counts_.removed * std::log1p(-germinable);
    return std::isfinite(sum) ? sum : impossible;
  }

  void fill(const Place& place) {
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

 private:
  /// Probability of the interval, taken on the side where fewer digits are lost.
  double between(const IntervalCounts::Seen& cell) const {
    const auto& from = at_[cell.from];
    const auto& to = at_[cell.to];
    return from.above < 0.5 ? from.above - to.above : to.below - from.below;
  }

  double score(double germinable) const {
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

  /// The score falls from plus infinity at 0, so it has one root below 1 or none.
  double best_germinable() const {
    if (fixed_ || (counts_.removed == 0 && score(1) >= 0))
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

  double steepness(double germinable) const {
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

  void derive(Evaluated& result) const {
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

  const IntervalCounts& counts_;
  Family family_;
  bool fixed_;
  double germinated_;
  std::vector<double> log_days_;
  std::vector<AtBound> at_;
};

/// How far the search may go: a curve steeper or flatter than that is no different to the counts.
struct Limits {
  Place low;
  Place high;

  explicit Limits(const IntervalCounts& counts)
      : low(std::log(0.01), std::log(counts.bounds[1]) - 40),
        high(std::log(1e4), std::log(counts.bounds.back()) + 40) {}

  [[nodiscard]] Place within(const Place& place) const {
    return place.cwiseMax(low).cwiseMin(high);
  }
  [[nodiscard]] bool touches(const Place& place) const {
    return (place.array() <= low.array()).any() || (place.array() >= high.array()).any();
  }
};

/// Newton step uphill; where the likelihood is not curved downwards, its curvature is turned round.
Place uphill(const Evaluated& here) {
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> axes(here.profile_information());
  Eigen::Vector2d along = axes.eigenvectors().transpose() * here.slope;
  const double least = 1e-10 * std::max(1e-3, axes.eigenvalues().cwiseAbs().maxCoeff());
  along = along.cwiseQuotient(axes.eigenvalues().cwiseAbs().cwiseMax(least));
  return axes.eigenvectors() * along;
}

struct Found {
  Place place;
  Evaluated evaluated;
};

Found climb(Likelihood& likelihood, const Limits& limits, Place place) {
  constexpr int most_steps = 200;
  constexpr double settled = 1e-13;
  auto here = likelihood.evaluate(place);
  for (int step = 0; step < most_steps; ++step) {
    Place move = uphill(here);
    move /= std::max({1.0, std::abs(move[0]), std::abs(move[1]) * std::exp(place[0]) / 4});
    const double gain = move.dot(here.slope);
    if (!(gain > settled * std::max(1.0, std::abs(here.log_likelihood))))
      break;
    double part = 1;
    Place next = limits.within(place + move);
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
  const Place last = limits.within(place + uphill(here));
  if (const auto there = likelihood.evaluate(last);
      there.slope.norm() < here.slope.norm() && there.log_likelihood >= here.log_likelihood - 1e-9)
    return {last, there};
  return {place, here};
}

/// Places to begin from: mean and spread of the logarithms of the days seen, and around them, also
/// far later and flatter, as when a tray has only begun.
std::vector<Place> beginnings(const IntervalCounts& counts, Family family) {
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
  std::vector<Place> places;
  for (const double steeper : {1.0, 0.5, 2.0, 0.25})
    for (const double later : {0.0, 1.0, 3.0})
      places.emplace_back(std::log(steeper * unit / spread), mid + later * spread);
  return places;
}

/// The highest place reached from the best `tries` of the places given.
Found highest(Likelihood& likelihood, const Limits& limits, const std::vector<Place>& places,
              std::size_t tries) {
  std::vector<std::pair<double, Place>> starts;
  for (const auto& place : places) {
    const auto inside = limits.within(place);
    starts.emplace_back(likelihood.value(inside), inside);
  }
  std::ranges::stable_sort(starts, std::greater{}, &std::pair<double, Place>::first);
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
  Likelihood likelihood(counts, family, germinable);
  const auto found = highest(likelihood, Limits(counts), beginnings(counts, family), tries);
  return fit_from(counts, family, found);
}

std::optional<CurveFit> fit_curve_between(const IntervalCounts& counts, const Curve& a,
                                          const Curve& b) {
  if (!fits(counts, Germinable::estimated))
    return std::nullopt;
  Likelihood likelihood(counts, a.family, Germinable::estimated);
  const Place at_a{std::log(a.shape), std::log(a.scale)};
  const Place at_b{std::log(b.shape), std::log(b.scale)};
  const Place flatter{std::min(at_a[0], at_b[0]) - 0.5, (at_a[1] + at_b[1]) / 2};
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
  Likelihood likelihood(counts, curve.family, Germinable::estimated);
  likelihood.fill({std::log(curve.shape), std::log(curve.scale)});
  return likelihood.value_at(curve.germinable);
}

} // namespace coneline::stats
