// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/waiting_seed.h"

#include "core/stats/log_gamma.h"

#include <cmath>

namespace coneline::stats {

// The terms of the sum over y, each from the one before, the first taken as 1.
ToCome to_come(const TrayEnd& tray, double germinable, double rho, double ahead) {
  const double total = (1 - rho) / rho;
  const double a = germinable * total + tray.germinated;
  const double b = (1 - germinable) * total + tray.removed + tray.waiting;
  constexpr double large = 1e200;
  double term = 1;
  double sum = 1;
  double first = 0;
  double second = 0;
  double log_scale = 0;
  for (double y = 0; y < tray.waiting && ahead > 0; ++y) {
    const double factor = ahead * (tray.waiting - y) * (a + y) / ((y + 1) * (b - y - 1));
    term *= factor;
    sum += term;
    first += term * (y + 1);
    second += term * (y + 1) * (y + 1);
    if (sum > large) {
      term /= large;
      sum /= large;
      first /= large;
      second /= large;
      log_scale += std::log(large);
    }
    if (factor < 0.9 && term < 1e-14 * sum)
      break;
  }
  const double mean = first / sum;
  return {log_beta(a, b) - log_beta(germinable * total, (1 - germinable) * total) + std::log(sum) +
              log_scale,
          mean, second / sum - mean * mean};
}

} // namespace coneline::stats
