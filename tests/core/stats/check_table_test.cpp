// SPDX-License-Identifier: GPL-3.0-or-later
// One table of published values against what comes out here. With CONELINE_MEASURED=FILE it is
// written there; the table in tests/measured was made so.
#include "core/stats/curve_fit.h"
#include "core/stats/germination_measures.h"
#include "core/stats/hundred_seed_weight.h"
#include "core/stats/random_intercept.h"
#include "core/stats/replicates.h"
#include "core/stats/turnbull.h"
#include "tests/core/stats/published_data.h"
#include "tests/core/stats/published_waits.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <fstream>

namespace coneline::stats {
namespace {

class CheckTable : public testing::Test {
 protected:
  /// `decimals` are those that the value is given with.
  void row(const std::string& what, double value, double got, int decimals) {
    EXPECT_NEAR(got, value, 0.51 * std::pow(10, -decimals)) << source_ << ": " << what;
    text_ += fmt::format("| {} | {} | {:.{}f} | {:.{}f} |\n", source_, what, value, decimals, got,
                         decimals);
  }
  void from(const std::string& source) { source_ = source; }

  void TearDown() override {
    if (const char* file = std::getenv("CONELINE_MEASURED"))
      std::ofstream(file) << "# Check values of germination against what comes out\n\n"
                          << "Made by `CONELINE_MEASURED=FILE test_stats "
                             "--gtest_filter='CheckTable.*'`, which also fails where a row is off "
                             "in its last digit.\n\n"
                          << "| source | what | value | got |\n|---|---|---|---|\n"
                          << text_;
  }

