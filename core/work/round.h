// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A round through the trays: choose which, walk them in order, scan, count, next. Every step is
// written when it is taken, the taps on the tray in the hand too, so that a round that stops in
// the middle goes on where it was.
//
//   scan T1742Q        the tray comes into the hand; what was tapped on the one before is entered
//   scan H171S         a bench: what is scanned from now on is moved there
//   tap, finish        the look is entered; a look that found nothing is one too
//   undo               the last tap, look or move of this round is taken back
//                      (where nobody sees what is in the hand, for good: see TakenBack)

#include "core/book/registers.h"
#include "core/book/round.h"
#include "core/work/verb_done.h"

#include <string_view>

namespace coneline::work {

/// A tray, or another lot that was scanned, as the round shows it.
struct RoundTray {
  Code code;
  book::LotId lot;
  std::string origin;                 ///< said (origin_said.h)
  std::optional<book::PlaceId> stood; ///< when the round began; for one not planned, now
  std::optional<book::PlaceId> place; ///< where it stands now
  bool planned = false;               ///< in the list the round began with
  bool seen = false;                  ///< scanned on this round
  bool counted = false;               ///< a look of this round stands
  bool moved = false;                 ///< a move of this round stands
  bool holds = true;                  ///< something is still in it
  book::Tapped found;                 ///< by looks of this round that stand
};

struct RoundView {
  book::Round round;
  std::vector<RoundTray> trays; ///< planned ones in walking order, then others as they were scanned
  std::optional<Code> in_hand;
  std::optional<Code> next; ///< the first planned one not seen, onwards from the last one seen
  std::int64_t planned = 0;
  std::int64_t seen = 0;    ///< of the planned ones
  std::int64_t counted = 0; ///< of all
  std::int64_t moved = 0;
  std::int64_t not_found = 0; ///< planned, still holding something, and not seen
  book::Tapped found;         ///< over all looks of the round that stand
  bool undoable = false;
};

/// Whether `place` is `outer`, or a bench or bay within it.
bool is_within(const book::Registers& registers, std::optional<book::PlaceId> place,
               book::PlaceId outer);

/// What a look found, as it was tapped.
book::Tapped found_by(const book::Entry& look);

/// The trays that a round would pass: of a house or bench all that hold something, else all that
/// are due for a look on the day. In walking order.
std::vector<book::RoundStop> stops_of_round(store::Reading& reading,
                                            const book::Registers& registers,
                                            std::optional<book::PlaceId> place, Date day);

struct BeginRound {
  std::optional<Code> place;
  Noted noted;
};
/// Fails: a round is still open, a code that is no place, no tray to pass.
Result<book::RoundId> begin_round(store::Book& book, const BeginRound& wanted);

/// The round that has not ended, if any.
std::optional<book::Round> open_round(store::Reading& reading);
/// Fails: no such round.
Result<book::Round> round_of(store::Reading& reading, book::RoundId id);
RoundView view_round(store::Reading& reading, const book::Registers& registers,
                     const book::Round& round);

enum class Heard { tray, place, other_lot, again };
struct ScanDone {
  Heard heard = Heard::tray;
  Code code;
  Done done; ///< what was entered on the way: the look at the tray before, the move of this one
};

/// One scan or typed code. What was tapped on the tray in the hand is entered first. Fails, and
/// then nothing changes: no code, a wrong character, another book's label, unknown, a lot that has
/// ended, a label that is neither a lot's nor a place's, tapped counts that are refused.
Result<ScanDone> scan_in_round(store::Book& book, book::RoundId id, std::string_view typed,
                               const Noted& noted);
/// One scan of a tray and what was found in it: all of that, or nothing. `found` of none is a look
/// that found nothing new. Fails where a scan or a look does, and on a label that is no tray's.
Result<ScanDone> scan_and_look(store::Book& book, book::RoundId id, std::string_view typed,
                               const book::Tapped& found, const Noted& noted);
/// Keeps what was tapped so far on the tray in the hand.
Result<void> tap_in_round(store::Book& book, book::RoundId id, const book::Tapped& tapped);
/// Enters the look at the tray in the hand, and puts it down.
Result<Done> finish_look(store::Book& book, book::RoundId id, const Noted& noted);
/// What is scanned from now on stays where it stands in the book.
Result<void> leave_bench(store::Book& book, book::RoundId id);
/// Where the counts of a look go that is taken back: into the hand again, where a person sees and
/// changes them and the next scan enters them, or nowhere.
enum class TakenBack { into_the_hand, for_good };
/// Takes back what was tapped and not entered, or else the last look or move of this round that
/// stands. A look that goes into the hand takes its tray there.
Result<Done> undo_in_round(store::Book& book, book::RoundId id, const Noted& noted,
                           TakenBack counts = TakenBack::into_the_hand);
/// Enters what was tapped and ends the round; tells the look it entered.
Result<Done> end_round(store::Book& book, book::RoundId id, const Noted& noted);

} // namespace coneline::work
