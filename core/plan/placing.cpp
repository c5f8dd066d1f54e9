// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/placing.h"

#include "core/plan/fit.h"
#include "core/plan/integer_program.h"
#include "core/plan/offered.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace coneline::plan {

namespace {

constexpr double least_there = 0.005; // containers expected; below it nothing is taken to stand
constexpr double hair = 1e-9;
constexpr double for_a_cross_apart = 0.05;
constexpr double without_place = 5;
constexpr double without_place_a_square_metre = 20;

using Spot = std::optional<std::size_t>; ///< place in the list of places with room

/// A place that has room, and what a class of pots takes of it.
struct Stand {
  const book::Place* place = nullptr;
  double offered = 0; ///< m²
  std::optional<double> bears;
  book::Frost frost = book::Frost::not_known;
};

bool stands_the_cold(book::Frost plant, book::Frost there) {
  if (there == book::Frost::not_known || there == book::Frost::none ||
      plant == book::Frost::not_known || plant == book::Frost::hard)
    return true;
  return plant == book::Frost::light && there == book::Frost::light;
}

class Benches {
 public:
  explicit Benches(const PlacingInput& input) : input_(input) {
    const auto& places = input.registers.places;
    for (const auto& [id, offered] : offered_by_place(places)) {
      if (offered <= 0)
        continue;
      Stand stand{&input.registers.place(id), offered, {}, book::Frost::not_known};
      for (const auto& limits : input.limits)
        if (limits.place == id) {
          stand.bears = limits.kilograms_a_square_metre;
          stand.frost = limits.frost;
        }
      stands_.push_back(stand);
    }
    for (const auto& stand : stands_)
      for (const auto& pot : input.registers.pots)
        room_[{stand.place->id, pot.id}] =
            containers_on(*stand.place, stand.offered, pot, input.gap_mm, input.pattern);
  }

  [[nodiscard]] const std::vector<Stand>& all() const { return stands_; }
  [[nodiscard]] Spot find(book::PlaceId id) const {
    for (std::size_t at = 0; at < stands_.size(); ++at)
      if (stands_[at].place->id == id)
        return at;
    return std::nullopt;
  }
  /// Why a piece can never stand there; empty where it can.
  [[nodiscard]] std::string against(const Piece& piece, std::size_t at) const {
    const auto& stand = stands_[at];
    if (stand.place->light != piece.light)
      return fmt::format("'{}' is {}, it needs {}", stand.place->name,
                         book::word(stand.place->light), book::word(piece.light));
    if (!stands_the_cold(input_.registers.taxon(piece.taxon).frost.value, stand.frost))
      return fmt::format("'{}' has {}", stand.place->name, book::word(stand.frost));
    if (room_.at({stand.place->id, piece.pot}) < 1)
      return fmt::format("'{}' is larger than '{}'", input_.registers.pot(piece.pot).name,
                         stand.place->name);
    return {};
  }
  /// The share of a place's room that so many containers take.
  [[nodiscard]] double share(const Piece& piece, std::size_t at, std::size_t month) const {
    return piece.containers[month] / room_.at({stands_[at].place->id, piece.pot});
  }
  [[nodiscard]] double load(const Piece& piece, std::size_t at, std::size_t month) const {
    return piece.containers[month] * input_.registers.pot(piece.pot).litres *
           input_.wet_kilograms_a_litre / stands_[at].offered;
  }

 private:
  static std::map<book::PlaceId, double> offered_by_place(const std::vector<book::Place>& places) {
    std::map<book::PlaceId, double> taken;
    for (const auto& place : places)
      if (place.within)
        taken[*place.within] += place.square_metres();
    std::map<book::PlaceId, double> offered;
    for (const auto& place : places) {
      const double inside = taken[place.id];
      const bool house = place.kind == book::PlaceKind::house;
      offered[place.id] = house && inside > 0 ? 0 : std::max(0.0, place.square_metres() - inside);
    }
    return offered;
  }

  const PlacingInput& input_;
  std::vector<Stand> stands_;
  std::map<std::pair<book::PlaceId, book::PotId>, double> room_;
};

/// What is taken of each place in each month.
class Taken {
 public:
  Taken(const Benches& benches, std::size_t months)
      : benches_(benches), share_(benches.all().size(), ByMonth(months, 0)), load_(share_) {}

