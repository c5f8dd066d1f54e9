// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/coming.h"
#include "tests/core/stats/drawn_trays.h"
#include "tests/core/stats/published_data.h"

#include <boost/random/normal_distribution.hpp>
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <map>

namespace coneline::stats {
namespace {

std::vector<TrayNow> now(const std::vector<Tray>& trays) {
  std::vector<TrayNow> made;
  for (const auto& tray : trays)
    made.push_back({tray, tray.last_day()});
  return made;
}

Coming coming_of(const std::vector<Tray>& trays, const GerminationPrior& prior,
                 const ComingAsked& asked = {}) {
  return coming(now(trays), germination_posterior(trays, prior), asked);
}

TEST(Coming, NothingOfNothing) {
  const auto found = coming_of({{"A", "1", 20, {{5, 12, 0}, {9, 4, 4}}}}, weak_prior(20));
  EXPECT_EQ(found.waiting, 0);
  EXPECT_EQ(found.seeds.high, 0);
  EXPECT_EQ(found.chance_of_one, 0);
  EXPECT_FALSE(found.half);
}

// Chickweed of Ritz, Pipper & Streibig 2013, hours: 34 looks, the last of them long after the last
// seedling.
TEST(Coming, AlmostNothingWhereAllHasLongBeenStill) {
  const auto found = coming_of(chickweed(), weak_prior(200));
  EXPECT_LE(found.seeds.high, 3);
  EXPECT_LT(found.chance_of_one, 0.7);
  EXPECT_LE(found.within.front().seeds.high, found.seeds.high);
}

TEST(Coming, AStepwiseWaitIsConsistent) {
  const std::vector<Tray> trays{{"A", "1", 50, {{30, 4, 0}, {45, 8, 0}, {60, 9, 0}}},
                                {"A", "2", 50, {{30, 2, 0}, {45, 7, 1}, {60, 8, 0}}}};
  const auto found = coming_of(trays, weak_prior(60), {0.8, {10, 30, 90, 3650}});
  std::int64_t before = 0;
  double chance = 0;
  double mean = 0;
  for (const auto& within : found.within) {
    EXPECT_GE(within.seeds.high, before);
    EXPECT_GE(within.chance_of_one, chance - 1e-12);
    EXPECT_GE(within.seeds.mean, mean);
    before = within.seeds.high;
    chance = within.chance_of_one;
    mean = within.seeds.mean;
  }
  EXPECT_LE(chance, found.chance_of_one + 1e-12);
  EXPECT_LE(mean, found.seeds.mean);
  ASSERT_TRUE(found.half && found.nine_tenths && found.half->median && found.nine_tenths->median);
  EXPECT_LT(*found.half->low, *found.half->median);
  EXPECT_LT(*found.half->median, *found.nine_tenths->median);
}

// Many finished crosses alike; the new one has only been sown. Then the prior speaks, and after
// many looks that say otherwise it no longer does.
TEST(Coming, TheTaxonSpeaksFirstAndTheTrayTakesOver) {
  std::vector<EarlierCross> earlier(
      12, {Belief{1.0, 0.2}, Belief{std::log(80), 0.1}, Belief{0.8, 0.2}, Belief{-3, 0.3}});
  const auto prior = prior_from(earlier, 182);
  const std::vector<Tray> fresh{{"A", "1", 100, {{10, 0, 0}}}};
  const auto first = coming_of(fresh, prior);
  EXPECT_NEAR(static_cast<double>(first.seeds.median), 73, 6); // logistic(1) of 100
  EXPECT_NEAR(first.half->median.value(), 70, 8);
  EXPECT_LT(first.seeds.high - first.seeds.low, 50);
  const auto weak = coming_of(fresh, weak_prior(182));
  EXPECT_GT(weak.seeds.high - weak.seeds.low, 60);

  std::vector<Tray> poor{{"A", "1", 100, {}}};
  for (int look = 1; look <= 30; ++look)
    poor.front().looks.push_back({look * 14.0, look == 5 || look == 6 ? 6 : 0, 0});
  const auto later = coming_of(poor, prior);
  EXPECT_LE(later.seeds.high, 1);
  EXPECT_LT(later.chance_of_one, 0.2);
}

/// A taxon: where its crosses lie and how they scatter.
struct Taxon {
  double share;
  double half;
  double steepness;
  double rho;
};

class Seasons {
 public:
  explicit Seasons(std::uint32_t seed) : draw_(seed), normal_source_(seed + 1) {}

