// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/recount.h"

#include "core/base/phrase.h"
#include "core/work/lot_ended.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

std::string told_of(const Recount& wanted, std::int64_t before) {
  const auto lot = wanted.lot.text();
  const auto counted = wanted.counted.value();
  if (counted == before)
    return phrase("{}: {} counted, as the book says", lot, before);
  return counted < before
             ? phrase("{}: {} counted, the book had {}; {} missing, noted as unexplained", lot,
                      counted, before, before - counted)
             : phrase("{}: {} counted, the book had {}; {} more, noted as unexplained", lot,
                      counted, before, counted - before);
}

} // namespace

Result<Done> recount(store::Book& book, const Recount& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto lot = writing.lot(wanted.lot);
    if (!lot)
      return refuse(lot.error());
    if (auto begun = refuse_not_begun(writing, *lot, wanted.noted.on); !begun)
      return refuse(begun.error());
    auto state = state_meant(writing, *lot, wanted.state, wanted.noted.on);
    if (!state)
      return refuse(state.error());
    const auto before = held(writing, lot->id, *state, wanted.noted.on);
    const auto difference = wanted.counted.value() - before;
    const book::Account here{lot->id, *state};
    const book::Account unexplained{lot->id, book::State::unexplained};
    auto entry = entry_for(book::Verb::recount, wanted.noted);
    entry.lot = lot->id;
    if (difference < 0)
      entry.movements = {{here, unexplained, Count::sure(-difference)}};
    if (difference > 0)
      entry.movements = {{unexplained, here, Count::sure(difference)}};
    return entered(writing, entry, told_of(wanted, before));
  });
}

} // namespace coneline::work
