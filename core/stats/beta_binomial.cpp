// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/beta_binomial.h"

#include "core/stats/log_gamma.h"

#include <Eigen/Dense>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace coneline::stats {

namespace {

void count_above(std::vector<double>& above, std::int64_t value) {
  if (above.size() < static_cast<std::size_t>(value))
    above.resize(static_cast<std::size_t>(value), 0);
  if (value > 0)
    above[static_cast<std::size_t>(value) - 1] += 1;
}

void sum_from_the_end(std::vector<double>& above) {
  for (std::size_t i = above.size(); i-- > 1;)
    above[i - 1] += above[i];
}

double first_of(const std::vector<double>& above) {
  return above.empty() ? 0 : above.front();
}

double x_log(double weight, double value) {
  return weight == 0 ? 0 : weight * std::log(value);
}

/// Sum over j from 1 of above[j] ln(first + (j - 1) step). Logarithms are what takes the time, so
/// factors of equal weight are multiplied while the product stays well within a double.
double sum_of_logs(const std::vector<double>& above, double first, double step) {
  double sum = 0;
  double product = 1;
  for (std::size_t j = 1; j < above.size(); ++j) {
    product *= first + step * static_cast<double>(j - 1);
    const bool weight_changes = j + 1 == above.size() || above[j + 1] != above[j];
    if (weight_changes || product < 1e-100 || product > 1e100) {
      sum += x_log(above[j], product);
      product = 1;
    }
  }
  return sum;
}

} // namespace

Outcomes::Outcomes(std::span<const Outcome> outcomes) : trays_(outcomes.size()) {
  for (const auto& outcome : outcomes) {
    count_above(successes_above_, outcome.successes);
    count_above(failures_above_, outcome.trials - outcome.successes);
    count_above(trials_above_, outcome.trials);
    coefficients_ +=
        log_choose(static_cast<double>(outcome.trials), static_cast<double>(outcome.successes));
    trials_ += static_cast<double>(outcome.trials);
    successes_ += static_cast<double>(outcome.successes);
  }
  sum_from_the_end(successes_above_);
  sum_from_the_end(failures_above_);
  sum_from_the_end(trials_above_);
}

// With a = mean (1 - rho) / rho and b likewise, the probability is a product of rising factorials.
// Multiplied out by rho it holds up to and including rho = 0, the binomial, and rho = 1, where
// every tray is all or none; the first factors are taken out, since there (1 - rho) cancels.
double Outcomes::log_likelihood(double mean, double rho) const {
  const double rest = 1 - mean;
  const double split =
      first_of(successes_above_) + first_of(failures_above_) - first_of(trials_above_);
  double value = coefficients_ + x_log(first_of(successes_above_), mean) +
                 x_log(first_of(failures_above_), rest) + x_log(split, 1 - rho);
  value += sum_of_logs(successes_above_, mean + rho * rest, rho);
  value += sum_of_logs(failures_above_, rest + rho * mean, rho);
  if (rho > 0)
    value -= sum_of_logs(trials_above_, 1, rho);
  return value;
}

Outcomes::Slopes Outcomes::slopes(double mean, double rho) const {
  const double rest = 1 - mean;
  const double none = first_of(failures_above_);
  const double some = first_of(successes_above_);
  const double split = some + none - first_of(trials_above_);
  Slopes s;
  s.value = coefficients_ + x_log(some, mean) + x_log(none, rest) + x_log(split, 1 - rho);
  s.mean = some / mean - none / rest;
  s.mean_mean = -some / (mean * mean) - none / (rest * rest);
  s.rho = -split / (1 - rho);
  s.rho_rho = -split / ((1 - rho) * (1 - rho));
  const auto add = [&](const std::vector<double>& above, double share, double sign) {
    for (std::size_t j = 1; j < above.size(); ++j) {
      const double apart = static_cast<double>(j) - share;
      const double factor = share + rho * apart;
      s.value += above[j] * std::log(factor);
      s.mean += sign * above[j] * (1 - rho) / factor;
      s.rho += above[j] * apart / factor;
      s.mean_mean -= above[j] * (1 - rho) * (1 - rho) / (factor * factor);
      s.mean_rho -= sign * above[j] * (1 / factor + (1 - rho) * apart / (factor * factor));
      s.rho_rho -= above[j] * apart * apart / (factor * factor);
    }
  };
  add(successes_above_, mean, 1);
  add(failures_above_, rest, -1);
  for (std::size_t j = 1; j < trials_above_.size(); ++j) {
    const double apart = static_cast<double>(j) - 1;
    const double factor = 1 + rho * apart;
    s.value -= trials_above_[j] * std::log(factor);
    s.rho -= trials_above_[j] * apart / factor;
    s.rho_rho += trials_above_[j] * apart * apart / (factor * factor);
  }
  return s;
}

