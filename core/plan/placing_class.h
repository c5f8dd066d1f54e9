// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One light class of a placing, laid out to be solved: what its pieces take of each place. Private
// to the placing.

#include "core/plan/bench_rows.h"
#include "core/plan/placing.h"

#include <vector>

namespace coneline::plan {

inline constexpr double for_a_cross_apart = 0.05;
inline constexpr double without_place = 5;
inline constexpr double without_place_a_square_metre = 20;

/// Where a piece stands, by month: a place of the class, or nowhere.
using Standing = std::vector<int>;
inline constexpr int nowhere = -1;
inline constexpr int elsewhere = -2; ///< today, in a place of another class

struct ClassPlace {
  book::PlaceId id;
  Ground ground;
  Micrometres room = 0;
  double kilograms = 0;   ///< that it bears in all; endless where not known
  std::vector<Rows> rows; ///< by pot of the class
};

struct ClassPiece {
  std::size_t piece = 0;          ///< in the input
  std::size_t pot = 0;            ///< of the class
  std::size_t cross = 0;          ///< of the class
  std::vector<double> containers; ///< by month; 0 where it does not stand
  std::optional<int> before;      ///< where it stands today; nothing: put down for the first time
  std::vector<char> can;          ///< by place; that place alone where it is pinned
  bool pinned = false;

  [[nodiscard]] bool there(std::size_t month) const { return containers[month] > 0; }
  /// Whether a change of place is a move: it stood somewhere just before.
  [[nodiscard]] bool stood_before(std::size_t month, const Standing& standing) const {
    return month == 0 ? before.has_value() : there(month - 1) && standing[month - 1] != nowhere;
  }
};

struct PlacingClass {
  std::size_t months = 0;
  std::size_t crosses = 0;
  std::vector<ClassPlace> places;
  std::vector<double> pot_metres;    ///< m² by pot of the class
  std::vector<double> pot_kilograms; ///< kg by pot of the class
  std::vector<ClassPiece> pieces;

  [[nodiscard]] double metres(const ClassPiece& piece, std::size_t month) const {
    return piece.containers[month] * pot_metres[piece.pot];
  }
  /// What it costs to have no place in a month.
  [[nodiscard]] double without(const ClassPiece& piece, std::size_t month) const {
    return piece.there(month) ? without_place + without_place_a_square_metre * metres(piece, month)
                              : 0;
  }
};

int moves_of(const ClassPiece& piece, const Standing& standing);
/// Moves and months without a place of one piece.
double own_cost(const PlacingClass& of, const ClassPiece& piece, const Standing& standing);
/// All of it, with crosses apart.
double cost_of(const PlacingClass& of, const std::vector<Standing>& plan);

/// What stands in each place in each month.
class Occupied {
 public:
  explicit Occupied(const PlacingClass& of);
  void put(const ClassPiece& piece, const Standing& standing) { change(piece, standing, 1); }
  void take(const ClassPiece& piece, const Standing& standing) { change(piece, standing, -1); }
  /// Whether the piece, not being there, finds room.
  [[nodiscard]] bool fits(const ClassPiece& piece, std::size_t place, std::size_t month) const;
  [[nodiscard]] Micrometres room_taken(std::size_t place, std::size_t month) const;
  [[nodiscard]] double kilograms(std::size_t place, std::size_t month) const;
  [[nodiscard]] bool overloaded() const; ///< anywhere
  /// Whether any of a cross ever stands there.
  [[nodiscard]] bool has_cross(std::size_t cross, std::size_t place) const {
    return crosses_[place * of_.crosses + cross] > 0;
  }
  [[nodiscard]] int apart() const { return apart_; } ///< places of crosses, all together

 private:
  void change(const ClassPiece& piece, const Standing& standing, int sign);
  /// As many as the class has kinds of pot, which may be none.
  [[nodiscard]] const double* pots_there(std::size_t place, std::size_t month) const {
    return pots_.data() + at(place, month);
  }
  [[nodiscard]] std::size_t at(std::size_t place, std::size_t month) const {
    return (place * of_.months + month) * of_.pot_metres.size();
  }

  const PlacingClass& of_;
  std::vector<double> pots_; ///< by place, month, pot
  std::vector<int> crosses_; ///< by place and cross: months of pieces
  int apart_ = 0;
};

/// A plan without overload: one piece after the other as is best for it, then better exchanges of
/// one or two pieces as long as there are any. Stops early where `go_on` says so.
std::vector<Standing> search_placing(const PlacingClass& of, const std::function<bool()>& go_on);

/// No plan costs less. Moves: pieces that a place of today cannot keep. Without a place: what the
/// class could not hold even if pieces were divided at will.
struct PlacingBound {
  int moves = 0;
  double without = 0; ///< cost
  double all = 0;
};
PlacingBound placing_bound(const PlacingClass& of, double seconds);

/// What the integer program found, and what it proved of every plan.
struct ProgramPlaced {
  std::optional<std::vector<Standing>> plan; ///< where better
  double bound = 0;
};
/// Whether the class is small enough for a program with a choice for each piece, place and month.
bool can_be_programmed(const PlacingClass& of);
ProgramPlaced program_placing(const PlacingClass& of, const std::vector<Standing>& best,
                              double seconds);

} // namespace coneline::plan
