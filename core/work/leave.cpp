// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/leave.h"

#include "core/base/phrase.h"
#include "core/stats/opening.h"
#include "core/work/harvest_table.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

struct Exit {
  book::Verb verb;
  book::State end;
};

Exit exit_by(WayOut way) {
  switch (way) {
  case WayOut::dead:
    return {book::Verb::lose, book::State::dead};
  case WayOut::discarded:
    return {book::Verb::discard, book::State::discarded};
  case WayOut::sold:
    return {book::Verb::sell, book::State::sold};
  case WayOut::planted_out:
    return {book::Verb::plant_out, book::State::planted_out};
  }
  return {book::Verb::lose, book::State::dead};
}

/// A sentence each, since "sold" alone has other endings in other languages.
std::string told(const Leave& wanted) {
  const auto count = wanted.count.value();
  const auto lot = wanted.lot.text();
  switch (wanted.way) {
  case WayOut::dead:
    return phrase_n(count, "{} of {} dead", "{} of {} dead", lot);
  case WayOut::discarded:
    return phrase_n(count, "{} of {} discarded", "{} of {} discarded", lot);
  case WayOut::sold:
    return phrase_n(count, "{} of {} sold", "{} of {} sold", lot);
  case WayOut::planted_out:
    return phrase_n(count, "{} of {} planted out", "{} of {} planted out", lot);
  }
  return {};
}

/// What has to be said before floaters are thrown away; a fault where they may not be yet.
Result<std::vector<std::string>> before_floaters_go(store::Reading& reading, const Leave& wanted,
                                                    const book::Lot& lot, book::State state) {
  if (wanted.way != WayOut::discarded || state != book::State::judged_empty)
    return std::vector<std::string>{};
  const auto registers = reading.registers();
  auto table = harvest_table(reading, registers, wanted.lot, wanted.noted.on);
  if (!table)
    return refuse(table.error());
  const auto& taxon = registers.taxon(table->origin.taxon_id);
  if (table->test != book::SeedTest::floating ||
      taxon.float_test.value == book::FloatTest::reliable)
    return std::vector<std::string>{};
  const auto why = taxon.float_test.value == book::FloatTest::unreliable
                       ? phrase("good seed of {} floats too", taxon.name)
                       : phrase("whether the float test holds for {} is not known", taxon.name);
  const auto& part = table->empty;
  if (part.opened == 0 && wanted.floaters == Floaters::ask_for_opened) {
    // A tenth filled would be a loss worth the cutting.
    const auto filled = (part.seeds + 9) / 10;
    const auto few = stats::seeds_to_open(part.seeds, filled, 0.95).value_or(part.seeds);
    return refuse(fault(phrase("none of the {} floaters of {} was cut open, and {}", part.seeds,
                               lot.code.text(), why),
                        phrase("Cut {} open first (a tenth filled would show 95 times in 100), "
                               "or say that you are sure (--sure).",
                               few)));
  }
  const auto judged = table->judged(0.95);
  if (!judged)
    return std::vector<std::string>{};
  return std::vector<std::string>{phrase("Mind that {}: {} to {} of the {} floaters may be filled.",
                                         why, judged->floated.low, judged->floated.high,
                                         part.seeds)};
}

} // namespace

Result<Done> leave(store::Book& book, const Leave& wanted) {
  if (wanted.cents && *wanted.cents < 0)
    return refuse(fault(phrase("a price of {} cents", *wanted.cents), "Give 0 or more."));
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto lot = writing.lot(wanted.lot);
    if (!lot)
      return refuse(lot.error());
    auto state = state_meant(writing, *lot, wanted.state, wanted.noted.on);
    if (!state)
      return refuse(state.error());
    auto said = before_floaters_go(writing, wanted, *lot, *state);
    if (!said)
      return refuse(said.error());
    const auto way = exit_by(wanted.way);
    auto entry = entry_for(way.verb, wanted.noted);
    entry.lot = lot->id;
    entry.movements = {{{lot->id, *state}, {lot->id, way.end}, wanted.count}};
    if (wanted.way == WayOut::sold)
      entry.detail = book::Sale{wanted.buyer, wanted.cents};
    auto done = entered(writing, entry, told(wanted));
    if (done)
      done->cautions.insert(done->cautions.begin(), said->begin(), said->end());
    return done;
  });
}

} // namespace coneline::work
