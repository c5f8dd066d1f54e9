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

TEST(CountMixture, TheShortestRangeBeginsAtNothingWhereNothingIsLikeliest) {
  const CountMixture mixture(10, std::vector<CountPart>{{1, 1, 0.9}});
  const auto eighty = mixture.shortest(0.8); // 0.349, 0.387, 0.194, 0.057, 0.011
  EXPECT_EQ(eighty.low, 0);
  EXPECT_EQ(eighty.high, 1); // 0.736 is nearer to 0.8 than 0.930
  EXPECT_EQ(mixture.shortest(0.9).high, 2);
}

TEST(CountMixture, TheShortestRangeHoldsWhatItPromisesAsNearlyAsWholeCountsAllow) {
  const CountMixture mixture(200, std::vector<CountPart>{{0.6, 60, 300}, {0.4, 90, 500}});
  double before = 1;
  for (const double confidence : {0.99, 0.95, 0.8, 0.5, 0.1}) {
    const auto range = mixture.shortest(confidence);
    double held = 0;
    double likeliest = 0;
    for (auto y = range.low; y <= range.high; ++y) {
      const double here = mixture.probabilities()[static_cast<std::size_t>(y)];
      held += here;
      likeliest = std::max(likeliest, here);
    }
    if (confidence > 0.5) { // below, it may be the median that has to be in it
      EXPECT_NEAR(held, confidence, likeliest);
    }
    EXPECT_LT(held, before);
    before = held;
    EXPECT_LE(range.low, mixture.median());
    EXPECT_GE(range.high, mixture.median());
  }
}

TEST(CountMixture, NothingToComeIsZero) {
  const CountMixture none(0, {});
  EXPECT_EQ(none.median(), 0);
  EXPECT_EQ(none.shortest(0.9).high, 0);
}

} // namespace
} // namespace coneline::stats
