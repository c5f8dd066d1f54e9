// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/sheet/stock.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::labels {
namespace {

TEST(Stock, CommonOnesFitTheirPages) {
  ASSERT_FALSE(common_stocks().empty());
  for (const auto& stock : common_stocks()) {
    const auto sound = check(stock);
    EXPECT_TRUE(sound) << (sound ? "" : sound.error().text());
    const int last = stock.per_page() - 1;
    EXPECT_LE(stock.x_of(last) + stock.label_width, stock.page_width + 0.01) << stock.name;
    EXPECT_LE(stock.y_of(last) + stock.label_height, stock.page_height + 0.01) << stock.name;
  }
}

TEST(Stock, SaysByHowMuchItDoesNotFit) {
  auto stock = common_stocks().front();
  stock.left = 1.5;
  EXPECT_NE(check(stock).error().what.find("1.50 mm wider than the page"), std::string::npos)
      << check(stock).error().what;
  stock.left = 0;
  stock.rows = 9;
  EXPECT_NE(check(stock).error().what.find("36.50 mm higher"), std::string::npos)
      << check(stock).error().what;
  stock.rows = 8;
  stock.column_pitch = 68;
  EXPECT_NE(check(stock).error().what.find("overlap by 2.00 mm"), std::string::npos);
}

TEST(Stock, SaysWhenALabelIsTooSmallForACode) {
  EXPECT_TRUE(check(roll("small", 30, 11.6)));
  EXPECT_NE(check(roll("smaller", 30, 11)).error().what.find("0.6 mm too small"),
            std::string::npos);
  EXPECT_FALSE(check(roll("all in the soil", 100, 20, 95)));
}

TEST(Stock, RefusesWhatIsNoLength) {
  for (const double wrong : {0.0, -1.0, std::nan(""), HUGE_VAL, 5000.0}) {
    auto stock = common_stocks().front();
    stock.label_width = wrong;
    EXPECT_FALSE(check(stock)) << wrong;
  }
  auto stock = common_stocks().front();
  stock.columns = 0;
  EXPECT_FALSE(check(stock));
}

TEST(Stock, CountsAlongTheRows) {
  const auto stock = common_stocks().front();
  EXPECT_DOUBLE_EQ(stock.x_of(4), 70);
  EXPECT_DOUBLE_EQ(stock.y_of(4), 37.5);
}

} // namespace
} // namespace coneline::labels
