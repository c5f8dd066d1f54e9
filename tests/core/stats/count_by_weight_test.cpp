// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/count_by_weight.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

namespace coneline::stats {
namespace {

// Reckoned by hand: the mean of the eight is 15.2, their standard deviation 0.2390, so 1.57 %;
// 304 g are 2000 seeds. Student's t with 7 degrees of freedom is 2.3646 (any table).
TEST(CountByWeight, EightWeighingsThatAgree) {
  const std::vector<double> hundreds{15.0, 15.4, 15.2, 14.9, 15.5, 15.1, 15.4, 15.1};
  const auto count = count_by_weight(hundreds, 304).value();
  EXPECT_EQ(count.seeds, 2000);
  EXPECT_NEAR(count.of_hundred.variation, 1.408, 0.01);
  EXPECT_EQ(count.left_out, 0U);
  const double error = 2.3646 * count.of_hundred.variation / 100 / std::sqrt(8.0);
  EXPECT_NEAR(static_cast<double>(count.low), 2000 / (1 + error), 1);
  EXPECT_NEAR(static_cast<double>(count.high), 2000 / (1 - error), 1);
}

TEST(CountByWeight, EightThatDifferAskForEightMore) {
  std::vector<double> hundreds{15, 15, 15, 15, 15, 15, 15, 19};
  const auto refused = count_by_weight(hundreds, 304);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().what.find("9.1 %"), std::string::npos) << refused.error().what;
  EXPECT_NE(refused.error().remedy.find("eight more"), std::string::npos);
  for (int i = 0; i < 8; ++i)
    hundreds.push_back(15);
  const auto count = count_by_weight(hundreds, 300).value();
  EXPECT_EQ(count.left_out, 1U);
  EXPECT_EQ(count.seeds, 2000);
}

TEST(CountByWeight, WhatIsNoWeightIsRefused) {
  const std::vector<double> sound{15, 15.1, 15.2};
  EXPECT_FALSE(count_by_weight(sound, 0));
  EXPECT_FALSE(count_by_weight(sound, -3));
  const auto slipped = count_by_weight(sound, 1e300);
  ASSERT_FALSE(slipped);
  EXPECT_EQ(slipped.error().what, "more than 1000000000 seeds by weight");
  EXPECT_FALSE(count_by_weight(sound, std::numeric_limits<double>::quiet_NaN()));
  EXPECT_FALSE(count_by_weight(sound, std::numeric_limits<double>::infinity()));
  EXPECT_FALSE(count_by_weight(std::vector<double>{15, -1}, 300));
  EXPECT_FALSE(count_by_weight(std::vector<double>{15}, 300));
  EXPECT_FALSE(count_by_weight(sound, 1e30));
}

} // namespace
} // namespace coneline::stats
