// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/as_written.h"
#include "core/stats/assured.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

Sowing sowing(std::int64_t plants, std::vector<double> shares, double assurance) {
  return seeds_to_sow(plants, shares, assurance).value();
}

/// P(Binomial(n, p) >= plants) by adding up fractions.
Rational chance(std::int64_t n, std::int64_t plants, const Rational& p) {
  Rational sum = 0;
  for (auto k = plants; k <= n; ++k) {
    Rational term = 1;
    for (std::int64_t i = 1; i <= k; ++i)
      term *= p * (n - k + i) / i;
    for (std::int64_t i = k; i < n; ++i)
      term *= 1 - p;
    sum += term;
  }
  return sum;
}

// Own, exact binomial.
TEST(Assured, HundredPlantsAtSixtyPercent) {
  EXPECT_EQ(sowing(100, {0.6}, 0.9).expected, 167);
  EXPECT_EQ(sowing(100, {0.6}, 0.9).assured, 180);
  EXPECT_EQ(sowing(100, {0.6}, 0.95).assured, 185);
}

// The worked numbers of the command's own page.
TEST(Assured, ThreeStages) {
  const auto found = sowing(100, {0.75, 0.8, 0.9}, 0.95);
  EXPECT_EQ(found.expected, 186);
  EXPECT_EQ(found.assured, 207);
}

// Siyag 2014, Afforestation, Reforestation and Forest Restoration in Arid and Semi-arid Tropics,
// Springer, fig. 2.9: losses of 40, 10, 0 and 5 % leave 5 130 of 10 000; table 2.3: losses of 0,
// 20, 20 and 5 % leave 60.80 per 100, a ratio of 1.64.
TEST(Assured, LossesInStagesMultiply) {
  EXPECT_EQ(sowing(5130, {0.6, 0.9, 1, 0.95}, 0.5).expected, 10'000);
  EXPECT_EQ(sowing(5400, {0.6, 0.9, 1}, 0.5).expected, 10'000);
  EXPECT_EQ(sowing(6000, {0.6}, 0.5).expected, 10'000);
  EXPECT_EQ(sowing(608, {1, 0.8, 0.8, 0.95}, 0.5).expected, 1000);
  EXPECT_EQ(sowing(100, {1, 0.8, 0.8, 0.95}, 0.5).expected, 165); // 1.64 each, rounded up at last
}

TEST(Assured, WholeQuotientsAreNotRoundedUpAgain) {
  EXPECT_EQ(sowing(100, {0.8}, 0.95).expected, 125);
  EXPECT_EQ(sowing(21, {0.7, 0.3}, 0.95).expected, 100);
  EXPECT_EQ(sowing(7, {0.07}, 0.95).expected, 100);
  EXPECT_EQ(sowing(100'000, {0.1, 0.1, 0.1}, 0.95).expected, 100'000'000);
  EXPECT_EQ(sowing(33, {0.33}, 0.95).expected, 100);
}

TEST(Assured, AnAssuranceMetExactlyIsMet) {
  EXPECT_EQ(sowing(1, {0.9}, 0.99).assured, 2);
  EXPECT_EQ(sowing(1, {0.9}, 0.999).assured, 3);
  EXPECT_EQ(sowing(1, {0.7}, 0.91).assured, 2);
  EXPECT_EQ(sowing(2, {0.9}, 0.81).assured, 2);
  EXPECT_EQ(sowing(2, {0.9}, 0.972).assured, 3);
  EXPECT_EQ(sowing(3, {0.8}, 0.512).assured, 3);
}

TEST(Assured, AllSurviving) {
  EXPECT_EQ(sowing(57, {1, 1}, 0.999).assured, 57);
  EXPECT_EQ(sowing(57, {1, 1}, 0.999).expected, 57);
}

TEST(Assured, ManyPlantsAreReckonedToTheEnd) {
  const auto found = sowing(100'000, {0.75, 0.8, 0.9}, 0.95);
  EXPECT_EQ(found.expected, 185'186);
  // Normal approximation with continuity correction, to one part in ten thousand.
  EXPECT_NEAR(static_cast<double>(found.assured), 185'840, 20);
  EXPECT_EQ(sowing(1'000'000, {0.000001}, 0.95).expected, 1'000'000'000'000);
  EXPECT_GT(sowing(1'000'000, {0.000001}, 0.95).assured, 1'001'000'000'000);
  EXPECT_LT(sowing(1'000'000, {0.000001}, 0.95).assured, 1'002'000'000'000);
}

TEST(Assured, RefusesWhatCannotBe) {
  const auto refused = [](std::int64_t plants, std::vector<double> shares, double assurance) {
    return !seeds_to_sow(plants, shares, assurance);
  };
  EXPECT_TRUE(refused(0, {0.5}, 0.95));
  EXPECT_TRUE(refused(-1, {0.5}, 0.95));
  EXPECT_TRUE(refused(10, {}, 0.95));
  for (const double share : {0.0, -0.1, 1.1, 80.0, std::nan(""), HUGE_VAL})
    EXPECT_TRUE(refused(10, {0.5, share}, 0.95)) << share;
  for (const double assurance : {0.0, 1.0, 95.0, std::nan("")})
    EXPECT_TRUE(refused(10, {0.5}, assurance)) << assurance;
  EXPECT_TRUE(refused(1'000'000, {1e-7}, 0.95));
  EXPECT_TRUE(refused(INT64_MAX, {1e-300, 1e-300}, 0.95));
}

RC_GTEST_PROP(Assured, IsTheSmallestNumberThatIsEnough, ()) {
  const auto plants = *rc::gen::inRange<std::int64_t>(1, 12);
  const double share = *rc::gen::inRange(30, 100) / 100.0;
  const double assurance = *rc::gen::inRange(50, 1000) / 1000.0;
  const auto n = sowing(plants, {share}, assurance).assured;
  RC_ASSERT(chance(n, plants, as_written(share)) >= as_written(assurance));
  RC_ASSERT(n == plants || chance(n - 1, plants, as_written(share)) < as_written(assurance));
}

RC_GTEST_PROP(Assured, GrowsWithPlantsAndAssurance, ()) {
  const auto plants = *rc::gen::inRange<std::int64_t>(1, 100'000);
  const double share = *rc::gen::inRange(1, 1001) / 1000.0;
  const auto here = sowing(plants, {share}, 0.9);
  RC_ASSERT(here.assured >= plants && here.expected >= plants);
  RC_ASSERT(sowing(plants, {share}, 0.95).assured >= here.assured);
  RC_ASSERT(sowing(plants + 1, {share}, 0.9).assured > here.assured);
}

} // namespace
} // namespace coneline::stats
