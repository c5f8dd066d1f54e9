// SPDX-License-Identifier: GPL-3.0-or-later
// Pollen to collect while a male cone sheds, and pollen that grows old.
#include "core/work/pollen.h"

#include "core/base/phrase.h"
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

struct Shedding {
  Date since;
  std::optional<Date> ended;
  std::optional<Date> collected;
  int times = 0;
};

/// The last shedding of each male plant.
std::map<book::PlantId, Shedding> sheddings(const DueGround& ground) {
  std::map<book::PlantId, Shedding> of;
  for (const auto& entry : ground.sweep.standing(book::Verb::watch_male_cone)) {
    const auto& note = std::get<book::PlantNote>(entry.detail);
    if (entry.date > ground.day)
      continue;
    const auto found = of.find(note.plant);
    if (*note.male_cone == book::MaleCone::spent) {
      if (found != of.end())
        found->second.ended = entry.date;
    } else if (*note.male_cone != book::MaleCone::tight &&
               (found == of.end() || found->second.ended)) {
      of.insert_or_assign(note.plant, Shedding{entry.date, {}, {}, 0});
    }
  }
  for (const auto& entry : ground.sweep.standing(book::Verb::collect_pollen)) {
    const auto plant =
        ground.registers.pollen_lot(std::get<book::PollenNote>(entry.detail).lot).plant;
    const auto found = of.find(plant);
    if (found == of.end() || entry.date > ground.day)
      continue;
    ++found->second.times;
    if (entry.date >= found->second.since)
      found->second.collected = entry.date;
  }
  return of;
}

} // namespace

void pollen_due(const DueGround& ground, DueList& list) {
  const auto& habits = ground.habits;
  for (const auto& [id, shedding] : sheddings(ground)) {
    if (shedding.ended || shedding.since.plus_days(habits.days_of_shedding) < ground.day)
      continue;
    const auto& plant = ground.registers.plant(id);
    const auto from = shedding.collected ? shedding.collected->plus_days(habits.days_between_passes)
                                         : shedding.since;
    list.add({DueKind::collect_pollen, plant.code, shedding.times, from,
              from.plus_days(habits.days_between_passes_at_most - habits.days_between_passes),
              phrase("pollen of {}, while its cone sheds", book::plant_name(plant)), plant.place});
  }
  for (const auto& line : ground.once.pollen_lines()) {
    if (!line.there() || !line.old_from)
      continue;
    // Old pollen that was tested since is known; it is not asked for again.
    const auto from = line.old_from->plus_days(-habits.days_before_old);
    if (std::ranges::any_of(line.tests, [&](const auto& test) { return test.date >= from; }))
      continue;
    const std::string advice = *line.old_to < ground.day ? phrase("test it, or throw it away")
                                                         : phrase("use it first, or test it");
    list.add({DueKind::test_pollen, line.lot.code, static_cast<int>(line.tests.size()), from,
              line.old_to,
              phrase("{} of {} is old from {}: {} ({})", line.lot.code.text(),
                     book::plant_name(ground.registers.plant(line.lot.plant)),
                     line.old_from->said(), advice, line.years_source)});
  }
}

} // namespace coneline::work
