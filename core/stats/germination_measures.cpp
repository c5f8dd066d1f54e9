// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_measures.h"

#include <algorithm>
#include <cmath>

namespace coneline::stats {

namespace {

/// The sums that most measures share.
struct Sums {
  double seeds = 0;       ///< S
  double seed_days = 0;   ///< sum(n t)
  double per_day = 0;     ///< sum(n / t)
  double pairs = 0;       ///< sum(n (n - 1))
  double uncertainty = 0; ///< bits
  double peak = 0;        ///< cumulative per cent / t at its largest
};

Sums sums_of(const Tray& tray) {
  Sums sums;
  const auto germinated = static_cast<double>(tray.germinated());
  const auto sown = static_cast<double>(tray.sown);
  for (const auto& look : tray.looks) {
    const auto n = static_cast<double>(look.germinated);
    if (n > 0) {
      const double share = n / germinated;
      sums.seeds += n;
      sums.seed_days += n * look.day;
      sums.per_day += n / look.day;
      sums.pairs += n * (n - 1);
      sums.uncertainty -= share * std::log2(share);
    }
    if (look.day > 0)
      sums.peak = std::max(sums.peak, 100 * sums.seeds / sown / look.day);
  }
  return sums;
}

double squared_days_from(const Tray& tray, double mean) {
  double sum = 0;
  for (const auto& look : tray.looks) {
    const double apart = look.day - mean;
    sum += static_cast<double>(look.germinated) * apart * apart;
  }
  return sum;
}

} // namespace

std::optional<double> day_reaching(const Tray& tray, double target) {
  double day = 0;
  double count = 0;
  for (const auto& look : tray.looks) {
    const double reached = count + static_cast<double>(look.germinated);
    if (reached == target)
      return look.day;
    if (reached > target)
      return day + (target - count) * (look.day - day) / (reached - count);
    day = look.day;
    count = reached;
  }
  return std::nullopt;
}

GerminationMeasures germination_measures(const Tray& tray) {
  const auto sums = sums_of(tray);
  GerminationMeasures measures;
  if (sums.seeds == 0)
    return measures;
  const double mean = sums.seed_days / sums.seeds;
  measures.mean_time = mean;
  measures.velocity = 100 * sums.seeds / sums.seed_days;
  measures.uncertainty = std::max(0.0, sums.uncertainty);
  measures.t50_coolbear = day_reaching(tray, (sums.seeds + 1) / 2);
  measures.t50_farooq = day_reaching(tray, sums.seeds / 2);
  measures.speed = sums.per_day;
  measures.peak_value = sums.peak;
  measures.germination_value =
      sums.peak * (100 * sums.seeds / static_cast<double>(tray.sown)) / tray.last_day();
  if (sums.seeds > 1) {
    measures.variance = squared_days_from(tray, mean) / (sums.seeds - 1);
    measures.synchrony = sums.pairs / (sums.seeds * (sums.seeds - 1));
  }
  return measures;
}

} // namespace coneline::stats
