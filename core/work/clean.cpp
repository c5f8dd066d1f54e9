// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/clean.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

Result<Done> clean(store::Book& book, const Clean& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto batch = lot_of_kind(writing, wanted.batch, Kind::batch);
    if (!batch)
      return refuse(batch.error());
    if (wanted.soak_days < 0)
      return refuse(fault(phrase("{} days of soaking", wanted.soak_days), "Give 0 or more."));
    auto state = state_meant(writing, *batch, std::nullopt, wanted.noted.on);
    if (!state && !wanted.lost.none())
      return refuse(state.error());
    auto entry = entry_for(book::Verb::clean, wanted.noted);
    entry.lot = batch->id;
    entry.detail = book::Cleaning{wanted.soak_days};
    if (!wanted.lost.none())
      entry.movements = {
          {{batch->id, *state}, {batch->id, book::State::lost_in_cleaning}, wanted.lost}};
    return entered(writing, entry,
                   phrase("{} cleaned, {} lost", wanted.batch.text(), wanted.lost.value()));
  });
}

Result<Done> change_water(store::Book& book, const ChangeWater& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto batch = lot_of_kind(writing, wanted.batch, Kind::batch);
    if (!batch)
      return refuse(batch.error());
    auto entry = entry_for(book::Verb::clean, wanted.noted);
    entry.lot = batch->id;
    entry.detail = book::Cleaning{};
    if (entry.note.empty())
      entry.note = water_changed;
    auto done = entered(writing, entry, phrase("water of {} changed", wanted.batch.text()));
    if (done)
      done->cautions = {phrase_of(caution::poison)}; // no brush is at work here
    return done;
  });
}

} // namespace coneline::work
