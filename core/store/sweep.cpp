// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sweep.h"

#include "core/base/phrase.h"
#include "core/store/filling.h"
#include "core/store/tables.h"
#include "sql.h"

#include <algorithm>
#include <bitset>
#include <stdexcept>
#include <unordered_map>
#include <unordered_set>

namespace coneline::store {

namespace {

const LotSums nothing;

bool begins(book::State state) {
  return book::standing(state) == book::Standing::beginning;
}

bool is_seed(book::State state) {
  return state == book::State::unsorted || state == book::State::judged_filled ||
         state == book::State::judged_empty;
}

/// Judged, opened or sown: what was seed before and is known better now, or in a tray.
bool uses_seed(const book::Movement& movement) {
  const auto to = movement.to.state;
  return is_seed(movement.from.state) &&
         (is_seed(to) || to == book::State::sown || to == book::State::opened_filled ||
          to == book::State::opened_empty);
}

void later(std::optional<Date>& last, Date day) {
  last = last ? std::max(*last, day) : day;
}

std::optional<std::size_t> counted(book::Verb verb) {
  const auto found = std::ranges::find(counted_verbs, verb);
  return found == counted_verbs.end()
             ? std::nullopt
             : std::optional(static_cast<std::size_t>(found - counted_verbs.begin()));
}

} // namespace

/// What the pass over movements must know of the entries.
struct Sweep::Passed {
  struct Brief {
    Date date;
    bool stands = true;
    std::optional<std::size_t> kept; ///< its place among the entries that are kept
  };
  /// Numbers come in their order and close together; in a damaged book they need not.
  void add(std::int64_t id, const Brief& brief) {
    const auto at_most = 16 * static_cast<std::int64_t>(briefs.size()) + 10'000;
    if (id < static_cast<std::int64_t>(briefs.size()) || id > at_most)
      throw std::runtime_error(phrase("there is no entry {}", id));
    briefs.resize(static_cast<std::size_t>(id) + 1);
    briefs.back() = brief;
  }

  std::vector<Brief> briefs; ///< by number
  std::vector<book::Entry> entries;
};

const DoneToLot& LotSums::times(book::Verb verb) const {
  return done.at(*counted(verb));
}

Sweep::Sweep(Reading& reading, Date day, const std::vector<book::Verb>& kept) : day_(day) {
  auto& tables = reading.tables();
  Passed passed;
  pass_entries(tables, kept, passed);
  pass_movements(tables, passed);
  fill_details(tables, passed.entries);
  for (const auto verb : kept) {
    standing_[verb];
    reversed_[verb];
  }
  sort_out(passed);
}

const LotSums& Sweep::of(book::LotId lot) const {
  const auto found = lots_.find(lot);
  return found == lots_.end() ? nothing : found->second;
}

const std::vector<book::Entry>& Sweep::standing(book::Verb verb) const {
  return standing_.at(verb);
}

const std::vector<book::Entry>& Sweep::reversed(book::Verb verb) const {
  return reversed_.at(verb);
}

void Sweep::pass_entries(Tables& tables, const std::vector<book::Verb>& kept, Passed& passed) {
  std::unordered_set<std::int64_t> reversed;
  tables.ask(sql::reversed_numbers).each([&](const Row& row) {
    reversed.insert(row.whole("reverses"));
  });
  std::bitset<book::Words<book::Verb>::all.size()> keeps;
  for (const auto verb : kept)
    keeps.set(static_cast<std::size_t>(verb));
  std::unordered_map<book::LotId, Date> put; // when each lot came to its place
  tables.ask(sql::entries).each([&](const Row& row) {
    const auto id = row.whole("id");
    const auto verb = row.one_of<book::Verb>("verb");
    Passed::Brief brief{row.date("date"), !reversed.contains(id) && !row.has("reverses"), {}};
    if (keeps.test(static_cast<std::size_t>(verb))) {
      brief.kept = passed.entries.size();
      passed.entries.push_back(entry_of(row));
    }
    passed.add(id, brief);
    const auto lot = row.maybe_id<book::LotId>("lot_id");
    if (!lot || !brief.stands)
      return;
    auto& sums_of_lot = lots_[*lot];
    if (const auto place = row.maybe_id<book::PlaceId>("place_id")) {
      auto& when = put.try_emplace(*lot, brief.date).first->second;
      if (when <= brief.date) { // the entries come by their numbers
        when = brief.date;
        sums_of_lot.place = place;
      }
    }
    if (brief.date > day_)
      return;
    later(sums_of_lot.entered, brief.date);
    if (const auto which = counted(verb)) {
      ++sums_of_lot.done[*which].times;
      later(sums_of_lot.done[*which].last, brief.date);
    }
  });
}

void Sweep::pass_movements(Tables& tables, Passed& passed) {
  tables.ask(sql::movements).each([&](const Row& row) {
    const auto id = row.whole("entry_id");
    const auto& brief = passed.briefs.at(static_cast<std::size_t>(id));
    const auto movement = movement_of(row);
    const auto& [from, to, count] = movement;
    for (const auto& [account, by] : {std::pair(from, -count.value()), {to, count.value()}}) {
      auto& lot = lots_[account.lot];
      lot.held[static_cast<std::size_t>(account.state)] += by;
      total_[static_cast<std::size_t>(account.state)] += by;
      if (brief.stands && brief.date <= day_)
        later(lot.entered, brief.date);
    }
    if (brief.stands && brief.date <= day_ && uses_seed(movement))
      later(lots_[from.lot].seed_used, brief.date);
    if (brief.stands && (from.lot != to.lot || begins(from.state))) {
      auto& lot = lots_[to.lot];
      lot.came_in += count.value();
      lot.since = lot.since ? std::min(*lot.since, brief.date) : brief.date;
    }
    if (brief.kept)
      passed.entries[*brief.kept].movements.push_back(movement);
  });
}

void Sweep::sort_out(Passed& passed) {
  for (auto& entry : passed.entries) {
    const bool stands = passed.briefs[static_cast<std::size_t>(entry.id.value)].stands;
    (stands ? standing_ : reversed_)[entry.verb].push_back(std::move(entry));
  }
  for (auto& [verb, entries] : standing_)
    std::ranges::stable_sort(entries, {}, &book::Entry::date);
}

} // namespace coneline::store
