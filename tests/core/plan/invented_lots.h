// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A nursery of three taxa with as many lots as are wanted, all invented: trays of every age, and
// plants in every pot of their routes.

#include "core/plan/forecast_sprouting.h"
#include "tests/core/plan/small_plan.h"

#include <random>

namespace coneline::tests {

inline book::Route invented_route(std::int64_t id) {
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

/// Trays of a cross are looked at today; the seed that has come up is what the route expects.
inline plan::ForecastInput invented_lots(int lots, int months, unsigned seed = 7) {
  plan::ForecastInput input;
  input.standing = small_plan("2026-11-01", months);
  auto& registers = input.standing.registers;
  registers.taxa.push_back({book::TaxonId{3}, "Dioon edule", {}, {}, {}, {}, {}, {}});
  registers.routes = {invented_route(1), invented_route(2), invented_route(3)};
  std::mt19937 random(seed);
  const auto between = [&](int low, int high) {
    return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
  };
  std::map<std::pair<std::int64_t, std::string>, std::vector<plan::SproutingTray>> crosses;
  const auto today = input.standing.today;
  for (int lot = 1; lot <= lots; ++lot) {
    const book::TaxonId taxon{lot % 3 + 1};
    const auto cross = "cross " + std::to_string(taxon.value) + "/" + std::to_string(lot / 3 % 4);
    if (lot % 2 == 0) {
      const int age = between(1, 300);
      const auto sown_on = today.plus_days(-age);
      const std::int64_t sown = between(30, 120);
      const auto& route = registers.routes[static_cast<std::size_t>(lot % 3)];
      const double gone =
          std::clamp((age / 30.4 - route.germination_months.low) /
                         (route.germination_months.high - route.germination_months.low),
                     0.0, 1.0);
      const auto up =
          static_cast<std::int64_t>(static_cast<double>(sown) * route.germination * gone);
      plan::TrayStanding standing{Code::of(Kind::tray, 17, lot).value(),
                                  cross,
                                  taxon,
                                  tray_of_50,
                                  sown_on,
                                  sown,
                                  up,
                                  sown - up,
                                  up};
      input.standing.trays.push_back(standing);
      crosses[{taxon.value, cross}].push_back({standing, 0, today});
      continue;
    }
    const auto pot = between(0, 1) == 0 ? one_litre : three_litres;
    input.standing.groups.push_back({Code::of(Kind::pot_group, 17, lot).value(), cross, taxon, pot,
                                     today.plus_days(-between(0, 500)), between(5, 60)});
    input.places[input.standing.groups.back().code] = book::PlaceId{lot % 4 < 2 ? 1 : 2};
  }
  for (const auto& [of, trays] : crosses)
    input.sprouting.push_back(plan::route_sprouting(*registers.route(book::TaxonId{of.first}),
                                                    trays, today, months,
                                                    input.assumed.germination_weight));
  return input;
}

/// Seed of known crosses and of one that was never sown, in batches, in cones of which nobody knows
/// how much they hold and when they ripen, and as the grower says.
inline void add_sowings(plan::ForecastInput& input) {
  using plan::SeedFrom;
  const auto code = [](Kind kind, int number) { return Code::of(kind, 17, number).value(); };
  stats::PosteriorPoint point;
  for (int at = 0; at < 40; ++at) {
    point.curve = {stats::all_families[static_cast<std::size_t>(at % 3)], 0.2 + 0.015 * at, 3.0,
                   90.0 + 4 * at};
    point.rho = 0.01 * (at % 7);
    input.next_cross[book::TaxonId{2}].push_back(point);
  }
  std::vector<plan::SeedDraw> cone;
  for (int at = 0; at < 60; ++at)
    cone.push_back({day("2027-01-20").plus_days(5 * at), at % 6 == 0 ? 0 : 7 * at});
  input.sowings = {
      {SeedFrom::at_hand,
       code(Kind::batch, 1),
       "cross 1/0",
       book::TaxonId{1},
       {{day("2026-11-01"), 130}},
       1,
       ""},
      {SeedFrom::told, {}, "cross 1/1", book::TaxonId{1}, {{day("2027-01-10"), 75}}, 0.6, ""},
      {SeedFrom::told, {}, "new cross", book::TaxonId{2}, {{day("2027-06-10"), 75}}, 1, ""},
      {SeedFrom::told, {}, "new cross", book::TaxonId{2}, {{day("2028-02-10"), 30}}, 1.5, ""},
      {SeedFrom::told, {}, "another", book::TaxonId{3}, {{day("2027-09-10"), 1}}, 1, ""},
      {SeedFrom::told, {}, "too late", book::TaxonId{3}, {{day("2031-09-10"), 500}}, 1, ""},
      {SeedFrom::cone, code(Kind::cone, 1), "cross 2/1", book::TaxonId{2}, cone, 1, ""}};
}

} // namespace coneline::tests
