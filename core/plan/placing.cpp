// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/placing.h"

#include "core/base/phrase.h"
#include "core/plan/placing_layout.h"

#include <algorithm>

namespace coneline::plan {

namespace {

constexpr double proof = 1e-4;

class Placer {
 public:
  Placer(const PlacingInput& input, const PlacingEffort& effort)
      : input_(input), effort_(effort), layout_(input),
        months_(static_cast<std::size_t>(input.months)) {}

  Result<Placing> run() {
    if (auto pins = layout_.know_pins(); !pins)
      return refuse(pins.error());
    for (std::size_t month = 0; month < months_; ++month)
      placing_.months.push_back(input_.today.first_of_month().plus_months(static_cast<int>(month)));
    placing_.placed.resize(input_.pieces.size());
    for (std::size_t at = 0; at < input_.pieces.size(); ++at)
      placing_.placed[at] = {at, std::vector<std::optional<book::PlaceId>>(months_)};
    for (const auto& [light, word] : book::Words<book::Light>::all)
      place(layout_.light_class(light));
    std::ranges::stable_sort(placing_.moves, {},
                             [](const Move& move) { return std::pair(move.month, move.piece); });
    for (auto& [key, one] : lacking_)
      placing_.no_room.push_back(std::move(one));
    placing_.remarks = layout_.remarks();
    return std::move(placing_);
  }

 private:
  void place(const PlacingClass& of) {
    constexpr double for_a_bound = 0.1; // of the time, for one of its small programs
    auto plan = search_placing(of, effort_.go_on);
    double cost = cost_of(of, plan);
    const auto bounds = placing_bound(of, std::max(1.0, for_a_bound * effort_.seconds));
    double bound = bounds.all;
    const bool go_on = !effort_.go_on || effort_.go_on();
    if (cost > bound + proof && go_on && can_be_programmed(of)) {
      auto found = program_placing(of, plan, effort_.seconds);
      plan = std::move(found.plan).value_or(std::move(plan));
      cost = cost_of(of, plan);
      bound = std::max(bound, found.bound);
    }
    placing_.cost += cost;
    placing_.bound += std::min(cost, bound);
    placing_.proven = placing_.proven && cost <= bound + proof;
    placing_.moves_bound += bounds.moves;
    take_over(of, plan);
  }

  void take_over(const PlacingClass& of, const std::vector<Standing>& plan) {
    Occupied occupied(of);
    for (std::size_t at = 0; at < of.pieces.size(); ++at) {
      occupied.put(of.pieces[at], plan[at]);
      for (std::size_t month = 0; month < months_; ++month)
        if (of.pieces[at].there(month))
          take_over(of, of.pieces[at], plan[at], month);
    }
    for (std::size_t place = 0; place < of.places.size(); ++place) {
      auto& taken = placing_.taken[of.places[place].id];
      for (std::size_t month = 0; month < months_; ++month)
        taken.push_back(static_cast<double>(occupied.room_taken(place, month)) /
                        static_cast<double>(of.places[place].room));
    }
  }

  void take_over(const PlacingClass& of, const ClassPiece& piece, const Standing& standing,
                 std::size_t month) {
    const int now = standing[month];
    if (now == nowhere) {
      const auto light = input_.pieces[piece.piece].light;
      auto& one = lacking_[{month, light}];
      one.month = month;
      one.light = light;
      one.square_metres += of.metres(piece, month);
      one.pieces.push_back(piece.piece);
    } else {
      placing_.placed[piece.piece].places[month] = id(of, now);
    }
    const bool stood = piece.stood_before(month, standing);
    const int before = !stood ? nowhere : month == 0 ? *piece.before : standing[month - 1];
    if (stood && before != now)
      ++placing_.moved;
    if (before == now || now == nowhere)
      return;
    std::optional<book::PlaceId> from;
    if (stood)
      from = before == elsewhere ? input_.pieces[piece.piece].place : id(of, before);
    placing_.moves.push_back({month, piece.piece, from, *id(of, now)});
  }

  [[nodiscard]] static std::optional<book::PlaceId> id(const PlacingClass& of, int place) {
    return place < 0 ? std::nullopt : std::optional(of.places[static_cast<std::size_t>(place)].id);
  }

  const PlacingInput& input_;
  const PlacingEffort& effort_;
  PlacingLayout layout_;
  std::size_t months_;
  Placing placing_;
  std::map<std::pair<std::size_t, book::Light>, NoRoom> lacking_;
};

} // namespace

double containers_on(const book::Place& place, double offered_square_metres, const book::Pot& pot,
                     double gap_mm, Pattern pattern) {
  const auto ground =
      ground_of(place, place.square_metres() - offered_square_metres, gap_mm, pattern);
  return static_cast<double>(rows_across(ground, pot).most(ground.room()));
}

Result<Placing> place_lots(const PlacingInput& input, const PlacingEffort& effort) {
  constexpr int most_months = 60;
  if (input.months < 1 || input.months > most_months)
    return refuse(fault(phrase("a placing of {} months", input.months), "Give 1 to 60."));
  if (!(input.gap_mm >= 0))
    return refuse(fault(phrase("a gap of {:g} mm between pots", input.gap_mm),
                        "Give 0 for pots that touch."));
  if (!(effort.seconds > 0))
    return refuse(fault(phrase("{:g} seconds to place in", effort.seconds), "Give more than 0."));
  return Placer(input, effort).run();
}

} // namespace coneline::plan
