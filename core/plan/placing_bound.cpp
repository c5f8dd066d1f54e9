// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/integer_program.h"
#include "core/plan/placing_class.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace coneline::plan {

namespace {

using Term = IntegerProgram::Term;
constexpr double endless = IntegerProgram::endless;
constexpr double a_millimetre = 1000; // µm: the solver likes numbers of a middling size
constexpr double hair = 1e-6;

double pots_a_row(const Rows& rows) {
  return static_cast<double>(rows.in_a_row + rows.in_the_next) / 2;
}

/// How many more pots than its rows hold on average a staggered size can have.
double half_a_row(const Rows& rows) {
  return static_cast<double>(rows.in_a_row - rows.in_the_next) / 2;
}

/// A month whose pieces may be divided at will, over places and none.
class Divided {
 public:
  Divided(const PlacingClass& of, std::size_t month) : of_(of), month_(month) {
    for (const auto& piece : of.pieces)
      if (piece.there(month))
        add(piece);
    for (std::size_t place = 0; place < of.places.size(); ++place)
      limit(place);
    for (const auto& [kind, terms] : balance_)
      program_.row(-endless, 0, terms);
  }

  /// The least that having no place costs.
  [[nodiscard]] double least(double seconds) const {
    const auto solved = program_.least_cost(seconds);
    return solved && *solved ? std::max(0.0, all_ + (*solved)->bound - hair) : 0; // else unproven
  }

 private:
  using Kind = std::pair<std::size_t, std::vector<char>>; ///< pot, and where it can stand

  void add(const ClassPiece& piece) {
    const Kind kind{piece.pot, piece.can};
    const auto [found, fresh] = balance_.try_emplace(kind);
    if (fresh)
      for (std::size_t place = 0; place < of_.places.size(); ++place)
        if (piece.can[place] != 0) {
          const auto pots = program_.column(0, 0, endless);
          found->second.push_back({pots, -1});
          stand_[place].emplace_back(pots, piece.pot);
        }
    const double cost = of_.without(piece, month_);
    all_ += cost;
    found->second.push_back({program_.column(-cost, 0, 1), piece.containers[month_]});
  }

  void limit(std::size_t at) {
    const auto& place = of_.places[at];
    std::vector<Term> room;
    std::vector<Term> weight;
    double slack = 0;
    for (const auto& rows : place.rows)
      slack += rows.in_a_row > 0 ? half_a_row(rows) / pots_a_row(rows) *
                                       static_cast<double>(rows.more) / a_millimetre
                                 : 0;
    for (const auto& [column, pot] : stand_[at]) {
      const auto& rows = place.rows[pot];
      room.push_back({column, static_cast<double>(rows.more) / a_millimetre / pots_a_row(rows)});
      weight.push_back({column, of_.pot_kilograms[pot]});
    }
    if (room.empty())
      return;
    program_.row(-endless, static_cast<double>(place.room) / a_millimetre + slack, room);
    if (std::isfinite(place.kilograms))
      program_.row(-endless, place.kilograms, weight);
  }

  const PlacingClass& of_;
  std::size_t month_;
  IntegerProgram program_;
  std::map<Kind, std::vector<Term>> balance_;
  std::map<std::size_t, std::vector<std::pair<std::size_t, std::size_t>>> stand_;
  double all_ = 0;
};

/// Of the pieces that stand in a place today, how many cannot stay all the time they are there.
class Leavers {
 public:
  Leavers(const PlacingClass& of, std::size_t place) : of_(of), place_(place) {
    for (const auto& piece : of.pieces)
      if (piece.before == static_cast<int>(place) && piece.there(0) && piece.can[place] != 0)
        stand_.push_back(&piece);
  }

  [[nodiscard]] int count(double seconds) const {
    if (all_fit())
      return 0;
    IntegerProgram program;
    for (std::size_t at = 0; at < stand_.size(); ++at)
      program.column(-1, 0, 1, IntegerProgram::Takes::whole);
    for (std::size_t month = 0; month < of_.months; ++month)
      limit(program, month);
    const auto solved = program.least_cost(seconds);
    if (!solved || !*solved)
      return 0; // nothing is proven
    return static_cast<int>(stand_.size()) - static_cast<int>(std::floor(-(*solved)->bound + hair));
  }

