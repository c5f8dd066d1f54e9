// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_compare.h"
#include "tests/core/stats/drawn_trays.h"
#include "tests/core/stats/published_data.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::stats {
namespace {

GroupShare group(std::vector<Outcome> outcomes) {
  return GroupShare(outcomes);
}

// Newcombe 1998, Statistics in Medicine 17:873-890, Table II, method 10, from memory: 56/70 - 48/80
// is .2000 (.0524 to .3339), 9/10 - 3/10 is .6000 (.1705 to .8090).
TEST(GerminationCompare, OneTrayEachIsNewcombesInterval) {
  const auto large = difference_of(group({{70, 56}}), group({{80, 48}}), 0.95);
  EXPECT_NEAR(large.difference, 0.2, 1e-12);
  EXPECT_NEAR(large.low, 0.0524, 5e-5);
  EXPECT_NEAR(large.high, 0.3339, 5e-5);
  const auto small = difference_of(group({{10, 9}}), group({{10, 3}}), 0.95);
  EXPECT_NEAR(small.low, 0.1705, 5e-5);
  EXPECT_NEAR(small.high, 0.8090, 5e-5);
}

TEST(GerminationCompare, SpreadBetweenTraysWidensTheDifference) {
  const auto even = difference_of(group({{50, 30}, {50, 31}, {50, 29}}),
                                  group({{50, 20}, {50, 19}, {50, 21}}), 0.95);
  const auto uneven = difference_of(group({{50, 45}, {50, 31}, {50, 14}}),
                                    group({{50, 5}, {50, 19}, {50, 36}}), 0.95);
  EXPECT_EQ(even.difference, uneven.difference);
  EXPECT_LT(even.p_value, 0.05);
  EXPECT_GT(uneven.p_value, 0.2);
  EXPECT_GT(uneven.high - uneven.low, 2 * (even.high - even.low));
}

TEST(GerminationCompare, EqualSharesDoNotDiffer) {
  EXPECT_EQ(difference_of(group({{20, 0}}), group({{30, 0}, {20, 0}}), 0.95).p_value, 1);
  EXPECT_EQ(difference_of(group({{20, 10}}), group({{40, 20}}), 0.95).p_value, 1);
}

RC_GTEST_PROP(GerminationCompare, RangeAndTestAgreeAndTurnRound, ()) {
  const auto outcomes = [] {
    std::vector<Outcome> made;
    const int trays = *rc::gen::inRange(1, 5);
    for (int i = 0; i < trays; ++i) {
      const int n = *rc::gen::inRange(1, 80);
      made.push_back({n, *rc::gen::inRange(0, n + 1)});
    }
    return made;
  };
  const auto a = group(outcomes());
  const auto b = group(outcomes());
  const auto one = difference_of(a, b, 0.9);
  const auto other = difference_of(b, a, 0.9);
  RC_ASSERT(one.difference == -other.difference);
  RC_ASSERT(std::abs(one.low + other.high) < 1e-12);
  RC_ASSERT(std::abs(one.p_value - other.p_value) < 1e-9);
  RC_ASSERT(one.low <= one.difference && one.difference <= one.high);
  if (one.difference != 0 && std::abs(one.p_value - 0.1) > 1e-6)
    RC_ASSERT((one.p_value < 0.1) == (one.low > 0 || one.high < 0));
}

// Own data; by hand.
TEST(GerminationCompare, HolmAdjustsInSteps) {
  const auto adjusted = holm(std::vector{0.01, 0.04, 0.03, 0.005});
  EXPECT_NEAR(adjusted[0], 0.03, 1e-15);
  EXPECT_NEAR(adjusted[1], 0.06, 1e-15);
  EXPECT_NEAR(adjusted[2], 0.06, 1e-15);
  EXPECT_NEAR(adjusted[3], 0.02, 1e-15);
}

TEST(GerminationCompare, OneCurveForASampleAndItself) {
  const auto counts = interval_counts(chickweed());
  const auto fit = fit_curve(counts, Family::log_logistic).value();
  EXPECT_NEAR(p_value_of_one_curve(counts, fit, counts, fit), 1, 1e-6);
  auto later = chickweed();
  for (auto& look : later[0].looks)
    look.day *= 1.2;
  const auto late = interval_counts(later);
  EXPECT_LT(p_value_of_one_curve(counts, fit, late, fit_curve(late, Family::log_logistic).value()),
            1e-6);
}

// The search between two curves ends where the search from nothing does.
TEST(GerminationCompare, OneCurveIsTheBestCurveOfAll) {
  Chance draw(5);
  for (int i = 0; i < 150; ++i) {
    const auto a = simulated_cross(draw).trays;
    const auto b = simulated_cross(draw).trays;
    auto both = a;
    both.insert(both.end(), b.begin(), b.end());
    for (const auto family : all_families) {
      const auto fit_a = fit_curve(interval_counts(a), family);
      const auto fit_b = fit_curve(interval_counts(b), family);
      if (!fit_a || !fit_b)
        continue;
      const auto all = interval_counts(both);
      EXPECT_NEAR(fit_curve_between(all, fit_a->curve, fit_b->curve)->log_likelihood,
                  fit_curve(all, family)->log_likelihood, 1e-6);
    }
  }
}

// Drawn groups of equal share, four trays of 50, rho from 0 to .1: one in twenty differ at p < .05.
TEST(GerminationCompare, FindsNoMoreThanChanceWhereNothingDiffers) {
  Chance draw(20260309);
  int found = 0;
  int held = 0;
  constexpr int pairs = 800;
  for (int i = 0; i < pairs; ++i) {
    const double rho = 0.1 * draw.even();
    const double share = 0.1 + 0.8 * draw.even();
    const auto a = group(drawn_outcomes(draw, 4, 50, share, rho));
    const auto b = group(drawn_outcomes(draw, 4, 50, share, rho));
    found += difference_of(a, b, 0.95).p_value < 0.05 ? 1 : 0;
    const auto range = share_range(a, 0.95);
    const auto diluted = share_range(a, 0.95, 0.1);
    EXPECT_LE(diluted.high - diluted.low, range.high - range.low + 1e-12);
    held += range.low <= share && share <= range.high ? 1 : 0;
  }
  EXPECT_LT(found, pairs * 0.07);
  EXPECT_GT(found, pairs * 0.01);
  EXPECT_GT(held, pairs * 0.93);
  EXPECT_LT(held, pairs * 0.99);
}

} // namespace
} // namespace coneline::stats
