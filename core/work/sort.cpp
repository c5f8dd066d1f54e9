// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/sort.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

void move_when_any(book::Entry& entry, book::Account from, book::Account to, Count count) {
  if (!count.none() && from != to)
    entry.movements.push_back({from, to, count});
}

Result<void> enough_seed(store::Reading& reading, const book::Lot& batch, book::State from,
                         Count wanted, Date day) {
  const auto there = held(reading, batch.id, from, day);
  if (wanted.value() > there)
    return refuse(
        fault(phrase("{} has {} '{}' on {}, and {} are counted: {} too many", batch.code.text(),
                     there, book::said(from), day.said(), wanted.value(), wanted.value() - there),
              "Count again, or recount the batch first."));
  return {};
}

std::string float_advice(store::Reading& reading, const book::Lot& batch, book::SeedTest test) {
  if (test != book::SeedTest::floating)
    return {};
  const auto registers = reading.registers();
  const auto* cone = std::get_if<book::ConeId>(&batch.origin);
  const auto& taxon = registers.taxon(
      cone != nullptr ? registers.plant(registers.cone(*cone).plant).taxon
                      : registers.purchase(std::get<book::PurchaseId>(batch.origin)).taxon);
  switch (taxon.float_test.value) {
  case book::FloatTest::reliable:
    return {};
  case book::FloatTest::unreliable:
    return phrase("Good seed of {} floats too: cut some floaters open before any are thrown away.",
                  taxon.name);
  case book::FloatTest::unknown:
    return phrase("Whether the float test holds for {} is not known: cut some floaters open first.",
                  taxon.name);
  }
  return {};
}

} // namespace

Result<Done> sort(store::Book& book, const Sort& wanted) {
  if (wanted.test == book::SeedTest::cutting || wanted.test == book::SeedTest::none)
    return refuse(fault(
        phrase("sorting by '{}'", book::said(wanted.test)),
        "Seed that is cut open is gone: use 'open' for it, and here eye, float, shake or x-ray."));
  if ((wanted.filled + wanted.empty).none())
    return refuse(
        fault("nothing was judged", "Give how many are judged filled and how many empty."));
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto batch = lot_of_kind(writing, wanted.batch, Kind::batch);
    if (!batch)
      return refuse(batch.error());
    auto from = state_meant(writing, *batch, wanted.from, wanted.noted.on);
    if (!from)
      return refuse(from.error());
    if (auto is =
            enough_seed(writing, *batch, *from, wanted.filled + wanted.empty, wanted.noted.on);
        !is)
      return refuse(is.error());
    auto entry = entry_for(book::Verb::sort, wanted.noted);
    entry.lot = batch->id;
    entry.detail = book::Sorting{wanted.test};
    move_when_any(entry, {batch->id, *from}, {batch->id, book::State::judged_filled},
                  wanted.filled);
    move_when_any(entry, {batch->id, *from}, {batch->id, book::State::judged_empty}, wanted.empty);
    auto id = writing.enter(entry);
    if (!id)
      return refuse(id.error());
    Done done;
    done.entries = {*id};
    done.told = phrase("{}: {} judged filled, {} judged empty", wanted.batch.text(),
                       wanted.filled.value(), wanted.empty.value());
    done.cautions = cautions_told(entry.verb);
    if (auto advice = float_advice(writing, *batch, wanted.test); !advice.empty())
      done.cautions.insert(done.cautions.begin(), std::move(advice));
    return done;
  });
}

Result<Done> open(store::Book& book, const Open& wanted) {
  if (wanted.opened.none())
    return refuse(fault("no seed was opened",
                        "Give how many were cut open and how many of them were filled."));
  if (wanted.filled > wanted.opened)
    return refuse(fault(phrase("{} filled of {} opened: {} too many", wanted.filled.value(),
                               wanted.opened.value(), wanted.filled - wanted.opened),
                        "Count again."));
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto batch = lot_of_kind(writing, wanted.batch, Kind::batch);
    if (!batch)
      return refuse(batch.error());
    if (auto is = enough_seed(writing, *batch, wanted.from, wanted.opened, wanted.noted.on); !is)
      return refuse(is.error());
    auto entry = entry_for(book::Verb::open, wanted.noted);
    entry.lot = batch->id;
    entry.detail = book::Sorting{book::SeedTest::cutting};
    move_when_any(entry, {batch->id, wanted.from}, {batch->id, book::State::opened_filled},
                  wanted.filled);
    move_when_any(entry, {batch->id, wanted.from}, {batch->id, book::State::opened_empty},
                  Count::sure(wanted.opened - wanted.filled));
    return entered(writing, entry,
                   phrase("{}: {} of {} opened were filled", wanted.batch.text(),
                          wanted.filled.value(), wanted.opened.value()));
  });
}

} // namespace coneline::work
