// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast.h"
#include "core/plan/forecast_expected.h"
#include "core/plan/forecast_run.h"
#include "tests/core/plan/invented_lots.h"

#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/chi_squared.hpp>

#include <cmath>
#include <cstdlib>
#include <limits>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

constexpr double certain = std::numeric_limits<double>::infinity();

std::size_t series(const Forecast& forecast, Shown shown, const std::string& name) {
  return forecast.find({shown, name}).value();
}

/// The route's months and shares taken for certain: what the plan of needs works out.
ForecastInput certain_plan(const NeedsInput& standing) {
  ForecastInput input;
  input.standing = standing;
  input.assumed.survival_weight = certain;
  input.assumed.season_weight = certain;
  for (auto& route : input.standing.registers.routes)
    for (auto& step : route.steps)
      step.months = {step.months.middle(), step.months.middle()};
  return input;
}

TEST(Forecast, OfPlantsInOneLitreByHand) {
  // As in the plan of needs: 100 plants in 1 L since 1 March 2025 are due in March 2026, of which
  // 90 are expected to live; 12 months from the middle of March they are ready, 85.5 of them.
  auto standing = small_plan("2026-01-15");
  standing.groups = {group(one_litre, "2025-03-01", 100)};
  const auto input = certain_plan(standing);
  const auto forecast = forecast_of(input, {.runs = 4000, .seed = 3, .threads = 1, .go_on = {}});
  ASSERT_TRUE(forecast);
  const auto into = series(*forecast, Shown::into, "3 L");
  const auto litres = series(*forecast, Shown::mix, "cycad mix");
  const auto ready = series(*forecast, Shown::ready, "A × B");
  EXPECT_EQ(forecast->mean(into, 1), 0);
  EXPECT_NEAR(forecast->mean(into, 2), 90, 0.2);
  EXPECT_NEAR(forecast->mean(litres, 2), 198, 0.5);
  EXPECT_NEAR(forecast->mean(ready, 14), 85.5, 0.25);
  // Exact binomial points of 100 at 0.9: P(X <= 85) = 0.073, P(X <= 86) = 0.124; P(X <= 94) =
  // 0.942.
  const auto range = forecast->range(into, 2);
  EXPECT_EQ(range.low, 86);
  EXPECT_EQ(range.middle, 90);
  EXPECT_EQ(range.high, 94);
  const auto means = expected(forecast->ways(), input);
  EXPECT_DOUBLE_EQ(means[into][2], 90);
  EXPECT_DOUBLE_EQ(means[litres][2], 198);
  EXPECT_DOUBLE_EQ(means[ready][14], 85.5);
  EXPECT_DOUBLE_EQ(means[series(*forecast, Shown::square_metres, "part shade")][1], 1);
  EXPECT_DOUBLE_EQ(means[series(*forecast, Shown::square_metres, "sun")][2], 90 * 0.04);
  // 90 pots of 3 L at 0.9 kg on 3.6 m².
  EXPECT_NEAR(means[series(*forecast, Shown::load, "sun")][2], 67.5, 1e-9);
}

TEST(Forecast, OfOneTrayWithFixedParametersIsTheExactBinomial) {
  // 40 seeds, each coming up in one of three months with 0.5 in all, potted when due with 0.8: the
  // number that reaches 1 L is binomial with 0.4.
  auto standing = small_plan("2026-01-01", 12);
  standing.trays = {tray("2026-01-01", 40, 0, 40, 0)};
  auto input = certain_plan(standing);
  CrossSprouting cross;
  cross.trays = {standing.trays.front().code};
  cross.months = 3;
  cross.draws = {{0.1, 0.15, 0.25}};
  input.sprouting = {cross};
  constexpr int runs = 20000;
  const auto forecast = forecast_of(input, {.runs = runs, .seed = 11, .threads = 0, .go_on = {}});
  ASSERT_TRUE(forecast);
  const auto into = series(*forecast, Shown::into, "1 L");
  std::vector<int> seen(41, 0);
  for (int run = 0; run < runs; ++run)
    ++seen.at(static_cast<std::size_t>(forecast->value(into, run, 6)));
  const boost::math::binomial_distribution<> exact(40, 0.4);
  double chi_square = 0;
  int cells = 0;
  double rest = runs;
  int rest_seen = runs;
  for (int k = 0; k <= 40; ++k) {
    const double of_runs = runs * boost::math::pdf(exact, k);
    if (of_runs < 5)
      continue;
    const double off = seen[static_cast<std::size_t>(k)] - of_runs;
    chi_square += off * off / of_runs;
    ++cells;
    rest -= of_runs;
    rest_seen -= seen[static_cast<std::size_t>(k)];
  }
  chi_square += (rest_seen - rest) * (rest_seen - rest) / rest;
  const boost::math::chi_squared_distribution<> law(cells);
  EXPECT_LT(chi_square, boost::math::quantile(law, 0.999)) << cells << " cells";
  EXPECT_GT(chi_square, boost::math::quantile(law, 0.0005)) << "too good to be draws";
}

