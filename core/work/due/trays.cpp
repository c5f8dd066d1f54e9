// SPDX-License-Identifier: GPL-3.0-or-later
// Trays to look at, and seedlings that can go into pots.
#include "core/base/phrase.h"
#include "core/work/due/list.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

namespace coneline::work {

void trays_due(const DueGround& ground, DueList& list) {
  for (const LotLine& line : ground.lots) {
    const auto sown = line.on_hand.find(book::State::sown);
    if (line.lot.code.kind() != Kind::tray || sown == line.on_hand.end())
      continue;
    const auto& looks = ground.done(book::Verb::inspect, line.lot.id);
    const auto last = looks.last ? *looks.last : line.since.value_or(ground.day);
    list.add({DueKind::inspect, line.lot.code, looks.times,
              last.plus_days(ground.habits.days_between_looks), std::nullopt,
              phrase_n(sown->second, "{} seed of {}: look for roots and leaves",
                       "{} seeds of {}: look for roots and leaves", origin_said(line.origin.name)),
              line.place});
  }
  seedlings_due(ground, list);
}

void seedlings_due(const DueGround& ground, DueList& list) {
  for (const LotLine& line : ground.lots) {
    const auto leaves = line.on_hand.find(book::State::leaf);
    if (line.lot.code.kind() != Kind::tray || leaves == line.on_hand.end() || !line.since)
      continue;
    const auto* route = ground.registers.route(line.origin.taxon_id);
    if (route == nullptr)
      continue;
    const auto& months = route->steps.front().months;
    list.add({DueKind::pot, line.lot.code, 0, line.since->plus_part_months(months.low),
              line.since->plus_part_months(months.high),
              phrase_n(leaves->second, "{} seedling of {} can go into a pot",
                       "{} seedlings of {} can go into pots", origin_said(line.origin.name)),
              line.place});
  }
}

} // namespace coneline::work
