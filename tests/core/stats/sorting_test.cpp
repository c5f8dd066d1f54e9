// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/batch_interval.h"
#include "core/stats/sorting.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

namespace coneline::stats {
namespace {

double log_choose(std::int64_t n, std::int64_t k) {
  if (k < 0 || k > n)
    return -INFINITY;
  const auto log_factorial = [](std::int64_t i) { return std::lgamma(static_cast<double>(i) + 1); };
  return log_factorial(n) - log_factorial(k) - log_factorial(n - k);
}

double chance(const CutTest& part, std::int64_t m, std::int64_t x) {
  return std::exp(log_choose(m, x) + log_choose(part.seeds - m, part.opened - x) -
                  log_choose(part.seeds, part.opened));
}

/// chances[m][x] of a part.
std::vector<std::vector<double>> chances(const CutTest& part) {
  std::vector<std::vector<double>> table;
  for (std::int64_t m = 0; m <= part.seeds; ++m) {
    table.emplace_back();
    for (std::int64_t x = 0; x <= part.opened; ++x)
      table.back().push_back(chance(part, m, x));
  }
  return table;
}

/// What the intervals for every outcome of two parts do under every pair of true numbers.
struct Behaviour {
  double least_coverage = 1;
  double mean_width = 0;
  double mean_width_of_sums = 0; ///< of the parts' own intervals, added
};

Behaviour behaviour(std::int64_t seeds_one, std::int64_t opened_one, std::int64_t seeds_two,
                    std::int64_t opened_two, double confidence) {
  const CutTest one{seeds_one, opened_one, 0};
  const CutTest two{seeds_two, opened_two, 0};
  const auto chances_one = chances(one);
  const auto chances_two = chances(two);
  std::vector<std::vector<Sorted>> found;
  for (std::int64_t x = 0; x <= opened_one; ++x) {
    found.emplace_back();
    for (std::int64_t y = 0; y <= opened_two; ++y)
      found.back().push_back(
          sort_by_water({seeds_one, opened_one, x}, {seeds_two, opened_two, y}, confidence)
              .value());
  }
  Behaviour b;
  for (std::size_t m = 0; m < chances_one.size(); ++m)
    for (std::size_t w = 0; w < chances_two.size(); ++w) {
      double coverage = 0;
      for (std::size_t x = 0; x < found.size(); ++x)
        for (std::size_t y = 0; y < found[x].size(); ++y) {
          const double p = chances_one[m][x] * chances_two[w][y];
          const auto& [sank, floated, batch, left] = found[x][y];
          const auto truth = static_cast<std::int64_t>(m + w);
          if (batch.low <= truth && truth <= batch.high)
            coverage += p;
          b.mean_width += p * static_cast<double>(batch.high - batch.low);
          b.mean_width_of_sums +=
              p * static_cast<double>(sank.high + floated.high - sank.low - floated.low);
        }
      b.least_coverage = std::min(b.least_coverage, coverage);
    }
  const auto pairs = static_cast<double>(chances_one.size() * chances_two.size());
  b.mean_width /= pairs;
  b.mean_width_of_sums /= pairs;
  return b;
}

TEST(Sorting, TheBatchCoversForEveryPairOfTrueNumbersAndIsNotMerelyWide) {
  struct Case {
    std::int64_t seeds_one, opened_one, seeds_two, opened_two;
  };
  for (const auto& c :
       {Case{40, 8, 20, 5}, Case{60, 10, 20, 10}, Case{30, 5, 50, 10}, Case{25, 12, 25, 3},
        Case{100, 10, 40, 10}, Case{24, 6, 24, 6}, Case{12, 2, 90, 15}, Case{180, 10, 60, 10}})
    for (const double confidence : {0.8, 0.95}) {
      const auto b = behaviour(c.seeds_one, c.opened_one, c.seeds_two, c.opened_two, confidence);
      const auto which = fmt::format("{} {} {} {} at {}", c.seeds_one, c.opened_one, c.seeds_two,
                                     c.opened_two, confidence);
      EXPECT_GE(b.least_coverage, confidence - 1e-9) << which;
      EXPECT_LT(b.least_coverage, confidence + 0.02) << which;
      EXPECT_LT(b.mean_width, 0.88 * b.mean_width_of_sums) << which;
    }
}

TEST(Sorting, TheBatchCoversForEverySmallPairOfParts) {
  for (std::int64_t one = 1; one <= 8; ++one)
    for (std::int64_t two = 1; two <= 6; ++two)
      for (std::int64_t opened_one = 0; opened_one <= one; ++opened_one)
        for (std::int64_t opened_two = 0; opened_two <= two; ++opened_two)
          for (const double confidence : {0.5, 0.95})
            ASSERT_GE(behaviour(one, opened_one, two, opened_two, confidence).least_coverage,
                      confidence - 1e-9)
                << one << ' ' << opened_one << ' ' << two << ' ' << opened_two << ' ' << confidence;
}

/// The batch interval word for word from its header, without staircases or bounds.
CountInterval by_definition(const CutTest& one, const CutTest& two, double confidence) {
  const auto chances_one = chances(one);
  const auto chances_two = chances(two);
  const auto total = static_cast<std::size_t>(one.seeds + two.seeds);
  const auto ratios = [&](std::size_t x, std::size_t y) {
    std::vector<double> best(total + 1, 0.0);
    for (std::size_t m = 0; m < chances_one.size(); ++m)
      for (std::size_t w = 0; w < chances_two.size(); ++w)
        best[m + w] = std::max(best[m + w], chances_one[m][x] * chances_two[w][y]);
    const double most = *std::max_element(best.begin(), best.end());
    for (auto& value : best)
      value = std::log(most) - std::log(value);
    return best;
  };
  const auto seen =
      ratios(static_cast<std::size_t>(one.filled), static_cast<std::size_t>(two.filled));
  std::map<std::pair<std::size_t, std::size_t>, double> p_values;
  for (std::size_t x = 0; x <= static_cast<std::size_t>(one.opened); ++x)
    for (std::size_t y = 0; y <= static_cast<std::size_t>(two.opened); ++y) {
      const auto here = ratios(x, y);
      for (std::size_t m = 0; m < chances_one.size(); ++m)
        for (std::size_t w = 0; w < chances_two.size(); ++w)
          if (here[m + w] >= seen[m + w] - 1e-7)
            p_values[{m, w}] += chances_one[m][x] * chances_two[w][y];
    }
  CountInterval interval{one.seeds + two.seeds, 0};
  for (const auto& [pair, p] : p_values) {
    const auto [m, w] = pair;
    const bool possible = chances_one[m][static_cast<std::size_t>(one.filled)] > 0 &&
                          chances_two[w][static_cast<std::size_t>(two.filled)] > 0;
    if (possible && p > (1 - confidence) * (1 - 1e-9)) {
      interval.low = std::min(interval.low, static_cast<std::int64_t>(m + w));
      interval.high = std::max(interval.high, static_cast<std::int64_t>(m + w));
    }
  }
  return interval;
}

RC_GTEST_PROP(Sorting, TheBatchIntervalIsItsDefinition, ()) {
  const auto part = [] {
    const auto seeds = *rc::gen::inRange<std::int64_t>(1, 25);
    const auto opened = *rc::gen::inRange<std::int64_t>(1, std::min<std::int64_t>(seeds, 7) + 1);
    return CutTest{seeds, opened, *rc::gen::inRange<std::int64_t>(0, opened + 1)};
  };
  const auto one = part();
  const auto two = part();
  const double confidence = *rc::gen::element(0.5, 0.8, 0.9, 0.95, 0.99);
  RC_ASSERT(batch_interval(one, two, confidence) == by_definition(one, two, confidence));
}

RC_GTEST_PROP(Sorting, TheBatchIsTheSameWhicheverPartComesFirstAndWidensWithConfidence, ()) {
  const auto part = [] {
    const auto seeds = *rc::gen::inRange<std::int64_t>(0, 120);
    const auto opened = *rc::gen::inRange<std::int64_t>(0, std::min<std::int64_t>(seeds, 12) + 1);
    return CutTest{seeds, opened, *rc::gen::inRange<std::int64_t>(0, opened + 1)};
  };
  const auto one = part();
  const auto two = part();
  const auto here = sort_by_water(one, two, 0.95).value();
  RC_ASSERT(here.batch == sort_by_water(two, one, 0.95).value().batch);
  const auto narrow = sort_by_water(one, two, 0.8).value().batch;
  RC_ASSERT(here.batch.low <= narrow.low && narrow.high <= here.batch.high);
  RC_ASSERT(!here.batch.estimate || (static_cast<double>(here.batch.low) <= *here.batch.estimate &&
                                     *here.batch.estimate <= static_cast<double>(here.batch.high)));
  RC_ASSERT(here.left.low == here.batch.low - one.filled - two.filled);
}

TEST(Sorting, CoversInSimulatedNurseries) {
  std::mt19937_64 random(20260401);
  const CutTest sank{180, 10, 0};
  const CutTest floated{60, 10, 0};
  const auto cut = [&](const CutTest& part, std::int64_t m) {
    std::int64_t found = 0;
    for (std::int64_t i = 0; i < part.opened; ++i) {
      const auto left = static_cast<std::uint64_t>(part.seeds - i);
      found += random() % left < static_cast<std::uint64_t>(m - found) ? 1 : 0;
    }
    return CutTest{part.seeds, part.opened, found};
  };
  std::map<std::pair<std::int64_t, std::int64_t>, Filled> known; // the interval of each outcome
  const auto batch_of = [&](const CutTest& down, const CutTest& up) {
    const auto [place, fresh] = known.try_emplace({down.filled, up.filled});
    if (fresh)
      place->second = sort_by_water(down, up, 0.95).value().batch;
    return place->second;
  };
  for (const auto& [m, w] : {std::pair<int, int>{162, 3}, {120, 30}, {175, 0}, {90, 50}}) {
    int held = 0;
    for (int season = 0; season < 4000; ++season) {
      const auto batch = batch_of(cut(sank, m), cut(floated, w));
      held += batch.low <= m + w && m + w <= batch.high ? 1 : 0;
    }
    EXPECT_GE(held, 4000 * 0.95 - 4 * std::sqrt(4000 * 0.95 * 0.05)) << m << ' ' << w;
  }
}

// The worked numbers of the command's own page; the batch interval is its own.
TEST(Sorting, SankAndFloated) {
  const auto sorted = sort_by_water({180, 10, 9}, {60, 10, 0}, 0.95).value();
  EXPECT_EQ(sorted.sank, (Filled{162.0, 102, 179}));
  EXPECT_EQ(sorted.floated, (Filled{0.0, 0, 17}));
  EXPECT_EQ(sorted.batch.estimate, 162.0);
  EXPECT_EQ(sorted.left.estimate, 153.0);
  EXPECT_GE(sorted.batch.low, 102);
  EXPECT_LT(sorted.batch.high, 196);
  EXPECT_EQ(sorted.left.low, sorted.batch.low - 9);
  EXPECT_EQ(sorted.left.high, sorted.batch.high - 9);
}

TEST(Sorting, APartThatWasNotOpenedCanBeAnything) {
  const auto sorted = sort_by_water({180, 10, 9}, {60, 0, 0}, 0.95).value();
  EXPECT_EQ(sorted.floated, (Filled{std::nullopt, 0, 60}));
  EXPECT_EQ(sorted.batch, (Filled{std::nullopt, 102, 239}));
  EXPECT_EQ(sorted.left, (Filled{std::nullopt, 93, 230}));
}

TEST(Sorting, APartThatIsKnownAddsNoWidth) {
  EXPECT_EQ(sort_by_water({180, 10, 9}, {0, 0, 0}, 0.95)->batch, (Filled{162.0, 102, 179}));
  EXPECT_EQ(sort_by_water({180, 10, 9}, {5, 5, 2}, 0.95)->batch, (Filled{164.0, 104, 181}));
  EXPECT_EQ(sort_by_water({0, 0, 0}, {0, 0, 0}, 0.95)->batch, (Filled{0.0, 0, 0}));
}

TEST(Sorting, ALargeBatchIsReckonedToTheEnd) {
  for (const auto& [one, two] :
       {std::pair{CutTest{1000, 50, 30}, CutTest{1000, 50, 20}},
        {CutTest{1950, 25, 24}, CutTest{50, 25, 0}},
        {CutTest{20'000, 50, 40}, CutTest{20'000, 50, 5}},
        {CutTest{2'000, 600, 550}, CutTest{2'000, 600, 25}},
        {CutTest{1'000'000'000, 5'000, 4'000}, CutTest{1'000'000'000, 1, 0}}}) {
    SCOPED_TRACE(fmt::format("{} {}", one.seeds, one.opened));
    const auto batch = sort_by_water(one, two, 0.95).value().batch;
    const auto filled = one.filled + two.filled;
    EXPECT_GE(batch.low, filled) << "those were seen";
    EXPECT_LE(batch.high, one.seeds + two.seeds - (one.opened + two.opened - filled));
    ASSERT_TRUE(batch.estimate);
    EXPECT_LE(static_cast<double>(batch.low), *batch.estimate);
    EXPECT_GE(static_cast<double>(batch.high), *batch.estimate);
  }
}

TEST(Sorting, SaysWhichPartCannotBe) {
  const auto why = sort_by_water({20, 10, 12}, {5, 0, 0}, 0.95).error().what;
  EXPECT_NE(why.find("sank"), std::string::npos);
  EXPECT_NE(why.find("2 too many"), std::string::npos);
  EXPECT_NE(sort_by_water({20, 0, 0}, {5, 9, 0}, 0.95).error().what.find("floated"),
            std::string::npos);
  EXPECT_FALSE(sort_by_water({20, 0, 0}, {5, 0, 0}, 1.0));
}

} // namespace
} // namespace coneline::stats
