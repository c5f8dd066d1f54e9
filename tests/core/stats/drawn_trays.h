// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Crosses drawn at random with everything about them known, to try ranges on. Boost's generators
// draw the same on every machine.

#include "core/stats/beta_binomial.h"
#include "core/stats/curve.h"
#include "core/stats/germination_data.h"

#include <boost/random/beta_distribution.hpp>
#include <boost/random/binomial_distribution.hpp>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_01.hpp>
#include <boost/random/uniform_int_distribution.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace coneline::stats {

class Draw {
 public:
  explicit Draw(std::uint32_t seed) : source_(seed) {}

  double even() { return boost::random::uniform_01<double>()(source_); } ///< 0 to 1
  double between(double low, double high) { return low + (high - low) * even(); }
  int whole(int low, int high) {
    return boost::random::uniform_int_distribution<int>(low, high)(source_);
  }
  bool happens(double probability) { return even() < probability; }
  int binomial(int trials, double share) {
    return boost::random::binomial_distribution<int>(trials, share)(source_);
  }
  /// The share of a tray around `mean`; the mean itself for rho 0.
  double share(double mean, double rho) {
    if (rho <= 0)
      return mean;
    const double total = (1 - rho) / rho;
    return boost::random::beta_distribution<double>(mean * total, (1 - mean) * total)(source_);
  }

 private:
  boost::random::mt19937 source_;
};

inline std::vector<Outcome> drawn_outcomes(Draw& draw, int trays, int seeds, double mean,
                                           double rho) {
  std::vector<Outcome> outcomes;
  for (int i = 0; i < trays; ++i)
    outcomes.push_back({seeds, draw.binomial(seeds, std::clamp(draw.share(mean, rho), 0.0, 1.0))});
  return outcomes;
}

/// A cross given up at some day, and how many more would have come up.
struct DrawnCross {
  std::vector<Tray> trays;
  Family family = Family::log_logistic;
  double germinable = 0;
  double progress = 0; ///< of the curve by the last look
  std::int64_t more = 0;
};

/// Looks at uneven distances until `stop`, each tray its own.
inline Tray drawn_tray(Draw& draw, int seeds, double share, const Curve& curve, double stop,
                       std::int64_t& more) {
  Tray tray{"cross", {}, seeds, {}};
  const double usual = stop / draw.whole(3, 27);
  for (double day = 0; day < stop;) {
    day = std::min(stop, day + usual * draw.between(0.4, 1.6));
    tray.looks.push_back({day, 0, 0});
  }
  for (int seed = 0; seed < seeds; ++seed) {
    if (!draw.happens(share))
      continue;
    const double day = curve.day_of_progress(std::clamp(draw.even(), 1e-12, 1 - 1e-12));
    const auto seen = std::ranges::lower_bound(tray.looks, day, {}, &Look::day);
    if (seen == tray.looks.end())
      ++more;
    else
      ++seen->germinated;
  }
  return tray;
}

/// 20 to 600 seeds in 1 to 8 trays, share .05 to .98, rho 0 (one in four) to .15, any family, given
/// up anywhere between the first seedlings and long after the last.
inline DrawnCross drawn_cross(Draw& draw) {
  DrawnCross cross;
  cross.family = all_families[static_cast<std::size_t>(draw.whole(0, 2))];
  cross.germinable = draw.between(0.05, 0.98);
  const double rho = draw.happens(0.25) ? 0 : draw.between(0, 0.15);
  const int trays = draw.whole(1, 8);
  const int seeds = draw.whole(20, 600);
  const double shape = cross.family == Family::log_normal
                           ? 1 / draw.between(0.15, 0.75)
                           : std::exp(draw.between(std::log(1.5), std::log(8)));
  const Curve curve{cross.family, 1, shape, std::exp(draw.between(std::log(20), std::log(300)))};
  const double stop = curve.day_of_progress(std::clamp(draw.even() * 1.05, 0.02, 0.995)) *
                      (draw.happens(0.3) ? 1.5 : 1);
  cross.progress = curve.progress_by(stop);
  for (int i = 0; i < trays; ++i) {
    const double share = std::clamp(draw.share(cross.germinable, rho), 0.0, 1.0);
    cross.trays.push_back(drawn_tray(draw, seeds / trays + (i < seeds % trays ? 1 : 0), share,
                                     curve, stop, cross.more));
    cross.trays.back().tray = std::to_string(i + 1);
  }
  return cross;
}

} // namespace coneline::stats
