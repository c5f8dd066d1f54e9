// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Logarithms of the gamma function and what is made of it.

#include <cmath>

namespace coneline::stats {

/// ln Γ(x), x > 0. Unlike std::lgamma it does not leave the sign in a variable of all threads.
inline double log_gamma(double x) {
  int sign = 1;
  return ::lgamma_r(x, &sign);
}

/// ln B(a, b), both above 0.
inline double log_beta(double a, double b) {
  return log_gamma(a) + log_gamma(b) - log_gamma(a + b);
}

/// ln of how many ways there are to choose k of n, 0 <= k <= n.
inline double log_choose(double n, double k) {
  return log_gamma(n + 1) - log_gamma(k + 1) - log_gamma(n - k + 1);
}

} // namespace coneline::stats
