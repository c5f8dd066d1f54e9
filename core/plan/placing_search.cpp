// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/placing_class.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace coneline::plan {

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();
constexpr double tightly = 1e-5; // of two places that are equal, the fuller one
constexpr double hair = 1e-3;

/// The best for one piece with all others as they are: the shortest way through months and places.
class BestForOne {
 public:
  BestForOne(const PlacingClass& of, const Occupied& occupied)
      : of_(of), occupied_(occupied), width_(of.places.size() + 1) {}

  Standing standing(const ClassPiece& piece) {
    came_from_.assign(of_.months * width_, 0);
    std::vector<double> cost(width_);
    for (std::size_t state = 0; state < width_; ++state) {
      const bool moved = piece.there(0) && piece.before && *piece.before != place_of(state);
      cost[state] = in(piece, state, 0) + apart(piece, state) + (moved ? 1 : 0);
    }
    for (std::size_t month = 1; month < of_.months; ++month)
      cost = step(piece, month, cost);
    Standing found(of_.months, nowhere);
    auto state = static_cast<std::size_t>(std::ranges::min_element(cost) - cost.begin());
    for (auto month = of_.months; month-- > 0;) {
      found[month] = piece.there(month) ? place_of(state) : nowhere;
      state = came_from_[month * width_ + state];
    }
    return found;
  }

 private:
  /// The last state is to have no place.
  [[nodiscard]] int place_of(std::size_t state) const {
    return state + 1 == width_ ? nowhere : static_cast<int>(state);
  }
  [[nodiscard]] double in(const ClassPiece& piece, std::size_t state, std::size_t month) const {
    if (!piece.there(month))
      return 0;
    if (place_of(state) == nowhere)
      return of_.without(piece, month);
    if (piece.can[state] == 0 || !occupied_.fits(piece, state, month))
      return endless;
    return tightly * (1 - static_cast<double>(occupied_.room_taken(state, month)) /
                              static_cast<double>(of_.places[state].room));
  }
  [[nodiscard]] double apart(const ClassPiece& piece, std::size_t state) const {
    return place_of(state) == nowhere || occupied_.has_cross(piece.cross, state)
               ? 0
               : for_a_cross_apart;
  }

  std::vector<double> step(const ClassPiece& piece, std::size_t month,
                           const std::vector<double>& before) {
    const auto none = width_ - 1;
    const bool stood = piece.there(month - 1) && piece.there(month);
    const double move = stood ? 1 : 0;
    const auto cheapest =
        static_cast<std::size_t>(std::ranges::min_element(before) - before.begin());
    std::vector<double> after(width_);
    for (std::size_t state = 0; state < width_; ++state) {
      const double going = apart(piece, state);
      after[state] = before[state];
      auto& from = came_from_[month * width_ + state];
      from = state;
      if (before[cheapest] + move + going < after[state]) {
        after[state] = before[cheapest] + move + going;
        from = cheapest;
      }
      if (before[none] + going < after[state]) { // out of no place is no move
        after[state] = before[none] + going;
        from = none;
      }
      after[state] += in(piece, state, month);
    }
    return after;
  }

  const PlacingClass& of_;
  const Occupied& occupied_;
  std::size_t width_;
  std::vector<std::size_t> came_from_;
};

class Search {
 public:
  Search(const PlacingClass& of, const std::function<bool()>& go_on)
      : of_(of), go_on_(go_on), occupied_(of), one_(of, occupied_),
        plan_(of.pieces.size(), Standing(of.months, nowhere)) {}

  std::vector<Standing> run() {
    for (const auto at : in_order())
      place(at);
    constexpr int rounds = 20;
    for (int round = 0; round < rounds && goes_on(); ++round) {
      bool better = false;
      for (std::size_t at = 0; at < of_.pieces.size(); ++at)
        better = (!of_.pieces[at].pinned && again({at})) || better;
      for (std::size_t at = 0; at < of_.pieces.size() && goes_on(); ++at)
        better = with_another(at) || better;
      if (!better)
        break;
    }
    return std::move(plan_);
  }

 private:
  [[nodiscard]] bool goes_on() const { return !go_on_ || go_on_(); }

  /// What is pinned, then what stands today, the large before the small.
  [[nodiscard]] std::vector<std::size_t> in_order() const {
    std::vector<std::size_t> order(of_.pieces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t at) {
      const auto& piece = of_.pieces[at];
      double metres = 0;
      for (std::size_t month = 0; month < of_.months; ++month)
        metres += of_.metres(piece, month);
      return std::pair(piece.pinned ? 0 : piece.before ? 1 : 2, -metres);
    });
    return order;
  }

  void take(std::size_t at) { occupied_.take(of_.pieces[at], plan_[at]); }
  void put(std::size_t at, Standing standing) {
    plan_[at] = std::move(standing);
    occupied_.put(of_.pieces[at], plan_[at]);
  }
  void place(std::size_t at) { put(at, one_.standing(of_.pieces[at])); }

  [[nodiscard]] double own(std::size_t at) const {
    return own_cost(of_, of_.pieces[at], plan_[at]);
  }

  /// Takes pieces up and puts them down again one after the other; keeps it where it is better.
  bool again(const std::vector<std::size_t>& pieces) {
    double before = for_a_cross_apart * occupied_.apart();
    std::vector<Standing> kept;
    for (const auto at : pieces) {
      before += own(at);
      kept.push_back(plan_[at]);
      take(at);
    }
    for (const auto at : pieces)
      place(at);
    double after = for_a_cross_apart * occupied_.apart();
    for (const auto at : pieces)
      after += own(at);
    if (after < before - hair)
      return true;
    for (const auto at : pieces)
      take(at);
    for (std::size_t nth = 0; nth < pieces.size(); ++nth)
      put(pieces[nth], std::move(kept[nth]));
    return false;
  }

  /// Another piece makes room for one that is moved or has no place.
  bool with_another(std::size_t at) {
    if (of_.pieces[at].pinned || own(at) <= 0)
      return false;
    for (std::size_t other = 0; other < of_.pieces.size(); ++other)
      if (other != at && !of_.pieces[other].pinned && could_give_room(at, other) &&
          again({at, other}))
        return true;
    return false;
  }

  [[nodiscard]] bool could_give_room(std::size_t at, std::size_t other) const {
    for (std::size_t month = 0; month < of_.months; ++month)
      if (const int place = plan_[other][month];
          place >= 0 && of_.pieces[at].there(month) && place != plan_[at][month] &&
          of_.pieces[at].can[static_cast<std::size_t>(place)] != 0)
        return true;
    return false;
  }

  const PlacingClass& of_;
  const std::function<bool()>& go_on_;
  Occupied occupied_;
  BestForOne one_;
  std::vector<Standing> plan_;
};

} // namespace

std::vector<Standing> search_placing(const PlacingClass& of, const std::function<bool()>& go_on) {
  return Search(of, go_on).run();
}

} // namespace coneline::plan