 private:
  /// Until the first month in which the piece is not there: after that no change is a move.
  [[nodiscard]] double pots(const ClassPiece& piece, std::size_t month) const {
    for (std::size_t before = 0; before <= month; ++before)
      if (!piece.there(before))
        return 0;
    return piece.containers[month];
  }

  [[nodiscard]] bool all_fit() const {
    Occupied occupied(of_);
    for (const auto* piece : stand_) {
      Standing here(of_.months, nowhere);
      for (std::size_t month = 0; month < of_.months && pots(*piece, month) > 0; ++month)
        here[month] = static_cast<int>(place_);
      occupied.put(*piece, here);
    }
    return !occupied.overloaded();
  }

  void limit(IntegerProgram& program, std::size_t month) const {
    const auto& place = of_.places[place_];
    std::vector<Term> room;
    for (std::size_t pot = 0; pot < of_.pot_metres.size(); ++pot)
      rows_of(program, pot, month, room);
    if (!room.empty())
      program.row(-endless, static_cast<double>(place.room) / a_millimetre, room);
    if (!std::isfinite(place.kilograms))
      return;
    std::vector<Term> weight;
    for (std::size_t at = 0; at < stand_.size(); ++at)
      weight.push_back({at, pots(*stand_[at], month) * of_.pot_kilograms[stand_[at]->pot]});
    program.row(-endless, place.kilograms, weight);
  }

  /// Whole rows of one size; staggered ones a little too roomy, so that the bound holds.
  void rows_of(IntegerProgram& program, std::size_t pot, std::size_t month,
               std::vector<Term>& room) const {
    const auto& rows = of_.places[place_].rows[pot];
    std::vector<Term> stand;
    for (std::size_t at = 0; at < stand_.size(); ++at)
      if (stand_[at]->pot == pot && pots(*stand_[at], month) > 0)
        stand.push_back({at, pots(*stand_[at], month)});
    if (stand.empty())
      return;
    const auto number =
        program.column(0, 0, static_cast<double>(of_.places[place_].room / rows.more + 1),
                       IntegerProgram::Takes::whole);
    stand.push_back({number, -pots_a_row(rows)});
    program.row(-endless, half_a_row(rows) + hair, stand);
    room.push_back({number, static_cast<double>(rows.more) / a_millimetre});
  }

  const PlacingClass& of_;
  std::size_t place_;
  std::vector<const ClassPiece*> stand_;
};

/// Each cross stands in one place at least, or wholly in none, which costs more. The worst case
/// for the sum is that what has no place anyway is whole crosses.
double crosses_at_least(const PlacingClass& of, double without) {
  std::vector<char> stands(of.crosses, 0);
  for (const auto& piece : of.pieces)
    for (std::size_t month = 0; month < of.months; ++month)
      stands[piece.cross] = stands[piece.cross] != 0 || piece.there(month) ? 1 : 0;
  const auto all = static_cast<double>(std::ranges::count(stands, 1));
  return for_a_cross_apart * std::max(0.0, all - std::floor(without / without_place));
}

} // namespace

PlacingBound placing_bound(const PlacingClass& of, double seconds) {
  PlacingBound bound;
  for (const auto& piece : of.pieces)
    if (piece.before && piece.there(0) &&
        (*piece.before < 0 || piece.can[static_cast<std::size_t>(*piece.before)] == 0))
      ++bound.moves;
  for (std::size_t place = 0; place < of.places.size(); ++place)
    bound.moves += Leavers(of, place).count(seconds);
  for (std::size_t month = 0; month < of.months; ++month)
    bound.without += Divided(of, month).least(seconds);
  bound.all = bound.moves + bound.without + crosses_at_least(of, bound.without);
  return bound;
}

} // namespace coneline::plan
