// SPDX-License-Identifier: GPL-3.0-or-later
// Nurseries that are run forward, plant by plant, by a program that shares nothing with the
// forecast but the route: does what then happened lie in the 80 % range 80 times in 100?
//
//   CONELINE_NURSERIES=600 test_plan --gtest_filter='ForecastHonesty.*'      the table of
//   tests/measured/plan.md
#include "core/plan/forecast.h"
#include "tests/core/plan/invented_lots.h"

#include <cmath>
#include <cstdlib>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

constexpr int months = 24;

/// Draws by the standard library alone.
class Nature {
 public:
  explicit Nature(unsigned seed) : random_(seed) {}
  double uniform(double low, double high) {
    return std::uniform_real_distribution<>(low, high)(random_);
  }
  bool lucky(double share) { return uniform(0, 1) < share; }
  double beta(double a, double b) {
    const double x = std::gamma_distribution<>(a)(random_);
    return x / (x + std::gamma_distribution<>(b)(random_));
  }
  int whole(int low, int high) { return std::uniform_int_distribution<>(low, high)(random_); }

 private:
  std::mt19937 random_;
};

/// One nursery: what its grower knows, and what then happens.
class Nursery {
 public:
  explicit Nursery(unsigned seed) : nature_(seed) {
    input_.standing = small_plan("2026-11-01", months);
    auto& registers = input_.standing.registers;
    registers.taxa.push_back({book::TaxonId{3}, "Dioon edule", {}, {}, {}, {}, {}, {}});
    registers.routes = {invented_route(1), invented_route(2), invented_route(3)};
    for (const auto* pot : {"tray", "1 L", "3 L"})
      standing_[pot].assign(months, 0);
    litres_.assign(months, 0);
    for (const auto* light : {"part shade", "sun"})
      metres_[light].assign(months, 0);
    for (const auto& route : registers.routes)
      live_through(route);
    for (const auto& route : registers.routes)
      for (int cross = 0; cross < 3; ++cross)
        sow_and_wait(route, cross);
    for (int lot = 0; lot < 36; ++lot)
      stand(registers.routes[static_cast<std::size_t>(lot % 3)]);
  }

  [[nodiscard]] const ForecastInput& input() const { return input_; }
  [[nodiscard]] const std::map<std::string, ByMonth>& standing() const { return standing_; }
  [[nodiscard]] const std::map<std::string, ByMonth>& metres() const { return metres_; }
  [[nodiscard]] const ByMonth& litres() const { return litres_; }

 private:
  static int season(double time) { return static_cast<int>(std::floor((time + 10) / 12)); }

  /// The long-run share of each step is nature's, around the route's; two seasons have shown some
  /// of it, those to come are drawn.
  void live_through(const book::Route& route) {
    const auto& assumed = input_.assumed;
    for (std::size_t step = 0; step < route.steps.size(); ++step) {
      const double share = route.steps[step].survival;
      const double long_run =
          nature_.beta(assumed.survival_weight * share, assumed.survival_weight * (1 - share));
      const auto a_season = [&] {
        return nature_.beta(assumed.season_weight * long_run,
                            assumed.season_weight * (1 - long_run));
      };
      StepHistory history;
      for (int past = 0; past < 2; ++past) {
        const double lived = a_season();
        int alive = 0;
        for (int plant = 0; plant < 80; ++plant)
          alive += nature_.lucky(lived) ? 1 : 0;
        const auto seen = equivalent(alive, 80 - alive, assumed.season_weight);
        history.alive += seen.alive;
        history.died += seen.died;
      }
      input_.history[{route.taxon, step}] = history;
      for (int year = 0; year < 4; ++year)
        lives_[{route.taxon.value, step, year}] = a_season();
    }
  }

  void sow_and_wait(const book::Route& route, int number) {
    const double weight = input_.assumed.germination_weight;
    const double d = nature_.beta(weight * route.germination, weight * (1 - route.germination));
    const auto today = input_.standing.today;
    std::vector<SproutingTray> trays;
    for (int tray = 0; tray < 3; ++tray) {
      const int age = nature_.whole(5, 280);
      const auto sown_on = today.plus_days(-age);
      const double sown = -age / 30.4375;
      TrayStanding standing{Code::of(Kind::tray, 17, ++codes_).value(),
                            "cross " + std::to_string(route.id.value * 10 + number),
                            route.taxon,
                            tray_of_50,
                            sown_on,
                            nature_.whole(40, 120),
                            0,
                            0,
                            0};
      const double due = later(sown, route.steps[0].months);
      std::vector<double> to_come;
      for (int seed = 0; seed < standing.sown; ++seed) {
        if (!nature_.lucky(d))
          continue;
        const double up =
            sown + nature_.uniform(route.germination_months.low, route.germination_months.high);
        if (up <= 0)
          ++standing.germinated;
        else
          to_come.push_back(up);
      }
      standing.seedlings = standing.germinated;
      standing.waiting = standing.sown - standing.germinated;
      trays.push_back({standing, 0, today});
      input_.standing.trays.push_back(standing);
      grow_tray(route, standing, due, to_come);
    }
    input_.sprouting.push_back(route_sprouting(route, trays, today, months, weight));
  }