  [[nodiscard]] bool fits(const Piece& piece, std::size_t at, std::size_t month) const {
    const auto& bears = benches_.all()[at].bears;
    return share_[at][month] + benches_.share(piece, at, month) <= 1 + hair &&
           (!bears || load_[at][month] + benches_.load(piece, at, month) <= *bears + hair);
  }
  void put(const Piece& piece, std::size_t at, std::size_t month) {
    share_[at][month] += benches_.share(piece, at, month);
    load_[at][month] += benches_.load(piece, at, month);
  }
  [[nodiscard]] const ByMonth& share(std::size_t at) const { return share_[at]; }
  [[nodiscard]] double load(std::size_t at, std::size_t month) const { return load_[at][month]; }

 private:
  const Benches& benches_;
  std::vector<ByMonth> share_;
  std::vector<ByMonth> load_;
};

/// Pieces of one light class with the places that each can stand in.
struct LightClass {
  std::vector<std::size_t> pieces;
  std::vector<std::vector<std::size_t>> can; ///< by piece of this class: places with room
};

using Chosen = std::vector<std::vector<Spot>>; ///< by piece and month

bool there(const Piece& piece, std::size_t month) {
  return piece.containers[month] > least_there;
}

class Placer {
 public:
  Placer(const PlacingInput& input, const PlacingEffort& effort)
      : input_(input), effort_(effort), benches_(input),
        months_(static_cast<std::size_t>(input.months)),
        chosen_(input.pieces.size(), std::vector<Spot>(months_)) {}

  Result<Placing> run();

 private:
  Result<void> know_pins();
  Result<void> pins_fit() const;
  [[nodiscard]] std::map<book::Light, LightClass> classes() const;
  void by_simple_rules(const LightClass& all, Taken& taken);
  [[nodiscard]] Spot simple_choice(const LightClass& all, std::size_t nth, std::size_t month,
                                   Spot before, const Taken& taken) const;
  Result<void> by_program(const LightClass& all);
  [[nodiscard]] double cost_of(const LightClass& all) const;
  [[nodiscard]] double square_metres(std::size_t piece, std::size_t month) const {
    const auto& one = input_.pieces[piece];
    return one.containers[month] * input_.registers.pot(one.pot).square_metres();
  }
  [[nodiscard]] Spot today(std::size_t piece) const {
    const auto& place = input_.pieces[piece].place;
    return place ? benches_.find(*place) : std::nullopt;
  }
  Placing told() const;

