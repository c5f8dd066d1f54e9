// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/mix.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::plan {
namespace {

const std::vector<MixPart> bark_peat_sand = {{"bark", 4}, {"peat", 3}, {"sand", 3}};

// Own: 200 litres finished of 4:3:3 at 15 %.
TEST(Mix, TwoHundredLitres) {
  const auto mix = mix_for({100, 2, bark_peat_sand}).value();
  EXPECT_DOUBLE_EQ(mix.finished_litres, 200);
  ASSERT_EQ(mix.parts.size(), 3U);
  EXPECT_EQ(mix.parts[0].name, "bark");
  EXPECT_NEAR(mix.parts[0].amount, 94.12, 0.005);
  EXPECT_NEAR(mix.parts[1].amount, 70.59, 0.005);
  EXPECT_NEAR(mix.parts[2].amount, 70.59, 0.005);
}

// A container maker's technical page: 3 + 1 + 1 volumes make about 4, a loss of 15 to 20 %.
TEST(Mix, FiveVolumesMakeFour) {
  const auto mix = mix_for({4, 1, {{"bark", 3}, {"peat", 1}, {"sand", 1}}, 0.2}).value();
  EXPECT_DOUBLE_EQ(mix.parts[0].amount, 3);
  EXPECT_DOUBLE_EQ(mix.parts[1].amount, 1);
  EXPECT_DOUBLE_EQ(mix.parts[2].amount, 1);
}

TEST(Mix, LossAndRootBall) {
  const auto mix = mix_for({10, 3, {{"pumice", 1}}, 0, 0.1, 1}).value();
  EXPECT_DOUBLE_EQ(mix.finished_litres, 22);
  EXPECT_DOUBLE_EQ(mix.parts[0].amount, 22);
  EXPECT_EQ(mix_for({10, 3, {{"pumice", 1}}, 0, 0.1, 3})->finished_litres, 0);
}

TEST(Mix, RefusesWhatCannotBe) {
  const MixOrder good{10, 3, bark_peat_sand};
  ASSERT_TRUE(mix_for(good));
  const auto refused = [&](auto change) {
    MixOrder order = good;
    change(order);
    return !mix_for(order);
  };
  EXPECT_TRUE(refused([](MixOrder& o) { o.pots = 0; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.pots = INT64_MAX; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.litres = -1; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.litres = std::nan(""); }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.shrink = 1; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.shrink = -0.1; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.loss = -0.1; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.loss = 10; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.rootball = 3.1; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.rootball = -1; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.parts.clear(); }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.parts = {{"bark", 0}, {"peat", 0}}; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.parts = {{"bark", 2}, {"peat", -1}}; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.parts = {{"bark", 2}, {"bark", 1}}; }));
  EXPECT_TRUE(refused([](MixOrder& o) { o.parts = {{"", 2}}; }));
}

RC_GTEST_PROP(Mix, PartsSumToTheLooseVolumeAndKeepTheirProportions, ()) {
  const auto amount = [] { return *rc::gen::inRange(1, 100) / 4.0; };
  const MixOrder order{*rc::gen::inRange(1, 5000),
                       amount() + 30,
                       {{"bark", amount()}, {"peat", amount()}, {"sand", amount()}},
                       *rc::gen::inRange(0, 99) / 100.0,
                       *rc::gen::inRange(0, 100) / 100.0,
                       amount()};
  const auto mix = mix_for(order).value();
  double sum = 0;
  for (const auto& part : mix.parts)
    sum += part.amount;
  RC_ASSERT(std::abs(sum * (1 - order.shrink) / mix.finished_litres - 1) < 1e-9);
  RC_ASSERT(std::abs(mix.parts[0].amount * order.parts[1].amount -
                     mix.parts[1].amount * order.parts[0].amount) < 1e-6 * sum);
}

} // namespace
} // namespace coneline::plan
