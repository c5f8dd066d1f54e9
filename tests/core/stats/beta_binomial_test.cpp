// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/beta_binomial.h"
#include "tests/core/stats/published_data.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

void expect_near(const std::vector<double>& found, const std::vector<double>& expected) {
  ASSERT_EQ(found.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i)
    EXPECT_NEAR(found[i], expected[i], 5.1e-5) << i;
}

// Crowder 1978, read there and worked out again with another program.
TEST(BetaBinomial, OrobancheLogisticRegression) {
  const auto fit = regress(orobanche(), SpreadModel::none);
  expect_near(fit.coefficients, {-.5582, .1459, 1.3182, -.7781});
  expect_near(fit.standard_errors, {.1260, .2232, .1775, .3064});
  EXPECT_NEAR(fit.deviance, 33.27779, 5e-6);
}

// Crowder 1978: published to two decimals; the rest worked out with another program.
TEST(BetaBinomial, OrobancheWithACommonRho) {
  const auto fit = regress(orobanche(), SpreadModel::common_rho);
  expect_near(fit.coefficients, {-.5420, .0974, 1.3201, -.7979});
  expect_near(fit.standard_errors, {.1638, .2737, .2340, .3780});
  EXPECT_NEAR(fit.rho, .01236, 5e-6);
  EXPECT_NEAR(fit.log_likelihood, -53.76676, 5e-6);
  const auto test =
      test_of_no_spread(fit.log_likelihood, regress(orobanche(), SpreadModel::none).log_likelihood);
  EXPECT_NEAR(test.ratio, 2.3405, 5e-5);
  EXPECT_NEAR(test.p_value, 0.0630, 5e-4); // half of P(chi-square, 1 df > 2.3405) = .1260
}

TEST(BetaBinomial, TraysThatDifferLessThanChanceHaveNoSpread) {
  const auto fit = fit_spread(std::vector<Outcome>{{50, 25}, {50, 25}, {50, 26}}).value();
  EXPECT_EQ(fit.rho, 0);
  EXPECT_DOUBLE_EQ(fit.mean, 76.0 / 150);
}

// Own data: no spread is a peak of the likelihood, and there is a higher one.
TEST(BetaBinomial, FindsTheHigherOfTwoPeaks) {
  const auto fit = fit_spread(std::vector<Outcome>{{27, 12}, {5, 0}}).value();
  EXPECT_NEAR(fit.rho, 0.18, 0.02);
  EXPECT_GT(fit.log_likelihood, -4.376);
}

TEST(BetaBinomial, AllAndNone) {
  const auto none = fit_spread(std::vector<Outcome>{{50, 0}, {20, 0}}).value();
  EXPECT_EQ(none.mean, 0);
  EXPECT_EQ(none.rho, 0);
  EXPECT_EQ(none.log_likelihood, 0);
  EXPECT_EQ(fit_spread(std::vector<Outcome>{{50, 50}, {20, 20}}).value().mean, 1);
  // One tray all and one none: every seed like its neighbour, and two trays of share one half.
  const auto split = fit_spread(std::vector<Outcome>{{30, 30}, {30, 0}}).value();
  EXPECT_NEAR(split.mean, 0.5, 1e-6);
  EXPECT_GT(split.rho, 0.999);
  EXPECT_NEAR(split.log_likelihood, std::log(0.25), 1e-6);
}

TEST(BetaBinomial, NothingToCompareWithOneTray) {
  EXPECT_FALSE(fit_spread(std::vector<Outcome>{{50, 20}}));
  EXPECT_FALSE(fit_spread(std::vector<Outcome>{{50, 20}, {0, 0}}));
}

RC_GTEST_PROP(BetaBinomial, TheProbabilitiesOfAllCountsSumToOne, ()) {
  const auto n = *rc::gen::inRange(1, 40);
  const double mean = *rc::gen::inRange(1, 100) / 100.0;
  const double rho = *rc::gen::inRange(0, 100) / 100.0;
  double sum = 0;
  for (int y = 0; y <= n; ++y)
    sum += std::exp(Outcomes(std::vector<Outcome>{{n, y}}).log_likelihood(mean, rho));
  RC_ASSERT(std::abs(sum - 1) < 1e-10);
}

/// One of one and none of 49: with all or none in every tray (rho 1) the likelihood is m (1 - m),
/// at its highest 1/4 for a mean of 1/2; no smaller rho gives more.
TEST(BetaBinomial, ClimbsOnWhereRhoStandsAtItsHighest) {
  const auto fit = fit_spread({{{1, 1}, {49, 0}}}).value();
  EXPECT_NEAR(fit.log_likelihood, std::log(0.25), 1e-6);
  EXPECT_NEAR(fit.mean, 0.5, 1e-3);
  EXPECT_NEAR(fit.rho, 1, 1e-6);
}

RC_GTEST_PROP(BetaBinomial, NoOtherMeanAndRhoFitBetter, ()) {
  std::vector<Outcome> outcomes;
  const int trays = *rc::gen::inRange(2, 9);
  for (int i = 0; i < trays; ++i) {
    const int n = *rc::gen::inRange(1, 60);
    outcomes.push_back({n, *rc::gen::inRange(0, n + 1)});
  }
  const auto fit = fit_spread(outcomes).value();
  const Outcomes all(outcomes);
  RC_ASSERT(std::abs(all.log_likelihood(fit.mean, fit.rho) - fit.log_likelihood) < 1e-6);
  for (int i = 1; i < 40; ++i)
    for (int j = 0; j < 40; ++j)
      RC_ASSERT(all.log_likelihood(i / 40.0, j / 40.0) < fit.log_likelihood + 1e-6);
}

} // namespace
} // namespace coneline::stats
