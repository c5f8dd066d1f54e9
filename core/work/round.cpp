// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/round.h"

#include "core/base/phrase.h"
#include "core/work/find_code.h"
#include "core/work/inspect.h"
#include "core/work/lot_ended.h"
#include "core/work/relocate.h"
#include "core/work/resolve.h"
#include "core/work/reverse.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

Result<book::Round> going(store::Reading& reading, book::RoundId id) {
  auto round = round_of(reading, id);
  if (round && round->ended)
    return refuse(
        fault(phrase("this round ended on {}", round->ended->said()), "Begin another one."));
  return round;
}

/// Enters the look at the tray in the hand and puts it down; the caller writes the round.
Result<Done> look(store::Writing& writing, book::Round& round, const Noted& noted) {
  const auto tray = writing.lot(*round.in_hand);
  auto done = inspect(writing, Inspect{tray.code, Count::sure(round.tapped.roots),
                                       Count::sure(round.tapped.leaves),
                                       Count::sure(round.tapped.dead), noted});
  if (!done)
    return done;
  if (auto added = writing.add(book::RoundEntry{done->entries.front(), round.id}); !added)
    return refuse(added.error());
  round.in_hand.reset();
  round.tapped = {};
  return done;
}

/// Enters what was tapped, and puts down what is in the hand.
Result<Done> settle(store::Writing& writing, book::Round& round, const Noted& noted) {
  if (round.in_hand && !round.tapped.none())
    return look(writing, round, noted);
  round.in_hand.reset();
  return Done{};
}

void append(Done& to, const Done& more) {
  to.entries.insert(to.entries.end(), more.entries.begin(), more.entries.end());
  if (!more.told.empty())
    to.told += (to.told.empty() ? "" : "; ") + more.told;
}

/// What one scan does, once the code is known.
class ScanStep {
 public:
  ScanStep(store::Writing& writing, book::Round& round, const Noted& noted)
      : writing_(writing), registers_(writing.registers()), round_(round), noted_(noted) {}

  Result<ScanDone> take(std::string_view typed) {
    auto code = find_code(writing_, registers_, typed);
    if (!code)
      return refuse(code.error());
    step_.code = *code;
    switch (code->kind()) {
    case Kind::place:
      return take_place(*code);
    case Kind::batch:
    case Kind::tray:
    case Kind::pot_group:
      return take_lot(*code);
    default:
      return refuse(fault(phrase("{} is the label of a {}", code->text(), kind_said(code->kind())),
                          "A round takes the labels of trays, of other lots and of places."));
    }
  }

 private:
  Result<ScanDone> take_place(const Code& code) {
    const auto* place = book::coded(registers_.places, code);
    if (round_.bench == place->id && !round_.in_hand)
      return again(phrase("{} was scanned already", place->name));
    auto settled = settle(writing_, round_, noted_);
    if (!settled)
      return refuse(settled.error());
    append(step_.done, *settled);
    round_.bench = place->id;
    append(step_.done, {{}, {}, phrase("what is scanned now is moved to {}", place->name), {}});
    step_.heard = Heard::place;
    return step_;
  }

  Result<ScanDone> take_lot(const Code& code) {
    const auto lot = writing_.lot(code);
    if (!lot)
      return refuse(lot.error());
    if (round_.in_hand == lot->id)
      return again(phrase("{} is in the hand already", code.text()));
    if (auto ended = refuse_ended(writing_, *lot); !ended)
      return refuse(ended.error());
    auto settled = settle(writing_, round_, noted_);
    if (!settled)
      return refuse(settled.error());
    append(step_.done, *settled);
    const auto places = writing_.places(noted_.on);
    const auto stands = places.find(lot->id);
    auto place = stands == places.end() ? std::nullopt : std::optional(stands->second);
    if (round_.bench && !is_within(registers_, place, *round_.bench)) {
      if (auto moved = move(code); !moved)
        return refuse(moved.error());
      place = round_.bench;
    }
    if (auto seen =
            writing_.see({{}, lot->id, place, noted_.on, book::SeenBy::scan, {}, round_.id});
        !seen)
      return refuse(seen.error());
    step_.heard = code.kind() == Kind::tray ? Heard::tray : Heard::other_lot;
    if (step_.heard == Heard::tray)
      round_.in_hand = lot->id;
    else
      append(step_.done,
             {{},
              {},
              phrase("{} seen: a {}, not counted on a round", code.text(), kind_said(code.kind())),
              {}});
    return step_;
  }

  Result<void> move(const Code& code) {
    auto moved = relocate(writing_, Relocate{{code}, registers_.place(*round_.bench).code, noted_});
    if (!moved)
      return refuse(moved.error());
    append(step_.done, *moved);
    step_.done.cautions = moved->cautions;
    return writing_.add(book::RoundEntry{moved->entries.front(), round_.id});
  }

  ScanDone again(std::string told) {
    step_.heard = Heard::again;
    step_.done.told = std::move(told);
    return step_;
  }

  store::Writing& writing_;
  book::Registers registers_;
  book::Round& round_;
  const Noted& noted_;
  ScanDone step_;
};

