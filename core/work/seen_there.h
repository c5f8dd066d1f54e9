// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What pictures of benches, or a scanner's log, say of a place: what was seen there on which day,
// which trays of the place were not, and what would have to be moved for the book to agree.
//
// Seeing is noted at once and moves nothing; moves are proposals until a person has looked at them.

#include "core/base/code.h"
#include "core/book/registers.h"
#include "core/book/round.h"
#include "core/work/verb_done.h"

#include <string>
#include <vector>

namespace coneline::work {

/// One text that was read, where from, and on which day.
struct ReadLabel {
  std::string text;
  std::string source; ///< the picture's or the log's file name
  Date on;
};

struct SeenLot {
  Code code;
  book::LotId lot;
  std::string origin;  ///< said (origin_said.h)
  book::PlaceId place; ///< where it was seen
  std::string source;
  Date on;
};

struct ProposedMove {
  Code code;
  std::optional<book::PlaceId> from; ///< by the book, on the day it was seen
  book::PlaceId to;
  Date on;
  std::string source;
  std::string doubt; ///< why a person should look twice; usually empty
};

struct NotSeen {
  Code code;
  std::string origin; ///< said (origin_said.h)
  std::optional<book::PlaceId> place;
  std::optional<Date> last_seen; ///< by any scan, picture or log before
};

/// A text that is no label of something here.
struct Unplaced {
  std::string text;
  std::string source;
  std::string why;
};

struct SeenThere {
  std::vector<SeenLot> seen;     ///< each lot once, at its latest day
  std::vector<NotSeen> not_seen; ///< trays of the places looked at that hold something
  std::vector<ProposedMove> moves;
  std::vector<Unplaced> unplaced;
};

/// What is read in pictures of `place` (a house, bench or bay). A label of a place within it, alone
/// in a picture, says more exactly where that picture was taken. Fails: `place` is no place.
Result<SeenThere> seen_in_pictures(store::Reading& reading, const book::Registers& registers,
                                   const Code& place, const std::vector<ReadLabel>& labels);

/// What a log tells, in its order: a place's label is where everything after it was scanned.
/// `place` is where it begins; without one, lots scanned before any place are noted where the book
/// has them.
Result<SeenThere> seen_in_log(store::Reading& reading, const book::Registers& registers,
                              const std::optional<Code>& place,
                              const std::vector<ReadLabel>& labels);

/// Notes all that was seen; returns how many sights were new to the book.
Result<std::int64_t> note_seen(store::Book& book, const SeenThere& found, book::SeenBy how);

/// Enters these moves, each on the day it was seen; all or none.
Result<Done> accept_moves(store::Book& book, const std::vector<ProposedMove>& moves,
                          const std::string& who);

} // namespace coneline::work