TEST(Forecast, ItsMeanIsTheConvolvedExpectation) {
  // CONELINE_EXACT_RUNS makes it sharper; tests/measured/what_if.md has a table of more.
  const auto* asked = std::getenv("CONELINE_EXACT_RUNS");
  const int runs = asked != nullptr ? std::atoi(asked) : 4000;
  auto input = invented_lots(60, 36);
  input.assumed.potting = {false, false, true, true, true,  true,
                           true,  true,  true, true, false, false};
  input.history[{book::TaxonId{1}, 1}] = equivalent(40, 10, input.assumed.season_weight);
  input.assumed.sold_after = 5;
  add_sowings(input);
  const auto forecast = forecast_of(input, {.runs = runs, .seed = 5, .threads = 0, .go_on = {}});
  ASSERT_TRUE(forecast);
  const auto means = expected(forecast->ways(), input);
  std::map<Shown, std::pair<int, double>> tried; // how many, the furthest in standard errors
  for (std::size_t at = 0; at < means.size(); ++at) {
    const auto& name = forecast->series()[at];
    if (name.shown == Shown::load)
      continue; // a quotient: its mean is not the quotient of the means
    for (std::size_t month = 0; month < 36; ++month) {
      const double mean = forecast->mean(at, month);
      double squares = 0;
      for (int run = 0; run < runs; ++run)
        squares += std::pow(static_cast<double>(forecast->value(at, run, month)) - mean, 2);
      const double error = std::sqrt(squares / (runs - 1.0) / runs);
      const double off = std::abs(mean - means[at][month]);
      EXPECT_LE(off, 4 * error + 1e-5 * (1 + means[at][month]))
          << name.name << " month " << month << ": " << mean << " drawn, " << means[at][month]
          << " expected, standard error " << error;
      auto& [count, furthest] = tried[name.shown];
      ++count;
      if (error > 1e-9)
        furthest = std::max(furthest, off / error);
    }
  }
  for (const auto& [shown, found] : tried)
    fmt::print("  kind {}: {} months, furthest {:.2f} standard errors\n", static_cast<int>(shown),
               found.first, found.second);
}

TEST(Forecast, IsTheSameWhateverTheThreads) {
  const auto input = invented_lots(30, 24);
  const auto one = forecast_of(input, {.runs = 200, .seed = 9, .threads = 1, .go_on = {}});
  const auto three = forecast_of(input, {.runs = 200, .seed = 9, .threads = 3, .go_on = {}});
  const auto other = forecast_of(input, {.runs = 200, .seed = 10, .threads = 3, .go_on = {}});
  ASSERT_TRUE(one && three && other);
  bool differs = false;
  for (std::size_t at = 0; at < one->series().size(); ++at)
    for (int run = 0; run < 200; ++run)
      for (std::size_t month = 0; month < 24; ++month) {
        ASSERT_EQ(one->value(at, run, month), three->value(at, run, month));
        differs |= one->value(at, run, month) != other->value(at, run, month);
      }
  EXPECT_TRUE(differs);
}

TEST(Forecast, OfThreeTimesTheRunsBeginsWithTheSameRuns) {
  const auto input = invented_lots(10, 12);
  const auto few = forecast_of(input, {.runs = 50, .seed = 9, .threads = 2, .go_on = {}});
  const auto more = forecast_of(input, {.runs = 150, .seed = 9, .threads = 2, .go_on = {}});
  for (std::size_t month = 0; month < 12; ++month)
    EXPECT_EQ(few->value(0, 49, month), more->value(0, 49, month));
}

