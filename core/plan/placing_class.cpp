// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/placing_class.h"

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {
/// Sums of parts of pots in another order differ in their last digits.
constexpr double hair = 1e-6;

std::int64_t whole(double pots) {
  return static_cast<std::int64_t>(std::ceil(pots - hair));
}

Micrometres room_for(const Rows& rows, double pots) {
  return rows.room_for(whole(pots));
}
} // namespace

int moves_of(const ClassPiece& piece, const Standing& standing) {
  int moves = 0;
  for (std::size_t month = 0; month < standing.size(); ++month)
    if (piece.there(month) && piece.stood_before(month, standing))
      moves += standing[month] != (month == 0 ? *piece.before : standing[month - 1]) ? 1 : 0;
  return moves;
}

double own_cost(const PlacingClass& of, const ClassPiece& piece, const Standing& standing) {
  double cost = moves_of(piece, standing);
  for (std::size_t month = 0; month < of.months; ++month)
    cost += standing[month] == nowhere ? of.without(piece, month) : 0;
  return cost;
}

double cost_of(const PlacingClass& of, const std::vector<Standing>& plan) {
  Occupied occupied(of);
  double cost = 0;
  for (std::size_t at = 0; at < of.pieces.size(); ++at) {
    cost += own_cost(of, of.pieces[at], plan[at]);
    occupied.put(of.pieces[at], plan[at]);
  }
  return cost + for_a_cross_apart * occupied.apart();
}

Occupied::Occupied(const PlacingClass& of)
    : of_(of), pots_(of.places.size() * of.months * of.pot_metres.size(), 0.0),
      crosses_(of.places.size() * of.crosses, 0) {}

void Occupied::change(const ClassPiece& piece, const Standing& standing, int sign) {
  for (std::size_t month = 0; month < of_.months; ++month) {
    if (standing[month] < 0 || !piece.there(month))
      continue;
    const auto place = static_cast<std::size_t>(standing[month]);
    pots_[at(place, month) + piece.pot] += sign * piece.containers[month];
    auto& months = crosses_[place * of_.crosses + piece.cross];
    apart_ -= months > 0 ? 1 : 0;
    months += sign;
    apart_ += months > 0 ? 1 : 0;
  }
}

Micrometres Occupied::room_taken(std::size_t place, std::size_t month) const {
  Micrometres taken = 0;
  const auto* pots = pots_there(place, month);
  for (std::size_t pot = 0; pot < of_.pot_metres.size(); ++pot)
    taken += pots[pot] > hair ? room_for(of_.places[place].rows[pot], pots[pot]) : 0;
  return taken;
}

double Occupied::kilograms(std::size_t place, std::size_t month) const {
  double sum = 0;
  const auto* pots = pots_there(place, month);
  for (std::size_t pot = 0; pot < of_.pot_metres.size(); ++pot)
    sum += pots[pot] * of_.pot_kilograms[pot];
  return sum;
}

bool Occupied::fits(const ClassPiece& piece, std::size_t place, std::size_t month) const {
  const auto& there = of_.places[place];
  const auto& rows = there.rows[piece.pot];
  const double stand = pots_[at(place, month) + piece.pot];
  const double more = piece.containers[month];
  const auto room = room_taken(place, month) + room_for(rows, stand + more) -
                    (stand > hair ? room_for(rows, stand) : 0);
  return room <= there.room &&
         kilograms(place, month) + more * of_.pot_kilograms[piece.pot] <= there.kilograms + hair;
}

bool Occupied::overloaded() const {
  for (std::size_t place = 0; place < of_.places.size(); ++place)
    for (std::size_t month = 0; month < of_.months; ++month)
      if (room_taken(place, month) > of_.places[place].room ||
          kilograms(place, month) > of_.places[place].kilograms + hair)
        return true;
  return false;
}

} // namespace coneline::plan