  double normal(double middle, double spread) {
    return boost::random::normal_distribution<double>(middle, spread)(normal_source_);
  }
  Taxon taxon() {
    return {normal(0.3, 1), normal(std::log(90), 0.5), normal(0.6, 0.3), draw_.between(0, 0.12)};
  }
  /// A cross of the taxon, looked at until `progress` of its curve. Truth: how many more, and how
  /// many of them in the next 30 days.
  struct Made {
    std::vector<Tray> trays;
    std::int64_t more = 0;
    std::int64_t soon = 0;
  };
  Made cross(const Taxon& taxon, double progress) {
    const double share = 1 / (1 + std::exp(-normal(taxon.share, 0.5)));
    const double shape = std::exp(normal(taxon.steepness, 0.2)) * 2.197; // ln 9, log-logistic
    const Curve curve{Family::log_logistic, 1, shape, std::exp(normal(taxon.half, 0.25))};
    const double stop = curve.day_of_progress(progress);
    const double interval = std::max(stop / 40, draw_.between(5, 20));
    Made made;
    const int trays = draw_.whole(1, 6);
    for (int i = 0; i < trays; ++i) {
      Tray tray{"cross", std::to_string(i), 25, {}};
      for (double day = interval; day < stop; day += interval)
        tray.looks.push_back({day, 0, 0});
      tray.looks.push_back({stop, 0, 0});
      const double own = std::clamp(draw_.share(share, taxon.rho), 0.0, 1.0);
      for (int seed = 0; seed < 25; ++seed)
        if (draw_.happens(own))
          put(made, tray, curve.day_of_progress(std::clamp(draw_.even(), 1e-12, 1 - 1e-12)));
      made.trays.push_back(tray);
    }
    return made;
  }
  double even(double low, double high) { return draw_.between(low, high); }
  int whole(int low, int high) { return draw_.whole(low, high); }

 private:
  static void put(Made& made, Tray& tray, double day) {
    const auto seen = std::ranges::lower_bound(tray.looks, day, {}, &Look::day);
    if (seen != tray.looks.end()) {
      ++seen->germinated;
      return;
    }
    ++made.more;
    made.soon += day <= tray.last_day() + 30 ? 1 : 0;
  }

  Chance draw_;
  boost::random::mt19937 normal_source_;
};

struct Kept {
  int crosses = 0;
  int ever_80 = 0;
  int ever_95 = 0;
  int soon_80 = 0;
  double width = 0;
  double weak_width = 0;
};

EarlierCross said_by(const std::vector<Tray>& trays, double usual_day) {
  const auto weak = weak_prior(usual_day);
  return as_earlier_cross(germination_posterior(trays, weak), weak);
}

/// Invented taxa with 0 to 8 earlier crosses: the ranges hold the truth as often as they say, and
/// what the book knows makes them narrower. CONELINE_CROSSES sets how many are drawn.
TEST(Coming, RangesHoldTheTruthWithEarlierCrosses) {
  const char* wanted = std::getenv("CONELINE_CROSSES");
  const int crosses = wanted != nullptr ? std::atoi(wanted) : 150;
  constexpr double usual_day = 120;
  Seasons seasons(4);
  std::map<std::string, Kept> table;
  for (int i = 0; i < crosses; ++i) {
    const auto taxon = seasons.taxon();
    std::vector<EarlierCross> earlier;
    for (int j = seasons.whole(0, 8); j > 0; --j)
      earlier.push_back(said_by(seasons.cross(taxon, seasons.even(0.5, 0.999)).trays, usual_day));
    const auto cross = seasons.cross(taxon, seasons.even(0.01, 0.98));
    const auto prior = prior_from(earlier, usual_day);
    const auto posterior = germination_posterior(cross.trays, prior);
    const auto eighty = coming(now(cross.trays), posterior, {0.8, {30}});
    const auto ninety_five = coming(now(cross.trays), posterior, {0.95, {30}});
    const auto weak = coming_of(cross.trays, weak_prior(usual_day), {0.8, {30}});
    const auto few = earlier.size() < 2 ? "0 or 1 earlier cross" : "2 to 8 earlier crosses";
    for (const auto* row : {"all", few}) {
      auto& kept = table[row];
      const auto holds = [](const CountRange& range, std::int64_t truth) {
        return range.low <= truth && truth <= range.high ? 1 : 0;
      };
      ++kept.crosses;
      kept.ever_80 += holds(eighty.seeds, cross.more);
      kept.ever_95 += holds(ninety_five.seeds, cross.more);
      kept.soon_80 += holds(eighty.within.front().seeds, cross.soon);
      kept.width += static_cast<double>(eighty.seeds.high - eighty.seeds.low);
      kept.weak_width += static_cast<double>(weak.seeds.high - weak.seeds.low);
    }
  }
  fmt::print("{:24} {:>7} {:>9} {:>9} {:>17} {:>10} {:>11}\n", "with what the book knows",
             "crosses", "80 % held", "95 % held", "next 30 days, 80", "80 % width", "weak prior's");
  for (const auto& [row, kept] : table)
    fmt::print("{:24} {:7} {:9.1f} {:9.1f} {:17.1f} {:10.1f} {:11.1f}\n", row, kept.crosses,
               100.0 * kept.ever_80 / kept.crosses, 100.0 * kept.ever_95 / kept.crosses,
               100.0 * kept.soon_80 / kept.crosses, kept.width / kept.crosses,
               kept.weak_width / kept.crosses);
  const auto& all = table["all"];
  const double allowed = 3 * 100 * std::sqrt(0.16 / crosses); // three standard errors
  EXPECT_NEAR(100.0 * all.ever_80 / crosses, 80, 3 + allowed);
  EXPECT_NEAR(100.0 * all.ever_95 / crosses, 95, 2 + 3 * 100 * std::sqrt(0.0475 / crosses));
  EXPECT_LT(table["2 to 8 earlier crosses"].width, table["2 to 8 earlier crosses"].weak_width);
}

} // namespace
} // namespace coneline::stats
