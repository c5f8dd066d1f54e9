// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/overview.h"

#include "core/work/one_reading.h"

#include <algorithm>
#include <numeric>

namespace coneline::work {

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
  const auto& sweep = once.sweep();
  std::vector<LotLine> lines;
  for (const auto& lot : once.lots()) {
    const auto& sums = sweep.of(lot.id);
    if (sums.came_in == 0)
      continue;
    LotLine line{lot, origins.at(lot.origin), {}, sums.came_in, sums.place, sums.since};
    for (const auto& [state, word] : book::Words<book::State>::all)
      if (sums.of(state) != 0 && book::standing(state) == book::Standing::on_hand)
        line.on_hand[state] = sums.of(state);
    lines.push_back(std::move(line));
  }
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
  for (const auto& entry : once.standing(book::Verb::pollinate))
    if (entry.cone) {
      auto& line = lines.at(*entry.cone);
      if (line.passes.empty() || line.passes.back() <= entry.date)
        line.last_pollen = std::get<book::Pollination>(entry.detail).pollen;
      line.passes.push_back(entry.date);
      std::ranges::sort(line.passes);
    }
  const auto came_off = [&lines](book::ConeId cone, Date day, std::int64_t seeds) {
    auto& line = lines.at(cone);
    line.harvested += seeds;
    line.harvested_on = line.harvested_on ? std::min(*line.harvested_on, day) : day;
  };
  for (const auto& entry : once.standing(book::Verb::harvest)) {
    for (const auto& movement : entry.movements) {
      const auto& lot = book::row_of(once.lots(), movement.to.lot);
      came_off(std::get<book::ConeId>(lot.origin), entry.date, movement.count.value());
    }
    if (entry.movements.empty() && entry.cone) // it gave no seed
      came_off(*entry.cone, entry.date, 0);
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
    sums.cones += course.line.harvested_on ? 0 : 1;
  const auto all = [&](std::initializer_list<book::State> states) {
    std::int64_t sum = 0;
    for (const auto state : states)
      sum += once.sweep().total(state);
    return sum;
  };
  using book::State;
  sums.seeds = all({State::unsorted, State::judged_filled, State::judged_empty});
  sums.in_trays = all({State::sown, State::root, State::leaf});
  sums.in_pots = all({State::plant});
  sums.out = all({State::sold, State::planted_out});
  return sums;
}

} // namespace coneline::work
