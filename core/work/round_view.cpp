// SPDX-License-Identifier: GPL-3.0-or-later
// What a round is to pass, and how it stands.
#include "core/base/phrase.h"
#include "core/work/one_reading.h"
#include "core/work/origin_said.h"
#include "core/work/round.h"

#include <climits>
#include <fmt/format.h>

#include <set>

namespace coneline::work {

bool is_within(const book::Registers& registers, std::optional<book::PlaceId> place,
               book::PlaceId outer) {
  // As many steps as there are places, so that a circle ends too.
  for (std::size_t step = 0; place && step <= registers.places.size(); ++step) {
    if (*place == outer)
      return true;
    place = registers.place(*place).within;
  }
  return false;
}

book::Tapped found_by(const book::Entry& look) {
  book::Tapped found;
  for (const auto& movement : look.movements) {
    const auto count = movement.count.value();
    found.roots += movement.to.state == book::State::root ? count : 0;
    found.leaves += movement.to.state == book::State::leaf ? count : 0;
    found.dead += movement.to.state == book::State::dead ? count : 0;
  }
  return found;
}

std::vector<book::RoundStop> stops_of_round(store::Reading& reading,
                                            const book::Registers& registers,
                                            std::optional<book::PlaceId> place, Date day) {
  OneReading once(reading, registers, day);
  std::set<Code> due;
  if (!place)
    for (const auto& each : due_on(once))
      if (each.kind == DueKind::inspect)
        due.insert(each.code);
  std::vector<LotLine> lines;
  for (auto& line : once.take_lot_lines())
    if (line.lot.code.kind() == Kind::tray && line.total() > 0 &&
        (place ? is_within(registers, line.place, *place) : due.contains(line.lot.code)))
      lines.push_back(std::move(line));
  const auto turn = [&](const LotLine& line) {
    return std::tuple(line.place ? registers.place(*line.place).walk : INT_MAX,
                      line.place.value_or(book::PlaceId{}), line.lot.code);
  };
  std::ranges::stable_sort(lines, {}, turn);
  std::vector<book::RoundStop> stops;
  for (const auto& line : lines)
    stops.push_back({line.lot.id, line.place});
  return stops;
}

std::optional<book::Round> open_round(store::Reading& reading) {
  for (auto& round : reading.rounds())
    if (!round.ended)
      return round;
  return std::nullopt;
}

Result<book::Round> round_of(store::Reading& reading, book::RoundId id) {
  for (auto& round : reading.rounds())
    if (round.id == id)
      return round;
  return refuse(fault(phrase("there is no round {}", id.value), "Begin one."));
}

namespace {

class View {
 public:
  View(store::Reading& reading, const book::Registers& registers, const book::Round& round)
      : reading_(reading) {
    view_.round = round;
    for (auto& line : lot_lines(reading, registers))
      lines_.emplace(line.lot.id, std::move(line));
  }

  RoundView made() {
    for (const auto& stop : view_.round.stops) {
      auto& tray = tray_of(stop.lot);
      tray.planned = true;
      tray.stood = stop.place;
    }
    take_sightings();
    take_entries();
    sum();
    if (view_.round.in_hand)
      view_.in_hand = reading_.lot(*view_.round.in_hand).code;
    return std::move(view_);
  }

 private:
  RoundTray& tray_of(book::LotId lot) {
    const auto [found, is_new] = at_.emplace(lot, view_.trays.size());
    if (is_new) {
      const auto line = lines_.find(lot);
      RoundTray tray;
      tray.lot = lot;
      tray.holds = false;
      if (line != lines_.end()) {
        tray.code = line->second.lot.code;
        tray.origin = origin_said(line->second.origin.name);
        tray.stood = tray.place = line->second.place;
        tray.holds = line->second.total() > 0;
      } else { // its making was taken back since
        tray.code = reading_.lot(lot).code;
      }
      view_.trays.push_back(std::move(tray));
    }
    return view_.trays[found->second];
  }

  void take_sightings() {
    for (const auto& sighting : reading_.sightings())
      if (sighting.round == view_.round.id) {
        tray_of(sighting.lot).seen = true;
        last_ = at_.at(sighting.lot);
      }
  }

  void take_entries() {
    for (const auto& made : reading_.round_entries()) {
      if (made.round != view_.round.id || reading_.reversed_by(made.entry))
        continue;
      view_.undoable = true;
      const auto entry = reading_.entry(made.entry).value();
      if (!entry.lot)
        continue;
      auto& tray = tray_of(*entry.lot);
      tray.moved = tray.moved || entry.verb == book::Verb::move;
      tray.counted = tray.counted || entry.verb == book::Verb::inspect;
      if (entry.verb == book::Verb::inspect)
        tray.found += found_by(entry);
    }
    view_.undoable = view_.undoable || !view_.round.tapped.none();
  }

  void sum() {
    const RoundTray* first_left = nullptr;
    const RoundTray* next = nullptr;
    for (std::size_t i = 0; i < view_.trays.size(); ++i) {
      const auto& tray = view_.trays[i];
      view_.planned += tray.planned ? 1 : 0;
      view_.seen += tray.planned && tray.seen ? 1 : 0;
      view_.counted += tray.counted ? 1 : 0;
      view_.moved += tray.moved ? 1 : 0;
      view_.found += tray.found;
      if (!tray.planned || tray.seen || !tray.holds)
        continue;
      ++view_.not_found;
      first_left = first_left == nullptr ? &tray : first_left;
      next = next == nullptr && last_ && i > *last_ ? &tray : next;
    }
    next = next == nullptr ? first_left : next;
    if (next != nullptr)
      view_.next = next->code;
  }

  store::Reading& reading_;
  RoundView view_;
  std::map<book::LotId, LotLine> lines_;
  std::map<book::LotId, std::size_t> at_;
  std::optional<std::size_t> last_; ///< the row of the last one seen
};

} // namespace

RoundView view_round(store::Reading& reading, const book::Registers& registers,
                     const book::Round& round) {
  return View(reading, registers, round).made();
}

} // namespace coneline::work
