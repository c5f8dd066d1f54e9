// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/pot_volume.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace coneline::plan {
namespace {

// Formula: Hershey 1988, HortScience 23:623 (read); the case worked out with it.
TEST(PotVolume, ConeFrustum) {
  EXPECT_NEAR(pot_litres({300, 240, 260}).value(), 14.948, 0.0005);
}

TEST(PotVolume, CylinderAndCone) {
  EXPECT_NEAR(pot_litres({100, 100, 100}).value(), std::numbers::pi / 4, 1e-12);
  EXPECT_NEAR(pot_litres({100, 0, 100}).value(), std::numbers::pi / 12, 1e-12);
}

TEST(PotVolume, RefusesWhatIsNoPot) {
  EXPECT_FALSE(pot_litres({0, 0, 100}));
  EXPECT_FALSE(pot_litres({100, 80, 0}));
  EXPECT_FALSE(pot_litres({100, -80, 100}));
  EXPECT_FALSE(pot_litres({100, std::nan(""), 100}));
  EXPECT_FALSE(pot_litres({100'000, 80, 100}));
}

} // namespace
} // namespace coneline::plan