/// Runs `step(writing, round)` on a round that has not ended and writes the round's new state.
template <class Given, class Step>
Result<Given> on_round(store::Book& book, book::RoundId id, Step step) {
  return book.write([&](store::Writing& writing) -> Result<Given> {
    auto round = going(writing, id);
    if (!round)
      return refuse(round.error());
    Result<Given> given = step(writing, *round);
    if (!given)
      return given;
    if (auto put = writing.put(*round); !put)
      return refuse(put.error());
    return given;
  });
}

/// The last entry of the round that stands.
std::optional<book::Entry> last_standing(store::Reading& reading, book::RoundId id) {
  std::optional<book::EntryId> last;
  for (const auto& made : reading.round_entries())
    if (made.round == id && !reading.reversed_by(made.entry))
      last = made.entry;
  if (!last)
    return std::nullopt;
  return reading.entry(*last).value();
}

} // namespace

Result<book::RoundId> begin_round(store::Book& book, const BeginRound& wanted) {
  return book.write([&](store::Writing& writing) -> Result<book::RoundId> {
    if (const auto open = open_round(writing))
      return refuse(fault(phrase("the round of {} has not ended", open->began.said()),
                          "Go on with it, or end it."));
    const auto registers = writing.registers();
    auto place = place_coded(registers, wanted.place);
    if (!place)
      return refuse(place.error());
    book::Round round;
    round.began = wanted.noted.on;
    round.who = wanted.noted.who;
    round.place = *place;
    round.stops = stops_of_round(writing, registers, *place, wanted.noted.on);
    if (round.stops.empty())
      return refuse(*place
                        ? fault(phrase("no tray stands on {}", registers.place(**place).name),
                                "Choose another place.")
                        : fault(phrase("no tray is due for a look on {}", wanted.noted.on.said()),
                                "Walk a house instead: a round takes any place."));
    return writing.put(round);
  });
}

Result<ScanDone> scan_in_round(store::Book& book, book::RoundId id, std::string_view typed,
                               const Noted& noted) {
  return on_round<ScanDone>(book, id, [&](store::Writing& writing, book::Round& round) {
    return ScanStep(writing, round, noted).take(typed);
  });
}

Result<ScanDone> scan_and_look(store::Book& book, book::RoundId id, std::string_view typed,
                               const book::Tapped& found, const Noted& noted) {
  return on_round<ScanDone>(
      book, id, [&](store::Writing& writing, book::Round& round) -> Result<ScanDone> {
        auto scanned = ScanStep(writing, round, noted).take(typed);
        if (!scanned)
          return scanned;
        if (!round.in_hand || writing.lot(*round.in_hand).code != scanned->code)
          return refuse(
              fault(phrase("{} is no tray, and counts belong to one", scanned->code.text()),
                    "Scan it without counts."));
        round.tapped = found;
        auto looked = look(writing, round, noted);
        if (!looked)
          return refuse(looked.error());
        if (scanned->heard == Heard::again)
          scanned->done.told.clear();
        append(scanned->done, *looked);
        return scanned;
      });
}

Result<void> tap_in_round(store::Book& book, book::RoundId id, const book::Tapped& tapped) {
  return on_round<int>(book, id,
                       [&](store::Writing&, book::Round& round) -> Result<int> {
                         round.tapped = tapped;
                         return 0;
                       })
      .map([](int) {});
}

Result<Done> finish_look(store::Book& book, book::RoundId id, const Noted& noted) {
  return on_round<Done>(book, id, [&](store::Writing& writing, book::Round& round) -> Result<Done> {
    if (!round.in_hand)
      return refuse(fault("no tray is in the hand", "Scan one, or type its code."));
    return look(writing, round, noted);
  });
}

Result<void> leave_bench(store::Book& book, book::RoundId id) {
  return on_round<int>(book, id,
                       [&](store::Writing&, book::Round& round) -> Result<int> {
                         round.bench.reset();
                         return 0;
                       })
      .map([](int) {});
}

Result<Done> undo_in_round(store::Book& book, book::RoundId id, const Noted& noted,
                           TakenBack counts) {
  return on_round<Done>(book, id, [&](store::Writing& writing, book::Round& round) -> Result<Done> {
    if (round.in_hand && !round.tapped.none()) {
      round.tapped = {};
      return Done{
          {},
          {},
          phrase("the counts tapped on {} are taken back", writing.lot(*round.in_hand).code.text()),
          {}};
    }
    const auto last = last_standing(writing, id);
    if (!last)
      return refuse(fault("nothing of this round is left to take back"));
    auto done = reverse(writing, Reverse{last->id, noted.who, noted.note});
    if (done && last->verb == book::Verb::inspect && counts == TakenBack::into_the_hand) {
      round.in_hand = last->lot;
      round.tapped = found_by(*last);
    }
    return done;
  });
}

Result<Done> end_round(store::Book& book, book::RoundId id, const Noted& noted) {
  return on_round<Done>(book, id, [&](store::Writing& writing, book::Round& round) -> Result<Done> {
    auto done = settle(writing, round, noted);
    if (!done)
      return done;
    round.ended = std::max(noted.on, round.began);
    append(*done, {{}, {}, phrase("the round has ended"), {}});
    return done;
  });
}

} // namespace coneline::work
