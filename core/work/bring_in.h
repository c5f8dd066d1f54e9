// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a nursery has on hand when its book begins: lots of an older list, each with as much of its
// past as is known. Nothing is made up: what the list does not say is not entered. Nothing is lost:
// what a line says beyond its kind stands in words in the note of its entry or plant.
//
//   seed, trays   of a cross: cone, pollination where its day is known, harvest of what the lines
//   of
//                 that cone hold together, sowing, and the seedlings up at the last look
//   seed, trays   without a cross: a purchase in place of the cone, one of each supplier
//   pots          a purchase with the parents in its note, since nobody knows any more how many
//   seeds
//                 were sown for them
//   plants        rows of the register of parents

#include "core/work/verb_done.h"

#include <functional>
#include <map>
#include <optional>
#include <span>

namespace coneline::work {

/// One line of such a list. Names that the book lacks become new taxa, plants and places.
struct BroughtIn {
  Kind kind = Kind::batch; ///< batch, tray, pot group, or plant for a parent
  std::string taxon;
  std::string name; ///< of a parent plant
  book::Sex sex = book::Sex::not_known;
  std::string seed_parent;   ///< a plant's code or name; empty: not known
  std::string pollen_parent; ///< the same
  std::string cone; ///< the list's own word for cone or batch; lines that share it share it
  std::optional<Date> pollinated;
  std::optional<Date> harvested;
  std::optional<Date> since; ///< sown, potted or come; of seed, the harvest where that is not said
  Count count;               ///< seeds on hand, seeds sown, or plants
  Count seedlings;           ///< of a tray: up by the last look
  std::optional<Date> seen;  ///< the day of that look; today where it is not said
  std::string pot;           ///< tray or pot by name
  std::optional<double> litres;   ///< of a pot the book lacks
  std::optional<double> width_mm; ///< of a pot the book lacks
  std::string place;              ///< a place's code or name
  std::string supplier;
  std::string note;
};

struct Brought {
  std::vector<Code> made;
  std::string told; ///< one line
};

struct BroughtAll {
  std::vector<Result<Brought>> lines; ///< one for each line given; a fault's column is the member's
                                      ///< word: "pot", "seed parent"
  std::vector<book::EntryId> entries;
  std::vector<std::string> taxa; ///< new in the book, by name
  std::vector<std::string> plants;
  std::vector<std::string> places;
  std::vector<std::string> pots;
  bool stopped = false; ///< `go_on` said no, be it after the last line
};

/// Brings all lines in. Where any is at fault, or it was stopped, the caller refuses the
/// transaction. `go_on` is asked after each line with how many are in; false stops. Fails for a
/// line: a name missing, a count of 0, days in the wrong order or after `today`, a pot that is not
/// in the book and has no litres and width, a male seed parent or a female pollen parent, a
/// mistyped code, a pollen parent without the day of pollination.
BroughtAll bring_in(store::Writing& writing, std::span<const BroughtIn> lines, Date today,
                    const std::function<bool(std::size_t)>& go_on = {});

} // namespace coneline::work
