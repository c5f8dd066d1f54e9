// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_expected.h"

#include <algorithm>

namespace coneline::plan {

namespace {

/// Expected plants by month, `beyond` the last.
using Plants = std::vector<double>;

class Expectation {
 public:
  Expectation(const Ways& ways, const ForecastInput& input)
      : ways_(ways), input_(input), months_(static_cast<std::size_t>(ways.calendar.months())),
        sums_(ways.series.size(), ByMonth(months_, 0.0)) {}

  void lot(const LotWay& lot) {
    if (lot.tray_spot)
      tray(lot);
    else
      group(lot);
  }
  void always() {
    for (std::size_t at = 0; at < sums_.size(); ++at)
      for (auto& value : sums_[at])
        value += ways_.always[at];
  }
  void divide_loads() {
    for (std::size_t at = 0; at < sums_.size(); ++at) {
      if (ways_.series[at].shown != Shown::load)
        continue;
      const auto metres =
          std::ranges::find(ways_.series, SeriesName{Shown::square_metres, ways_.series[at].name});
      const auto& taken = sums_[static_cast<std::size_t>(metres - ways_.series.begin())];
      for (std::size_t month = 0; month < months_; ++month)
        sums_[at][month] = taken[month] > 1e-12 ? sums_[at][month] / taken[month] : 0;
    }
  }
  [[nodiscard]] std::vector<ByMonth>& sums() { return sums_; }

 private:
  [[nodiscard]] Plants nothing() const { return Plants(months_ + 1, 0.0); }
  void group(const LotWay& lot) {
    Plants leaves = nothing();
    for (std::size_t i = 0; i < lot.leave.chance.size(); ++i)
      leaves[static_cast<std::size_t>(lot.leave.first) + i] +=
          lot.leave.chance[i] * static_cast<double>(lot.plants);
    Plants comes = nothing();
    comes[0] = static_cast<double>(lot.plants);
    stand(lot.spots.front(), comes, leaves);
    onward(lot, std::move(leaves));
  }
  void tray(const LotWay& lot);
  void onward(const LotWay& lot, Plants leaves);
  void stand(std::size_t spot, const Plants& comes, const Plants& leaves);
  void happen(std::size_t event, const Plants& plants);
  [[nodiscard]] Plants comes_up(const LotWay& lot) const;
  [[nodiscard]] static double trays(const LotWay& lot);

