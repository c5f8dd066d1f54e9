// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Trays of one cross that differ more than chance: the beta-binomial model. The share of each tray
// is drawn around the mean p of its group, and
//
//   variance of a count of n = n p (1 - p) (1 + (n - 1) rho),   0 <= rho < 1.
//
// Crowder 1978, Applied Statistics 27:34-37.

#include <Eigen/Dense>

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace coneline::stats {

/// `successes` of `trials`: what became of the seed of one tray. 0 <= successes <= trials.
struct Outcome {
  std::int64_t trials = 0;
  std::int64_t successes = 0;
};

/// Outcomes that share one mean, in the form the likelihood needs: its cost is that of the largest
/// tray, however many trays there are.
class Outcomes {
 public:
  explicit Outcomes(std::span<const Outcome> outcomes);

  /// Log-likelihood with the binomial coefficients; 0 <= mean <= 1, 0 <= rho <= 1.
  [[nodiscard]] double log_likelihood(double mean, double rho) const;

  /// The same with its slopes and curvatures; 0 < mean < 1, 0 <= rho < 1.
  struct Slopes {
    double value = 0;
    double mean = 0;
    double rho = 0;
    double mean_mean = 0;
    double mean_rho = 0;
    double rho_rho = 0;
  };
  [[nodiscard]] Slopes slopes(double mean, double rho) const;

  [[nodiscard]] double trials() const { return trials_; }
  [[nodiscard]] double successes() const { return successes_; }
  [[nodiscard]] std::size_t trays() const { return trays_; }

 private:
  // Trays with more than j successes, failures, trials.
  std::vector<double> successes_above_;
  std::vector<double> failures_above_;
  std::vector<double> trials_above_;
  double coefficients_ = 0; ///< sum of the logarithms of the binomial coefficients
  double trials_ = 0;
  double successes_ = 0;
  std::size_t trays_ = 0;
};

/// Mean and spread of one group.
struct Spread {
  double mean = 0;
  double rho = 0;
  double log_likelihood = 0;
};

/// Maximum likelihood, rho not below 0. Nothing with fewer than two trays that hold seed.
std::optional<Spread> fit_spread(std::span<const Outcome> outcomes);

/// Outcomes under the same conditions, for a regression on the logit of the mean.
struct Pattern {
  std::vector<double> conditions; ///< one value a coefficient; the first is usually 1
  std::vector<Outcome> outcomes;
};

enum class SpreadModel { none, common_rho };

struct Regression {
  std::vector<double> coefficients;
  std::vector<double> standard_errors; ///< from the observed information; empty if it is singular
  Eigen::MatrixXd covariance;          ///< of the coefficients, likewise; rho's part is counted in
  double rho = 0;
  double log_likelihood = 0;
  double deviance = 0; ///< against one share a tray, binomial; of use without spread
};

/// logit(mean) = sum of coefficient x condition, with or without a common rho. `patterns` all have
/// as many conditions, at least one.
Regression regress(std::span<const Pattern> patterns, SpreadModel model);

/// Test of rho = 0 by the likelihood ratio. rho = 0 is the edge of what is possible, so half of the
/// chi-square with one degree of freedom is used.
struct EdgeTest {
  double ratio = 0;
  double p_value = 1;
};
EdgeTest test_of_no_spread(double log_likelihood_with, double log_likelihood_without);

} // namespace coneline::stats
