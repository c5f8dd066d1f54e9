// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_figures.h"
#include "tests/core/stats/drawn_trays.h"

#include <gtest/gtest.h>

namespace coneline::stats {
namespace {

TEST(GerminationFigures, ATrayIsWilsonACrossCountsTheSpread) {
  const std::vector<Tray> trays{{"A", "1", 40, {{10, 20, 0}, {20, 4, 0}}},
                                {"B", "2", 40, {{10, 30, 0}}},
                                {"B", "3", 40, {{10, 12, 0}, {20, 8, 0}}}};
  const auto figures = germination_figures(trays, {}).value();
  ASSERT_EQ(figures.groups.size(), 2U);
  EXPECT_EQ(figures.trays[0].final.method, "Wilson");
  EXPECT_EQ(*figures.trays[0].final.range, wilson(24, 40, 0.95).value());
  EXPECT_LT(figures.groups[0].final.range->low, figures.trays[0].final.range->low);
  EXPECT_GT(figures.groups[0].final.range->high, figures.trays[0].final.range->high);
  EXPECT_FALSE(figures.groups[0].spread);
  const auto pooled = wilson(50, 80, 0.95).value();
  const auto& counted = *figures.groups[1].final.range;
  EXPECT_LT(counted.low, pooled.low);
  EXPECT_GT(counted.high, pooled.high);
  EXPECT_GT(figures.groups[1].spread->rho, 0);
  ASSERT_EQ(figures.comparisons.size(), 1U);
  EXPECT_NEAR(figures.comparisons[0].difference->difference, 24.0 / 40 - 50.0 / 80, 1e-15);
  EXPECT_EQ(figures.comparisons[0].p_adjusted, figures.comparisons[0].difference->p_value);
}

TEST(GerminationFigures, ATrayWithoutSeedHasNoShare) {
  const std::vector<Tray> trays{{"A", "1", 0, {{10, 0, 0}}},
                                {"B", "2", 20, {{10, 3, 0}, {20, 3, 0}}}};
  const auto figures = germination_figures(trays, {}).value();
  EXPECT_FALSE(figures.trays[0].final.share);
  EXPECT_FALSE(figures.groups[0].final.range);
  EXPECT_FALSE(figures.groups[0].curve);
  EXPECT_EQ(figures.groups[0].still_expected, StillExpected{});
  EXPECT_FALSE(figures.comparisons[0].difference);
  EXPECT_FALSE(figures.comparisons[0].p_adjusted);
}

TEST(GerminationFigures, TheFamilyAskedForIsTheOneGiven) {
  const std::vector<Tray> trays{{"A", "1", 40, {{10, 9, 0}, {20, 14, 0}, {30, 5, 0}}}};
  for (const auto family : all_families)
    EXPECT_EQ(germination_figures(trays, {family, 0.95}).value().groups[0].curve->curve.family,
              family);
}

TEST(GerminationFigures, RefusesAConfidenceThatIsNone) {
  EXPECT_FALSE(germination_figures({}, {std::nullopt, 1}));
  EXPECT_TRUE(germination_figures({}, {}));
}

// Whatever is drawn, every figure is within its bounds.
TEST(GerminationFigures, StayWithinTheirBounds) {
  Chance draw(11);
  for (int i = 0; i < 60; ++i) {
    const auto cross = simulated_cross(draw);
    const auto figures = germination_figures(cross.trays, {}).value();
    const auto& group = figures.groups[0];
    const auto left = group.sown - group.germinated - group.removed;
    EXPECT_LE(0, group.still_expected.low);
    EXPECT_LE(group.still_expected.high, left);
    EXPECT_LE(group.final.range->low, *group.final.share);
    EXPECT_GE(group.final.range->high, *group.final.share);
    double mass = group.stepwise.never_seen;
    for (const auto& step : group.stepwise.steps)
      mass += step.mass;
    EXPECT_NEAR(mass, 1, 1e-6);
    EXPECT_LT(group.stepwise.short_of_best, 1e-6 * static_cast<double>(group.sown));
    const double steps = group.stepwise.log_likelihood;
    EXPECT_LE(group.curve ? group.curve->log_likelihood : steps, steps + 1e-6);
  }
}

} // namespace
} // namespace coneline::stats
