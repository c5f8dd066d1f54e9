// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A round: walking past the trays in order, label by label. What it counts and moves are entries
// like any other; the round itself keeps what is still to be walked and what is in the hand, so
// that one broken off goes on where it was.

#include "core/base/date.h"
#include "core/book/id.h"
#include "core/book/words.h"

#include <optional>
#include <string>
#include <vector>

namespace coneline::book {

using RoundId = Id<struct RoundTag>;
using SightingId = Id<struct SightingTag>;

/// A tray that the round is to pass, and where it stood when the round began.
struct RoundStop {
  LotId lot;
  std::optional<PlaceId> place;

  bool operator==(const RoundStop&) const = default;
};

/// Counts tapped on the tray in the hand and not yet entered. Each 0 or more.
struct Tapped {
  std::int64_t roots = 0;
  std::int64_t leaves = 0;
  std::int64_t dead = 0;

  [[nodiscard]] bool none() const { return roots == 0 && leaves == 0 && dead == 0; }
  Tapped& operator+=(const Tapped& more) {
    roots += more.roots;
    leaves += more.leaves;
    dead += more.dead;
    return *this;
  }
  bool operator==(const Tapped&) const = default;
};

struct Round {
  RoundId id;
  Date began;
  std::optional<PlaceId> place; ///< the house or bench walked; none: all trays due for a look
  std::string who;
  std::optional<PlaceId> bench; ///< the place label scanned last: what is scanned now stands there
  std::optional<LotId> in_hand;
  Tapped tapped; ///< of the tray in the hand
  std::optional<Date> ended;
  std::vector<RoundStop> stops; ///< in walking order; never changed after the beginning
};

/// An entry made on a round: a look or a move.
struct RoundEntry {
  EntryId entry;
  RoundId round;
};

/// How a label was seen.
enum class SeenBy { scan, picture, log };

/// A lot's label was seen at a place on a day. It moves nothing; a move is an entry.
struct Sighting {
  SightingId id;
  LotId lot;
  std::optional<PlaceId> place; ///< none: nobody said where
  Date date;
  SeenBy how = SeenBy::scan;
  std::string source; ///< the picture's or the log's file name; empty for a scan
  std::optional<RoundId> round;
};

template <>
struct Words<SeenBy> {
  static constexpr std::string_view what = "way of seeing";
  static constexpr std::array<std::pair<SeenBy, std::string_view>, 3> all{
      {{SeenBy::scan, "scan"}, {SeenBy::picture, "picture"}, {SeenBy::log, "log"}}};
};

} // namespace coneline::book
