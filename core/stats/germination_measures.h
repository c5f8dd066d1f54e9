// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The usual measures of one tray's germination. n is the number newly germinated at a look, t its
// day, S the sum of n, N the seeds sown.
//
// Formulas: Ranal & Santana 2006, Rev. Bras. Bot. 29:1-11; velocity: Kotowski 1926; speed: Maguire
// 1962; peak and germination value: Czabator 1962, Forest Science 8:386-396; T50: Coolbear et al.
// 1984 and Farooq et al. 2005.

#include "core/stats/germination_data.h"

#include <optional>

namespace coneline::stats {

/// Every value is absent where it does not exist: all of them when nothing germinated, variance and
/// synchrony also when a single seed did.
struct GerminationMeasures {
  std::optional<double> mean_time;         ///< sum(n t) / S, days
  std::optional<double> variance;          ///< sum(n (t - mean)^2) / (S - 1), days squared
  std::optional<double> velocity;          ///< 100 S / sum(n t), per day
  std::optional<double> uncertainty;       ///< -sum(f log2 f), f = n / S, bits
  std::optional<double> synchrony;         ///< sum(n (n - 1)) / (S (S - 1)), 0 to 1
  std::optional<double> t50_coolbear;      ///< day at which (S + 1) / 2 have germinated
  std::optional<double> t50_farooq;        ///< day at which S / 2 have germinated
  std::optional<double> speed;             ///< sum(n / t), seeds per day
  std::optional<double> peak_value;        ///< largest of (cumulative per cent of N) / t
  std::optional<double> germination_value; ///< peak value x (final per cent of N / last look's day)
};

/// The measures of a sound tray.
GerminationMeasures germination_measures(const Tray& tray);

/// The day at which the cumulative count reaches `target`, on straight lines between looks and from
/// (0, 0) to the first. A target met exactly at a look gives that look's day, the earliest where
/// the count stays level. Nothing when it is never reached; `target` is above 0.
std::optional<double> day_reaching(const Tray& tray, double target);

} // namespace coneline::stats