  const PlacingInput& input_;
  const PlacingEffort& effort_;
  Benches benches_;
  std::size_t months_;
  std::map<std::size_t, std::size_t> pinned_; ///< piece to place
  Chosen chosen_;
  double cost_ = 0;
  double bound_ = 0;
  bool proven_ = true;
};

Result<void> Placer::know_pins() {
  for (std::size_t at = 0; at < input_.pieces.size(); ++at) {
    const auto& piece = input_.pieces[at];
    const auto pin = input_.pins.find(piece.code);
    if (pin == input_.pins.end())
      continue;
    const auto& place = input_.registers.place(pin->second);
    const auto refused = [&](const std::string& why) {
      return refuse(fault(fmt::format("{} is pinned to '{}', where it cannot stand: {}",
                                      piece.code.text(), place.name, why),
                          "Take the pin out, or pin it to another place."));
    };
    const auto spot = benches_.find(pin->second);
    if (!spot)
      return refused(fmt::format("'{}' has no size of its own", place.name));
    if (const auto why = benches_.against(piece, *spot); !why.empty()) {
      if (piece.place) // what it is potted into later may stand elsewhere
        return refused(why);
      continue;
    }
    pinned_[at] = *spot;
  }
  return pins_fit();
}

Result<void> Placer::pins_fit() const {
  Taken taken(benches_, months_);
  for (const auto& [piece, spot] : pinned_)
    for (std::size_t month = 0; month < months_; ++month)
      if (there(input_.pieces[piece], month))
        taken.put(input_.pieces[piece], spot, month);
  for (std::size_t spot = 0; spot < benches_.all().size(); ++spot) {
    const auto& stand = benches_.all()[spot];
    for (std::size_t month = 0; month < months_; ++month) {
      const auto day = input_.today.first_of_month().plus_months(static_cast<int>(month));
      if (const double over = taken.share(spot)[month] - 1; over > hair)
        return refuse(
            fault(fmt::format("what is pinned to '{}' does not fit in {}: {:.2f} m² are missing",
                              stand.place->name, month_name(day), over * stand.offered),
                  "Take a pin out, or pin a lot to another place."));
      if (stand.bears && taken.load(spot, month) > *stand.bears + hair)
        return refuse(fault(fmt::format("what is pinned to '{}' weighs {:.0f} kg/m² in {}: {:.0f} "
                                        "more than it bears",
                                        stand.place->name, taken.load(spot, month), month_name(day),
                                        taken.load(spot, month) - *stand.bears),
                            "Take a pin out, or pin a lot to another place."));
    }
  }
  return {};
}

std::map<book::Light, LightClass> Placer::classes() const {
  std::map<book::Light, LightClass> classes;
  for (std::size_t at = 0; at < input_.pieces.size(); ++at) {
    const auto& piece = input_.pieces[at];
    std::vector<std::size_t> can;
    if (const auto pin = pinned_.find(at); pin != pinned_.end())
      can.push_back(pin->second);
    else
      for (std::size_t spot = 0; spot < benches_.all().size(); ++spot)
        if (benches_.against(piece, spot).empty())
          can.push_back(spot);
    auto& all = classes[piece.light];
    all.pieces.push_back(at);
    all.can.push_back(std::move(can));
  }
  return classes;
}

/// Stay where it is; else with its own cross; else where it fits most tightly.
Spot Placer::simple_choice(const LightClass& all, std::size_t nth, std::size_t month, Spot before,
                           const Taken& taken) const {
  const auto& piece = input_.pieces[all.pieces[nth]];
  const auto& can = all.can[nth];
  const auto fits = [&](std::size_t spot) { return taken.fits(piece, spot, month); };
  if (before && std::ranges::find(can, *before) != can.end() && fits(*before))
    return before;
  std::set<std::size_t> of_cross;
  for (const auto other : all.pieces)
    if (input_.pieces[other].cross == piece.cross && chosen_[other][month])
      of_cross.insert(*chosen_[other][month]);
  Spot best;
  double most = -1;
  for (const auto spot : can) {
    if (!fits(spot))
      continue;
    const double good = taken.share(spot)[month] + (of_cross.contains(spot) ? 2 : 0);
    if (good > most) {
      most = good;
      best = spot;
    }
  }
  return best;
}

void Placer::by_simple_rules(const LightClass& all, Taken& taken) {
  std::vector<std::size_t> order(all.pieces.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  for (std::size_t month = 0; month < months_; ++month) {
    // Pinned ones first, then what has a place, then the largest.
    const auto before = [&](std::size_t nth) {
      return month == 0 ? today(all.pieces[nth]) : chosen_[all.pieces[nth]][month - 1];
    };
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
      const auto rank = [&](std::size_t nth) {
        return std::tuple(!pinned_.contains(all.pieces[nth]), !before(nth).has_value(),
                          -square_metres(all.pieces[nth], month));
      };
      return rank(a) < rank(b);
    });
    for (const auto nth : order) {
      const auto at = all.pieces[nth];
      const auto& piece = input_.pieces[at];
      if (!there(piece, month))
        continue;
      const auto spot = simple_choice(all, nth, month, before(nth), taken);
      chosen_[at][month] = spot;
      if (spot)
        taken.put(piece, *spot, month);
    }
  }
}

double Placer::cost_of(const LightClass& all) const {
  double cost = 0;
  std::set<std::pair<std::string, std::size_t>> apart;
  for (const auto at : all.pieces) {
    Spot before = today(at);
    for (std::size_t month = 0; month < months_; ++month) {
      if (!there(input_.pieces[at], month)) {
        before.reset();
        continue;
      }
      const auto& now = chosen_[at][month];
      if (!now)
        cost += without_place + without_place_a_square_metre * square_metres(at, month);
      if (before && before != now)
        cost += 1;
      if (now)
        apart.emplace(input_.pieces[at].cross, *now);
      before = now;
    }
  }
  return cost + for_a_cross_apart * static_cast<double>(apart.size());
}

/// The integer program of one light class, started from what the simple rules found.
class Program {
 public:
  Program(const PlacingInput& input, const Benches& benches, const LightClass& all,
          std::size_t months)
      : input_(input), benches_(benches), all_(all), months_(months) {}

  void lay_out(const std::function<Spot(std::size_t)>& today,
               const std::function<double(std::size_t, std::size_t)>& square_metres);
  Result<std::optional<Solved>> solve(const Chosen& start, double seconds);
  void read(const Solved& solved, Chosen& chosen) const;

 private:
  [[nodiscard]] const Piece& piece(std::size_t nth) const {
    return input_.pieces[all_.pieces[nth]];
  }
  void moves(std::size_t nth, std::size_t month, Spot today);
  void loads();

