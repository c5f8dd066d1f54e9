// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/next_value.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <vector>

namespace coneline::stats {
namespace {

// Student's t for 80 % and one degree of freedom is 3.0777 (tables of any textbook), and two values
// one unit of their logarithm apart have s = 1/√2.
TEST(NextValue, TwoValuesByHand) {
  const std::array seen{1.0, std::exp(1.0)};
  const auto range = next_value(seen, 0.8).value();
  const double reach = 3.0777 * std::sqrt(0.5) * std::sqrt(1.5);
  EXPECT_NEAR(std::log(range.low), 0.5 - reach, 1e-4);
  EXPECT_NEAR(std::log(range.high), 0.5 + reach, 1e-4);
}

TEST(NextValue, HoldsTheNextEightTimesInTen) {
  std::mt19937_64 stream(20261125);
  std::normal_distribution<double> normal;
  for (const int n : {2, 3, 6}) {
    int held = 0;
    constexpr int trials = 20'000;
    for (int trial = 0; trial < trials; ++trial) {
      std::vector<double> seen;
      for (int i = 0; i < n; ++i)
        seen.push_back(std::exp(4 + 0.5 * normal(stream)));
      const double next = std::exp(4 + 0.5 * normal(stream));
      const auto range = next_value(seen, 0.8).value();
      held += next >= range.low && next <= range.high ? 1 : 0;
    }
    // Three standard errors of 20,000 trials are .0085.
    EXPECT_NEAR(static_cast<double>(held) / trials, 0.8, 0.0085) << n;
  }
}

TEST(NextValue, RefusesWhatCannotBe) {
  const std::array one{1.0};
  const std::array zero{1.0, 0.0};
  const std::array two{1.0, 2.0};
  EXPECT_FALSE(next_value(one, 0.8));
  EXPECT_FALSE(next_value(zero, 0.8));
  EXPECT_FALSE(next_value(two, 1.0));
}

} // namespace
} // namespace coneline::stats
