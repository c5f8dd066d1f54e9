// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/kaplan_meier.h"

#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <cmath>
#include <set>

namespace coneline::stats {

namespace {

std::size_t still_waiting(std::span<const Wait> waits, double time) {
  return static_cast<std::size_t>(
      std::ranges::count_if(waits, [&](const Wait& wait) { return wait.time >= time; }));
}

std::size_t ended_at(std::span<const Wait> waits, double time) {
  return static_cast<std::size_t>(std::ranges::count_if(
      waits, [&](const Wait& wait) { return wait.ended && wait.time == time; }));
}

void add_ends(std::set<double>& times, std::span<const Wait> waits) {
  for (const auto& wait : waits)
    if (wait.ended)
      times.insert(wait.time);
}

} // namespace

std::vector<SurvivalStep> kaplan_meier(std::span<const Wait> waits) {
  std::set<double> times;
  add_ends(times, waits);
  std::vector<SurvivalStep> steps;
  double survival = 1;
  double sum = 0;
  for (const double time : times) {
    SurvivalStep step{time, still_waiting(waits, time), ended_at(waits, time), 0, 0};
    const auto n = static_cast<double>(step.waiting);
    const auto d = static_cast<double>(step.ended);
    survival *= (n - d) / n;
    sum += n > d ? d / (n * (n - d)) : 0;
    step.survival = survival;
    step.standard_error = survival * std::sqrt(sum);
    steps.push_back(step);
  }
  return steps;
}

std::optional<double> time_of_share(std::span<const SurvivalStep> steps, double share) {
  constexpr double rounding = 1e-12;
  for (const auto& step : steps)
    if (step.survival <= 1 - share + rounding)
      return step.time;
  return std::nullopt;
}

TimeRange range_of_share(std::span<const SurvivalStep> steps, double share, double confidence) {
  const double z = quantile(boost::math::normal(), (1 + confidence) / 2);
  TimeRange range;
  for (const auto& step : steps) {
    double lower = step.survival;
    double upper = step.survival;
    if (step.survival > 0 && step.survival < 1) {
      const double log_survival = std::log(step.survival);
      const double reach = z * step.standard_error / (step.survival * std::abs(log_survival));
      lower = std::exp(log_survival * std::exp(reach));
      upper = std::exp(log_survival * std::exp(-reach));
    }
    if (!range.low && lower <= 1 - share)
      range.low = step.time;
    if (!range.high && upper <= 1 - share)
      range.high = step.time;
  }
  return range;
}

std::optional<LogRank> log_rank(std::span<const Wait> a, std::span<const Wait> b) {
  std::set<double> times;
  add_ends(times, a);
  add_ends(times, b);
  double apart = 0;
  double variance = 0;
  for (const double time : times) {
    const auto in_a = static_cast<double>(still_waiting(a, time));
    const auto all = in_a + static_cast<double>(still_waiting(b, time));
    const auto ends_a = static_cast<double>(ended_at(a, time));
    const auto ends = ends_a + static_cast<double>(ended_at(b, time));
    apart += ends_a - ends * in_a / all;
    if (all > 1)
      variance += ends * (in_a / all) * (1 - in_a / all) * (all - ends) / (all - 1);
  }
  if (!(variance > 0))
    return std::nullopt;
  const double chi_square = apart * apart / variance;
  return LogRank{chi_square, std::erfc(std::sqrt(chi_square / 2))};
}

} // namespace coneline::stats