TEST(Forecast, TellsHowFarItIsAndCanBeStopped) {
  const auto input = invented_lots(10, 12);
  std::vector<int> told;
  ASSERT_TRUE(forecast_of(input, {.runs = 100, .seed = 1, .threads = 1, .go_on = [&](int done) {
                                    told.push_back(done);
                                    return true;
                                  }}));
  EXPECT_GT(told.size(), 3U);
  EXPECT_TRUE(std::ranges::is_sorted(told));
  int asked = 0;
  const auto stopped = forecast_of(
      input, {.runs = 100'000, .seed = 1, .threads = 2, .go_on = [&](int) { return ++asked < 3; }});
  ASSERT_FALSE(stopped);
  EXPECT_NE(stopped.error().what.find("stopped"), std::string::npos);
}

TEST(Forecast, AMoveWaitsForAPottingMonth) {
  auto standing = small_plan("2026-01-15");
  standing.groups = {group(one_litre, "2025-01-20", 100)}; // due this January
  auto input = certain_plan(standing);
  input.assumed.potting.fill(false);
  input.assumed.potting[4] = true; // May
  const auto forecast = forecast_of(input, {.runs = 10, .seed = 1, .threads = 1, .go_on = {}});
  const auto means = expected(forecast->ways(), input);
  const auto& into = means[series(*forecast, Shown::into, "3 L")];
  EXPECT_DOUBLE_EQ(into[4], 90);
  EXPECT_DOUBLE_EQ(sum(into), 90);
  // Entered in the middle of May, 12 months: ready in May of the next year.
  EXPECT_DOUBLE_EQ(means[series(*forecast, Shown::ready, "A × B")][16], 85.5);
}

TEST(Forecast, WhatIsSoldLeavesItsRoom) {
  auto standing = small_plan("2026-01-15");
  standing.groups = {group(three_litres, "2025-03-01", 100)};
  auto input = certain_plan(standing);
  input.assumed.sold_after = 2;
  const auto forecast = forecast_of(input, {.runs = 10, .seed = 1, .threads = 1, .go_on = {}});
  const auto means = expected(forecast->ways(), input);
  const auto& standing_by_month = means[series(*forecast, Shown::standing, "3 L")];
  EXPECT_DOUBLE_EQ(standing_by_month[1], 100);
  EXPECT_DOUBLE_EQ(standing_by_month[2], 95);
  EXPECT_DOUBLE_EQ(standing_by_month[3], 95);
  EXPECT_DOUBLE_EQ(standing_by_month[4], 0);
}

TEST(Forecast, ANumberOpensIntoItsLots) {
  const auto input = invented_lots(30, 24);
  const auto ways = ways_of(input);
  const auto means = expected(ways, input);
  for (std::size_t at = 0; at < means.size(); ++at) {
    if (ways.series[at].shown == Shown::load)
      continue;
    double all = ways.always[at];
    for (const auto& lot : made_of(ways, input, at, 10))
      all += lot.values[10];
    EXPECT_NEAR(all, means[at][10], 1e-9);
  }
}

TEST(Forecast, HistoryMovesSurvivalAsFarAsItWeighs) {
  // 20 plants at 60 a season are worth 20 / (1 + 19/61) = 15.25.
  const auto seen = equivalent(10, 10, 60);
  EXPECT_NEAR(seen.alive + seen.died, 15.25, 1e-9);
  auto standing = small_plan("2026-01-15");
  standing.groups = {group(one_litre, "2025-03-01", 100)};
  auto input = certain_plan(standing);
  input.assumed.survival_weight = 20;
  input.history[{cycas, 1}] = {10, 10};
  const auto means = expected(ways_of(input), input);
  const auto forecast = forecast_of(input, {.runs = 1, .seed = 1, .threads = 1, .go_on = {}});
  // (20 × 0.9 + 10) / 40 = 0.7
  EXPECT_NEAR(means[series(*forecast, Shown::into, "3 L")][2], 70, 1e-9);
}

TEST(Forecast, PlantsBoughtInTheFirstPotOfTheRouteTakeItsRoom) {
  // 100 plants of 50 a tray fill two trays of 0.5 × 0.4 m; 5 L at 0.9 kg each on 0.4 m².
  auto standing = small_plan("2026-01-15");
  standing.groups = {group(tray_of_50, "2026-01-10", 100)};
  const auto input = certain_plan(standing);
  const auto ways = ways_of(input);
  const auto means = expected(ways, input);
  const auto at = [&](Shown shown, const std::string& name) {
    return means[static_cast<std::size_t>(std::ranges::find(ways.series, SeriesName{shown, name}) -
                                          ways.series.begin())];
  };
  EXPECT_DOUBLE_EQ(at(Shown::standing, "tray")[1], 100);
  EXPECT_DOUBLE_EQ(at(Shown::square_metres, "part shade")[1], 0.4);
  EXPECT_DOUBLE_EQ(at(Shown::load, "part shade")[1], 2 * 5 * 0.9 / 0.4);
}

TEST(Forecast, APlaceOfAnotherLightClassIsLeft) {
  auto standing = small_plan("2026-01-15");
  standing.groups = {group(one_litre, "2025-03-01", 100)};
  auto input = certain_plan(standing);
  input.places[standing.groups.front().code] = book::PlaceId{1}; // part shade; 3 L wants sun
  const auto ways = ways_of(input);
  const auto means = expected(ways, input);
  const auto at = [&](Shown shown, const std::string& name) {
    return means[static_cast<std::size_t>(std::ranges::find(ways.series, SeriesName{shown, name}) -
                                          ways.series.begin())];
  };
  EXPECT_DOUBLE_EQ(at(Shown::place_metres, "bench A")[1], 1);
  EXPECT_DOUBLE_EQ(at(Shown::place_load, "bench A")[1], 100 * 0.9 / 2);
  EXPECT_DOUBLE_EQ(at(Shown::place_metres, "bench A")[2], 0);
  EXPECT_NEAR(at(Shown::unplaced_metres, "sun")[2], 3.6, 1e-9);
}

} // namespace
} // namespace coneline::plan
