// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan_coverage.h"

#include "core/plan/forecast.h"
#include "core/plan/posterior_sprouting.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace coneline::plan {

namespace {

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
  double normal(double spread) { return std::normal_distribution<>(0, spread)(random_); }
  double exponential(double mean) { return std::exponential_distribution<>(1 / mean)(random_); }
  int whole(int low, int high) { return std::uniform_int_distribution<>(low, high)(random_); }

 private:
  std::mt19937 random_;
};

/// One nursery: what its grower knows, and what then happens.
constexpr book::PotId tray_of_50{1};
constexpr book::PotId one_litre{2};
constexpr book::PotId three_litres{3};

book::Route invented_route(std::int64_t id) {
  using book::Light;
  const double more = static_cast<double>(id - 1);
  return {book::RouteId{id},
          book::TaxonId{id},
          0.7 - 0.1 * more,
          {1, 8 + 2 * more},
          "",
          {{tray_of_50, book::MixId{1}, {5, 9}, 0.93, Light::part_shade, ""},
           {one_litre, book::MixId{1}, {8, 14}, 0.9 + 0.02 * more, Light::part_shade, ""},
           {three_litres, book::MixId{1}, {10, 16}, 0.95, Light::sun, ""}}};
}

book::Registers invented() {
  using book::Light;
  book::Registers r;
  for (std::int64_t id = 1; id <= 3; ++id) {
    r.taxa.push_back({book::TaxonId{id}, "taxon " + std::to_string(id), {}, {}, {}, {}, {}, {}});
    r.routes.push_back(invented_route(id));
  }
  r.pots = {{tray_of_50, "tray", 5, book::Shape::rectangular, 500, 400, 50, ""},
            {one_litre, "1 L", 1, book::Shape::round, 100, 100, 1, ""},
            {three_litres, "3 L", 3, book::Shape::round, 200, 200, 1, ""}};
  r.mixes = {{book::MixId{1}, "cycad mix", 0.2, 0.1, "", {{"bark", 3}, {"sand", 1}}}};
  return r;
}

