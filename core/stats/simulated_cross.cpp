// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/simulated_cross.h"

#include <boost/random/beta_distribution.hpp>
#include <boost/random/binomial_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <boost/random/uniform_int_distribution.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace coneline::stats {

double Chance::even() {
  return boost::random::uniform_01<double>()(source_);
}

int Chance::whole(int low, int high) {
  return boost::random::uniform_int_distribution<int>(low, high)(source_);
}

int Chance::binomial(int trials, double share) {
  return boost::random::binomial_distribution<int>(trials, share)(source_);
}

double Chance::share(double mean, double rho) {
  if (rho <= 0)
    return mean;
  const double total = (1 - rho) / rho;
  const double drawn =
      boost::random::beta_distribution<double>(mean * total, (1 - mean) * total)(source_);
  return std::clamp(drawn, 0.0, 1.0);
}

std::int64_t SimulatedCross::sown() const {
  return std::accumulate(trays.begin(), trays.end(), std::int64_t{0},
                         [](std::int64_t sum, const Tray& tray) { return sum + tray.sown; });
}

namespace {

/// Looks at uneven distances until `stop`, each tray its own.
Tray simulated_tray(Chance& draw, int seeds, double share, const Curve& curve, double stop,
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

double stopping_day(Chance& draw, const Curve& curve) {
  if (draw.happens(0.5))
    return curve.day_of_progress(0.99) * draw.between(0.15, 1.2);
  return curve.day_of_progress(std::clamp(draw.even() * 1.05, 0.02, 0.995)) *
         (draw.happens(0.3) ? 1.5 : 1);
}

} // namespace

SimulatedCross simulated_cross(Chance& draw) {
  SimulatedCross cross;
  cross.family = all_families[static_cast<std::size_t>(draw.whole(0, 2))];
  cross.germinable = draw.between(0.05, 0.98);
  cross.rho = draw.happens(0.25) ? 0 : draw.between(0, 0.15);
  const int trays = draw.whole(1, 8);
  const int seeds = draw.whole(20, 600);
  const double shape = cross.family == Family::log_normal
                           ? 1 / draw.between(0.15, 0.75)
                           : std::exp(draw.between(std::log(1.5), std::log(8)));
  const Curve curve{cross.family, 1, shape, std::exp(draw.between(std::log(20), std::log(300)))};
  const double stop = stopping_day(draw, curve);
  cross.progress = curve.progress_by(stop);
  for (int i = 0; i < trays; ++i) {
    cross.trays.push_back(simulated_tray(draw, seeds / trays + (i < seeds % trays ? 1 : 0),
                                         draw.share(cross.germinable, cross.rho), curve, stop,
                                         cross.more));
    cross.trays.back().tray = std::to_string(i + 1);
  }
  return cross;
}

} // namespace coneline::stats