  void grow_tray(const book::Route& route, const TrayStanding& tray, double due,
                 const std::vector<double>& to_come) {
    double cleared = sprouts_until(route, tray);
    cleared = tray.seedlings > 0 || cleared > 0 ? std::max(std::floor(due), cleared) : 0;
    metres("part shade", 0, cleared, registers().pot(tray_of_50).square_metres());
    std::map<int, int> potted;
    for (int plant = 0; plant < tray.seedlings; ++plant) {
      count("tray", 0, due);
      ++potted[static_cast<int>(std::floor(due))];
    }
    for (const double up : to_come) {
      const double leaves = std::max(std::floor(due), std::floor(up));
      count("tray", up, leaves);
      ++potted[static_cast<int>(leaves)];
    }
    for (const auto& [month, plants] : potted)
      go_on(route, 0, plants, month);
  }
  [[nodiscard]] double sprouts_until(const book::Route& route, const TrayStanding& tray) const {
    const double end =
        route.germination_months.high + days_between(input_.standing.today, tray.sown_on) / 30.4375;
    return tray.waiting > 0 && end > 0 ? std::ceil(end) : 0;
  }

  void stand(const book::Route& route) {
    const std::size_t step = nature_.lucky(0.5) ? 1 : 2;
    const int age = nature_.whole(0, 400);
    const int plants = nature_.whole(10, 60);
    const auto pot = route.steps[step].pot;
    input_.standing.groups.push_back({Code::of(Kind::pot_group, 17, ++codes_).value(), "x",
                                      route.taxon, pot, input_.standing.today.plus_days(-age),
                                      plants});
    leave(route, step, plants, 0, later(-age / 30.4375, route.steps[step].months));
  }

  /// Any time of the range that is not over yet.
  double later(double since, const book::Range& range) {
    const double high = since + range.high;
    return high <= 0 ? 0 : nature_.uniform(std::max(0.0, since + range.low), high);
  }

  /// Plants of a pot from one time to another, and then on.
  void leave(const book::Route& route, std::size_t step, int plants, double from, double until) {
    const auto& pot = registers().pot(route.steps[step].pot);
    for (int plant = 0; plant < plants; ++plant)
      count(pot.name, from, until);
    metres(light_of(route, step), from, until, plants * pot.square_metres());
    go_on(route, step, plants, static_cast<int>(std::floor(until)));
  }

  void go_on(const book::Route& route, std::size_t step, int plants, int month) {
    if (month >= months)
      return;
    int alive = 0;
    for (int plant = 0; plant < plants; ++plant)
      alive += nature_.lucky(lives_.at({route.taxon.value, step, season(month)})) ? 1 : 0;
    if (alive == 0)
      return;
    if (step + 1 == route.steps.size()) {
      const auto& pot = registers().pot(route.steps[step].pot);
      for (int plant = 0; plant < alive; ++plant)
        count(pot.name, month, months);
      metres(light_of(route, step), month, months, alive * pot.square_metres());
      return;
    }
    const auto& before = registers().pot(route.steps[step].pot);
    const auto& into = registers().pot(route.steps[step + 1].pot);
    litres_[static_cast<std::size_t>(month)] +=
        1.1 * alive * (into.litres - before.litres / before.cells);
    const auto& range = route.steps[step + 1].months;
    leave(route, step + 1, alive, month, month + 0.5 + nature_.uniform(range.low, range.high));
  }

  static std::string light_of(const book::Route& route, std::size_t step) {
    return std::string(book::word(route.steps[step].light));
  }
  /// At the ends of the months from one time to before another.
  static void add(ByMonth& values, double from, double until, double amount) {
    for (int month = std::max(0, static_cast<int>(std::floor(from)));
         month < std::min<double>(months, std::floor(until)); ++month)
      values[static_cast<std::size_t>(month)] += amount;
  }
  void count(const std::string& pot, double from, double until) {
    add(standing_.at(pot), from, until, 1);
  }
  void metres(const std::string& light, double from, double until, double amount) {
    add(metres_.at(light), from, until, amount);
  }
  [[nodiscard]] const book::Registers& registers() const { return input_.standing.registers; }

