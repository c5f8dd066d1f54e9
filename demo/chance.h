// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Fixed random streams: the same number gives the same draws on every machine.

#include <boost/random/beta_distribution.hpp>
#include <boost/random/lognormal_distribution.hpp>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_01.hpp>
#include <boost/random/uniform_int_distribution.hpp>

#include <cmath>
#include <cstdint>

namespace coneline::demo {

class Chance {
 public:
  explicit Chance(std::uint64_t stream) : engine_(stream) {}

  bool happens(double share) { return boost::random::uniform_01<double>()(engine_) < share; }
  int between(int low, int high) {
    return boost::random::uniform_int_distribution<int>(low, high)(engine_);
  }
  int of(int many, double share) {
    int some = 0;
    for (int i = 0; i < many; ++i)
      some += happens(share) ? 1 : 0;
    return some;
  }
  /// A share around `mean`; trays of one cross are alike as `rho` 0.04 says.
  double share_around(double mean) {
    constexpr double sum = 1 / 0.04 - 1;
    return mean <= 0
               ? 0
               : boost::random::beta_distribution<double>(mean * sum, (1 - mean) * sum)(engine_);
  }
  /// Whole days around a median, long after rather than long before.
  int days_around(double median, double spread) {
    const double days =
        boost::random::lognormal_distribution<double>(std::log(median), spread)(engine_);
    return static_cast<int>(std::lround(days));
  }

 private:
  boost::random::mt19937_64 engine_;
};

} // namespace coneline::demo
