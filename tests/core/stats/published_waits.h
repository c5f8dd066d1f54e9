// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Published waiting times, some of them not ended.

#include "core/stats/kaplan_meier.h"

#include <initializer_list>
#include <vector>

namespace coneline::stats {

/// A number below zero is a wait that had not ended.
inline std::vector<Wait> waits_of(std::initializer_list<double> times) {
  std::vector<Wait> waits;
  for (const double time : times)
    waits.push_back({time < 0 ? -time : time, time > 0});
  return waits;
}

/// Freireich et al. 1963, Blood 21:699-716; Gehan 1965, Biometrika 52:203-223 (from memory).
inline std::vector<Wait> remission_treated() {
  return waits_of(
      {6, 6, 6, -6, 7, -9, 10, -10, -11, 13, 16, -17, -19, -20, 22, 23, -25, -32, -32, -34, -35});
}
inline std::vector<Wait> remission_control() {
  return waits_of({1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23});
}

/// Miller 1981, Survival Analysis (from memory): weeks to relapse.
inline std::vector<Wait> leukaemia_maintained() {
  return waits_of({9, 13, -13, 18, 23, -28, 31, 34, -45, 48, -161});
}
inline std::vector<Wait> leukaemia_not_maintained() {
  return waits_of({5, 5, 8, 8, 12, -16, 23, 27, 30, 33, 43, 45});
}

} // namespace coneline::stats
