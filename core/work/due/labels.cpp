// SPDX-License-Identifier: GPL-3.0-or-later
// Labels that were asked for and not printed since.
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

struct Wanted {
  int wanted = 0;
  int printed = 0;
  Date since;
};

} // namespace

void labels_due(const DueGround& ground, DueList& list) {
  for (const auto& line : ground.lots) {
    const auto wanted = ground.done(book::Verb::want_label, line.lot.id);
    const auto printed = ground.done(book::Verb::print_label, line.lot.id);
    if (wanted.times <= printed.times)
      continue;
    list.add({DueKind::print_label, line.lot.code, printed.times, *wanted.last, std::nullopt,
              fmt::format("a new label for {}, {}", line.lot.code.text(), line.origin.name),
              line.place, true});
  }
  std::map<book::ConeId, Wanted> cones;
  for (const auto& entry : ground.reading.standing_entries(book::Verb::want_label))
    if (entry.cone && entry.date <= ground.day) {
      ++cones[*entry.cone].wanted;
      cones[*entry.cone].since = entry.date;
    }
  for (const auto& entry : ground.reading.standing_entries(book::Verb::print_label))
    if (entry.cone && entry.date <= ground.day)
      ++cones[*entry.cone].printed;
  for (const auto& [id, label] : cones) {
    const auto& cone = ground.registers.cone(id);
    const auto& plant = ground.registers.plant(cone.plant);
    if (label.wanted > label.printed)
      list.add({DueKind::print_label, cone.code, label.printed, label.since, std::nullopt,
                fmt::format("a new label for {} on {}", cone.code.text(), book::plant_name(plant)),
                plant.place, true});
  }
}

} // namespace coneline::work
