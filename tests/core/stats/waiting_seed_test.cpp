// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/waiting_seed.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

// Next to no spread: each waiting seed comes with probability d(1 - H) / (1 - d H), on its own.
TEST(WaitingSeed, WithoutSpreadItIsBinomial) {
  const auto result = to_come({12, 3, 25}, 0.6, 1e-7, 0.3);
  const double chance = 0.6 * 0.3 / (1 - 0.6 * 0.7);
  EXPECT_NEAR(result.mean, 25 * chance, 1e-4);
  EXPECT_NEAR(result.variance, 25 * chance * (1 - chance), 1e-3);
  EXPECT_NEAR(result.log_likelihood,
              12 * std::log(0.6) + 3 * std::log(0.4) + 25 * std::log(1 - 0.6 * 0.7), 1e-4);
}

TEST(WaitingSeed, NothingComesAfterTheEnd) {
  const auto result = to_come({12, 3, 25}, 0.6, 0.05, 0);
  EXPECT_EQ(result.mean, 0);
  EXPECT_EQ(result.variance, 0);
}

// Before the first look nothing of the tray is known: a beta-binomial count.
TEST(WaitingSeed, WithNothingSeenItIsBetaBinomial) {
  const auto result = to_come({0, 0, 900}, 0.3, 0.1, 1);
  EXPECT_NEAR(result.mean, 270, 1e-6);
  EXPECT_NEAR(result.variance, 900 * 0.3 * 0.7 * (1 + 899 * 0.1), 1e-3);
  EXPECT_NEAR(result.log_likelihood, 0, 1e-9);
}

} // namespace
} // namespace coneline::stats
