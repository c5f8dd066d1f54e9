// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/share_interval.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

constexpr double to_4_digits = 0.00005;

void expect_interval(const Result<Interval>& found, double low, double high) {
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->low, low, to_4_digits);
  EXPECT_NEAR(found->high, high, to_4_digits);
}

// Newcombe 1998, Statistics in Medicine 17:857-872, Table I, 95 % (from memory, recomputed).
TEST(ShareInterval, Newcombe81Of263) {
  expect_interval(wald(81, 263, 0.95), .2522, .3638);
  expect_interval(wilson(81, 263, 0.95), .2553, .3662);
  expect_interval(wilson_corrected(81, 263, 0.95), .2535, .3682);
  expect_interval(clopper_pearson(81, 263, 0.95), .2527, .3676);
  expect_interval(mid_p(81, 263, 0.95), .2544, .3658);
  expect_interval(jeffreys(81, 263, 0.95), .2545, .3656);
}

TEST(ShareInterval, NewcombeNoneOf20) {
  expect_interval(wald(0, 20, 0.95), 0, 0);
  expect_interval(wilson(0, 20, 0.95), 0, .1611);
  expect_interval(wilson_corrected(0, 20, 0.95), 0, .2005);
  expect_interval(clopper_pearson(0, 20, 0.95), 0, .1684);
  expect_interval(mid_p(0, 20, 0.95), 0, .1391);
  // The low end by Brown, Cai & DasGupta 2001, Statistical Science 16:101-133.
  expect_interval(jeffreys(0, 20, 0.95), 0, .1166);
}

TEST(ShareInterval, Newcombe1Of29) {
  EXPECT_LT(wald(1, 29, 0.95)->low, 0);
  EXPECT_NEAR(wald(1, 29, 0.95)->high, .1009, to_4_digits);
  expect_interval(wilson(1, 29, 0.95), .0061, .1718);
  expect_interval(wilson_corrected(1, 29, 0.95), .0018, .1963);
  expect_interval(clopper_pearson(1, 29, 0.95), .0009, .1776);
  expect_interval(mid_p(1, 29, 0.95), .0017, .1585);
  expect_interval(jeffreys(1, 29, 0.95), .0037, .1501);
}

// The "rule of three": Newcombe 1998 and common practice; values recomputed.
TEST(ShareInterval, UpperLimitWithNoneFound) {
  const std::pair<int, double> known[] = {
      {10, .2589}, {20, .1391}, {30, .0950}, {50, .0582}, {100, .0295}};
  for (const auto& [trials, limit] : known) {
    EXPECT_NEAR(exact_upper(0, trials, 0.95).value(), limit, to_4_digits);
    EXPECT_NEAR(exact_upper(0, trials, 0.95).value(), 1 - std::pow(0.05, 1.0 / trials), 1e-12);
  }
  EXPECT_EQ(exact_upper(7, 7, 0.95).value(), 1);
}

TEST(ShareInterval, RefusesWhatIsNoShare) {
  for (const auto method : {wald, wilson, wilson_corrected, clopper_pearson, mid_p, jeffreys}) {
    EXPECT_FALSE(method(0, 0, 0.95));
    EXPECT_FALSE(method(-1, 5, 0.95));
    EXPECT_FALSE(method(6, 5, 0.95));
    for (const double confidence : {0.0, 1.0, -0.1, 95.0, std::nan("")})
      EXPECT_FALSE(method(1, 5, confidence));
  }
  EXPECT_FALSE(exact_upper(6, 5, 0.95));
}

RC_GTEST_PROP(ShareInterval, HoldsTheShareAndMirrors, ()) {
  const auto trials = *rc::gen::inRange<std::int64_t>(1, 5000);
  const auto successes = *rc::gen::inRange<std::int64_t>(0, trials + 1);
  const double confidence = *rc::gen::inRange(800, 1000) / 1000.0;
  const double share = static_cast<double>(successes) / static_cast<double>(trials);
  for (const auto method : {wilson, wilson_corrected, clopper_pearson, mid_p, jeffreys}) {
    const auto here = method(successes, trials, confidence).value();
    const auto there = method(trials - successes, trials, confidence).value();
    RC_ASSERT(0 <= here.low && here.low <= share + 1e-12);
    RC_ASSERT(share - 1e-12 <= here.high && here.high <= 1);
    RC_ASSERT(std::abs(here.low - (1 - there.high)) < 1e-9);
  }
}

RC_GTEST_PROP(ShareInterval, WidensWithConfidenceAndStaysInsideClopperPearson, ()) {
  const auto trials = *rc::gen::inRange<std::int64_t>(1, 500);
  const auto successes = *rc::gen::inRange<std::int64_t>(0, trials + 1);
  const auto narrow = mid_p(successes, trials, 0.8).value();
  const auto wide = mid_p(successes, trials, 0.95).value();
  const auto exact = clopper_pearson(successes, trials, 0.95).value();
  RC_ASSERT(wide.low <= narrow.low && narrow.high <= wide.high);
  RC_ASSERT(exact.low <= wide.low + 1e-12 && wide.high <= exact.high + 1e-12);
}

} // namespace
} // namespace coneline::stats
