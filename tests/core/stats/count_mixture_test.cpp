// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/count_mixture.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace coneline::stats {
namespace {

TEST(CountMixture, ABinomialIsABinomial) {
  const CountMixture mixture(10, std::vector<CountPart>{{1, 3, 2.1}});
  EXPECT_NEAR(mixture.probabilities()[0], std::pow(0.7, 10), 1e-6);
  EXPECT_NEAR(mixture.probabilities()[3], 120 * std::pow(0.3, 3) * std::pow(0.7, 7), 1e-6);
  EXPECT_EQ(mixture.median(), 3);
}

TEST(CountMixture, KeepsMeanAndVarianceOfItsParts) {
  const CountMixture mixture(400, std::vector<CountPart>{{0.5, 50, 900}, {0.5, 150, 2500}});
  double mean = 0;
  double square = 0;
  for (std::size_t y = 0; y < mixture.probabilities().size(); ++y) {
    mean += mixture.probabilities()[y] * static_cast<double>(y);
    square += mixture.probabilities()[y] * static_cast<double>(y * y);
  }
  EXPECT_NEAR(mean, 100, 1e-6);
  EXPECT_NEAR(square - mean * mean, 1700 + 2500, 1e-3);
}

// Even chances of 0 to 9: a tenth lies half below 1 and half above.
TEST(CountMixture, CountsAtAShareAreHalvedOnBothSidesAlike) {
  const CountMixture even(9, std::vector<CountPart>{{1, 4.5, 8.25}});
  for (const double value : even.probabilities())
    EXPECT_NEAR(value, 0.1, 1e-9);
  EXPECT_EQ(even.count_at(0.04), 0);
  EXPECT_EQ(even.count_at(0.06), 1);
  EXPECT_EQ(even.count_at(0.94), 8);
  EXPECT_EQ(even.count_at(0.96), 9);
}

TEST(CountMixture, NothingToComeIsZero) {
  const CountMixture none(0, {});
  EXPECT_EQ(none.median(), 0);
  EXPECT_EQ(none.count_at(0.9), 0);
}

} // namespace
} // namespace coneline::stats
