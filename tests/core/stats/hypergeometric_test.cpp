// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/as_written.h"
#include "core/stats/hypergeometric.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

using boost::multiprecision::cpp_int;

cpp_int choose(std::int64_t n, std::int64_t k) {
  if (k < 0 || k > n)
    return 0;
  cpp_int c = 1;
  for (std::int64_t i = 1; i <= k; ++i)
    c = c * (n - k + i) / i;
  return c;
}

/// P(from <= X <= to) by the definition.
Rational exact(std::int64_t seeds, std::int64_t marked, std::int64_t drawn, std::int64_t from,
               std::int64_t to) {
  cpp_int sum = 0;
  for (auto x = from; x <= to; ++x)
    sum += choose(marked, x) * choose(seeds - marked, drawn - x);
  return Rational(sum, choose(seeds, drawn));
}

/// The interval by its definition: every M, both tails, in fractions.
CountInterval by_definition(const CutTest& t, double confidence) {
  const Rational bound = (1 - as_written(confidence)) / 2;
  CountInterval found{-1, -1};
  for (std::int64_t m = 0; m <= t.seeds; ++m)
    if (exact(t.seeds, m, t.opened, 0, t.filled) > bound &&
        exact(t.seeds, m, t.opened, t.filled, t.opened) > bound) {
      if (found.low < 0)
        found.low = m;
      found.high = m;
    }
  return found;
}

// Exact fractions, recomputed. A published example prints [110, 161] for the last: the first
// rejected number on either side.
TEST(Hypergeometric, FiniteBatch) {
  EXPECT_EQ(filled_interval({300, 100, 2}, 0.95).value(), (CountInterval{2, 18}));
  EXPECT_EQ(filled_interval({50, 10, 3}, 0.95).value(), (CountInterval{5, 31}));
  EXPECT_EQ(filled_interval({300, 100, 45}, 0.95).value(), (CountInterval{111, 160}));
}

// The worked numbers of the command's own page.
TEST(Hypergeometric, SankAndFloated) {
  EXPECT_EQ(filled_interval({180, 10, 9}, 0.95).value(), (CountInterval{102, 179}));
  EXPECT_EQ(filled_interval({60, 10, 0}, 0.95).value(), (CountInterval{0, 17}));
}

TEST(Hypergeometric, NothingOrAllOpened) {
  EXPECT_EQ(filled_interval({40, 0, 0}, 0.95).value(), (CountInterval{0, 40}));
  EXPECT_EQ(filled_interval({40, 40, 7}, 0.95).value(), (CountInterval{7, 7}));
  EXPECT_EQ(filled_interval({0, 0, 0}, 0.95).value(), (CountInterval{0, 0}));
}

