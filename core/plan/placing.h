// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Which lot stands where, month by month: with as few moves as possible from where it stands today,
// no bench overloaded, light and frost respected, one cross together where it can be. Each light
// class by itself: a search (placing_search), and where that does not reach the bound and the class
// is small enough, an integer program (placing_program); with the bound that says how far from the
// best it can be.
//
// A piece is what of a lot stands in one kind of pot: potted on, it is another piece, whose first
// place is no move. It stands whole in one place in every month in which it stands at all. Pots
// stand in whole rows across a place, each row of pots of one kind (bench_rows.h); what a bench's
// own bays take is taken off its length.
//
// Losing its place for one month counts as a move as well, so that nothing goes in and out.
//
//   least  moves + 0.05 × places a cross is spread over + (5 + 20 × m²) × pieces and months without
//   a place

#include "core/book/plan_records.h"
#include "core/book/registers.h"
#include "core/plan/needs.h"
#include "core/plan/space.h"

#include <functional>

namespace coneline::plan {

struct Piece {
  Code code;
  std::string cross;
  book::TaxonId taxon;
  book::Light light = book::Light::part_shade;
  book::PotId pot;
  std::optional<book::PlaceId> place; ///< where it stands today
  ByMonth containers;                 ///< 0 in months in which it does not stand
};

struct PlacingInput {
  Date today;
  book::Registers registers;
  std::vector<Piece> pieces;
  std::vector<LeftOut> left_out;         ///< lots whose way is not known: they stand as today
  std::map<Code, book::PlaceId> pins;    ///< by lot
  std::vector<book::PlaceLimits> limits; ///< of places that have any
  double gap_mm = 0;                     ///< between pots
  Pattern pattern = Pattern::square;     ///< of round pots
  double wet_kilograms_a_litre = 0.9;    ///< of a filled pot, watered
  int months = 12;
};

struct PlacingEffort {
  double seconds = 20;         ///< at most, for each light class
  std::function<bool()> go_on; ///< false: the best found so far is taken
};

struct PlacedPiece {
  std::size_t piece = 0;                            ///< place in PlacingInput::pieces
  std::vector<std::optional<book::PlaceId>> places; ///< by month; none: not there, or no room
};

struct Move {
  std::size_t month = 0;
  std::size_t piece = 0;
  std::optional<book::PlaceId> from; ///< none: put there for the first time
  book::PlaceId to;
};

/// What does not fit in a month.
struct NoRoom {
  std::size_t month = 0;
  book::Light light = book::Light::part_shade;
  double square_metres = 0;
  std::vector<std::size_t> pieces;
};

struct Placing {
  std::vector<Date> months;
  std::vector<PlacedPiece> placed; ///< as the pieces
  std::vector<Move> moves;         ///< by month; those from a place are the moves counted
  std::vector<NoRoom> no_room;     ///< by month
  /// Share of each place's length that rows take, by month; of those that have room.
  std::map<book::PlaceId, ByMonth> taken;
  int moved = 0; ///< moves from one place to another
  double cost = 0;
  double bound = 0;    ///< no placing costs less
  bool proven = true;  ///< the best there is
  int moves_bound = 0; ///< no placing makes fewer moves, whatever it leaves without a place
  std::vector<std::string> remarks; ///< what is wrong with places and pots, and what to do
};

/// Whole containers of a kind on a place, alone and in rows across it; 0 where none fits or the
/// place has no size.
double containers_on(const book::Place& place, double offered_square_metres, const book::Pot& pot,
                     double gap_mm, Pattern pattern);

/// Fails on months outside 1 to 60, a gap below 0, a pin to a place that has no size or another
/// light class, or where the pot or its cold cannot be; and where pins overload a place, by how
/// much, in which month.
Result<Placing> place_lots(const PlacingInput& input, const PlacingEffort& effort);

} // namespace coneline::plan
