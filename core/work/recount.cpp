// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/recount.h"

#include "core/base/phrase.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

#include <cstdlib>

namespace coneline::work {

Result<Done> recount(store::Book& book, const Recount& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto lot = writing.lot(wanted.lot);
    if (!lot)
      return refuse(lot.error());
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
    return entered(writing, entry,
                   difference == 0
                       ? phrase("{}: {} counted, as the book says", wanted.lot.text(), before)
                       : phrase("{}: {} counted, the book had {}; {} {}, noted as unexplained",
                                wanted.lot.text(), wanted.counted.value(), before,
                                std::abs(difference), difference < 0 ? "missing" : "more"));
  });
}

} // namespace coneline::work