namespace {

struct Prepared {
  Eigen::VectorXd conditions;
  Outcomes outcomes;
};

/// Likelihood of a regression by its coefficients and rho, the last parameter.
struct Evaluated {
  double value = 0;
  Eigen::VectorXd slope;
  Eigen::MatrixXd information;
};

double logistic(double x) {
  return 1 / (1 + std::exp(-x));
}

Evaluated evaluate(const std::vector<Prepared>& patterns, const Eigen::VectorXd& at) {
  const auto k = at.size() - 1;
  Evaluated result{0, Eigen::VectorXd::Zero(k + 1), Eigen::MatrixXd::Zero(k + 1, k + 1)};
  for (const auto& pattern : patterns) {
    const double mean = std::clamp(logistic(pattern.conditions.dot(at.head(k))), 1e-12, 1 - 1e-12);
    const auto s = pattern.outcomes.slopes(mean, at[k]);
    const double step = mean * (1 - mean); // of the mean by its logit
    result.value += s.value;
    result.slope.head(k) += s.mean * step * pattern.conditions;
    result.slope[k] += s.rho;
    const double bend = s.mean_mean * step * step + s.mean * step * (1 - 2 * mean);
    result.information.topLeftCorner(k, k) -=
        bend * pattern.conditions * pattern.conditions.transpose();
    result.information.topRightCorner(k, 1) -= s.mean_rho * step * pattern.conditions;
    result.information(k, k) -= s.rho_rho;
  }
  result.information.bottomLeftCorner(1, k) = result.information.topRightCorner(k, 1).transpose();
  return result;
}

double value_of(const std::vector<Prepared>& patterns, const Eigen::VectorXd& at) {
  const auto k = at.size() - 1;
  double value = 0;
  for (const auto& pattern : patterns)
    value += pattern.outcomes.log_likelihood(logistic(pattern.conditions.dot(at.head(k))), at[k]);
  return std::isnan(value) ? -std::numeric_limits<double>::infinity() : value;
}

constexpr double highest_rho = 1 - 1e-9;

/// Newton's method uphill over the first `wanted` parameters, rho kept within its limits. Where rho
/// stands at one and would go beyond, the others climb alone: their step with rho's may lead down.
Eigen::VectorXd climb(const std::vector<Prepared>& patterns, Eigen::VectorXd at,
                      Eigen::Index wanted) {
  constexpr int most_steps = 200;
  const auto rho = at.size() - 1;
  for (int step = 0; step < most_steps; ++step) {
    const auto here = evaluate(patterns, at);
    const bool held =
        (at[rho] >= highest_rho && here.slope[rho] > 0) || (at[rho] <= 0 && here.slope[rho] < 0);
    const auto free = held ? std::min(wanted, rho) : wanted;
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> axes(
        here.information.topLeftCorner(free, free));
    const double least = 1e-12 * std::max(1e-6, axes.eigenvalues().cwiseAbs().maxCoeff());
    const Eigen::VectorXd along = (axes.eigenvectors().transpose() * here.slope.head(free))
                                      .cwiseQuotient(axes.eigenvalues().cwiseAbs().cwiseMax(least));
    Eigen::VectorXd move = Eigen::VectorXd::Zero(at.size());
    move.head(free) = axes.eigenvectors() * along;
    move /= std::max(1.0, move.cwiseAbs().maxCoeff() / 2);
    const auto moved = [&](double part) {
      Eigen::VectorXd next = at + part * move;
      next[rho] = std::clamp(next[rho], 0.0, highest_rho);
      return next;
    };
    double part = 1;
    while (part > 1e-10 && !(value_of(patterns, moved(part)) > here.value))
      part /= 2;
    if (part <= 1e-10)
      break;
    at = moved(part);
  }
  return at;
}

/// Where to begin: the best of a few rho, each with its best coefficients. A single start will not
/// do, since rho = 0 can be a peak beside a higher one.
Eigen::VectorXd with_rho_to_begin(const std::vector<Prepared>& patterns,
                                  const Eigen::VectorXd& without) {
  const auto k = without.size() - 1;
  auto best = without;
  double highest = -std::numeric_limits<double>::infinity();
  auto at = without;
  for (const double rho : {0.001, 0.005, 0.02, 0.05, 0.1, 0.2, 0.4, 0.8}) {
    at[k] = rho;
    at = climb(patterns, at, k);
    if (const double value = value_of(patterns, at); value > highest) {
      highest = value;
      best = at;
    }
  }
  return best;
}

double saturated(std::span<const Pattern> patterns) {
  double value = 0;
  for (const auto& pattern : patterns)
    for (const auto& outcome : pattern.outcomes)
      if (outcome.trials > 0)
        value += Outcomes(std::array{outcome})
                     .log_likelihood(static_cast<double>(outcome.successes) /
                                         static_cast<double>(outcome.trials),
                                     0);
  return value;
}

std::vector<Prepared> prepared(std::span<const Pattern> patterns) {
  std::vector<Prepared> made;
  for (const auto& pattern : patterns)
    made.push_back(
        {Eigen::Map<const Eigen::VectorXd>(pattern.conditions.data(),
                                           static_cast<Eigen::Index>(pattern.conditions.size())),
         Outcomes(pattern.outcomes)});
  return made;
}

} // namespace

