// SPDX-License-Identifier: GPL-3.0-or-later
#include "listed.h"

#include "by_code.h"
#include "core/book/cross.h"
#include "wording.h"

#include <map>
#include <numeric>

namespace coneline::window {

namespace {

using DueByCode = ByCode<work::Due>;

QString due_of(const DueByCode& due, const Code& code) {
  const auto* first = due.find(code);
  return first ? text(book::said(first->kind)) : QString();
}

Listed of_pollen(const Standing& standing, const DueByCode& due, const work::PollenLine& line) {
  const auto& lot = line.lot;
  const auto& plant = standing.registers.plant(lot.plant);
  auto what = phrased("of {}", shown(lot.collected));
  if (line.gone)
    what += phrased(", gone");
  else if (line.left)
    what += line.passes_unmeasured > 0 ? phrased(", at most {} ml left", shown(*line.left, 1))
                                       : phrased(", {} ml left", shown(*line.left, 1));
  else
    what += phrased(", amount not known");
  auto kept = text(lot.store);
  if (line.there() && line.old_from && *line.old_from <= standing.today)
    kept = phrased("old since {}", shown(*line.old_from)) + "; " + kept;
  return {lot.code, text(book::plant_name(plant)), what,
          kept,     due_of(due, lot.code),         !line.there()};
}

Listed of_plant(const Standing& standing, const DueByCode& due, const book::Plant& plant) {
  const auto name =
      plant.name.empty() ? text(standing.registers.taxon(plant.taxon).name) : text(plant.name);
  const auto sex = plant.sex == book::Sex::not_known ? phrased("sex not known yet")
                                                     : text(book::said(plant.sex));
  return {plant.code,
          phrased("Parent plants"),
          name + ", " + sex,
          place_name(standing.registers, plant.place),
          due_of(due, plant.code),
          false};
}

Listed of_cone(const DueByCode& due, const work::ConeCourse& course) {
  const auto& line = course.line;
  QString what;
  if (line.harvested_on)
    what = phrased_n(line.harvested, "harvested, {} seed", "harvested, {} seeds");
  else if (line.passes.empty())
    what = phrased("not pollinated yet");
  else
    what = phrased_n(std::int64_t(line.passes.size()), "{} pass, last {}", "{} passes, last {}",
                     shown(line.passes.back()));
  if (!line.harvested_on && course.closed)
    what += phrased(", closed");
  return {line.cone.code,
          origin_shown(line.origin.name),
          what,
          line.harvested_on ? shown(*line.harvested_on) : QString(),
          due_of(due, line.cone.code),
          line.harvested_on.has_value()};
}

Listed of_lot(const Standing& standing, const DueByCode& due, const work::LotLine& line,
              bool by_place) {
  const auto place = place_name(standing.registers, line.place);
  return {line.lot.code,
          by_place ? place : origin_shown(line.origin.name),
          holding(line),
          by_place ? origin_shown(line.origin.name) : place,
          due_of(due, line.lot.code),
          line.on_hand.empty()};
}

Kind kind_at(Station station) {
  switch (station) {
  case Station::trays:
    return Kind::tray;
  case Station::pots:
    return Kind::pot_group;
  default:
    return Kind::batch;
  }
}

} // namespace

std::vector<Listed> listed(const Standing& standing, Station station, bool by_place) {
  std::vector<Listed> all;
  const DueByCode due(standing.due, [](const work::Due& one) { return one.code; });
  if (station == Station::pollen) {
    for (const auto& line : standing.pollen)
      all.push_back(of_pollen(standing, due, line));
    for (const auto& plant : standing.registers.plants)
      all.push_back(of_plant(standing, due, plant));
  } else if (station == Station::cones) {
    for (const auto& cone : standing.cones)
      all.push_back(of_cone(due, cone));
  } else {
    for (const auto& lot : standing.lots)
      if (lot.lot.code.kind() == kind_at(station))
        all.push_back(of_lot(standing, due, lot, by_place));
  }
  std::ranges::stable_sort(all, [](const Listed& a, const Listed& b) {
    const auto turn = [](const Listed& l) { return std::tuple(l.ended, l.due.isEmpty()); };
    if (turn(a) != turn(b))
      return turn(a) < turn(b);
    return a.due.isEmpty() && a.group < b.group;
  });
  return all;
}

} // namespace coneline::window
