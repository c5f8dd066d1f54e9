// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/reverse.h"

#include "core/base/phrase.h"
#include "core/work/pollen.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <vector>

namespace coneline::work {

std::string told(store::Reading& reading, const book::Entry& entry) {
  std::string back;
  for (const auto& [from, to, count] : entry.movements)
    back += phrase("{}{} from '{}'{} back to '{}'{}", back.empty() ? ": " : "; ", count.value(),
                   book::said(to.state),
                   from.lot == to.lot ? std::string()
                                      : phrase(" of {}", reading.lot(to.lot).code.text()),
                   book::said(from.state), phrase(" of {}", reading.lot(from.lot).code.text()));
  return phrase("{} on {}{}", book::said(entry.verb), entry.date.said(), back);
}

namespace {

/// Entries that took of what this one brought, and stand: the latest first.
std::vector<book::EntryId> resting_on(store::Reading& reading, const book::Entry& first) {
  std::set<book::EntryId> resting;
  for (const auto& brought : first.movements)
    for (const auto& entry : reading.entries_of(brought.to.lot)) {
      const bool takes = std::ranges::any_of(
          entry.movements, [&](const auto& taken) { return taken.from == brought.to; });
      if (takes && entry.id != first.id && !entry.reverses && entry.date >= first.date &&
          !reading.reversed_by(entry.id))
        resting.insert(entry.id);
    }
  return {resting.rbegin(), resting.rend()};
}

/// Nothing is reversed in part, so what is in the way is named instead of how much could go.
Fault in_the_way(store::Reading& reading, const book::Entry& first, const Fault& why) {
  const auto resting = resting_on(reading, first);
  if (resting.empty() || first.reverses || reading.reversed_by(first.id))
    return why;
  std::string numbers;
  for (const auto& id : resting)
    numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", id.value);
  auto told = why;
  told.remedy =
      phrase("Entry {} is reversed as a whole. What took of it goes first, as far as it is "
             "in the way, the latest first: {}.",
             first.id.value, numbers);
  return told;
}

} // namespace

bool can_be_reversed(const book::Entry& entry) {
  return entry.verb != book::Verb::correct;
}

bool can_be_reversed(store::Reading& reading, const std::vector<book::EntryId>& entries) {
  // Few entries are corrections, while an old table brings in thousands at once.
  return std::ranges::none_of(
      reading.standing_entries(book::Verb::correct),
      [&](const auto& id) { return std::ranges::find(entries, id) != entries.end(); },
      &book::Entry::id);
}

Result<Done> reverse(store::Writing& writing, const Reverse& wanted) {
  auto first = writing.entry(wanted.entry);
  if (!first)
    return refuse(first.error());
  if (!can_be_reversed(*first))
    return refuse(fault(phrase("entry {} corrected the register", first->id.value),
                        "Correct it again; what stood before is kept in its history."));
  if (first->verb == book::Verb::collect_pollen && !first->reverses &&
      !writing.reversed_by(first->id))
    if (auto free = collection_is_not_needed(writing, writing.registers(), *first); !free)
      return refuse(free.error());
  auto entry = entry_for(book::Verb::reverse, {first->date, wanted.who, wanted.note});
  entry.lot = first->lot;
  entry.cone = first->cone;
  entry.reverses = first->id;
  entry.movements = first->movements;
  for (auto& movement : entry.movements)
    std::swap(movement.from, movement.to);
  auto done = entered(writing, entry, phrase("reversed: {}", told(writing, *first)));
  if (!done)
    return refuse(in_the_way(writing, *first, done.error()));
  return done;
}

Result<Done> reverse(store::Book& book, const Reverse& wanted) {
  return book.write([&](store::Writing& writing) { return reverse(writing, wanted); });
}

} // namespace coneline::work
