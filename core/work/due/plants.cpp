// SPDX-License-Identifier: GPL-3.0-or-later
// Parent plants that someone means to move.
#include "core/base/phrase.h"
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

std::optional<Window> moving_window(book::Hemisphere hemisphere, Date day) {
  if (hemisphere == book::Hemisphere::not_known)
    return std::nullopt;
  const bool north = hemisphere == book::Hemisphere::northern;
  for (const int year : {day.year(), day.year() + 1}) {
    const auto from = Date::of(year, north ? 3 : 9, 1);
    const auto to = north ? Date::of(year, 4, 30) : Date::of(year, 10, 31);
    if (from && to && *to >= day)
      return Window{*from, *to};
  }
  return std::nullopt;
}

void plants_due(const DueGround& ground, DueList& list) {
  std::map<book::PlantId, std::pair<book::Entry, int>> meant; // the last one, and how many
  for (const auto& entry : ground.sweep.standing(book::Verb::plan_move)) {
    auto& [last, times] = meant[std::get<book::PlantNote>(entry.detail).plant];
    last = entry;
    ++times;
  }
  for (const auto& [id, plan] : meant) {
    const auto& plant = ground.registers.plant(id);
    const auto to = *std::get<book::PlantNote>(plan.first.detail).to;
    if (plant.place == to)
      continue;
    DueList::Item item{DueKind::move_plant, plant.code, plan.second, plan.first.date};
    item.told = phrase("{} to {}", book::plant_name(plant), ground.registers.place(to).name);
    item.place = plant.place;
    item.done_at_once = true;
    if (plant.stands_in == book::StandsIn::ground) {
      // A plan of this spring stays of this spring, so that missing it is said.
      const auto window = moving_window(ground.registers.title.hemisphere, plan.first.date);
      item.told += window ? phrase(": from the ground, after winter and before new leaves")
                          : phrase(": from the ground; the book does not know its hemisphere, so "
                                   "when winter is over is yours to say");
      if (window) {
        item.from = std::max(window->from, plan.first.date);
        item.to = window->to;
      }
    }
    list.add(item);
  }
}

} // namespace coneline::work
