// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/sow.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// What had judged the seed by the day: the last sorting up to then that stands.
book::SeedTest last_test(store::Reading& reading, const book::Lot& batch, Date day) {
  auto test = book::SeedTest::none;
  std::optional<Date> last;
  for (const auto& entry : reading.entries_of(batch.id)) {
    if (entry.verb != book::Verb::sort || entry.date > day || (last && entry.date < *last) ||
        reading.reversed_by(entry.id))
      continue;
    last = entry.date;
    test = std::get<book::Sorting>(entry.detail).test;
  }
  return test;
}

book::Judged judged_in(book::State state) {
  switch (state) {
  case book::State::judged_filled:
    return book::Judged::filled;
  case book::State::judged_empty:
    return book::Judged::empty;
  default:
    return book::Judged::not_judged;
  }
}

Result<book::State> seed_meant(store::Reading& reading, const book::Lot& batch, const Sow& wanted) {
  if (wanted.from)
    return state_meant(reading, batch, wanted.from, wanted.noted.on);
  return held(reading, batch.id, book::State::judged_filled, wanted.noted.on) > 0
             ? book::State::judged_filled
             : book::State::unsorted;
}

/// All trays together; the gate asks tray by tray.
Result<void> enough_seed(store::Reading& reading, const book::Lot& batch, book::State from,
                         const Sow& wanted) {
  const auto there = held(reading, batch.id, from, wanted.noted.on);
  if (wanted.seeds.value() <= there)
    return {};
  return refuse(fault(phrase("{} has {} '{}' on {}, and {} are asked for: {} too many",
                             batch.code.text(), there, book::said(from), wanted.noted.on.said(),
                             wanted.seeds.value(), wanted.seeds.value() - there),
                      "Check the number and the day, or recount the lot first."));
}

Result<void> room_for(const book::Pot& pot, const Sow& wanted) {
  if (wanted.trays < 1)
    return refuse(fault(phrase_n(wanted.trays, "{} tray", "{} trays"), "Give at least one."));
  if (wanted.seeds.value() < wanted.trays)
    return refuse(fault(phrase("{} in {} trays leaves {} of them empty",
                               counted(wanted.seeds.value(), "seed", "seeds"), wanted.trays,
                               wanted.trays - wanted.seeds.value()),
                        "Take fewer trays."));
  const auto cells = static_cast<std::int64_t>(pot.cells) * wanted.trays;
  if (pot.cells > 1 && wanted.seeds.value() > cells)
    return refuse(fault(phrase("{} of '{}' have {} cells, and {} seeds are to be sown: {} too many",
                               wanted.trays, pot.name, cells, wanted.seeds.value(),
                               wanted.seeds.value() - cells),
                        "Take more trays."));
  return {};
}

} // namespace

Result<Done> sow(store::Book& book, const Sow& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    auto batch = lot_of_kind(writing, wanted.batch, Kind::batch);
    if (!batch)
      return refuse(batch.error());
    auto from = seed_meant(writing, *batch, wanted);
    if (!from)
      return refuse(from.error());
    auto pot = pot_named(registers, wanted.pot);
    auto mix = mix_named(registers, wanted.mix);
    auto place = place_coded(registers, wanted.place);
    if (!pot)
      return refuse(pot.error());
    if (!mix)
      return refuse(mix.error());
    if (!place)
      return refuse(place.error());
    if (auto room = room_for(registers.pot(*pot), wanted); !room)
      return refuse(room.error());
    if (auto enough = enough_seed(writing, *batch, *from, wanted); !enough)
      return refuse(enough.error());
    Done done;
    const auto test = *from == book::State::unsorted ? book::SeedTest::none
                                                     : last_test(writing, *batch, wanted.noted.on);
    for (int i = 0; i < wanted.trays; ++i) {
      const auto share =
          wanted.seeds.value() / wanted.trays + (i < wanted.seeds.value() % wanted.trays ? 1 : 0);
      auto code = writing.next_code(Kind::tray);
      if (!code)
        return refuse(code.error());
      auto tray = writing.add({{}, *code, batch->origin, judged_in(*from), test, *pot, *mix, {}});
      if (!tray)
        return refuse(tray.error());
      auto entry = entry_for(book::Verb::sow, wanted.noted);
      entry.lot = *tray;
      entry.place = *place;
      entry.movements = {{{batch->id, *from}, {*tray, book::State::sown}, Count::sure(share)}};
      auto id = writing.enter(entry);
      if (!id)
        return refuse(id.error());
      done.entries.push_back(*id);
      done.made.push_back(*code);
    }
    done.told = phrase("{} of {} sown in {}: {}", counted(wanted.seeds.value(), "seed", "seeds"),
                       wanted.batch.text(), counted(wanted.trays, "tray", "trays"),
                       done.made.size() == 1
                           ? done.made.front().text()
                           : phrase("{} to {}", done.made.front().text(), done.made.back().text()));
    if (!wanted.from && *from == book::State::unsorted)
      done.told += phrase("; none was judged filled, so unsorted seed was taken");
    done.cautions = cautions_told(book::Verb::sow);
    return done;
  });
}

} // namespace coneline::work
