// SPDX-License-Identifier: GPL-3.0-or-later
// The table of tests/measured/plan.md is that of 'coneline coverage plan', with more nurseries.
#include "core/plan/plan_coverage.h"

#include <gtest/gtest.h>

namespace coneline::plan {
namespace {

TEST(PlanCoverage, RangesHoldWhatThenHappens) {
  const auto rows = plan_coverage({.nurseries = 60, .runs = 300, .seed = 1000}, {});
  ASSERT_TRUE(rows) << rows.error().text();
  ASSERT_EQ(rows->size(), 7U);
  // Sixty nurseries, whose months go together, tell 80 from 68.
  for (const auto& row : *rows)
    EXPECT_NEAR(100 * row.held, 80, 12) << row.of;
}

TEST(PlanCoverage, StopsWhenToldAndSaysTheSameAgain) {
  int done = 0;
  const auto stop = [&](int now) {
    done = now;
    return now < 2;
  };
  const auto some = plan_coverage({.nurseries = 50, .runs = 50, .seed = 3}, stop);
  EXPECT_EQ(done, 2);
  const auto again = plan_coverage({.nurseries = 2, .runs = 50, .seed = 3}, {});
  ASSERT_TRUE(some && again);
  for (std::size_t row = 0; row < some->size(); ++row)
    EXPECT_EQ((*some)[row].held, (*again)[row].held);
  EXPECT_FALSE(plan_coverage({.nurseries = 0, .runs = 50, .seed = 3}, {}));
}

} // namespace
} // namespace coneline::plan