  const Ways& ways_;
  const ForecastInput& input_;
  std::size_t months_;
  std::vector<ByMonth> sums_;
};

void Expectation::stand(std::size_t spot, const Plants& comes, const Plants& leaves) {
  double standing = 0;
  for (std::size_t month = 0; month < months_; ++month) {
    standing += comes[month] - leaves[month];
    for (const auto& yield : ways_.spots[spot].yields)
      sums_[yield.series][month] += yield.by_plant * standing;
  }
}

void Expectation::happen(std::size_t event, const Plants& plants) {
  for (std::size_t month = 0; month < months_; ++month)
    for (const auto& yield : ways_.events[event].yields)
      sums_[yield.series][month] += yield.by_plant * plants[month];
}

/// From the plants that leave the first step, by month, to the last.
void Expectation::onward(const LotWay& lot, Plants leaves) {
  for (std::size_t step = 0; step < lot.steps.size(); ++step) {
    const double lives = ways_.survivals[lot.steps[step]->survival].mean();
    Plants comes = nothing();
    for (std::size_t month = 0; month < months_; ++month)
      comes[month] = leaves[month] * lives;
    Plants next = nothing();
    if (step + 1 == lot.steps.size()) {
      happen(lot.ready_event, comes);
      for (std::size_t month = 0; month < months_ && ways_.sold_after; ++month)
        next[std::min(months_, month + static_cast<std::size_t>(*ways_.sold_after))] +=
            comes[month];
      stand(lot.spots.back(), comes, next);
      return;
    }
    happen(lot.events[step + 1], comes);
    for (std::size_t month = 0; month < months_; ++month) {
      const auto& leave = lot.steps[step + 1]->leave[month];
      for (std::size_t i = 0; i < leave.chance.size(); ++i)
        next[static_cast<std::size_t>(leave.first) + i] += comes[month] * leave.chance[i];
    }
    stand(lot.spots[step + 1], comes, next);
    leaves = std::move(next);
  }
}

/// The mean over the draws of a cross of what one seed does, times the seeds.
Plants Expectation::comes_up(const LotWay& lot) const {
  Plants up = nothing();
  if (!lot.cross)
    return up;
  const auto until = static_cast<std::size_t>(lot.sprouts_until);
  const auto add = [&](const double* chances, double seeds) {
    for (std::size_t month = 0; month < until; ++month)
      up[month] += seeds * chances[month];
  };
  if (lot.sowing) {
    double seeds = 0;
    for (const auto drawn : lot.seeds)
      seeds += static_cast<double>(drawn) / static_cast<double>(lot.seeds.size());
    for (const auto& draw : lot.chances)
      add(draw.data(), seeds / static_cast<double>(lot.chances.size()));
    return up;
  }
  const auto& cross = input_.sprouting[*lot.cross];
  const auto listed = static_cast<std::size_t>(cross.months);
  for (const auto& draw : cross.draws)
    add(draw.data() + lot.tray * listed,
        static_cast<double>(lot.waiting) / static_cast<double>(cross.draws.size()));
  return up;
}

/// Of the trays of a lot.
double Expectation::trays(const LotWay& lot) {
  if (!lot.sowing)
    return 1;
  double sum = 0;
  for (const auto drawn : lot.seeds)
    sum += static_cast<double>(lot.trays_of(drawn));
  return sum / static_cast<double>(lot.seeds.size());
}

void Expectation::tray(const LotWay& lot) {
  const auto up = comes_up(lot);
  Plants comes = up;
  comes[0] += static_cast<double>(lot.plants);
  const auto sown_in = static_cast<std::size_t>(lot.sown_in);
  Plants leaves = nothing();
  Plants cleared = nothing();
  for (std::size_t i = 0; i < lot.leave.chance.size(); ++i) {
    const auto due = static_cast<std::size_t>(lot.leave.first) + i;
    const double chance = lot.leave.chance[i];
    leaves[due] += chance * static_cast<double>(lot.plants);
    for (std::size_t month = 0; month < months_; ++month) {
      const auto potting =
          lot.steps.size() == 1
              ? month
              : static_cast<std::size_t>(ways_.calendar.potting_from(static_cast<int>(month)));
      leaves[month <= due ? due : potting] += chance * up[month];
    }
    const bool kept = lot.plants > 0 || lot.sprouts_until > 0;
    cleared[kept ? std::max(due, static_cast<std::size_t>(lot.sprouts_until)) : sown_in] +=
        chance * trays(lot);
  }
  Plants stands = nothing();
  stands[sown_in] = trays(lot);
  stand(*lot.tray_spot, stands, cleared);
  stand(lot.spots.front(), comes, leaves);
  onward(lot, std::move(leaves));
}

} // namespace

std::vector<ByMonth> expected(const Ways& ways, const ForecastInput& input) {
  Expectation sum(ways, input);
  for (const auto& lot : ways.lots)
    sum.lot(lot);
  sum.always();
  sum.divide_loads();
  return std::move(sum.sums());
}

std::vector<LotExpected> expected_by_lot(const Ways& ways, const ForecastInput& input) {
  std::vector<LotExpected> lots;
  for (const auto& lot : ways.lots) {
    Expectation alone(ways, input);
    alone.lot(lot);
    lots.push_back({lot.code, std::move(alone.sums())});
  }
  return lots;
}

std::vector<Contribution> made_of(const Ways& ways, const ForecastInput& input, std::size_t series,
                                  std::size_t month) {
  std::vector<Contribution> lots;
  for (const auto& lot : ways.lots) {
    Expectation alone(ways, input);
    alone.lot(lot);
    auto& values = alone.sums()[series];
    if (values[month] > 1e-12)
      lots.push_back({lot.name, std::move(values)});
  }
  std::ranges::stable_sort(
      lots, [&](const auto& a, const auto& b) { return a.values[month] > b.values[month]; });
  return lots;
}

} // namespace coneline::plan
