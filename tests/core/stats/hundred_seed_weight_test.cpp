// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/hundred_seed_weight.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

Result<HundredSeedWeight> weighed(std::vector<double> weights) {
  return hundred_seed_weight(weights);
}

// Weights: AOSA tutorial data (read); mean, variation and 1000-seed weight recomputed. That 4.0 %
// is the most allowed is from memory.
TEST(HundredSeedWeight, EightWeighings) {
  const auto found = weighed({.2224, .2134, .2130, .2116, .2145, .2071, .2116, .2125}).value();
  EXPECT_NEAR(found.mean, .2132625, 1e-12);
  EXPECT_NEAR(found.variation, 2.014492, 5e-7);
  EXPECT_NEAR(found.thousand_seed_weight, 2.132625, 1e-11);
  EXPECT_TRUE(found.agree);
}

TEST(HundredSeedWeight, WeighingsThatDiffer) {
  const auto found = weighed({1.0, 1.1, 0.9}).value();
  EXPECT_NEAR(found.variation, 10, 1e-9);
  EXPECT_FALSE(found.agree);
}

TEST(HundredSeedWeight, RefusesWhatIsNoWeight) {
  EXPECT_FALSE(weighed({}));
  EXPECT_FALSE(weighed({.2}));
  for (const double bad : {0.0, -.2, std::nan(""), HUGE_VAL}) {
    const auto why = weighed({.2, bad, .2});
    ASSERT_FALSE(why);
    EXPECT_NE(why.error().what.find("weighing 2"), std::string::npos);
  }
}

} // namespace
} // namespace coneline::stats
