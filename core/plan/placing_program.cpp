// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/integer_program.h"
#include "core/plan/placing_class.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace coneline::plan {

namespace {

using Term = IntegerProgram::Term;
using Takes = IntegerProgram::Takes;
constexpr double endless = IntegerProgram::endless;
constexpr double a_millimetre = 1000; // µm
constexpr double hair = 1e-6;

/// Above so many choices the solver only uses up its time.
constexpr std::size_t most_choices = 6000;

class Program {
 public:
  explicit Program(const PlacingClass& of) : of_(of) {
    for (std::size_t at = 0; at < of.pieces.size(); ++at)
      for (std::size_t month = 0; month < of.months; ++month)
        if (of.pieces[at].there(month))
          stand(at, month);
    for (std::size_t place = 0; place < of.places.size(); ++place)
      for (std::size_t month = 0; month < of.months; ++month)
        limit(place, month);
  }

  Result<std::optional<Solved>> solve(double seconds) const { return program_.least_cost(seconds); }

  [[nodiscard]] std::vector<Standing> plan_of(const Solved& solved) const {
    std::vector<Standing> plan(of_.pieces.size(), Standing(of_.months, nowhere));
    for (const auto& [key, column] : stands_) {
      const auto& [at, month, place] = key;
      if (solved.values[column] > 0.5)
        plan[at][month] = place;
    }
    return plan;
  }

 private:
  void stand(std::size_t at, std::size_t month) {
    const auto& piece = of_.pieces[at];
    std::vector<Term> one;
    for (std::size_t place = 0; place < of_.places.size(); ++place) {
      if (piece.can[place] == 0)
        continue;
      const auto column = program_.column(0, 0, 1, Takes::whole);
      stands_[{at, month, static_cast<int>(place)}] = column;
      one.push_back({column, 1});
      const auto [apart, fresh] = apart_.try_emplace({piece.cross, place}, 0);
      if (fresh)
        apart->second = program_.column(for_a_cross_apart, 0, 1);
      program_.row(0, endless, {{apart->second, 1}, {column, -1}});
    }
    if (!piece.pinned)
      one.push_back({program_.column(of_.without(piece, month), 0, 1, Takes::whole), 1});
    program_.row(1, 1, one);
    move(at, month);
  }

  /// A move: it stands in its place no more, having stood in one.
  void move(std::size_t at, std::size_t month) {
    const auto& piece = of_.pieces[at];
    if (month == 0 ? !piece.before : !piece.there(month - 1))
      return;
    const auto moved = program_.column(1, 0, 1);
    if (month == 0) {
      std::vector<Term> terms{{moved, 1}};
      if (const auto found = stands_.find({at, 0, *piece.before}); found != stands_.end())
        terms.push_back({found->second, 1});
      program_.row(1, endless, terms);
      return;
    }
    for (std::size_t place = 0; place < of_.places.size(); ++place) {
      const auto now = stands_.find({at, month, static_cast<int>(place)});
      if (now != stands_.end())
        program_.row(0, endless,
                     {{moved, 1},
                      {now->second, 1},
                      {stands_.at({at, month - 1, static_cast<int>(place)}), -1}});
    }
  }

  using Who = std::vector<std::pair<const ClassPiece*, std::size_t>>; ///< with its column

  void limit(std::size_t place, std::size_t month) {
    const auto& there = of_.places[place];
    Who who;
    std::vector<double> pots(of_.pot_metres.size(), 0);
    std::vector<Term> weight;
    for (std::size_t at = 0; at < of_.pieces.size(); ++at) {
      const auto& piece = of_.pieces[at];
      const auto found = stands_.find({at, month, static_cast<int>(place)});
      if (found == stands_.end())
        continue;
      who.emplace_back(&piece, found->second);
      pots[piece.pot] += piece.containers[month];
      weight.push_back({found->second, piece.containers[month] * of_.pot_kilograms[piece.pot]});
    }
    if (who.empty())
      return;
    if (std::isfinite(there.kilograms))
      program_.row(-endless, there.kilograms, weight);
    std::vector<Term> room;
    for (std::size_t pot = 0; pot < pots.size(); ++pot)
      if (pots[pot] > 0)
        rows_of(who, month, there, pot, room);
    program_.row(-endless, static_cast<double>(there.room) / a_millimetre, room);
  }

  /// Whole rows that hold the pots; where they are staggered, those of the one and the other
  /// length.
  void rows_of(const Who& who, std::size_t month, const ClassPlace& place, std::size_t pot,
               std::vector<Term>& room) {
    const auto& rows = place.rows[pot];
    const auto most = static_cast<double>(place.room / rows.more + 1);
    std::vector<Term> stand;
    for (const auto& [piece, column] : who)
      if (piece->pot == pot)
        stand.push_back({column, piece->containers[month]});
    const auto odd = program_.column(0, 0, most, Takes::whole);
    stand.push_back({odd, -static_cast<double>(rows.in_a_row)});
    room.push_back({odd, static_cast<double>(rows.more) / a_millimetre});
    if (rows.first != rows.more) {
      const auto even = program_.column(0, 0, most, Takes::whole);
      const auto any = program_.column(0, 0, 1, Takes::whole);
      stand.push_back({even, -static_cast<double>(rows.in_the_next)});
      program_.row(0, 1, {{odd, 1}, {even, -1}});
      program_.row(-endless, 0, {{odd, 1}, {any, -most}});
      room.push_back({even, static_cast<double>(rows.more) / a_millimetre});
      room.push_back({any, static_cast<double>(rows.first - rows.more) / a_millimetre});
    }
    program_.row(-endless, hair, stand);
  }

  const PlacingClass& of_;
  IntegerProgram program_;
  std::map<std::tuple<std::size_t, std::size_t, int>, std::size_t> stands_;
  std::map<std::pair<std::size_t, std::size_t>, std::size_t> apart_;
};

bool keeps_the_rules(const PlacingClass& of, const std::vector<Standing>& plan) {
  Occupied occupied(of);
  for (std::size_t at = 0; at < of.pieces.size(); ++at)
    occupied.put(of.pieces[at], plan[at]);
  return !occupied.overloaded();
}

} // namespace

bool can_be_programmed(const PlacingClass& of) {
  std::size_t choices = 0;
  for (const auto& piece : of.pieces)
    for (std::size_t month = 0; month < of.months; ++month)
      choices +=
          piece.there(month) ? static_cast<std::size_t>(std::ranges::count(piece.can, 1)) + 1 : 0;
  return choices <= most_choices;
}

ProgramPlaced program_placing(const PlacingClass& of, const std::vector<Standing>& best,
                              double seconds) {
  Program program(of);
  const auto solved = program.solve(seconds);
  ProgramPlaced found;
  if (!solved || !*solved)
    return found; // nothing in the time: what there was stands
  auto plan = program.plan_of(**solved);
  if (keeps_the_rules(of, plan) && cost_of(of, plan) < cost_of(of, best))
    found.plan = std::move(plan);
  found.bound = (*solved)->bound;
  return found;
}

} // namespace coneline::plan
