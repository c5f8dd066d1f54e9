// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Trays that differ more than chance, by another model than the beta-binomial: each tray has a
// deviation of its own on the logit scale,
//
//   logit(share) = sum of coefficient x condition + b,   b ~ N(0, sigma²),
//
// by maximum likelihood. The integral over b is taken by Gauss-Hermite quadrature, for each tray
// around its own best b (Pinheiro & Bates 1995, J. Computational and Graphical Statistics 4:12-35).
// Its sigma and the rho of beta_binomial.h describe the same thing on different scales; one is no
// check of the other.

#include "core/stats/beta_binomial.h"

namespace coneline::stats {

struct RandomIntercept {
  std::vector<double> coefficients;
  double sigma = 0;
  double log_likelihood = 0; ///< with the binomial coefficients
  /// From the observed information; empty, with sigma's missing, where it is singular or sigma 0.
  std::vector<double> standard_errors;
  std::optional<double> sigma_error;
};

/// `patterns` all have as many conditions, at least one; every outcome is a tray.
RandomIntercept fit_random_intercept(std::span<const Pattern> patterns);

} // namespace coneline::stats
