// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/money.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace coneline {
namespace {

TEST(Money, IsKeptToTheNearestCent) {
  EXPECT_EQ(cents_of(0), 0);
  EXPECT_EQ(cents_of(18.5), 1850);
  EXPECT_EQ(cents_of(0.29), 29); // 28.999999999999996 as a product
  EXPECT_EQ(cents_of(0.004), 0);
  EXPECT_EQ(cents_of(999'999'999.99), 99'999'999'999);
}

TEST(Money, ThatCannotBeIsRefused) {
  for (const double amount : {-0.01, 1e9, 1e300, std::numeric_limits<double>::infinity(),
                              std::numeric_limits<double>::quiet_NaN()})
    EXPECT_FALSE(cents_of(amount)) << amount;
  EXPECT_NE(cents_of(-5).error().text().find("a price of -5"), std::string::npos);
}

TEST(Money, IsSaidWithTwoDecimals) {
  EXPECT_EQ(money_said(1850), "18.50");
  EXPECT_EQ(money_said(11700), "117.00");
  EXPECT_EQ(money_said(5), "0.05");
}

} // namespace
} // namespace coneline