  const PlacingInput& input_;
  const Benches& benches_;
  const LightClass& all_;
  std::size_t months_;
  IntegerProgram program_;
  /// Columns: a piece in a place in a month; without one; a move; a cross in a place.
  std::map<std::tuple<std::size_t, std::size_t, std::size_t>, std::size_t> in_;
  std::map<std::pair<std::size_t, std::size_t>, std::size_t> without_;
  std::map<std::pair<std::size_t, std::size_t>, std::size_t> moved_;
  std::map<std::pair<std::string, std::size_t>, std::size_t> of_cross_;
};

void Program::moves(std::size_t nth, std::size_t month, Spot today) {
  if (!there(piece(nth), month) || (month == 0 ? !today : !there(piece(nth), month - 1)))
    return;
  const auto moved = program_.column(1, 0, 1);
  moved_[{nth, month}] = moved;
  std::vector<IntegerProgram::Term> out{{moved, 1}, {without_.at({nth, month}), -1}};
  if (month > 0)
    out.push_back({without_.at({nth, month - 1}), 1});
  program_.row(0, IntegerProgram::endless, out);
  for (const auto spot : all_.can[nth]) {
    const auto now = in_.at({nth, spot, month});
    if (month == 0) {
      if (*today != spot)
        program_.row(0, IntegerProgram::endless, {{moved, 1}, {now, -1}});
      continue;
    }
    // In a place now, and neither there nor without one before: it was moved.
    std::vector<IntegerProgram::Term> terms{{moved, 1}, {now, -1}};
    terms.push_back({in_.at({nth, spot, month - 1}), 1});
    terms.push_back({without_.at({nth, month - 1}), 1});
    program_.row(0, IntegerProgram::endless, terms);
  }
}

void Program::loads() {
  for (std::size_t month = 0; month < months_; ++month)
    for (std::size_t spot = 0; spot < benches_.all().size(); ++spot) {
      std::vector<IntegerProgram::Term> room;
      std::vector<IntegerProgram::Term> weight;
      for (std::size_t nth = 0; nth < all_.pieces.size(); ++nth)
        if (const auto column = in_.find({nth, spot, month}); column != in_.end()) {
          room.push_back({column->second, benches_.share(piece(nth), spot, month)});
          weight.push_back({column->second, benches_.load(piece(nth), spot, month)});
        }
      if (room.empty())
        continue;
      program_.row(-IntegerProgram::endless, 1, room);
      if (const auto& bears = benches_.all()[spot].bears)
        program_.row(-IntegerProgram::endless, *bears, weight);
    }
}

void Program::lay_out(const std::function<Spot(std::size_t)>& today,
                      const std::function<double(std::size_t, std::size_t)>& square_metres) {
  for (std::size_t nth = 0; nth < all_.pieces.size(); ++nth)
    for (std::size_t month = 0; month < months_; ++month) {
      if (!there(piece(nth), month))
        continue;
      std::vector<IntegerProgram::Term> somewhere;
      for (const auto spot : all_.can[nth]) {
        const auto column = program_.column(0, 0, 1, IntegerProgram::Takes::whole);
        in_[{nth, spot, month}] = column;
        somewhere.push_back({column, 1});
        const auto [apart, fresh] = of_cross_.try_emplace({piece(nth).cross, spot}, 0);
        if (fresh)
          apart->second = program_.column(for_a_cross_apart, 0, 1);
        program_.row(0, IntegerProgram::endless, {{apart->second, 1}, {column, -1}});
      }
      const auto none = program_.column(without_place + without_place_a_square_metre *
                                                            square_metres(all_.pieces[nth], month),
                                        0, 1, IntegerProgram::Takes::whole);
      without_[{nth, month}] = none;
      somewhere.push_back({none, 1});
      program_.row(1, 1, somewhere);
      moves(nth, month, today(all_.pieces[nth]));
    }
  loads();
}

Result<std::optional<Solved>> Program::solve(const Chosen& start, double seconds) {
  for (const auto& [key, column] : in_) {
    const auto& [nth, spot, month] = key;
    program_.begin_with(column, start[all_.pieces[nth]][month] == spot ? 1 : 0);
  }
  for (const auto& [key, column] : without_)
    program_.begin_with(column, start[all_.pieces[key.first]][key.second] ? 0 : 1);
  return program_.least_cost(seconds);
}

void Program::read(const Solved& solved, Chosen& chosen) const {
  for (const auto nth : all_.pieces)
    chosen[nth].assign(months_, std::nullopt);
  for (const auto& [key, column] : in_)
    if (solved.values[column] > 0.5) {
      const auto& [nth, spot, month] = key;
      chosen[all_.pieces[nth]][month] = spot;
    }
}