Regression regress(std::span<const Pattern> patterns, SpreadModel model) {
  const auto made = prepared(patterns);
  const auto k = made.front().conditions.size();
  Eigen::VectorXd at = climb(made, Eigen::VectorXd::Zero(k + 1), k);
  auto free = k;
  if (model == SpreadModel::common_rho) {
    const auto with_rho = climb(made, with_rho_to_begin(made, at), k + 1);
    if (with_rho[k] > 0 && value_of(made, with_rho) > value_of(made, at)) {
      at = with_rho;
      free = k + 1;
    }
  }
  const auto here = evaluate(made, at);
  Regression result;
  result.coefficients.assign(at.data(), at.data() + k);
  result.rho = at[k];
  result.log_likelihood = here.value;
  result.deviance = 2 * (saturated(patterns) - here.value);
  const Eigen::LLT<Eigen::MatrixXd> factor(here.information.topLeftCorner(free, free));
  if (factor.info() == Eigen::Success) {
    const Eigen::MatrixXd covariance = factor.solve(Eigen::MatrixXd::Identity(free, free));
    result.covariance = covariance.topLeftCorner(k, k);
    const Eigen::VectorXd errors = result.covariance.diagonal().cwiseSqrt();
    result.standard_errors.assign(errors.data(), errors.data() + k);
  }
  return result;
}

std::optional<Spread> fit_spread(std::span<const Outcome> outcomes) {
  Pattern pattern{{1}, {}};
  for (const auto& outcome : outcomes)
    if (outcome.trials > 0)
      pattern.outcomes.push_back(outcome);
  if (pattern.outcomes.size() < 2)
    return std::nullopt;
  const Outcomes all(pattern.outcomes);
  if (all.successes() == 0 || all.successes() == all.trials())
    return Spread{all.successes() / all.trials(), 0, 0};
  const auto fit = regress(std::span(&pattern, 1), SpreadModel::common_rho);
  const double mean = fit.rho == 0 ? all.successes() / all.trials() : logistic(fit.coefficients[0]);
  return Spread{mean, fit.rho, fit.log_likelihood};
}

EdgeTest test_of_no_spread(double log_likelihood_with, double log_likelihood_without) {
  const double ratio = std::max(0.0, 2 * (log_likelihood_with - log_likelihood_without));
  return {ratio, ratio > 0 ? std::erfc(std::sqrt(ratio / 2)) / 2 : 1};
}

} // namespace coneline::stats
