// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pot.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/lot_ended.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

struct Taken {
  book::State state;
  std::int64_t count;
};

/// A tray waits for roots and leaves; the plants of a pot group have gone somewhere.
Fault nothing_to_pot(store::Reading& reading, const book::Lot& from, Date day) {
  const bool group = from.code.kind() == Kind::pot_group;
  if (group)
    if (auto there = refuse_empty_on(reading, from, day); !there)
      return there.error();
  return fault(phrase("{} has nothing to pot on {}", from.code.text(), day.said()),
               group ? phrase("Say how many.") : phrase("Enter the new roots and leaves first."));
}

/// What leaves the lot: leaves first, since they are the furthest on, then roots.
Result<std::vector<Taken>> taken(store::Reading& reading, const book::Lot& from,
                                 const PotUp& wanted) {
  std::vector<book::State> order;
  if (from.code.kind() == Kind::pot_group)
    order = {book::State::plant};
  else if (wanted.state)
    order = {*wanted.state};
  else
    order = {book::State::leaf, book::State::root};
  std::vector<Taken> taken;
  std::int64_t there = 0;
  for (const auto state : order) {
    const auto count = held(reading, from.id, state, wanted.noted.on);
    there += count;
    taken.push_back({state, count});
  }
  const auto asked = wanted.count ? wanted.count->value() : there;
  const bool group = from.code.kind() == Kind::pot_group;
  if (asked == 0 || (there == 0 && group))
    return refuse(nothing_to_pot(reading, from, wanted.noted.on));
  if (asked > there)
    return refuse(
        fault(phrase("{} has {} to pot on {}, and {} are to be potted: {} too many",
                     from.code.text(), there, wanted.noted.on.said(), asked, asked - there),
              group ? phrase("Correct the number, or count the group again (recount).")
                    : phrase("Enter the new roots and leaves first, or correct the number.")));
  auto left = asked;
  for (auto& part : taken) {
    part.count = std::min(part.count, left);
    left -= part.count;
  }
  std::erase_if(taken, [](const Taken& part) { return part.count == 0; });
  return taken;
}

Result<book::Lot> group_for(store::Writing& writing, const book::Registers& registers,
                            const book::Lot& from, const PotUp& wanted, Done& done) {
  auto pot = pot_named(registers, wanted.pot);
  if (!pot)
    return refuse(pot.error());
  auto mix = mix_named(registers, wanted.mix);
  if (!mix)
    return refuse(mix.error());
  if (wanted.into) {
    auto group = lot_of_kind(writing, *wanted.into, Kind::pot_group);
    if (!group)
      return refuse(group.error());
    if (group->judged != from.judged)
      return refuse(
          fault(phrase("{} holds seed judged '{}', {} '{}'", group->code.text(),
                       book::said(group->judged), from.code.text(), book::said(from.judged)),
                "Make a group of its own, so that the test can be judged later; both may share a "
                "place."));
    if (group->judged_by != from.judged_by)
      return refuse(
          fault(phrase("{} holds seed judged by {}, {} by {}", group->code.text(),
                       book::said(group->judged_by), from.code.text(), book::said(from.judged_by)),
                "Make a group of its own, so that the test can be judged later; both may "
                "share a place."));
    if (*mix && group->mix != *mix)
      return refuse(fault(group->mix ? phrase("{} is in '{}', not in '{}'", group->code.text(),
                                              registers.mix(*group->mix).name, *wanted.mix)
                                     : phrase("{} has no mix in the book, and these come into '{}'",
                                              group->code.text(), *wanted.mix),
                          "Leave the mix out, or make a new group."));
    if (group->pot != *pot)
      return refuse(fault(phrase("{} is in '{}', not in '{}'", group->code.text(),
                                 registers.pot(*group->pot).name, wanted.pot),
                          "Name that pot, or make a new group."));
    return group;
  }
  auto code = writing.next_code(Kind::pot_group);
  if (!code)
    return refuse(code.error());
  book::Lot group{{}, *code, from.origin, from.judged, from.judged_by, *pot, *mix, {}};
  auto id = writing.add(group);
  if (!id)
    return refuse(id.error());
  group.id = *id;
  done.made = {*code};
  return group;
}

std::optional<book::PlaceId> place_of(store::Reading& reading, book::LotId lot, Date day) {
  const auto places = reading.places(day);
  const auto found = places.find(lot);
  return found == places.end() ? std::nullopt : std::optional(found->second);
}

} // namespace

Result<Done> pot_up(store::Book& book, const PotUp& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    const bool on = wanted.from.kind() == Kind::pot_group;
    auto from = lot_of_kind(writing, wanted.from, on ? Kind::pot_group : Kind::tray);
    if (!from)
      return refuse(from.error());
    auto parts = taken(writing, *from, wanted);
    if (!parts)
      return refuse(parts.error());
    auto place = place_coded(registers, wanted.place);
    if (!place)
      return refuse(place.error());
    Done done;
    auto group = group_for(writing, registers, *from, wanted, done);
    if (!group)
      return refuse(group.error());
    if (!*place && !wanted.into)
      place = place_of(writing, from->id, wanted.noted.on);
    auto entry = entry_for(on ? book::Verb::pot_on : book::Verb::pot, wanted.noted);
    entry.lot = group->id;
    entry.place = *place;
    std::int64_t plants = 0;
    for (const auto& part : *parts) {
      entry.movements.push_back(
          {{from->id, part.state}, {group->id, book::State::plant}, Count::sure(part.count)});
      plants += part.count;
    }
    auto id = writing.enter(entry);
    if (!id)
      return refuse(id.error());
    done.entries = {*id};
    done.told = phrase("{} from {} into {}, '{}'", counted(plants, "plant", "plants"),
                       wanted.from.text(), group->code.text(), wanted.pot);
    done.cautions = cautions_told(entry.verb);
    return done;
  });
}

} // namespace coneline::work
