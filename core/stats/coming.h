// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is still to come of waiting seed, and by when: predictive distributions that hold the
// uncertainty of curve, share and spread, and the chance in each seed. Given all of these the
// number is that of still_expected.h; of y seeds still to come, each comes after the last look by a
// further day T with probability (H(T) - H(last)) / (1 - H(last)).

#include "core/stats/germination_posterior.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace coneline::stats {

struct CountRange {
  std::int64_t median = 0;
  std::int64_t low = 0; ///< with `high` the shortest range that holds about the confidence
  std::int64_t high = 0;
  double mean = 0;
};

/// A tray and the day on which one asks, counted from its sowing; not before its last look.
struct TrayNow {
  Tray counts;
  double now = 0;
};

struct ComingAsked {
  double confidence = 0.8;
  std::vector<double> within{30}; ///< days from now
};

/// What an inspection on that day would find that no look has found so far.
struct ComingWithin {
  double days = 0; ///< from now
  CountRange seeds;
  double chance_of_one = 0; ///< of one at least
};

/// Days from now; without a value where it lies further off than `furthest`.
struct DayRange {
  std::optional<double> median;
  std::optional<double> low;
  std::optional<double> high;
};

struct Coming {
  static constexpr double furthest = 3650; ///< days: what lies beyond ten years is not in sight

  std::int64_t waiting = 0;
  CountRange seeds;         ///< that will ever come
  double chance_of_one = 0; ///< of one more, ever
  std::vector<ComingWithin> within;
  /// When half, and nine tenths, of what is still to come will be up; none where most likely
  /// nothing more comes. 0 where it should be up already and has not been looked at.
  std::optional<DayRange> half;
  std::optional<DayRange> nine_tenths;
};

/// For trays of one cross, all of them or some, given the posterior of the cross. All zero where no
/// seed waits.
Coming coming(std::span<const TrayNow> trays, const GerminationPosterior& cross,
              const ComingAsked& asked);

} // namespace coneline::stats
