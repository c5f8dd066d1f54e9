// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/as_written.h"
#include "core/stats/opening.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::stats {
namespace {

/// P(no filled one among n), in fractions.
Rational missed(std::int64_t seeds, std::int64_t filled, std::int64_t n) {
  Rational p = 1;
  for (std::int64_t i = 0; i < n; ++i)
    p *= Rational(std::max<std::int64_t>(0, seeds - filled - i), seeds - i);
  return p;
}

// The worked number of the command's own page.
TEST(Opening, FifteenOfThreeHundred) {
  EXPECT_EQ(seeds_to_open(300, 15, 0.95).value(), 54);
}

TEST(Opening, AnAssuranceMetExactlyIsMet) {
  EXPECT_EQ(seeds_to_open(20, 1, 0.95).value(), 19);
  EXPECT_EQ(seeds_to_open(1000, 1, 0.9).value(), 900);
  EXPECT_EQ(seeds_to_open(1'000'000'000, 1, 0.95).value(), 950'000'000);
  EXPECT_EQ(seeds_to_open(10, 10, 0.95).value(), 1);
}

TEST(Opening, WhatWasOpenedCounts) {
  EXPECT_EQ(more_to_open(300, 15, 0.95, 10).value(), 44);
  EXPECT_EQ(more_to_open(300, 15, 0.95, 54).value(), 0);
  EXPECT_EQ(more_to_open(300, 15, 0.95, 300).value(), 0);
  EXPECT_NE(more_to_open(300, 15, 0.95, 301).error().what.find("1 too many"), std::string::npos);
}

TEST(Opening, RefusesWhatCannotBe) {
  EXPECT_FALSE(seeds_to_open(300, 0, 0.95));
  EXPECT_NE(seeds_to_open(300, 302, 0.95).error().what.find("2 too many"), std::string::npos);
  EXPECT_FALSE(seeds_to_open(300, 15, 0));
  EXPECT_FALSE(seeds_to_open(300, 15, 1));
  EXPECT_FALSE(seeds_to_open(-3, 1, 0.95));
}

RC_GTEST_PROP(Opening, IsTheSmallestNumberThatIsEnough, ()) {
  const auto seeds = *rc::gen::inRange<std::int64_t>(1, 300);
  const auto filled = *rc::gen::inRange<std::int64_t>(1, seeds + 1);
  const double assurance = *rc::gen::inRange(1, 1000) / 1000.0;
  const auto n = seeds_to_open(seeds, filled, assurance).value();
  const Rational allowed = 1 - as_written(assurance);
  RC_ASSERT(missed(seeds, filled, n) <= allowed);
  RC_ASSERT(missed(seeds, filled, n - 1) > allowed);
}

RC_GTEST_PROP(Opening, MoreFilledOnesAreFoundSooner, ()) {
  const auto seeds = *rc::gen::inRange<std::int64_t>(2, 100'000);
  const auto filled = *rc::gen::inRange<std::int64_t>(1, seeds);
  RC_ASSERT(seeds_to_open(seeds, filled + 1, 0.95).value() <=
            seeds_to_open(seeds, filled, 0.95).value());
}

} // namespace
} // namespace coneline::stats
