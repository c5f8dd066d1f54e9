// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_sowings.h"

#include "core/base/phrase.h"
#include "core/plan/forecast_sprouting.h"
#include "core/plan/posterior_sprouting.h"
#include "core/plan/stream_key.h"

#include <fmt/format.h>

namespace coneline::plan {

namespace {

/// A cross's points for seed that takes `pace` times as long and lies in so many trays: the mean
/// of n trays strays as one tray would with a spread of rho / n.
std::vector<stats::PosteriorPoint> for_trays(std::vector<stats::PosteriorPoint> points, double pace,
                                             std::int64_t trays) {
  for (auto& point : points) {
    point.curve.scale *= pace; // in all three families a factor of time
    point.rho /= static_cast<double>(trays);
  }
  return points;
}

} // namespace

std::vector<SownMonth> sown_months(const Sowing& sowing, const Calendar& calendar, Date today) {
  std::map<int, SownMonth> months;
  for (std::size_t draw = 0; draw < sowing.draws.size(); ++draw) {
    const auto& [earliest, seeds] = sowing.draws[draw];
    const int from = std::max(0, months_between(today, earliest));
    if (from >= calendar.months() || seeds == 0)
      continue;
    const int month = sowing.from == SeedFrom::told ? from : calendar.potting_from(from);
    if (month >= calendar.months())
      continue;
    auto& sown = months[month];
    if (sown.seeds.empty()) {
      constexpr int to_the_middle = 14;
      const auto middle = today.first_of_month().plus_months(month).plus_days(to_the_middle);
      sown = {month, std::max(today, middle), std::vector<std::int64_t>(sowing.draws.size(), 0)};
    }
    sown.seeds[draw] = seeds;
  }
  std::vector<SownMonth> listed;
  for (auto& [month, sown] : months)
    listed.push_back(std::move(sown));
  return listed;
}

CrossSprouting sprouting_of(const ForecastInput& input, const Sowing& sowing,
                            const CrossSprouting* known, const book::Route& route, Date sown_on,
                            std::int64_t trays) {
  const auto today = input.standing.today;
  const auto months = input.standing.months;
  const auto by_curves = [&](const std::vector<stats::PosteriorPoint>& points) {
    const CountedTray fresh{Code(), sown_on, {sowing.cross, "", 1, {}}};
    const auto name = fmt::format("{} {} {}", sowing.cross, sowing.taxon.value, sown_on.iso());
    return posterior_sprouting(for_trays(points, sowing.pace, trays), {fresh}, today, months,
                               static_cast<std::uint32_t>(stream_key(name)));
  };
  if (known != nullptr && !known->points.empty())
    return by_curves(known->points);
  if (known != nullptr && !known->shares.empty())
    return route_sowing(route, known->shares, sown_on, today, months, sowing.pace);
  if (const auto next = input.next_cross.find(sowing.taxon);
      next != input.next_cross.end() && !next->second.empty())
    return by_curves(next->second);
  const auto shares =
      route_sprouting(route, {}, today, months, input.assumed.germination_weight).shares;
  return route_sowing(route, shares, sown_on, today, months, sowing.pace);
}

} // namespace coneline::plan
