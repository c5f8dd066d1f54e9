// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve_band.h"
#include "tests/core/stats/drawn_trays.h"
#include "tests/core/stats/published_data.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace coneline::stats {
namespace {

// Far out the curve is its germinable share: the range is that of its published standard error,
// .028300 (Ritz, Pipper & Streibig 2013), taken on the logit.
TEST(CurveBand, FarOutIsTheRangeOfTheGerminableShare) {
  const auto counts = interval_counts(chickweed());
  const auto fit = fit_curve(counts, Family::log_logistic).value();
  const auto band = CurveBand::of(counts, fit, 1, 0.95).value().at(1e6);
  const double d = 0.2001092;
  const double reach = 1.959964 * 0.028300 / (d * (1 - d));
  const double logit = std::log(d / (1 - d));
  EXPECT_NEAR(band.low, 1 / (1 + std::exp(-logit + reach)), 2e-6);
  EXPECT_NEAR(band.high, 1 / (1 + std::exp(-logit - reach)), 2e-6);
}

TEST(CurveBand, HoldsItsCurveAndStaysInside) {
  const auto counts = interval_counts(chickweed());
  for (const auto family : all_families) {
    const auto fit = fit_curve(counts, family).value();
    const auto band = CurveBand::of(counts, fit, 1.5, 0.95).value();
    for (double hours = 0; hours < 400; hours += 5) {
      const auto range = band.at(hours);
      EXPECT_LE(range.low, fit.curve.germinated_by(hours) + 1e-12);
      EXPECT_GE(range.high, fit.curve.germinated_by(hours) - 1e-12);
      EXPECT_GE(range.low, 0);
      EXPECT_LE(range.high, 1);
    }
  }
}

TEST(CurveBand, SpreadBetweenTraysWidensIt) {
  const auto counts = interval_counts(chickweed());
  const auto fit = fit_curve(counts, Family::log_logistic).value();
  const auto plain = CurveBand::of(counts, fit, 1, 0.95).value().at(200);
  const std::vector<double> sown{40, 60};
  EXPECT_DOUBLE_EQ(design_effect(sown, 0.1), 1 + (5200.0 / 100 - 1) * 0.1);
  const auto wide = CurveBand::of(counts, fit, design_effect(sown, 0.1), 0.95).value().at(200);
  EXPECT_LT(wide.low, plain.low);
  EXPECT_GT(wide.high, plain.high);
}

// Four trays of 50 with rho .05, looked at every five days: at the day by which half has come, the
// range holds the true share about 95 times in 100. The spread is known here; an estimated one
// makes the range of few trays narrower.
TEST(CurveBand, HoldsTheTruthAsOftenAsItSays) {
  Chance draw(20261125);
  const Curve truth{Family::log_logistic, 0.7, 4, 60};
  int held = 0;
  int fitted = 0;
  for (int round = 0; round < 400; ++round) {
    std::vector<Tray> trays;
    std::int64_t more = 0;
    for (int i = 0; i < 4; ++i) {
      Tray tray{"cross", std::to_string(i), 50, {}};
      const double share = draw.share(truth.germinable, 0.05);
      for (double day = 5; day <= 150; day += 5)
        tray.looks.push_back({day, 0, 0});
      for (int seed = 0; seed < 50; ++seed)
        if (draw.happens(share)) {
          const double day = truth.day_of_progress(std::clamp(draw.even(), 1e-9, 1 - 1e-9));
          const auto seen = std::ranges::lower_bound(tray.looks, day, {}, &Look::day);
          seen == tray.looks.end() ? ++more : ++seen->germinated;
        }
      trays.push_back(tray);
    }
    const auto counts = interval_counts(trays);
    const auto fit = fit_best_curve(counts);
    if (!fit)
      continue;
    const std::vector<double> sown(4, 50);
    const auto band = CurveBand::of(counts, *fit, design_effect(sown, 0.05), 0.95);
    if (!band)
      continue;
    ++fitted;
    const auto range = band->at(60);
    const double share = truth.germinated_by(60);
    held += range.low <= share && share <= range.high ? 1 : 0;
  }
  RecordProperty("held", held);
  EXPECT_GT(fitted, 390);
  // Two and a half standard errors of a count around 95 in 100, and a little for the approximation.
  EXPECT_GE(held, fitted * 0.92);
  EXPECT_LE(held, fitted * 0.985);
}

} // namespace
} // namespace coneline::stats
