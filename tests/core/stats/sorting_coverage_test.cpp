// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/sorting_coverage.h"

#include <gtest/gtest.h>

namespace coneline::stats {
namespace {

TEST(SortingCoverage, IsAtLeastTheConfidenceForEveryShareAndNotMerelyWide) {
  for (const SortedHow how : {SortedHow{20, 5, 10, 5}, SortedHow{90, 10, 30, 8}})
    for (const double confidence : {0.80, 0.95}) {
      const auto found = sorting_coverage(how, 10, confidence);
      EXPECT_GE(found.least, confidence);
      EXPECT_LE(found.mean, 1 - (1 - confidence) / 8);
      EXPECT_LT(found.width, found.width_of_parts);
    }
}

TEST(SortingCoverage, ABatchOpenedWholeIsKnown) {
  const auto found = sorting_coverage({6, 6, 4, 4}, 2, 0.95);
  EXPECT_NEAR(found.least, 1, 1e-12);
  EXPECT_NEAR(found.width, 0, 1e-12);
}

} // namespace
} // namespace coneline::stats
