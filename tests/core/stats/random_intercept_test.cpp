// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/random_intercept.h"
#include "tests/core/stats/published_data.h"

#include <gtest/gtest.h>

namespace coneline::stats {
namespace {

// Data of Crowder 1978, Applied Statistics 27:34-37; values worked out with another program.
TEST(RandomIntercept, Orobanche) {
  const auto fit = fit_random_intercept(orobanche());
  const std::vector<double> coefficients{-.5484, .0970, 1.3370, -.8105};
  const std::vector<double> errors{.1666, .2780, .2369, .3852};
  ASSERT_EQ(fit.standard_errors.size(), errors.size());
  for (std::size_t i = 0; i < coefficients.size(); ++i) {
    EXPECT_NEAR(fit.coefficients[i], coefficients[i], 5.1e-5) << i;
    EXPECT_NEAR(fit.standard_errors[i], errors[i], 5.1e-5) << i;
  }
  EXPECT_NEAR(fit.sigma, .2362, 5.1e-5);
  ASSERT_TRUE(fit.sigma_error);
  EXPECT_NEAR(*fit.sigma_error, .1101, 5.1e-5);
}

TEST(RandomIntercept, TraysThatDifferLessThanChanceHaveNoSpread) {
  const std::vector<Pattern> patterns{{{1}, {{50, 25}, {50, 25}, {50, 25}, {50, 25}}}};
  const auto fit = fit_random_intercept(patterns);
  EXPECT_EQ(fit.sigma, 0);
  EXPECT_NEAR(fit.coefficients.front(), 0, 1e-9);
  EXPECT_FALSE(fit.sigma_error);
}

} // namespace
} // namespace coneline::stats