class Nursery {
 public:
  explicit Nursery(unsigned seed) : nature_(seed) {
    input_.standing.today = Date::parse("2026-11-01").value();
    input_.standing.months = months;
    auto& registers = input_.standing.registers;
    registers = invented();
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

  /// A cross's share, curve and spread are nature's alone; the grower sees what comes up at a look
  /// every ten days or so, the last of them some days ago, and reckons with the weak prior.
  void sow_and_wait(const book::Route& route, int number) {
    const auto today = input_.standing.today;
    const double usual = 30.4 * (route.germination_months.low + route.germination_months.high) / 2;
    stats::Curve curve;
    curve.family = stats::all_families[static_cast<std::size_t>(nature_.whole(0, 2))];
    curve.germinable = nature_.uniform(0.05, 0.95);
    curve.shape = std::exp(std::log(4.0) + nature_.normal(0.5));
    curve.scale = usual * std::exp(nature_.normal(0.5));
    const double rho = nature_.exponential(0.05);
    std::vector<Sown> sown;
    for (int tray = 0; tray < 3; ++tray)
      sown.push_back(sow(route, curve, rho, number));
    std::vector<stats::Tray> counts;
    std::vector<CountedTray> trays;
    for (const auto& tray : sown) {
      counts.push_back(tray.counts);
      trays.push_back({tray.standing.code, tray.standing.sown_on, tray.counts});
      input_.standing.trays.push_back(tray.standing);
    }
    const auto known = stats::germination_posterior(counts, stats::weak_prior(usual));
    input_.sprouting.push_back(posterior_sprouting(known.thinned(199), trays, today, months));
    const auto laid_out = ways_of(input_);
    for (const auto& tray : sown) {
      const auto way = std::ranges::find(laid_out.lots, tray.standing.code, &LotWay::code);
      grow_tray(route, tray, way->sprouts_until);
    }
  }

  struct Sown {
    TrayStanding standing;
    stats::Tray counts;
    double due = 0;
    std::vector<double> to_come; ///< months from the first of the plan
  };
  Sown sow(const book::Route& route, const stats::Curve& curve, double rho, int number) {
    const auto today = input_.standing.today;
    const int age = nature_.whole(5, 280);
    const auto cross = "cross " + std::to_string(route.id.value * 10 + number);
    Sown sown{{Code::of(Kind::tray, 17, ++codes_).value(), cross, route.taxon, tray_of_50,
               today.plus_days(-age), nature_.whole(40, 120), 0, 0, 0},
              {cross, "", 0, {}},
              later(-age / 30.4375, route.steps[0].months),
              {}};
    auto& standing = sown.standing;
    sown.counts.sown = standing.sown;
    for (double day = nature_.uniform(5, 15); day <= age; day += nature_.uniform(5, 15))
      sown.counts.looks.push_back({day, 0, 0});
    const double weight = (1 - rho) / rho;
    const double share = nature_.beta(curve.germinable * weight, (1 - curve.germinable) * weight);
    for (int seed = 0; seed < standing.sown; ++seed) {
      if (!nature_.lucky(share))
        continue;
      const double day = curve.day_of_progress(nature_.uniform(1e-9, 1 - 1e-9));
      const auto seen = std::ranges::lower_bound(sown.counts.looks, day, {}, &stats::Look::day);
      if (seen != sown.counts.looks.end())
        ++seen->germinated;
      else
        sown.to_come.push_back(std::max(0.0, month_of(standing.sown_on, day)));
    }
    standing.germinated = sown.counts.germinated();
    standing.seedlings = standing.germinated;
    standing.waiting = standing.sown - standing.germinated;
    return sown;
  }
  /// Of a day after sowing, by the calendar that the plan keeps.
  [[nodiscard]] double month_of(Date sown_on, double day) const {
    const auto on = sown_on.plus_days(static_cast<int>(std::floor(std::min(day, 20'000.0))));
    return static_cast<double>(months_between(input_.standing.today, on)) +
           (static_cast<double>(days_between(on.first_of_month(), on)) + 0.5) / 32;
  }

  /// What would come up once the tray is given up is thrown out with it.
  void grow_tray(const book::Route& route, const Sown& sown, int given_up) {
    const auto& tray = sown.standing;
    const double due = sown.due;
    const double cleared =
        tray.seedlings > 0 || given_up > 0 ? std::max(std::floor(due), double{1} * given_up) : 0;
    metres("part shade", 0, cleared, registers().pot(tray_of_50).square_metres());
    std::map<int, int> potted;
    for (int plant = 0; plant < tray.seedlings; ++plant) {
      count("tray", 0, due);
      ++potted[static_cast<int>(std::floor(due))];
    }
    for (const double up : sown.to_come) {
      if (up >= given_up)
        continue;
      const double leaves = std::max(std::floor(due), std::floor(up));
      count("tray", up, leaves);
      ++potted[static_cast<int>(leaves)];
    }
    for (const auto& [month, plants] : potted)
      go_on(route, 0, plants, month);
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

void look_at(std::map<std::string, Held>& held, const Nursery& nursery, const Forecast& forecast) {
  const Score score(forecast);
  for (const auto& [pot, truth] : nursery.standing())
    score.by_month(held["plants in " + pot], {Shown::standing, pot}, truth);
  for (const auto& [light, truth] : nursery.metres())
    score.by_month(held["m² of " + light], {Shown::square_metres, light}, truth);
  score.by_month(held["litres of a month"], {Shown::mix, "cycad mix"}, nursery.litres());
  score.by_season(held["litres of a year"], {Shown::mix, "cycad mix"}, nursery.litres());
}

} // namespace

Result<std::vector<PlanCoverageRow>> plan_coverage(const PlanCoverageWanted& wanted,
                                                   const std::function<bool(int)>& go_on) {
  if (wanted.nurseries < 1 || wanted.runs < 10)
    return refuse(usage_fault("fewer than 1 nursery or 10 futures", "Ask for more."));
  std::map<std::string, Held> held;
  for (int number = 0; number < wanted.nurseries; ++number) {
    const auto seed = wanted.seed + static_cast<unsigned>(number);
    const Nursery nursery(seed);
    const auto forecast = forecast_of(
        nursery.input(), {.runs = wanted.runs, .seed = seed, .threads = 1, .go_on = {}});
    if (!forecast)
      return refuse(forecast.error());
    look_at(held, nursery, *forecast);
    if (go_on && !go_on(number + 1))
      break;
  }
  std::vector<PlanCoverageRow> rows;
  for (const auto& [of, found] : held)
    rows.push_back({of, found.cells, found.parts / found.cells, found.at_all / found.cells});
  return rows;
}

} // namespace coneline::plan
