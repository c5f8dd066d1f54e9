// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/relocate.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/lot_ended.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

namespace {

std::string told_of(store::Reading& reading, const book::Registers& registers,
                    const Relocate& wanted, const std::vector<book::LotId>& lots,
                    book::PlaceId place) {
  const auto stands = reading.places();
  const auto moved_on =
      std::ranges::count_if(lots, [&](const auto& lot) { return stands.at(lot) != place; });
  const auto& name = registers.place(place).name;
  if (lots.size() == 1) {
    const auto code = wanted.lots.front().text();
    return moved_on == 0
               ? phrase("{} now on {}", code, name)
               : phrase("{} on {} from {}; a later move has it on {} now", code, name,
                        wanted.noted.on.said(), registers.place(stands.at(lots.front())).name);
  }
  const auto all = phrase("{} lots", lots.size());
  return moved_on == 0 ? phrase("{} now on {}", all, name)
                       : phrase("{} on {} from {}; later moves have {} of them elsewhere now", all,
                                name, wanted.noted.on.said(), moved_on);
}

} // namespace

Result<Done> relocate(store::Writing& writing, const Relocate& wanted) {
  if (wanted.lots.empty())
    return refuse(fault("nothing to move", "Give the codes of what is moved."));
  const auto registers = writing.registers();
  auto place = place_coded(registers, wanted.place);
  if (!place)
    return refuse(place.error());
  Done done;
  std::vector<book::LotId> lots;
  for (const auto& code : wanted.lots) {
    auto lot = writing.lot(code);
    if (!lot)
      return refuse(lot.error());
    if (auto there = refuse_empty_on(writing, *lot, wanted.noted.on); !there)
      return refuse(there.error());
    lots.push_back(lot->id);
    auto entry = entry_for(book::Verb::move, wanted.noted);
    entry.lot = lot->id;
    entry.place = *place;
    auto id = writing.enter(entry);
    if (!id)
      return refuse(id.error());
    done.entries.push_back(*id);
  }
  done.told = told_of(writing, registers, wanted, lots, **place);
  done.cautions = cautions_told(book::Verb::move);
  return done;
}

Result<Done> relocate(store::Book& book, const Relocate& wanted) {
  return book.write([&](store::Writing& writing) { return relocate(writing, wanted); });
}

} // namespace coneline::work
