// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/placing_layout.h"

#include "core/base/phrase.h"
#include "core/plan/fit.h"

#include <algorithm>
#include <limits>

namespace coneline::plan {

namespace {

constexpr double least_there = 0.005; // containers expected; below it nothing is taken to stand
constexpr double square_metre = 1e6;  // mm²
constexpr double hair = 1e-6;

bool stands_the_cold(book::Frost plant, book::Frost there) {
  if (there == book::Frost::not_known || there == book::Frost::none ||
      plant == book::Frost::not_known || plant == book::Frost::hard)
    return true;
  return plant == book::Frost::light && there == book::Frost::light;
}

bool there(const Piece& piece, std::size_t month) {
  return piece.containers[month] > least_there;
}

bool ever_there(const Piece& piece) {
  return std::ranges::any_of(piece.containers,
                             [](double containers) { return containers > least_there; });
}

} // namespace

Ground ground_of(const book::Place& place, double taken_square_metres, double gap_mm,
                 Pattern pattern) {
  Ground ground{std::max(place.length_mm, place.width_mm),
                std::min(place.length_mm, place.width_mm), gap_mm, pattern};
  if (ground.width_mm > 0)
    ground.length_mm -= std::max(0.0, taken_square_metres) * square_metre / ground.width_mm;
  constexpr double a_millimetre = 1;
  return ground.length_mm < a_millimetre ? Ground{} : ground;
}

PlacingLayout::PlacingLayout(const PlacingInput& input) : input_(input) {
  std::map<book::PlaceId, double> taken;
  for (const auto& place : input.registers.places)
    if (place.within)
      taken[*place.within] += place.square_metres();
  for (const auto& place : input.registers.places) {
    const bool counted = place.kind == book::PlaceKind::house && taken[place.id] > 0;
    Stand stand{&place,
                ground_of(place, taken[place.id], input.gap_mm, input.pattern),
                {},
                book::Frost::not_known};
    if (counted || stand.ground.square_metres() <= 0)
      continue;
    for (const auto& limits : input.limits)
      if (limits.place == place.id) {
        stand.bears = limits.kilograms_a_square_metre;
        stand.frost = limits.frost;
      }
    stands_.push_back(stand);
  }
}

const PlacingLayout::Stand* PlacingLayout::find(book::PlaceId id) const {
  const auto found =
      std::ranges::find_if(stands_, [&](const Stand& stand) { return stand.place->id == id; });
  return found == stands_.end() ? nullptr : &*found;
}

std::string PlacingLayout::against(const Piece& piece, const Stand& stand) const {
  const auto& name = stand.place->name;
  if (stand.place->light != piece.light)
    return phrase("'{}' is {}, it needs {}", name, book::said(stand.place->light),
                  book::said(piece.light));
  if (!stands_the_cold(input_.registers.taxon(piece.taxon).frost.value, stand.frost))
    return phrase("'{}' has {}", name, book::said(stand.frost));
  const auto& pot = input_.registers.pot(piece.pot);
  if (rows_across(stand.ground, pot).most(stand.ground.room()) < 1)
    return phrase("'{}' is larger than '{}'", pot.name, name);
  return {};
}

Result<void> PlacingLayout::know_pins() {
  for (const auto& [code, id] : input_.pins)
    if (auto known = know_pin(code, id); !known)
      return known;
  return pins_fit();
}

/// What stands today has to stand there; what it is potted into later may stand elsewhere.
Result<void> PlacingLayout::know_pin(const Code& code, book::PlaceId id) {
  const auto& place = input_.registers.place(id);
  const auto refused = [&](const std::string& why) {
    return refuse(fault(
        phrase("{} is pinned to '{}', where it cannot stand: {}", code.text(), place.name, why),
        "Take the pin out, or pin it to another place."));
  };
  const auto* stand = find(id);
  if (stand == nullptr)
    return refused(phrase("'{}' has no size of its own", place.name));
  std::string never;
  bool any = false;
  for (std::size_t at = 0; at < input_.pieces.size(); ++at) {
    const auto& piece = input_.pieces[at];
    if (piece.code != code || !ever_there(piece))
      continue;
    const auto why = against(piece, *stand);
    if (!why.empty() && (piece.place || there(piece, 0)))
      return refused(why);
    if (why.empty())
      pinned_[at] = id;
    any = any || why.empty();
    never = why.empty() ? never : why;
  }
  if (!any && !never.empty())
    return refused(never);
  return {};
}

Result<void> PlacingLayout::pins_fit() const {
  for (const auto& [light, word] : book::Words<book::Light>::all) {
    const auto of = light_class(light);
    Occupied occupied(of);
    for (const auto& piece : of.pieces)
      if (const auto pin = pinned_.find(piece.piece); pin != pinned_.end()) {
        const auto place = std::ranges::find(of.places, pin->second, &ClassPlace::id);
        occupied.put(piece, Standing(of.months, static_cast<int>(place - of.places.begin())));
      }
    for (std::size_t place = 0; place < of.places.size(); ++place)
      for (std::size_t month = 0; month < of.months; ++month) {
        const auto& one = of.places[place];
        const auto& name = input_.registers.place(one.id).name;
        const auto day = input_.today.first_of_month().plus_months(static_cast<int>(month));
        constexpr double by_width = 1e9; // µm of length, mm of width
        if (const auto over = occupied.room_taken(place, month) - one.room; over > 0)
          return refuse(
              fault(phrase("what is pinned to '{}' does not fit in {}: {} are missing", name,
                           month_name(day),
                           measured(Quantity::square_metres,
                                    static_cast<double>(over) * one.ground.width_mm / by_width, 2)),
                    "Take a pin out, or pin a lot to another place."));
        if (const double over = occupied.kilograms(place, month) - one.kilograms; over > hair)
          return refuse(
              fault(phrase("what is pinned to '{}' weighs {:.0f} kg/m² in {}: {:.0f} more than it "
                           "bears",
                           name, occupied.kilograms(place, month) / one.ground.square_metres(),
                           month_name(day), over / one.ground.square_metres()),
                    "Take a pin out, or pin a lot to another place."));
      }
  }
  return {};
}

PlacingClass PlacingLayout::light_class(book::Light light) const {
  PlacingClass of;
  of.months = static_cast<std::size_t>(input_.months);
  std::vector<const Stand*> stands;
  for (const auto& stand : stands_)
    if (stand.place->light == light) {
      stands.push_back(&stand);
      of.places.push_back({stand.place->id,
                           stand.ground,
                           stand.ground.room(),
                           stand.bears ? *stand.bears * stand.ground.square_metres()
                                       : std::numeric_limits<double>::infinity(),
                           {}});
    }
  std::map<book::PotId, std::size_t> pots;
  std::map<std::string, std::size_t> crosses;
  for (std::size_t at = 0; at < input_.pieces.size(); ++at) {
    const auto& given = input_.pieces[at];
    if (given.light != light || !ever_there(given))
      continue;
    const auto& pot = input_.registers.pot(given.pot);
    const auto [known, fresh] = pots.try_emplace(given.pot, pots.size());
    if (fresh) {
      of.pot_metres.push_back(pot.square_metres());
      of.pot_kilograms.push_back(pot.litres * input_.wet_kilograms_a_litre);
      for (auto& place : of.places)
        place.rows.push_back(rows_across(place.ground, pot));
    }
    ClassPiece piece{at,
                     known->second,
                     crosses.try_emplace(given.cross, crosses.size()).first->second,
                     given.containers,
                     {},
                     {}};
    for (std::size_t month = 0; month < of.months; ++month)
      if (!there(given, month))
        piece.containers[month] = 0;
    const auto pin = pinned_.find(at);
    for (const auto* stand : stands)
      piece.can.push_back((pin == pinned_.end() || pin->second == stand->place->id) &&
                          against(given, *stand).empty());
    piece.pinned = pin != pinned_.end();
    if (given.place && find(*given.place) != nullptr) {
      const auto found = std::ranges::find(of.places, *given.place, &ClassPlace::id);
      piece.before =
          found == of.places.end() ? elsewhere : static_cast<int>(found - of.places.begin());
    }
    of.pieces.push_back(std::move(piece));
  }
  of.crosses = crosses.size();
  return of;
}

std::vector<std::string> PlacingLayout::remarks() const {
  std::set<std::string> told;
  for (const auto& piece : input_.pieces) {
    if (!ever_there(piece))
      continue;
    if (piece.place && find(*piece.place) == nullptr)
      told.insert(phrase("'{}' has no size, though lots stand there: they are put down anew. "
                         "Measure it, or say on which bench of it they stand.",
                         input_.registers.place(*piece.place).name));
    const bool any = std::ranges::any_of(
        stands_, [&](const Stand& stand) { return stand.place->light == piece.light; });
    const bool can = std::ranges::any_of(
        stands_, [&](const Stand& stand) { return against(piece, stand).empty(); });
    if (!any)
      told.insert(phrase("No place of {} has a size. Measure one.", book::said(piece.light)));
    else if (!can)
      told.insert(phrase("'{}' is larger than every place of {} that is warm enough. Check the "
                         "pot's measures, or measure another place.",
                         input_.registers.pot(piece.pot).name, book::said(piece.light)));
  }
  for (const auto& [code, place] : input_.pins)
    if (std::ranges::none_of(input_.pieces, [&](const Piece& piece) {
          return piece.code == code && ever_there(piece);
        }))
      told.insert(phrase("{} is pinned to '{}', but nothing of it will stand. Take the pin out.",
                         code.text(), input_.registers.place(place).name));
  return {told.begin(), told.end()};
}

} // namespace coneline::plan
