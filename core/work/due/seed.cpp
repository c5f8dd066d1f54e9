// SPDX-License-Identifier: GPL-3.0-or-later
// Seed to clean, and seed put by that may be ready to sow.
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

void seed_due(const DueGround& ground, DueList& list) {
  std::map<book::LotId, book::Keeping> kept;
  for (const auto& entry : ground.reading.standing_entries(book::Verb::store))
    if (entry.lot && entry.date <= ground.day)
      kept[*entry.lot] = std::get<book::Keeping>(entry.detail);
  for (const auto& line : ground.lots) {
    const auto& lot = line.lot;
    if (lot.code.kind() != Kind::batch)
      continue;
    if (ground.done(book::Verb::clean, lot.id).times == 0 && line.since)
      list.add({DueKind::clean, lot.code, 0,
                line.since->plus_days(ground.habits.days_until_cleaned), std::nullopt,
                fmt::format("{} seeds of {} are not cleaned yet", line.total(), line.origin.name),
                line.place});
    if (const auto found = kept.find(lot.id); found != kept.end() && found->second.until_from)
      list.add({DueKind::sow, lot.code, ground.done(book::Verb::store, lot.id).times,
                *found->second.until_from, found->second.until_to,
                fmt::format("{} seeds of {} may have ripened on: look at them, sow", line.total(),
                            line.origin.name),
                line.place});
  }
}

} // namespace coneline::work
