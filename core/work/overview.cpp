// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/overview.h"

#include "core/work/one_reading.h"

#include <algorithm>
#include <numeric>

namespace coneline::work {

namespace {

struct Came {
  std::int64_t in = 0;
  std::optional<Date> first;
};

/// What came into each lot from outside it, by entries that stand.
std::map<book::LotId, Came> came_in(store::Reading& reading) {
  std::map<book::LotId, Came> came;
  for (const auto& arrival : reading.arrivals()) {
    auto& lot = came[arrival.lot];
    lot.in += arrival.count;
    lot.first = lot.first ? std::min(*lot.first, arrival.date) : arrival.date;
  }
  return came;
}

} // namespace

std::int64_t LotLine::total() const {
  return std::accumulate(on_hand.begin(), on_hand.end(), std::int64_t{0},
                         [](std::int64_t sum, const auto& held) { return sum + held.second; });
}

std::vector<LotLine> lot_lines(store::Reading& reading, const book::Registers& registers) {
  OneReading once(reading, registers);
  return lot_lines(once);
}

std::vector<LotLine> lot_lines(OneReading& once) {
  const auto& origins = once.origins();
  const auto came = came_in(once.reading());
  const auto places = once.reading().places();
  std::vector<LotLine> lines;
  std::unordered_map<book::LotId, std::size_t> at;
  for (const auto& lot : once.lots()) {
    const auto arrived = came.find(lot.id);
    if (arrived == came.end())
      continue;
    const auto place = places.find(lot.id);
    at[lot.id] = lines.size();
    lines.push_back({lot,
                     origins.at(lot.origin),
                     {},
                     arrived->second.in,
                     place == places.end() ? std::nullopt : std::optional(place->second),
                     arrived->second.first});
  }
  for (const auto& [account, count] : once.balances())
    if (const auto found = at.find(account.lot);
        found != at.end() && book::standing(account.state) == book::Standing::on_hand)
      lines[found->second].on_hand[account.state] = count;
  return lines;
}

std::vector<ConeLine> cone_lines(store::Reading& reading, const book::Registers& registers) {
  OneReading once(reading, registers);
  return cone_lines(once);
}

std::vector<ConeLine> cone_lines(OneReading& once) {
  const auto& origins = once.origins();
  std::map<book::ConeId, ConeLine> lines;
  for (const auto& cone : once.registers().cones) {
    const auto origin = origins.find(cone.id);
    lines[cone.id] = {cone, origin == origins.end() ? OriginName{} : origin->second, {}, {}, 0, {}};
  }
  for (const auto& entry : once.passes())
    if (entry.cone) {
      auto& line = lines.at(*entry.cone);
      if (line.passes.empty() || line.passes.back() <= entry.date)
        line.last_pollen = std::get<book::Pollination>(entry.detail).pollen;
      line.passes.push_back(entry.date);
      std::ranges::sort(line.passes);
    }
  for (const auto& entry : once.reading().standing_entries(book::Verb::harvest))
    for (const auto& movement : entry.movements) {
      const auto& lot = book::row_of(once.lots(), movement.to.lot);
      auto& line = lines.at(std::get<book::ConeId>(lot.origin));
      line.harvested += movement.count.value();
      line.harvested_on = line.harvested_on ? std::min(*line.harvested_on, entry.date) : entry.date;
    }
  std::vector<ConeLine> all;
  for (auto& [id, line] : lines)
    all.push_back(std::move(line));
  return all;
}

OnHand on_hand(store::Reading& reading, const book::Registers& registers) {
  OneReading once(reading, registers);
  return on_hand(once);
}

OnHand on_hand(OneReading& once) {
  OnHand sums;
  sums.pollen_lots = std::ranges::count_if(once.pollen_lines(), &PollenLine::there);
  for (const auto& course : once.cone_courses())
    sums.cones += course.line.harvested == 0 ? 1 : 0;
  for (const auto& [account, count] : once.balances())
    switch (account.state) {
    case book::State::unsorted:
    case book::State::judged_filled:
    case book::State::judged_empty:
      sums.seeds += count;
      break;
    case book::State::sown:
    case book::State::root:
    case book::State::leaf:
      sums.in_trays += count;
      break;
    case book::State::plant:
      sums.in_pots += count;
      break;
    case book::State::sold:
    case book::State::planted_out:
      sums.out += count;
      break;
    default:
      break;
    }
  return sums;
}

} // namespace coneline::work
