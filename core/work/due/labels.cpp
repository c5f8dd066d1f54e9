// SPDX-License-Identifier: GPL-3.0-or-later
// Labels that were asked for and not printed since, and those that nobody has seen for a while.
#include "core/base/phrase.h"
#include "core/work/due/list.h"
#include "core/work/labels_to_renew.h"
#include "core/work/origin_said.h"

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
  const auto histories = label_histories(ground.once.reading());
  const auto printed_since = [&](const Code& code, Date day) {
    const auto history = histories.find(code);
    return history != histories.end() && history->second.last >= day;
  };
  for (const auto& label : labels_to_renew(ground.once, histories)) {
    const auto last = label.printed ? std::max(*label.printed, label.seen.value_or(*label.printed))
                                    : label.seen.value_or(ground.day);
    list.add({DueKind::print_label, label.code, label.times_printed,
              last.plus_days(usual_days_unseen), std::nullopt,
              phrase("the label of {} was last seen on {}: look whether it can be read, or "
                     "print it again",
                     label.code.text(), last.said()),
              label.place, true});
  }
  for (const LotLine& line : ground.lots) {
    const auto wanted = ground.done(book::Verb::want_label, line.lot.id);
    const auto printed = ground.done(book::Verb::print_label, line.lot.id);
    if (wanted.times <= printed.times || printed_since(line.lot.code, *wanted.last))
      continue;
    list.add({DueKind::print_label, line.lot.code, printed.times, *wanted.last, std::nullopt,
              phrase("a new label for {}, {}", line.lot.code.text(), origin_said(line.origin.name)),
              line.place, true});
  }
  std::map<book::ConeId, Wanted> cones;
  for (const auto& entry : ground.sweep.standing(book::Verb::want_label))
    if (entry.cone && entry.date <= ground.day) {
      ++cones[*entry.cone].wanted;
      cones[*entry.cone].since = entry.date;
    }
  for (const auto& entry : ground.sweep.standing(book::Verb::print_label))
    if (entry.cone && entry.date <= ground.day)
      ++cones[*entry.cone].printed;
  for (const auto& [id, label] : cones) {
    const auto& cone = ground.registers.cone(id);
    const auto& plant = ground.registers.plant(cone.plant);
    if (label.wanted > label.printed && !printed_since(cone.code, label.since))
      list.add({DueKind::print_label, cone.code, label.printed, label.since, std::nullopt,
                phrase("a new label for {} on {}", cone.code.text(), book::plant_name(plant)),
                plant.place, true});
  }
}

} // namespace coneline::work