Result<void> Placer::by_program(const LightClass& all) {
  const double simple = cost_of(all);
  Program program(input_, benches_, all, months_);
  program.lay_out(
      [this](std::size_t piece) { return today(piece); },
      [this](std::size_t piece, std::size_t month) { return square_metres(piece, month); });
  const auto start = chosen_;
  const auto solved = program.solve(chosen_, effort_.seconds);
  if (!solved || !*solved) { // nothing was found in the time: what the simple rules found stands
    cost_ += simple;
    proven_ = false;
    return {};
  }
  program.read(**solved, chosen_);
  if (const double found = cost_of(all); found > simple + 1e-6)
    chosen_ = start;
  const double cost = cost_of(all);
  cost_ += cost;
  bound_ += std::min(cost, std::max(0.0, (*solved)->bound));
  proven_ = proven_ && cost <= (*solved)->bound + 1e-4;
  return {};
}

Result<Placing> Placer::run() {
  if (auto pins = know_pins(); !pins)
    return refuse(pins.error());
  Taken taken(benches_, months_);
  for (const auto& [light, all] : classes()) {
    by_simple_rules(all, taken);
    if (effort_.go_on && !effort_.go_on()) {
      cost_ += cost_of(all);
      proven_ = false;
    } else if (auto solved = by_program(all); !solved) {
      return refuse(solved.error());
    }
  }
  return told();
}

Placing Placer::told() const {
  Placing placing;
  placing.cost = cost_;
  placing.bound = bound_;
  placing.proven = proven_;
  for (std::size_t month = 0; month < months_; ++month)
    placing.months.push_back(input_.today.first_of_month().plus_months(static_cast<int>(month)));
  Taken taken(benches_, months_);
  std::map<std::pair<std::size_t, book::Light>, NoRoom> lacking;
  for (std::size_t at = 0; at < input_.pieces.size(); ++at) {
    const auto& piece = input_.pieces[at];
    PlacedPiece placed{at, {}};
    auto before = today(at);
    for (std::size_t month = 0; month < months_; ++month) {
      const auto now = chosen_[at][month];
      placed.places.push_back(now ? std::optional(benches_.all()[*now].place->id) : std::nullopt);
      if (!there(piece, month)) {
        before.reset();
        continue;
      }
      if (!now) {
        auto& one = lacking[{month, piece.light}];
        one.month = month;
        one.light = piece.light;
        one.square_metres += square_metres(at, month);
        one.pieces.push_back(at);
      } else {
        taken.put(piece, *now, month);
        if (before != now) {
          placing.moves.push_back(
              {month, at, before ? std::optional(benches_.all()[*before].place->id) : std::nullopt,
               benches_.all()[*now].place->id});
          placing.moved += before ? 1 : 0;
        }
      }
      before = now;
    }
    placing.placed.push_back(std::move(placed));
  }
  std::ranges::stable_sort(placing.moves, {}, &Move::month);
  for (auto& [key, one] : lacking)
    placing.no_room.push_back(std::move(one));
  for (std::size_t spot = 0; spot < benches_.all().size(); ++spot)
    placing.taken[benches_.all()[spot].place->id] = taken.share(spot);
  return placing;
}

} // namespace

double containers_on(const book::Place& place, double offered_square_metres, const book::Pot& pot,
                     double gap_mm, Pattern pattern) {
  const double own = place.square_metres();
  if (own <= 0)
    return 0;
  double whole = 0;
  if (pot.shape == book::Shape::round) {
    const auto stand =
        pots_on_bench({place.length_mm, place.width_mm, pot.length_mm, gap_mm}, pattern);
    whole = stand ? static_cast<double>(stand->pots) : 0;
  } else {
    const auto along = [gap_mm](double room, double side) {
      return std::floor((room + gap_mm) / (side + gap_mm) + hair);
    };
    whole = std::max(along(place.length_mm, pot.length_mm) * along(place.width_mm, pot.width_mm),
                     along(place.length_mm, pot.width_mm) * along(place.width_mm, pot.length_mm));
  }
  return whole * std::min(1.0, offered_square_metres / own);
}

Result<Placing> place_lots(const PlacingInput& input, const PlacingEffort& effort) {
  constexpr int most_months = 60;
  if (input.months < 1 || input.months > most_months)
    return refuse(fault(fmt::format("a placing of {} months", input.months), "Give 1 to 60."));
  if (!(input.gap_mm >= 0))
    return refuse(fault(fmt::format("a gap of {:g} mm between pots", input.gap_mm),
                        "Give 0 for pots that touch."));
  return Placer(input, effort).run();
}

} // namespace coneline::plan
