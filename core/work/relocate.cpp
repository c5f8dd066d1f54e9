// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/relocate.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

Result<Done> relocate(store::Writing& writing, const Relocate& wanted) {
  if (wanted.lots.empty())
    return refuse(fault("nothing to move", "Give the codes of what is moved."));
  const auto registers = writing.registers();
  auto place = place_coded(registers, wanted.place);
  if (!place)
    return refuse(place.error());
  Done done;
  for (const auto& code : wanted.lots) {
    auto lot = writing.lot(code);
    if (!lot)
      return refuse(lot.error());
    auto entry = entry_for(book::Verb::move, wanted.noted);
    entry.lot = lot->id;
    entry.place = *place;
    auto id = writing.enter(entry);
    if (!id)
      return refuse(id.error());
    done.entries.push_back(*id);
  }
  done.told = phrase("{} now on {}",
                     wanted.lots.size() == 1 ? wanted.lots.front().text()
                                             : phrase("{} lots", wanted.lots.size()),
                     registers.place(**place).name);
  done.cautions = cautions_told(book::Verb::move);
  return done;
}

Result<Done> relocate(store::Book& book, const Relocate& wanted) {
  return book.write([&](store::Writing& writing) { return relocate(writing, wanted); });
}

} // namespace coneline::work
