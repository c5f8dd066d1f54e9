// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/route_walk.h"

#include <algorithm>
#include <cmath>

namespace coneline::plan {

Date after_months(Date from, double months) {
  constexpr double days_in_month = 365.25 / 12;
  const double within = std::clamp(months, 0.0, 1200.0);
  const double whole = std::floor(within);
  return from.plus_months(static_cast<int>(whole))
      .plus_days(static_cast<int>(std::lround((within - whole) * days_in_month)));
}

std::vector<Stay> stays(const book::Route& route, std::size_t step, book::PotId pot, Date since,
                        Date now) {
  std::vector<Stay> way;
  for (auto at = step; at < route.steps.size(); ++at) {
    const auto& here = route.steps[at];
    const auto until = std::max(now, after_months(since, here.months.middle()));
    way.push_back({at, at == step ? pot : here.pot, since, until, here.survival});
    since = until;
  }
  return way;
}

std::optional<std::size_t> step_with(const book::Route& route, const book::Registers& registers,
                                     book::PotId pot) {
  std::optional<std::size_t> larger;
  const auto litres = [&](std::size_t step) { return registers.pot(route.steps[step].pot).litres; };
  for (std::size_t step = 0; step < route.steps.size(); ++step) {
    if (route.steps[step].pot == pot)
      return step;
    const bool fits = step > 0 && litres(step) > registers.pot(pot).litres;
    if (fits && (!larger || litres(step) < litres(*larger)))
      larger = step;
  }
  return larger;
}

double Sprouting::between(Date first, Date last) const {
  const auto days = days_between(from, until);
  if (days <= 0)
    return first <= from && from < last ? seeds : 0;
  const auto shared = days_between(std::max(first, from), std::min(last, until));
  return seeds * std::max(0, shared) / days;
}

Sprouting still_to_sprout(const book::Route& route, const TrayStanding& tray, Date today) {
  const auto until = after_months(tray.sown_on, route.germination_months.high);
  const auto from = std::max(today, after_months(tray.sown_on, route.germination_months.low));
  if (until <= today)
    return {0, today, today};
  const auto missing =
      route.germination * static_cast<double>(tray.sown) - static_cast<double>(tray.germinated);
  return {std::clamp(missing, 0.0, static_cast<double>(tray.waiting)), from, until};
}

} // namespace coneline::plan
