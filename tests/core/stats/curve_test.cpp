// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

// By the formulas themselves.
TEST(Curve, FollowsItsFormula) {
  EXPECT_NEAR((Curve{Family::log_logistic, 0.8, 3, 20}.germinated_by(30)),
              0.8 / (1 + std::pow(1.5, -3)), 1e-15);
  EXPECT_NEAR((Curve{Family::weibull, 0.8, 3, 20}.germinated_by(30)),
              0.8 * (1 - std::exp(-std::pow(1.5, 3))), 1e-15);
  EXPECT_NEAR((Curve{Family::log_normal, 0.8, 3, 20}.germinated_by(30)),
              0.8 * 0.5 * std::erfc(-3 * std::log(1.5) / std::sqrt(2)), 1e-15);
}

TEST(Curve, DayOfProgressIsTheInverse) {
  for (const auto family : all_families)
    for (const double share : {0.001, 0.3, 0.5, 0.999}) {
      const Curve curve{family, 0.7, 2.5, 40};
      EXPECT_NEAR(curve.progress_by(curve.day_of_progress(share)), share, 1e-12)
          << family_word(family);
    }
}

TEST(Curve, NothingIsUpAtTheSowing) {
  for (const auto family : all_families)
    EXPECT_EQ((Curve{family, 0.7, 2.5, 40}.germinated_by(0)), 0);
}

TEST(Curve, SlopesAgreeWithDifferences) {
  constexpr double step = 1e-5;
  for (const auto family : all_families)
    for (const double z : {-3.0, -0.5, 0.0, 0.8, 1.5}) {
      const auto at = height(family, z);
      EXPECT_NEAR(at.below + at.above, 1, 1e-15);
      EXPECT_NEAR(at.slope,
                  (height(family, z + step).below - height(family, z - step).below) / (2 * step),
                  1e-9);
      EXPECT_NEAR(at.bend,
                  (height(family, z + step).slope - height(family, z - step).slope) / (2 * step),
                  1e-9);
    }
}

TEST(Curve, FamiliesAreFoundByTheirWords) {
  for (const auto family : all_families)
    EXPECT_EQ(family_named(family_word(family)), family);
  EXPECT_FALSE(family_named("best"));
}

} // namespace
} // namespace coneline::stats