 private:
  std::string source_;
  std::string text_;
};

TEST_F(CheckTable, Germination) {
  from("own case, exact fractions");
  const auto m = germination_measures(
      {"A",
       "1",
       60,
       {{7, 0, 0}, {14, 3, 0}, {21, 9, 0}, {28, 14, 0}, {42, 8, 0}, {56, 4, 0}, {84, 2, 0}}});
  row("mean time", 33.775, *m.mean_time, 3);
  row("variance", 273.614744, *m.variance, 6);
  row("velocity", 2.960770, *m.velocity, 6);
  row("uncertainty", 2.307249, *m.uncertainty, 6);
  row("synchrony", .211538, *m.synchrony, 6);
  row("T50 Coolbear", 25.25, *m.t50_coolbear, 2);
  row("T50 Farooq", 25, *m.t50_farooq, 0);
  row("speed", 1.428571, *m.speed, 6);
  row("peak value", 1.547619, *m.peak_value, 6);
  row("germination value", 1.228269, *m.germination_value, 6);

  from("7 CFR 201.55(a)");
  const auto replicates = check_replicates({82, 87, 90, 78}).value();
  row("average of 82 87 90 78", 84, replicates.average, 0);
  row("limit", 14, replicates.limit.value(), 0);
  row("range", 12, replicates.range, 0);

  from("AOSA tutorial data");
  const auto weight =
      hundred_seed_weight(std::vector{.2224, .2134, .2130, .2116, .2145, .2071, .2116, .2125})
          .value();
  row("mean weight, g", .2132625, weight.mean, 7);
  row("CV, %", 2.014492, weight.variation, 6);

  from("Crowder 1978, logistic regression");
  const auto plain = regress(orobanche(), SpreadModel::none);
  const std::vector<std::string> names{"intercept", "O.a.73", "cucumber", "both"};
  const auto coefficients = [&](const std::vector<double>& values, const std::vector<double>& got,
                                const std::string& what) {
    ASSERT_EQ(got.size(), values.size());
    for (std::size_t i = 0; i < values.size(); ++i)
      row(names[i] + what, values[i], got[i], 4);
  };
  coefficients({-.5582, .1459, 1.3182, -.7781}, plain.coefficients, "");
  coefficients({.1260, .2232, .1775, .3064}, plain.standard_errors, ", error");
  row("deviance", 33.27779, plain.deviance, 5);
  from("Crowder 1978, beta-binomial");
  const auto spread = regress(orobanche(), SpreadModel::common_rho);
  coefficients({-.5420, .0974, 1.3201, -.7979}, spread.coefficients, "");
  coefficients({.1638, .2737, .2340, .3780}, spread.standard_errors, ", error");
  row("rho", .01236, spread.rho, 5);
  row("log-likelihood", -53.76676, spread.log_likelihood, 5);
  row("ratio for rho = 0", 2.3405,
      test_of_no_spread(spread.log_likelihood, plain.log_likelihood).ratio, 4);
  from("data of Crowder 1978, random intercept (recomputed)");
  const auto random = fit_random_intercept(orobanche());
  coefficients({-.5484, .0970, 1.3370, -.8105}, random.coefficients, "");
  coefficients({.1666, .2780, .2369, .3852}, random.standard_errors, ", error");
  row("sigma", .2362, random.sigma, 4);
  row("sigma, error", .1101, random.sigma_error.value(), 4);

  from("Finkelstein & Wolfe 1985; Fay & Shaw 2010 (memory, recomputed)");
  const auto steps = stepwise(interval_counts(cosmesis()));
  const std::vector<double> masses{.046347, .033363, .088667, .070753,
                                   .092646, .081786, .120880, .465558};
  ASSERT_EQ(steps.steps.size(), masses.size());
  for (std::size_t i = 0; i < masses.size(); ++i)
    row(fmt::format("mass of ({:g}, {:g}]", steps.steps[i].from, steps.steps[i].to), masses[i],
        steps.steps[i].mass, 6);
  row("log-likelihood", -58.06002, steps.log_likelihood, 5);
  from("the same data, Weibull (recomputed)");
  const auto weibull =
      fit_curve(interval_counts(cosmesis()), Family::weibull, Germinable::all).value();
  row("shape", 1.121613, weibull.curve.shape, 6);
  row("scale", 57.5131, weibull.curve.scale, 4);
  row("log-likelihood", -64.73147, weibull.log_likelihood, 5);

  from("Ritz, Pipper & Streibig 2013 (memory, recomputed)");
  const auto chick = fit_curve(interval_counts(chickweed()), Family::log_logistic).value();
  row("germinable", .2001092, chick.curve.germinable, 7);
  row("germinable, error", .028300, *chick.germinable_error, 6);
  row("shape", 20.76739, chick.curve.shape, 5);
  row("shape, error", 2.944218, *chick.shape_error, 6);
  row("scale", 196.0530, chick.curve.scale, 4);
  row("log-likelihood", -188.1719, chick.log_likelihood, 4);
  // 2.505730 was obtained by differences; forty-digit arithmetic at the same maximum gives this.
  from("the same maximum, forty-digit arithmetic");
  row("scale, error (differences gave 2.505730)", 2.505685, *chick.scale_error, 6);

  from("Freireich et al. 1963; Gehan 1965 (memory, recomputed)");
  const auto treated = kaplan_meier(remission_treated());
  const std::vector<double> survival{.857143, .806723, .752941, .690196, .627451, .537815, .448179};
  ASSERT_EQ(treated.size(), survival.size());
  for (std::size_t i = 0; i < survival.size(); ++i)
    row(fmt::format("survival of the treated at {:g}", treated[i].time), survival[i],
        treated[i].survival, 6);
  row("log-rank", 16.792941, log_rank(remission_treated(), remission_control())->chi_square, 6);

  from("leukaemia, Miller 1981 (memory)");
  const auto maintained = kaplan_meier(leukaemia_maintained());
  row("survival of the maintained at 9", .909, maintained[0].survival, 3);
  row("the same, error", .0867, maintained[0].standard_error, 4);
  row("survival in the end", .184, maintained.back().survival, 3);
  row("the same, error", .1535, maintained.back().standard_error, 4);
  row("log-rank", 3.4, log_rank(leukaemia_maintained(), leukaemia_not_maintained())->chi_square, 1);
}

} // namespace
} // namespace coneline::stats