TEST(Hypergeometric, ATailEqualToTheBoundIsNotGreater) {
  // One of 40 opened and filled: P(X >= 1 | M) = M/40 is 1/40 at M = 1.
  EXPECT_EQ(filled_interval({40, 1, 1}, 0.95).value(), (CountInterval{2, 40}));
  EXPECT_EQ(filled_interval({40, 1, 0}, 0.95).value(), (CountInterval{0, 38}));
  EXPECT_EQ(filled_interval({1'000'000'000, 1, 1}, 0.95).value().low, 25'000'001);
  EXPECT_EQ(filled_interval({1'000'000'000, 1, 0}, 0.9).value().high, 949'999'999);
  for (std::int64_t n = 1; n <= 400; ++n)
    for (const double confidence : {0.5, 0.8, 0.9, 0.95, 0.98, 0.99, 0.995}) {
      const Rational above = (1 - as_written(confidence)) / 2 * n;
      EXPECT_EQ(filled_interval({n, 1, 1}, confidence)->low,
                static_cast<std::int64_t>(numerator(above) / denominator(above)) + 1);
    }
}

TEST(Hypergeometric, IsTheDefinitionForEverySmallBatch) {
  for (std::int64_t seeds = 0; seeds <= 14; ++seeds)
    for (std::int64_t opened = 1; opened <= seeds; ++opened)
      for (std::int64_t filled = 0; filled <= opened; ++filled)
        for (const double confidence : {0.5, 0.9, 0.95})
          ASSERT_EQ(filled_interval({seeds, opened, filled}, confidence).value(),
                    by_definition({seeds, opened, filled}, confidence))
              << seeds << ' ' << opened << ' ' << filled << ' ' << confidence;
}

RC_GTEST_PROP(Hypergeometric, IsTheDefinition, ()) {
  const auto seeds = *rc::gen::inRange<std::int64_t>(1, 90);
  const auto opened = *rc::gen::inRange<std::int64_t>(1, seeds + 1);
  const auto filled = *rc::gen::inRange<std::int64_t>(0, opened + 1);
  const double confidence = *rc::gen::inRange(1, 1000) / 1000.0;
  RC_ASSERT(filled_interval({seeds, opened, filled}, confidence).value() ==
            by_definition({seeds, opened, filled}, confidence));
}

RC_GTEST_PROP(Hypergeometric, WidensWithConfidence, ()) {
  const auto seeds = *rc::gen::inRange<std::int64_t>(1, 100'000);
  const auto opened = *rc::gen::inRange<std::int64_t>(1, seeds + 1);
  const auto filled = *rc::gen::inRange<std::int64_t>(0, opened + 1);
  const auto narrow = filled_interval({seeds, opened, filled}, 0.8).value();
  const auto wide = filled_interval({seeds, opened, filled}, 0.95).value();
  RC_ASSERT(wide.low <= narrow.low && narrow.low <= narrow.high && narrow.high <= wide.high);
}

TEST(Hypergeometric, DoublesAreGoodFarInsideTheirTolerance) {
  for (const auto& [draw, count] : {std::pair{Draw{100'000, 30'000, 400}, 95},
                                    {Draw{100'000, 20'000, 300}, 75},
                                    {Draw{2'000, 1'000, 1'000}, 480},
                                    {Draw{1'000'000'000, 250'000'000, 300}, 60}}) {
    const double known =
        static_cast<double>(exact(draw.population, draw.marked, draw.drawn, 0, count));
    EXPECT_NEAR(at_most(draw, count) / known, 1, 1e-10);
  }
}

TEST(Hypergeometric, LargeBatchesAreReckonedToTheEnd) {
  for (std::int64_t filled = 0; filled <= 50'000; filled += 5'000) {
    const auto found = filled_interval({100'000, 50'000, filled}, 0.95).value();
    EXPECT_LE(found.low, 2 * filled);
    EXPECT_GE(found.high, 2 * filled);
  }
  // Against the normal approximation, which is good to a few seeds here.
  constexpr double seeds = 1e9;
  constexpr double opened = 4e8;
  constexpr double share = 0.375;
  const double width =
      1.959964 * seeds * std::sqrt(share * (1 - share) / opened * (1 - opened / seeds));
  const auto found = filled_interval({1'000'000'000, 400'000'000, 150'000'000}, 0.95).value();
  EXPECT_NEAR(static_cast<double>(found.low), share * seeds - width, 10);
  EXPECT_NEAR(static_cast<double>(found.high), share * seeds + width, 10);
}

TEST(Hypergeometric, RefusesWhatCannotBe) {
  EXPECT_NE(filled_interval({5, 6, 0}, 0.95).error().what.find("1 too many"), std::string::npos);
  EXPECT_NE(filled_interval({20, 10, 12}, 0.95).error().what.find("2 too many"), std::string::npos);
  EXPECT_FALSE(filled_interval({-1, 0, 0}, 0.95));
  EXPECT_FALSE(filled_interval({2'000'000'000, 0, 0}, 0.95));
  EXPECT_FALSE(filled_interval({5, 1, 0}, 1.0));
  EXPECT_FALSE(filled_interval({5, 1, 0}, 0.0));
}

TEST(AsWritten, IsTheDecimal) {
  EXPECT_EQ(as_written(0.95), Rational(19, 20));
  EXPECT_EQ(as_written(0.1), Rational(1, 10));
  EXPECT_EQ(as_written(-152.4), Rational(-1524, 10));
  EXPECT_EQ(as_written(1e22), Rational(cpp_int("10000000000000000000000")));
  EXPECT_EQ(as_written(3e-7), Rational(3, 10'000'000));
  EXPECT_EQ(as_written(0), Rational(0));
}

} // namespace
} // namespace coneline::stats