  Nature nature_;
  ForecastInput input_;
  std::map<std::tuple<std::int64_t, std::size_t, int>, double> lives_;
  std::map<std::string, ByMonth> standing_;
  std::map<std::string, ByMonth> metres_;
  ByMonth litres_;
  std::int64_t codes_ = 0;
};

/// How often truths lay in their ranges. A truth that many runs share is counted by the part of
/// them that lies between the points of 10 and 90 %, since a range of a count that is often the
/// same number cannot hold exactly 80 % of the futures; `at_all` counts it as in.
struct Held {
  double parts = 0;
  double at_all = 0;
  double cells = 0;

  void look(std::vector<double> runs, double truth) {
    std::ranges::sort(runs);
    if (runs.front() == runs.back() && std::abs(truth - runs.front()) < 1e-6)
      return; // certain, and so it was
    const double hair = 1e-4 * std::max(1.0, std::abs(truth));
    const auto n = static_cast<double>(runs.size());
    const auto rank = [&](double value) {
      return static_cast<double>(std::ranges::lower_bound(runs, value) - runs.begin()) / n;
    };
    const double below = rank(truth - hair);
    const double upto = rank(truth + hair);
    cells += 1;
    if (upto <= below) {
      parts += below >= 0.1 && below <= 0.9 ? 1 : 0;
      at_all += below >= 0.1 && below <= 0.9 ? 1 : 0;
      return;
    }
    const double inside = std::max(0.0, std::min(upto, 0.9) - std::max(below, 0.1));
    parts += inside / (upto - below);
    at_all += inside > 0 ? 1 : 0;
  }
};

class Score {
 public:
  explicit Score(const Forecast& forecast) : forecast_(forecast) {}

  void by_month(Held& held, const SeriesName& name, const ByMonth& truth) const {
    const auto at = forecast_.find(name).value();
    for (std::size_t month = 0; month < truth.size(); ++month)
      held.look(runs(at, month, month + 1), truth[month]);
  }
  void by_season(Held& held, const SeriesName& name, const ByMonth& truth) const {
    const auto at = forecast_.find(name).value();
    for (std::size_t first = 0; first < truth.size(); first += 12) {
      double all = 0;
      for (auto month = first; month < first + 12; ++month)
        all += truth[month];
      held.look(runs(at, first, first + 12), all);
    }
  }

 private:
  [[nodiscard]] std::vector<double> runs(std::size_t at, std::size_t first,
                                         std::size_t last) const {
    std::vector<double> values;
    for (int run = 0; run < forecast_.runs(); ++run) {
      double sum = 0;
      for (auto month = first; month < last; ++month)
        sum += static_cast<double>(forecast_.value(at, run, month));
      values.push_back(sum);
    }
    return values;
  }
  const Forecast& forecast_;
};

TEST(ForecastHonesty, RangesHoldWhatThenHappens) {
  const auto* asked = std::getenv("CONELINE_NURSERIES");
  const int nurseries = asked != nullptr ? std::atoi(asked) : 100;
  std::map<std::string, Held> held;
  for (int number = 0; number < nurseries; ++number) {
    const Nursery nursery(1000U + static_cast<unsigned>(number));
    const auto forecast = forecast_of(
        nursery.input(),
        {.runs = 600, .seed = static_cast<std::uint64_t>(number) + 1, .threads = 1, .go_on = {}});
    ASSERT_TRUE(forecast) << forecast.error().text();
    const Score score(*forecast);
    for (const auto& [pot, truth] : nursery.standing())
      score.by_month(held["plants in " + pot], {Shown::standing, pot}, truth);
    for (const auto& [light, truth] : nursery.metres())
      score.by_month(held["m² of " + light], {Shown::square_metres, light}, truth);
    score.by_month(held["litres of a month"], {Shown::mix, "cycad mix"}, nursery.litres());
    score.by_season(held["litres of a year"], {Shown::mix, "cycad mix"}, nursery.litres());
  }
  // A hundred nurseries tell 80 from 70, six hundred from 77.
  const double within = nurseries >= 500 ? 3 : 9;
  fmt::print("{} nurseries\n{:24} {:>7} {:>9} {:>9}\n", nurseries, "", "cells", "held",
             "inclusive");
  for (const auto& [what, found] : held) {
    const double percent = 100 * found.parts / found.cells;
    fmt::print("{:24} {:7.0f} {:9.1f} {:9.1f}\n", what, found.cells, percent,
               100 * found.at_all / found.cells);
    EXPECT_NEAR(percent, 80, within) << what;
  }
}

} // namespace
} // namespace coneline::plan
