// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/leave.h"

#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

struct Exit {
  book::Verb verb;
  book::State end;
  std::string_view told;
};

Exit exit_by(WayOut way) {
  switch (way) {
  case WayOut::dead:
    return {book::Verb::lose, book::State::dead, "dead"};
  case WayOut::discarded:
    return {book::Verb::discard, book::State::discarded, "discarded"};
  case WayOut::sold:
    return {book::Verb::sell, book::State::sold, "sold"};
  case WayOut::planted_out:
    return {book::Verb::plant_out, book::State::planted_out, "planted out"};
  }
  return {book::Verb::lose, book::State::dead, "dead"};
}

std::vector<std::string> cautions_of(WayOut way) {
  switch (way) {
  case WayOut::sold:
    return {permit_caution};
  case WayOut::discarded:
    return {poison_caution};
  case WayOut::planted_out:
    return {lifting_caution, poison_caution};
  case WayOut::dead:
    break;
  }
  return {};
}

} // namespace

Result<Done> leave(store::Book& book, const Leave& wanted) {
  if (wanted.cents && *wanted.cents < 0)
    return refuse(fault(fmt::format("a price of {} cents", *wanted.cents), "Give 0 or more."));
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto lot = writing.lot(wanted.lot);
    if (!lot)
      return refuse(lot.error());
    auto state = state_meant(writing, *lot, wanted.state, wanted.noted.on);
    if (!state)
      return refuse(state.error());
    const auto way = exit_by(wanted.way);
    auto entry = entry_for(way.verb, wanted.noted);
    entry.lot = lot->id;
    entry.movements = {{{lot->id, *state}, {lot->id, way.end}, wanted.count}};
    if (wanted.way == WayOut::sold)
      entry.detail = book::Sale{wanted.buyer, wanted.cents};
    auto id = writing.enter(entry);
    if (!id)
      return refuse(id.error());
    Done done;
    done.entries = {*id};
    done.told = fmt::format("{} of {} {}", wanted.count.value(), wanted.lot.text(), way.told);
    done.cautions = cautions_of(wanted.way);
    return done;
  });
}

} // namespace coneline::work
