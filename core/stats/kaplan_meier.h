// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Waiting times of which some have not ended yet, such as from root to first leaf.
//
// Survival by Kaplan & Meier 1958, J. American Statistical Association 53:457-481: at each time t
// with d ends of n still waiting, the share that waits on is multiplied by (n - d)/n. Its variance
// is Greenwood's, S² sum d / (n (n - d)). Two groups are compared by the log-rank test (Mantel
// 1966). A wait given up at t still counts as waiting at t.

#include "core/stats/share_interval.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace coneline::stats {

struct Wait {
  double time = 0;    ///< 0 or more
  bool ended = false; ///< false: had not ended when last looked at
};

struct SurvivalStep {
  double time = 0;
  std::size_t waiting = 0; ///< just before
  std::size_t ended = 0;
  double survival = 1; ///< share still waiting after it
  double standard_error = 0;
};

/// One step for each time at which a wait ended, in order.
std::vector<SurvivalStep> kaplan_meier(std::span<const Wait> waits);

/// The time by which `share` (inside 0 to 1) of the waits have ended: the first step at which
/// survival is 1 - share or less. Nothing where it is not in sight yet.
std::optional<double> time_of_share(std::span<const SurvivalStep> steps, double share);

/// Its range: the times at which limits of the survival, on the scale of ln(-ln), pass 1 - share
/// (Brookmeyer & Crowley 1982, Biometrics 38:29-41). An end that is not in sight is missing.
struct TimeRange {
  std::optional<double> low;
  std::optional<double> high;
};
TimeRange range_of_share(std::span<const SurvivalStep> steps, double share, double confidence);

struct LogRank {
  double chi_square = 0; ///< on one degree of freedom
  double p_value = 1;
};
/// Nothing where the two cannot be compared: no end while both still waited.
std::optional<LogRank> log_rank(std::span<const Wait> a, std::span<const Wait> b);

} // namespace coneline::stats
