// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/occupied_cells.h"

#include <gtest/gtest.h>

namespace coneline::plan {
namespace {

// 1 - (1 - g)^k, exact.
TEST(OccupiedCells, MoreSeedsACell) {
  EXPECT_NEAR(occupied_share(0.65, 1).value(), .65, 1e-15);
  EXPECT_NEAR(occupied_share(0.65, 2).value(), .8775, 1e-15);
  EXPECT_NEAR(occupied_share(0.65, 3).value(), .957125, 1e-15);
  EXPECT_NEAR(72 * occupied_share(0.9, 1).value(), 64.8, 1e-12);
  EXPECT_EQ(occupied_share(0.65, 0).value(), 0);
  EXPECT_EQ(occupied_share(1, 2).value(), 1);
}

TEST(OccupiedCells, RefusesWhatCannotBe) {
  EXPECT_FALSE(occupied_share(65, 1));
  EXPECT_FALSE(occupied_share(-0.1, 1));
  EXPECT_FALSE(occupied_share(0.65, -1));
}

} // namespace
} // namespace coneline::plan
