// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/doubts.h"

#include "core/base/phrase.h"
#include "core/work/cone_course.h"

#include <algorithm>
#include <tuple>

namespace coneline::work {

namespace {

constexpr std::size_t most_looked_at = 20; // entries; a table taken in has an answer of its own

std::int64_t moved(const book::Entry& entry) {
  std::int64_t sum = 0;
  for (const auto& movement : entry.movements)
    sum += movement.count.value();
  return sum;
}

/// What was entered of the same thing before. Sowing and potting make a lot each time and are often
/// done alike; the other verbs left out here move nothing or tell by themselves.
std::vector<book::Entry> before(store::Reading& reading, const book::Entry& entry) {
  switch (entry.verb) {
  case book::Verb::harvest: {
    if (!entry.lot) // the cone gave nothing
      return {};
    const auto origin = reading.lot(*entry.lot).origin;
    auto all = reading.standing_entries(book::Verb::harvest);
    std::erase_if(all, [&](const book::Entry& other) {
      return !other.lot || reading.lot(*other.lot).origin != origin;
    });
    return all;
  }
  case book::Verb::pollinate:
    return entry.cone ? reading.entries_of(*entry.cone) : std::vector<book::Entry>();
  case book::Verb::clean:
  case book::Verb::open:
  case book::Verb::inspect:
  case book::Verb::lose:
  case book::Verb::discard:
  case book::Verb::sell:
  case book::Verb::plant_out:
    return entry.lot && !entry.movements.empty() ? reading.entries_of(*entry.lot)
                                                 : std::vector<book::Entry>();
  default:
    return {};
  }
}

bool says_the_same(const book::Entry& one, const book::Entry& other) {
  if (one.verb != other.verb || one.date != other.date)
    return false;
  // A harvest goes into a batch of its own each time.
  return one.verb == book::Verb::harvest ? moved(one) == moved(other)
                                         : one.movements == other.movements;
}

/// The plant was named, as for a new cone, while one of its cones is being pollinated.
std::optional<std::string> cone_meant_instead(store::Reading& reading, const book::Entry& entry,
                                              const Done& done) {
  constexpr int days_of_one_cone = 30;
  if (entry.verb != book::Verb::pollinate || !entry.cone)
    return std::nullopt;
  const auto registers = reading.registers();
  const auto& fresh = book::row_of(registers.cones, *entry.cone);
  if (std::ranges::find(done.made, fresh.code) == done.made.end())
    return std::nullopt;
  for (const auto& course : cone_courses(reading, registers)) {
    const auto& line = course.line;
    if (line.cone.plant != fresh.plant || line.cone.id == fresh.id || line.passes.empty() ||
        line.harvested_on)
      continue;
    const auto days = days_between(line.passes.back(), entry.date);
    if (days >= 0 && days <= days_of_one_cone)
      return phrase("{} of the same plant was pollinated {} days before. If that is the cone, "
                    "reverse entry {} and give its code.",
                    line.cone.code.text(), days, entry.id.value);
  }
  return std::nullopt;
}

} // namespace

std::vector<std::string> doubts(store::Book& book, const Done& done, Date today) {
  std::vector<std::string> told;
  if (done.entries.size() > most_looked_at)
    return told;
  // A book that cannot be read tells so with the next thing asked of it.
  std::ignore = book.read([&](store::Reading& reading) {
    for (const auto id : done.entries) {
      const auto entry = reading.entry(id);
      if (!entry)
        continue;
      if (!entry->reverses && today.plus_days(1) < entry->date)
        told.push_back(phrase("{} is {} days from now. If that is not the day, reverse entry {}.",
                              entry->date.said(), days_between(today, entry->date), id.value));
      if (auto told_of_cone = cone_meant_instead(reading, *entry, done))
        told.push_back(*std::move(told_of_cone));
      const auto earlier = before(reading, *entry);
      const auto same = std::ranges::find_if(earlier, [&](const book::Entry& other) {
        return other.id < id && says_the_same(other, *entry) && !reading.reversed_by(other.id);
      });
      if (same != earlier.end())
        told.push_back(phrase("Entry {} of the same day says the same. If it was entered twice, "
                              "reverse entry {}.",
                              same->id.value, id.value));
    }
    return true;
  });
  return told;
}

} // namespace coneline::work
