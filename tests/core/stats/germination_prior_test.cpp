// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_prior.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

constexpr WeakBelief weak{0.6, 0.9, 0.45};

TEST(GerminationPrior, IsTheWeakOneWithoutEarlierCrosses) {
  const auto next = belief_of_next({}, weak);
  EXPECT_NEAR(next.middle, 0.6, 1e-12);
  EXPECT_NEAR(next.spread, weak.alone().spread, 0.003); // tau summed in steps
}

// With tau all but fixed at 0 a further cross is as the ones before: the closed form of the bell.
TEST(GerminationPrior, WithoutScatterIsTheClosedForm) {
  const WeakBelief same{0, 1, 1e-6};
  const std::vector<Belief> seen{{1.0, 0.5}, {2.0, 0.25}};
  const double precision = 1 + 4 + 16;
  const auto next = belief_of_next(seen, same);
  EXPECT_NEAR(next.middle, (4 * 1.0 + 16 * 2.0) / precision, 1e-6);
  EXPECT_NEAR(next.spread, 1 / std::sqrt(precision), 1e-6);
}

// With many crosses known exactly, what follows is their own mean and scatter.
TEST(GerminationPrior, ManyCrossesOverruleTheWeakPrior) {
  std::vector<Belief> seen;
  for (int i = 0; i < 400; ++i)
    seen.push_back({3 + 0.2 * std::sin(i * 2.399963), 0.001});
  const auto next = belief_of_next(seen, weak);
  EXPECT_NEAR(next.middle, 3, 0.01);
  EXPECT_NEAR(next.spread, 0.2 / std::sqrt(2), 0.01);
}

TEST(GerminationPrior, OneCrossLeavesItWide) {
  const std::vector<Belief> seen{{1.5, 0.05}};
  const auto next = belief_of_next(seen, weak);
  EXPECT_GT(next.spread, 0.3);
  EXPECT_LT(next.spread, weak.alone().spread);
}

TEST(GerminationPrior, TakenOutOfABeliefGivesTheCountsBack) {
  const Belief prior{0, 2};
  const Belief counts{3, 0.5};
  const double precision = 1 / 4.0 + 4;
  const Belief both{(counts.middle * 4) / precision, 1 / std::sqrt(precision)};
  const auto out = without_prior(both, prior);
  ASSERT_TRUE(out);
  EXPECT_NEAR(out->middle, 3, 1e-12);
  EXPECT_NEAR(out->spread, 0.5, 1e-12);
  EXPECT_FALSE(without_prior(prior, prior));
}

} // namespace
} // namespace coneline::stats
