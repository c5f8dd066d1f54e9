// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/harvest.h"

#include "core/base/phrase.h"
#include "core/book/names.h"
#include "core/stats/count_by_weight.h"
#include "core/work/cautions.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// A new lot with everything it begins with, in one entry.
Result<Done> begin(store::Writing& writing, book::Lot lot, book::State from, book::State to,
                   Count count, book::Entry entry) {
  auto id = writing.add(lot);
  if (!id)
    return refuse(id.error());
  entry.lot = *id;
  entry.movements = {{{*id, from}, {*id, to}, count}};
  auto entered = writing.enter(entry);
  if (!entered)
    return refuse(entered.error());
  Done done;
  done.entries = {*entered};
  done.made = {lot.code};
  done.cautions = cautions_told(entry.verb);
  return done;
}

/// What became of the cone before: it gave seed, or it did not.
Result<void> agrees_with_before(store::Reading& reading, const book::Cone& cone, bool gives) {
  for (const auto& entry : reading.standing_entries(book::Verb::harvest)) {
    if (entry.cone == cone.id)
      return refuse(
          fault(phrase("{} came off on {} and gave no seed", cone.code.text(), entry.date.said()),
                "Reverse that entry first."));
    if (!gives && entry.lot && reading.lot(*entry.lot).origin == book::Origin{cone.id})
      return refuse(
          fault(phrase("{} was harvested on {} and gave seed", cone.code.text(), entry.date.said()),
                "Reverse that entry first."));
  }
  return {};
}

/// Aborted, rotten or empty: nothing moves, and the cone has ended.
Result<Done> gave_none(store::Writing& writing, const book::Cone& cone, const Noted& noted) {
  if (noted.note.empty())
    return refuse(fault("no seed was counted", "Count the seeds; of a cone that gave none, say in "
                                               "the note why: aborted, rotten, empty."));
  auto entry = entry_for(book::Verb::harvest, noted);
  entry.cone = cone.id;
  return entered(writing, entry, phrase("{} gave no seed: {}", cone.code.text(), noted.note));
}

struct CountedSeeds {
  Count count;
  std::string how; ///< how they were counted, where not by hand
};

Result<CountedSeeds> counted_seeds(const Harvest& wanted) {
  if (!wanted.weighed)
    return CountedSeeds{wanted.seeds, {}};
  if (!wanted.seeds.none())
    return refuse(
        fault("seeds counted by hand and by weight", "Give the count, or the weights, not both."));
  auto by_weight = stats::count_by_weight(wanted.weighed->hundreds, wanted.weighed->grams);
  if (!by_weight)
    return refuse(by_weight.error());
  auto count = Count::of(by_weight->seeds);
  if (!count)
    return refuse(count.error());
  auto how = phrase(", counted by weight ({} to {}; weighings differ by {:.1f} %)", by_weight->low,
                    by_weight->high, by_weight->of_hundred.variation);
  if (by_weight->left_out > 0)
    how += phrase("; {} weighings left out", by_weight->left_out);
  return CountedSeeds{*count, how};
}

} // namespace

Result<Done> harvest(store::Book& book, const Harvest& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    auto cone = cone_coded(registers, wanted.cone);
    if (!cone)
      return refuse(cone.error());
    for (const auto& pass : writing.entries_of(cone->id))
      if (pass.verb == book::Verb::pollinate && !writing.reversed_by(pass.id) &&
          pass.date > wanted.noted.on)
        return refuse(
            fault(phrase("{} was pollinated on {}, {} days after this harvest", wanted.cone.text(),
                         pass.date.said(), days_between(wanted.noted.on, pass.date)),
                  "Check the day."));
    const bool gives = wanted.weighed || !wanted.seeds.none();
    if (auto agrees = agrees_with_before(writing, *cone, gives); !agrees)
      return refuse(agrees.error());
    if (!gives)
      return gave_none(writing, *cone, wanted.noted);
    auto code = writing.next_code(Kind::batch);
    if (!code)
      return refuse(code.error());
    auto seeds = counted_seeds(wanted);
    if (!seeds)
      return refuse(seeds.error());
    book::Lot batch;
    batch.code = *code;
    batch.origin = cone->id;
    auto entry = entry_for(book::Verb::harvest, wanted.noted);
    if (wanted.weighed)
      entry.detail = *wanted.weighed;
    auto done =
        begin(writing, batch, book::State::cone, book::State::unsorted, seeds->count, entry);
    if (!done)
      return done;
    done->told = phrase("{} from {} are batch {}{}", counted(seeds->count.value(), "seed", "seeds"),
                        wanted.cone.text(), code->text(), seeds->how);
    return done;
  });
}

Result<Done> buy_in(store::Book& book, const BuyIn& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    const auto found = book::row_said(registers.taxa, wanted.taxon, "taxon");
    if (!found)
      return refuse(found.error());
    const auto* taxon = *found;
    auto place = place_coded(registers, wanted.place);
    if (!place)
      return refuse(place.error());
    auto purchase_code = writing.next_code(Kind::purchase);
    auto code = writing.next_code(wanted.pot ? Kind::pot_group : Kind::batch);
    if (!purchase_code || !code)
      return refuse(purchase_code ? code.error() : purchase_code.error());
    auto purchase = writing.put(book::Purchase{
        {}, *purchase_code, taxon->id, wanted.supplier, wanted.noted.on, wanted.noted.note});
    if (!purchase)
      return refuse(purchase.error());
    book::Lot lot;
    lot.code = *code;
    lot.origin = *purchase;
    if (wanted.pot) {
      auto pot = pot_named(registers, *wanted.pot);
      if (!pot)
        return refuse(pot.error());
      lot.pot = *pot;
    }
    auto entry = entry_for(book::Verb::buy_in, wanted.noted);
    entry.place = *place;
    auto done = begin(writing, lot, book::State::bought_in,
                      wanted.pot ? book::State::plant : book::State::unsorted, wanted.count, entry);
    if (!done)
      return done;
    done->told = phrase("{} from {} are {} {}",
                        wanted.pot ? counted(wanted.count.value(), "plant", "plants")
                                   : counted(wanted.count.value(), "seed", "seeds"),
                        wanted.supplier, kind_said(code->kind()), code->text());
    return done;
  });
}

} // namespace coneline::work
