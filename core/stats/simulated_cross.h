// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Crosses drawn at random with everything about them known, to try ranges on. Boost's generators
// draw the same on every machine.

#include "core/stats/beta_binomial.h"
#include "core/stats/curve.h"
#include "core/stats/germination_data.h"

#include <boost/random/mersenne_twister.hpp>

#include <vector>

namespace coneline::stats {

/// A stream of chance.
class Chance {
 public:
  explicit Chance(std::uint32_t seed) : source_(seed) {}

  double even(); ///< 0 to 1
  double between(double low, double high) { return low + (high - low) * even(); }
  int whole(int low, int high); ///< both included
  bool happens(double probability) { return even() < probability; }
  int binomial(int trials, double share);
  /// The share of a tray around `mean`, 0 to 1; the mean itself for rho 0.
  double share(double mean, double rho);

 private:
  boost::random::mt19937 source_;
};

/// A cross given up at some day, and what a grower cannot know of it then.
struct SimulatedCross {
  std::vector<Tray> trays;
  Family family = Family::log_logistic;
  double germinable = 0;
  double rho = 0;
  double progress = 0;   ///< of the curve by the last look
  std::int64_t more = 0; ///< seeds that would have come up later

  [[nodiscard]] std::int64_t sown() const;
};

/// 20 to 600 seeds in 1 to 8 trays, share .05 to .98, rho 0 (one in four) to .15, any family,
/// looked at at uneven distances. Half of them are given up when some share of the curve is done,
/// any share being as likely as another, a third of these half as late again; the other half on any
/// day between the first seedlings and well after the last.
SimulatedCross simulated_cross(Chance& draw);

} // namespace coneline::stats
