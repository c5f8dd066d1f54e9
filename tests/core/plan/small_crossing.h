// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Three females and three lots of pollen to choose crosses from.

#include "core/plan/crossing.h"

namespace coneline::tests {

/// Cycas revoluta: 0 Olga and 1 Otto, founders; 2 Ada, 3 Bea and 4 Carl, their children; 5 Egon, a
/// founder. Dioon edule: 6 Dora and 7 Fritz, founders.
inline plan::CrossingInput small_crossing() {
  using namespace book;
  plan::CrossingInput input;
  auto& r = input.registers;
  const auto code = [](Kind kind, int number) { return Code::of(kind, 17, number).value(); };
  r.title = {"Test nursery", 17, true, Date::parse("2024-01-02").value()};
  Taxon cycas;
  cycas.id = {1};
  cycas.name = "Cycas revoluta";
  Taxon dioon;
  dioon.id = {2};
  dioon.name = "Dioon edule";
  r.taxa = {cycas, dioon};
  r.pots = {{{1}, "tray", 5, Shape::rectangular, 400, 300, 40, ""},
            {{2}, "1 L", 1, Shape::round, 100, 100, 1, ""}};
  r.mixes = {{{1}, "gritty", 0.15, 0, "", {{"sand", 1}}}};
  for (const int taxon : {1, 2}) {
    Route route{{taxon}, {taxon}, 0.5, {1, 6}, "common practice, no source", {}};
    route.steps = {{{1}, {1}, {6, 12}, 0.9, Light::part_shade, ""},
                   {{2}, {1}, {12, 24}, 0.8, Light::part_shade, ""}};
    r.routes.push_back(route);
  }
  const auto plant = [&](std::string name, int taxon, Sex sex) {
    Plant made;
    made.id = {static_cast<std::int64_t>(r.plants.size()) + 1};
    made.code = code(Kind::plant, static_cast<int>(r.plants.size()) + 1);
    made.name = std::move(name);
    made.taxon = {taxon};
    made.sex = sex;
    r.plants.push_back(made);
  };
  plant("Olga", 1, Sex::female);
  plant("Otto", 1, Sex::male);
  plant("Ada", 1, Sex::female);
  plant("Bea", 1, Sex::female);
  plant("Carl", 1, Sex::male);
  plant("Egon", 1, Sex::male);
  plant("Dora", 2, Sex::female);
  plant("Fritz", 2, Sex::male);
  input.parents = {{}, {}, {{0}, {1}}, {{0}, {1}}, {{0}, {1}}, {}, {}, {}};
  input.today = Date::parse("2026-05-01").value();
  input.females = {{code(Kind::cone, 1), {3}, plan::Estimate{100, {}, "counted"}, "loose"},
                   {code(Kind::cone, 2), {4}, plan::Estimate{200, {}, "counted"}, "loose"},
                   {code(Kind::cone, 3), {7}, plan::Estimate{50, {}, "counted"}, "loose"}};
  input.pollen = {{code(Kind::pollen, 1), {5}, 10.0, {}, input.today, "refrigerator"},
                  {code(Kind::pollen, 2), {6}, 10.0, {}, input.today, "refrigerator"},
                  {code(Kind::pollen, 3), {8}, 10.0, {}, input.today, "refrigerator"}};
  input.millilitres_a_cone = 1;
  return input;
}

} // namespace coneline::tests
