// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The search over curves and spreads that fit the counts of a cross: its coordinates, where to look
// first, and the likelihood. What is believed beforehand is for the caller to add.
//
// A point is: logit of the share of seed up by the last look; z of the curve there; ln shape; ln of
// rho, a little shifted. In these the likelihood is near to a bell even when a tray has only begun,
// and share and delay can hardly be told apart: what is well known is the share that is up by now.

#include "core/stats/adaptive_sample.h"
#include "core/stats/curve_fit.h"
#include "core/stats/interval_counts.h"
#include "core/stats/waiting_seed.h"

#include <span>
#include <vector>

namespace coneline::stats {

/// The last coordinate of a rho, 0 or more.
double coordinate_of_rho(double rho);

struct SearchPoint {
  Curve curve;
  double rho = 0;
  double up = 0; ///< share of the seed by the last look
  bool possible = false;
};

/// `log_last` is ln of the day of the last look.
SearchPoint search_point(Family family, double log_last, const Point& at);

/// Logit of the share up by now, and how well it is known.
struct LogitUp {
  double value = 0;
  double variance = 0;
};
LogitUp logit_up(const IntervalCounts& counts);

/// Around the best fit, no wider than weak priors would be. `rho` and `rho_variance` are of the
/// last coordinate, of which the fit says nothing.
Proposal around_fit(const CurveFit& fit, double log_last, const LogitUp& up, double rho,
                    double rho_variance);

/// The counts of trays, ready to be asked how likely they are under many curves. Trays that hold no
/// seed do not matter.
class CurveEvidence {
 public:
  /// `counts` are those of `trays`.
  CurveEvidence(std::span<const Tray> trays, IntervalCounts counts);

  [[nodiscard]] const IntervalCounts& counts() const { return counts_; }

  /// ln of the share of germinable seed in each interval, summed over the seeds seen. The trays'
  /// ends are asked about under this curve afterwards.
  double times(const Curve& curve);

  [[nodiscard]] std::size_t trays() const { return ends_.size(); }
  /// Of a tray under the curve of the last `times`.
  [[nodiscard]] ToCome tray(std::size_t place, double germinable, double rho) const {
    return to_come(ends_[place], germinable, rho, at_[bounds_[place]].above);
  }

 private:
  IntervalCounts counts_;
  std::vector<double> log_days_; ///< of the bounds; that of 0 is not used
  std::vector<Parts> at_;
  std::vector<TrayEnd> ends_;
  std::vector<std::size_t> bounds_; ///< of each tray's last look
};

} // namespace coneline::stats
