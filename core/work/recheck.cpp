// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/recheck.h"

#include "core/base/phrase.h"
#include "core/work/harvest_table.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// The keeping with the day of the next look.
Result<book::Keeping> kept_on(const HarvestTable& table, const Recheck& wanted) {
  if (!table.kept)
    return refuse(fault(phrase("{} is in no store", wanted.batch.text()),
                        "Say first where it is kept: coneline store."));
  auto keeping = *table.kept;
  const auto today = wanted.noted.on;
  if (wanted.next && *wanted.next <= today)
    return refuse(fault(
        phrase("the next look on {}, and this one is on {}", wanted.next->said(), today.said()),
        "Give a later day."));
  if (wanted.next)
    keeping.until_from = wanted.next;
  else if (!keeping.until_from || *keeping.until_from <= today)
    keeping.until_from = today.plus_months(1);
  if (keeping.until_to && *keeping.until_to < *keeping.until_from)
    keeping.until_to.reset();
  return keeping;
}

} // namespace

Result<Done> recheck(store::Book& book, const Recheck& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto table = harvest_table(writing, writing.registers(), wanted.batch, wanted.noted.on);
    if (!table)
      return refuse(table.error());
    auto keeping = kept_on(*table, wanted);
    if (!keeping)
      return refuse(keeping.error());
    auto entry = entry_for(book::Verb::store, wanted.noted);
    entry.lot = table->batch.id;
    entry.detail = *keeping;
    if (!wanted.dead.none()) {
      auto state = state_meant(writing, table->batch, wanted.state, wanted.noted.on);
      if (!state)
        return refuse(state.error());
      entry.movements = {
          {{table->batch.id, *state}, {table->batch.id, book::State::dead}, wanted.dead}};
    }
    return entered(writing, entry,
                   phrase("{}: {} dead, {} left; the next look from {}", wanted.batch.text(),
                          wanted.dead.value(), table->on_hand() - wanted.dead.value(),
                          keeping->until_from->said()));
  });
}

} // namespace coneline::work
