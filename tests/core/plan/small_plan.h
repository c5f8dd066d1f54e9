// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A nursery small enough to plan by hand: one taxon with a route of tray, 1 L, 3 L.

#include "core/plan/needs.h"
#include "tests/core/day.h"

#include <gtest/gtest.h>

namespace coneline::tests {

inline constexpr book::TaxonId cycas{1};
inline constexpr book::TaxonId unrouted{2};
inline constexpr book::PotId tray_of_50{1};
inline constexpr book::PotId one_litre{2};
inline constexpr book::PotId three_litres{3};
inline constexpr book::PotId two_litres{4}; ///< not on the route
inline constexpr book::PotId ten_litres{5}; ///< not on the route

/// Tray 6 months, 0.8 survive; 1 L 12 months, 0.9; 3 L 12 months, 0.95. Half of what is sown comes
/// up between the months 1 and 5. The mix is 3 of bark and 1 of sand, a fifth lost when mixed, a
/// tenth spilt. Two benches: 2 m² of part shade, 1 m² of sun.
inline plan::NeedsInput small_plan(std::string_view today = "2026-01-01", int months = 24) {
  using book::Light;
  plan::NeedsInput input;
  input.today = day(today);
  input.months = months;
  auto& r = input.registers;
  r.taxa = {{cycas, "Cycas revoluta", {}, {Light::sun, {}}, {}, {}, {}, {}},
            {unrouted, "Cycas media", {}, {Light::sun, {}}, {}, {}, {}, {}}};
  r.pots = {{tray_of_50, "tray", 5, book::Shape::rectangular, 500, 400, 50, ""},
            {one_litre, "1 L", 1, book::Shape::round, 100, 100, 1, ""},
            {three_litres, "3 L", 3, book::Shape::round, 200, 200, 1, ""},
            {two_litres, "2 L", 2, book::Shape::round, 150, 150, 1, ""},
            {ten_litres, "10 L", 10, book::Shape::round, 300, 300, 1, ""}};
  r.mixes = {{book::MixId{1}, "cycad mix", 0.2, 0.1, "", {{"bark", 3}, {"sand", 1}}}};
  r.routes = {{book::RouteId{1},
               cycas,
               0.5,
               {1, 5},
               "",
               {{tray_of_50, book::MixId{1}, {4, 8}, 0.8, Light::part_shade, ""},
                {one_litre, book::MixId{1}, {6, 18}, 0.9, Light::part_shade, ""},
                {three_litres, book::MixId{1}, {12, 12}, 0.95, Light::sun, ""}}}};
  const auto place = [](std::int64_t id, const char* name, double length, double width,
                        Light light) {
    return book::Place{book::PlaceId{id},
                       Code::of(Kind::place, 17, id).value(),
                       name,
                       book::PlaceKind::bench,
                       {},
                       length,
                       width,
                       light,
                       0};
  };
  r.places = {place(1, "bench A", 2000, 1000, Light::part_shade),
              place(2, "bench B", 1000, 1000, Light::sun)};
  return input;
}

inline plan::PlantsStanding group(book::PotId pot, std::string_view since, std::int64_t plants,
                                  book::TaxonId taxon = cycas) {
  return {Code::of(Kind::pot_group, 17, 1).value(), "A × B", taxon, pot, day(since), plants};
}

inline plan::TrayStanding tray(std::string_view sown_on, std::int64_t sown, std::int64_t germinated,
                               std::int64_t waiting, std::int64_t seedlings,
                               book::TaxonId taxon = cycas) {
  return {Code::of(Kind::tray, 17, 1).value(),
          "A × B",
          taxon,
          tray_of_50,
          day(sown_on),
          sown,
          germinated,
          waiting,
          seedlings};
}

inline const plan::PotNeeds& of(const plan::Needs& needs, book::PotId pot) {
  return *std::ranges::find(needs.pots, pot, &plan::PotNeeds::pot);
}
inline const plan::SpaceNeeds& of(const plan::Needs& needs, book::Light light) {
  return *std::ranges::find(needs.space, light, &plan::SpaceNeeds::light);
}
inline const plan::Volume& of(const std::vector<plan::Volume>& volumes, std::string_view name) {
  return *std::ranges::find(volumes, name, &plan::Volume::name);
}
inline double sum(const plan::ByMonth& values) {
  double all = 0;
  for (const auto value : values)
    all += value;
  return all;
}

} // namespace coneline::tests
