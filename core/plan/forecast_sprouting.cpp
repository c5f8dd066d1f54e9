// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_sprouting.h"

#include "core/plan/forecast_times.h"

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {

/// The part of the route's months of germination that is over at a time, from 0 to 1.
double over(const book::Range& months, double sown, double time) {
  const double span = months.high - months.low;
  const double gone = time - sown - months.low;
  if (span <= 0)
    return gone >= 0 ? 1 : 0;
  return std::clamp(gone / span, 0.0, 1.0);
}

struct Seen {
  double up = 0;
  double removed = 0;
  double waiting = 0;
  double over = 0;
};

double times_log(double count, double share) {
  return count > 0 ? count * std::log(share) : 0;
}

/// Equally likely shares, from the middles of equal slices of the distribution.
std::vector<double> shares(double prior, double weight, const std::vector<Seen>& trays, int draws) {
  constexpr int cells = 2000;
  std::vector<double> density;
  for (int cell = 0; cell < cells; ++cell) {
    const double d = (cell + 0.5) / cells;
    double log = (weight * prior - 1) * std::log(d) + (weight * (1 - prior) - 1) * std::log1p(-d);
    for (const auto& tray : trays)
      log += times_log(tray.up, d) + times_log(tray.waiting, 1 - d * tray.over) +
             times_log(tray.removed, 1 - d);
    density.push_back(log);
  }
  const double most = *std::ranges::max_element(density);
  double sum = 0;
  for (auto& value : density)
    sum += value = std::exp(value - most);
  std::vector<double> found;
  double below = 0;
  int cell = 0;
  for (int draw = 0; draw < draws; ++draw) {
    const double wanted = (draw + 0.5) / draws * sum;
    while (cell + 1 < cells && below + density[static_cast<std::size_t>(cell)] < wanted)
      below += density[static_cast<std::size_t>(cell++)];
    const double within = (wanted - below) / density[static_cast<std::size_t>(cell)];
    found.push_back((cell + std::clamp(within, 0.0, 1.0)) / cells);
  }
  return found;
}

} // namespace

CrossSprouting route_sprouting(const book::Route& route, const std::vector<SproutingTray>& trays,
                               Date today, int months, double weight, int draws) {
  const Calendar calendar(today, months, Assumptions{}.potting);
  const auto& range = route.germination_months;
  std::vector<Seen> seen;
  CrossSprouting cross;
  cross.months = months;
  if (!trays.empty()) {
    cross.cross = trays.front().tray.cross;
    cross.taxon = trays.front().tray.taxon;
  }
  for (const auto& [tray, removed, last_look] : trays) {
    cross.trays.push_back(tray.code);
    seen.push_back({static_cast<double>(tray.germinated), static_cast<double>(removed),
                    static_cast<double>(tray.waiting),
                    over(range, calendar.time(tray.sown_on), calendar.time(last_look))});
  }
  // A route of 1 leaves nothing to learn; a weight without end is the route's own word.
  const bool certain = route.germination >= 1 || !std::isfinite(weight);
  const auto drawn = certain ? std::vector<double>{route.germination}
                             : shares(route.germination, weight, seen, draws);
  cross.shares = drawn;
  for (const double d : drawn) {
    std::vector<double> chances;
    for (std::size_t at = 0; at < trays.size(); ++at) {
      const double sown = calendar.time(trays[at].tray.sown_on);
      const double ahead = 1 - d * seen[at].over;
      const double later = ahead > 0 ? d / ahead : 0;
      double before = std::max(seen[at].over, over(range, sown, 0.0));
      for (int month = 0; month < months; ++month) {
        const double by = std::max(before, over(range, sown, month + 1.0));
        chances.push_back(later * (month == 0 ? by - seen[at].over : by - before));
        before = by;
      }
    }
    cross.draws.push_back(std::move(chances));
  }
  return cross;
}

CrossSprouting route_sowing(const book::Route& route, const std::vector<double>& shares,
                            Date sown_on, Date today, int months, double pace) {
  const Calendar calendar(today, months, Assumptions{}.potting);
  const book::Range range{route.germination_months.low * pace,
                          route.germination_months.high * pace};
  const double sown = calendar.time(sown_on);
  CrossSprouting cross;
  cross.months = months;
  cross.trays = {Code()};
  cross.shares = shares;
  for (const double share : shares) {
    std::vector<double> chances;
    double before = 0;
    for (int month = 0; month < months; ++month) {
      const double by = over(range, sown, month + 1.0);
      chances.push_back(share * (by - before));
      before = by;
    }
    cross.draws.push_back(std::move(chances));
  }
  return cross;
}

} // namespace coneline::plan
