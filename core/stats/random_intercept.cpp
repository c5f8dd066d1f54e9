// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/random_intercept.h"

#include "core/stats/log_gamma.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace coneline::stats {

namespace {

/// Nodes and weights for the weight exp(-x²): eigenvalues of the Jacobi matrix (Golub & Welsch
/// 1969, Mathematics of Computation 23:221-230).
struct Quadrature {
  Eigen::VectorXd nodes;
  Eigen::VectorXd weights;
};

Quadrature gauss_hermite(Eigen::Index points) {
  Eigen::MatrixXd jacobi = Eigen::MatrixXd::Zero(points, points);
  for (Eigen::Index i = 1; i < points; ++i)
    jacobi(i, i - 1) = jacobi(i - 1, i) = std::sqrt(static_cast<double>(i) / 2);
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> axes(jacobi);
  return {axes.eigenvalues(),
          std::sqrt(std::numbers::pi) * axes.eigenvectors().row(0).transpose().array().square()};
}

struct OneTray {
  Eigen::VectorXd conditions;
  double trials = 0;
  double successes = 0;
  double log_choose = 0;
};

double log1p_exp(double x) {
  return x > 0 ? x + std::log1p(std::exp(-x)) : std::log1p(std::exp(x));
}

class Likelihood {
 public:
  explicit Likelihood(std::span<const Pattern> patterns) : quadrature_(gauss_hermite(25)) {
    for (const auto& pattern : patterns)
      for (const auto& outcome : pattern.outcomes) {
        OneTray tray{
            Eigen::Map<const Eigen::VectorXd>(pattern.conditions.data(),
                                              static_cast<Eigen::Index>(pattern.conditions.size())),
            static_cast<double>(outcome.trials), static_cast<double>(outcome.successes), 0};
        tray.log_choose = log_choose(tray.trials, tray.successes);
        trays_.push_back(tray);
      }
  }

  /// The coefficients, then ln sigma.
  [[nodiscard]] double operator()(const Eigen::VectorXd& at) const {
    const auto k = at.size() - 1;
    const double sigma = std::exp(at[k]);
    double value = 0;
    for (const auto& tray : trays_)
      value += of_tray(tray, tray.conditions.dot(at.head(k)), sigma);
    return std::isnan(value) ? -std::numeric_limits<double>::infinity() : value;
  }

 private:
  [[nodiscard]] double of_tray(const OneTray& tray, double middle, double sigma) const {
    const auto log_joint = [&](double u) { // b = sigma u
      const double eta = middle + sigma * u;
      return tray.successes * eta - tray.trials * log1p_exp(eta) - u * u / 2;
    };
    // The best u by Newton's method: the joint density is log-concave.
    double u = 0;
    double curvature = 1;
    for (int step = 0; step < 50; ++step) {
      const double share = 1 / (1 + std::exp(-(middle + sigma * u)));
      const double slope = sigma * (tray.successes - tray.trials * share) - u;
      curvature = sigma * sigma * tray.trials * share * (1 - share) + 1;
      const double move = std::clamp(slope / curvature, -2.0, 2.0);
      u += move;
      if (std::abs(move) < 1e-11)
        break;
    }
    const double width = std::sqrt(2 / curvature);
    const double highest = log_joint(u);
    double sum = 0;
    for (Eigen::Index i = 0; i < quadrature_.nodes.size(); ++i) {
      const double x = quadrature_.nodes[i];
      sum += quadrature_.weights[i] * std::exp(log_joint(u + width * x) - highest + x * x);
    }
    return tray.log_choose + highest + std::log(sum * width) - std::log(2 * std::numbers::pi) / 2;
  }

  Quadrature quadrature_;
  std::vector<OneTray> trays_;
};

/// Slope and curvature by differences: the likelihood is smooth and known to some twelve digits.
struct Shape {
  Eigen::VectorXd slope;
  Eigen::MatrixXd information;
};

Shape shape_of(const Likelihood& likelihood, const Eigen::VectorXd& at) {
  constexpr double h = 5e-4;
  const auto k = at.size();
  const auto value = [&](Eigen::Index i, double by_i, Eigen::Index j, double by_j) {
    auto moved = at;
    moved[i] += by_i;
    moved[j] += by_j;
    return likelihood(moved);
  };
  Shape shape{Eigen::VectorXd(k), Eigen::MatrixXd(k, k)};
  const double here = likelihood(at);
  for (Eigen::Index i = 0; i < k; ++i) {
    const double up = value(i, h, i, 0);
    const double down = value(i, -h, i, 0);
    shape.slope[i] = (up - down) / (2 * h);
    shape.information(i, i) = -(up - 2 * here + down) / (h * h);
    for (Eigen::Index j = 0; j < i; ++j)
      shape.information(i, j) = shape.information(j, i) =
          -(value(i, h, j, h) - value(i, h, j, -h) - value(i, -h, j, h) + value(i, -h, j, -h)) /
          (4 * h * h);
  }
  return shape;
}

Eigen::VectorXd climb(const Likelihood& likelihood, Eigen::VectorXd at) {
  for (int step = 0; step < 100; ++step) {
    const auto shape = shape_of(likelihood, at);
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> axes(shape.information);
    Eigen::VectorXd move =
        axes.eigenvectors() * (axes.eigenvectors().transpose() * shape.slope)
                                  .cwiseQuotient(axes.eigenvalues().cwiseAbs().cwiseMax(1e-6));
    move /= std::max(1.0, move.cwiseAbs().maxCoeff());
    const double here = likelihood(at);
    double part = 1;
    while (part > 1e-8 && !(likelihood(at + part * move) > here))
      part /= 2;
    if (part <= 1e-8)
      break;
    at += part * move;
    if ((part * move).cwiseAbs().maxCoeff() < 1e-9)
      break;
  }
  return at;
}

constexpr double least_log_sigma = -9; ///< sigma 0.0001: as good as none

} // namespace

RandomIntercept fit_random_intercept(std::span<const Pattern> patterns) {
  const auto without = regress(patterns, SpreadModel::none);
  const auto k = static_cast<Eigen::Index>(without.coefficients.size());
  const Likelihood likelihood(patterns);
  Eigen::VectorXd at(k + 1);
  at.head(k) = Eigen::Map<const Eigen::VectorXd>(without.coefficients.data(), k);
  Eigen::VectorXd best = at;
  double highest = without.log_likelihood;
  bool found = false;
  for (const double start : {0.1, 0.5, 1.5}) {
    at[k] = std::log(start);
    const auto climbed = climb(likelihood, at);
    const double value = likelihood(climbed);
    if (climbed[k] > least_log_sigma && value > highest + 1e-9) {
      best = climbed;
      highest = value;
      found = true;
    }
  }
  RandomIntercept result;
  result.log_likelihood = highest;
  result.coefficients.assign(best.data(), best.data() + k);
  if (!found) {
    result.standard_errors = without.standard_errors;
    return result;
  }
  result.sigma = std::exp(best[k]);
  const Eigen::LLT<Eigen::MatrixXd> factor(shape_of(likelihood, best).information);
  if (factor.info() == Eigen::Success) {
    const Eigen::VectorXd errors =
        factor.solve(Eigen::MatrixXd::Identity(k + 1, k + 1)).diagonal().cwiseSqrt();
    result.standard_errors.assign(errors.data(), errors.data() + k);
    result.sigma_error = errors[k] * result.sigma; // ln sigma's, brought to sigma
  }
  return result;
}

} // namespace coneline::stats
