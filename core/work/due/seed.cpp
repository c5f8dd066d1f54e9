// SPDX-License-Identifier: GPL-3.0-or-later
// Seed to clean, seed in water, seed that waits, and seed put by that may be ready to sow.
#include "core/base/phrase.h"
#include "core/work/due/list.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// Soaking seed wants fresh water every day, until it is taken out: its time in water ends with a
/// cleaning or change of water on its last day or later, or when the seed is judged, sown or put
/// by.
class Soaking {
 public:
  explicit Soaking(const DueGround& ground) : ground_(ground) {
    for (const auto& entry : ground.sweep.standing(book::Verb::clean)) {
      if (!entry.lot || entry.date > ground.day)
        continue;
      auto& soak = soaks_[*entry.lot];
      soak.last = entry.date;
      ++soak.times;
      if (const int days = std::get<book::Cleaning>(entry.detail).soak_days; days > 0) {
        soak.begun = entry.date;
        soak.until = entry.date.plus_days(days);
      }
    }
  }

  [[nodiscard]] bool holds(book::LotId batch) const { return find(batch) != nullptr; }

  /// However long ago it was to come out.
  void add(DueList& list, const LotLine& line) const {
    const auto* soak = find(line.lot.id);
    if (soak == nullptr)
      return;
    list.add({DueKind::water, line.lot.code, soak->times, soak->last.plus_days(1), soak->until,
              ground_.day < *soak->until
                  ? phrase("{} seeds of {} are soaking: change the water", line.total(),
                           origin_said(line.origin.name))
                  : phrase("{} seeds of {} have soaked: take them out, float them", line.total(),
                           origin_said(line.origin.name)),
              line.place});
  }

 private:
  struct Soak {
    Date last; ///< cleaning or change of water
    Date begun;
    std::optional<Date> until; ///< none: never put in water
    int times = 0;
  };

  /// None where the seed is in no water.
  [[nodiscard]] const Soak* find(book::LotId batch) const {
    const auto found = soaks_.find(batch);
    if (found == soaks_.end() || !found->second.until || found->second.last >= *found->second.until)
      return nullptr;
    const auto& soak = found->second;
    const auto after = [&](std::optional<Date> day) { return day && *day > soak.begun; };
    return after(ground_.sweep.of(batch).seed_used) ||
                   after(ground_.done(book::Verb::store, batch).last)
               ? nullptr
               : &soak;
  }

  const DueGround& ground_;
  std::map<book::LotId, Soak> soaks_;
};

/// Seed that is clean or judged filled, and neither put by nor sown.
void waiting(const DueGround& ground, DueList& list, const LotLine& line) {
  const auto& batch = line.lot.id;
  const auto held = [&](book::State state) {
    const auto found = line.on_hand.find(state);
    return found == line.on_hand.end() ? std::int64_t{0} : found->second;
  };
  const auto& cleaned = ground.done(book::Verb::clean, batch).last;
  const auto& used = ground.sweep.of(batch).seed_used;
  const auto filled = held(book::State::judged_filled);
  const auto seeds = filled > 0 ? filled : cleaned ? held(book::State::unsorted) : 0;
  if (seeds == 0 || (!cleaned && !used) || ground.done(book::Verb::store, batch).times > 0)
    return;
  const auto since = cleaned && used ? std::max(*cleaned, *used) : cleaned ? *cleaned : *used;
  const auto origin = origin_said(line.origin.name);
  list.add({DueKind::store, line.lot.code, 0, since.plus_days(ground.habits.days_until_put_by),
            std::nullopt,
            filled > 0
                ? phrase_n(seeds, "{} judged filled of {} waits: sow it or put it by",
                           "{} judged filled of {} wait: sow them or put them by", origin)
                : phrase_n(seeds, "{} clean seed of {} waits: sort, sow it or put it by",
                           "{} clean seeds of {} wait: sort, sow them or put them by", origin),
            line.place});
}

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
                phrase("{} seeds of {} are not cleaned yet", line.total(),
                       origin_said(line.origin.name)),
                line.place});
    soaking.add(list, line);
    if (!soaking.holds(lot.id))
      waiting(ground, list, line);
    if (const auto found = kept.find(lot.id); found != kept.end() && found->second.until_from)
      list.add({DueKind::sow, lot.code, ground.done(book::Verb::store, lot.id).times,
                *found->second.until_from, found->second.until_to,
                phrase("{} seeds of {} may have ripened on: look at them, sow", line.total(),
                       origin_said(line.origin.name)),
                line.place});
  }
}

} // namespace coneline::work
