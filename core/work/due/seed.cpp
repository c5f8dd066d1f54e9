// SPDX-License-Identifier: GPL-3.0-or-later
// Seed to clean, seed in water, and seed put by that may be ready to sow.
#include "core/base/phrase.h"
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// Soaking seed wants fresh water every day, until it is taken out.
class Soaking {
 public:
  explicit Soaking(const DueGround& ground) {
    for (const auto& entry : ground.sweep.standing(book::Verb::clean)) {
      if (!entry.lot || entry.date > ground.day)
        continue;
      auto& soak = soaks_[*entry.lot];
      soak.last = entry.date;
      ++soak.times;
      if (const int days = std::get<book::Cleaning>(entry.detail).soak_days; days > 0)
        soak.until = entry.date.plus_days(days);
    }
  }

  void add(const DueGround& ground, DueList& list, const LotLine& line) const {
    const auto found = soaks_.find(line.lot.id);
    if (found == soaks_.end() || !found->second.until)
      return;
    const auto& [last, until, times] = found->second;
    constexpr int forgotten = 2; // days after which nobody waits for the seed any more
    if (last >= *until || ground.day > until->plus_days(forgotten))
      return;
    list.add({DueKind::water, line.lot.code, times, last.plus_days(1), until,
              ground.day < *until ? phrase("{} seeds of {} are soaking: change the water",
                                           line.total(), line.origin.name)
                                  : phrase("{} seeds of {} have soaked: take them out, float them",
                                           line.total(), line.origin.name),
              line.place});
  }

 private:
  struct Soak {
    Date last;
    std::optional<Date> until;
    int times = 0;
  };
  std::map<book::LotId, Soak> soaks_;
};

} // namespace

void seed_due(const DueGround& ground, DueList& list) {
  const Soaking soaking(ground);
  std::map<book::LotId, book::Keeping> kept;
  for (const auto& entry : ground.sweep.standing(book::Verb::store))
    if (entry.lot && entry.date <= ground.day)
      kept[*entry.lot] = std::get<book::Keeping>(entry.detail);
  for (const LotLine& line : ground.lots) {
    const auto& lot = line.lot;
    if (lot.code.kind() != Kind::batch)
      continue;
    if (ground.done(book::Verb::clean, lot.id).times == 0 && line.since)
      list.add({DueKind::clean, lot.code, 0,
                line.since->plus_days(ground.habits.days_until_cleaned), std::nullopt,
                phrase("{} seeds of {} are not cleaned yet", line.total(), line.origin.name),
                line.place});
    soaking.add(ground, list, line);
    if (const auto found = kept.find(lot.id); found != kept.end() && found->second.until_from)
      list.add({DueKind::sow, lot.code, ground.done(book::Verb::store, lot.id).times,
                *found->second.until_from, found->second.until_to,
                phrase("{} seeds of {} may have ripened on: look at them, sow", line.total(),
                       line.origin.name),
                line.place});
  }
}

} // namespace coneline::work
