// SPDX-License-Identifier: GPL-3.0-or-later
// The strip of stations: what is on hand at each, and what is due.
#include "session.h"
#include "station.h"
#include "wording.h"

#include <cmath>

namespace coneline::window {

namespace {

/// How thick the line is drawn at a station, 0 to 1: each tenfold adds as much, so that a dozen
/// pots show beside thousands of seeds.
double thickness(std::int64_t count) {
  return std::min(1.0, std::log10(1.0 + static_cast<double>(count)) / 4);
}

} // namespace

void Session::tell_stations() {
  const auto& on_hand = standing_->on_hand;
  const std::array counts{on_hand.pollen_lots, on_hand.cones,   on_hand.seeds,
                          on_hand.in_trays,    on_hand.in_pots, on_hand.out};
  std::array<int, 6> due{};
  for (const auto& item : standing_->due)
    ++due[static_cast<std::size_t>(station_of(item))];
  std::vector<Rows::Row> rows;
  for (std::size_t i = 0; i < counts.size(); ++i)
    rows.push_back({station_key(static_cast<Station>(i)), station_word(static_cast<Station>(i)),
                    shown(counts[i]), thickness(counts[i]), due[i]});
  stations_.replace(std::move(rows));
}

} // namespace coneline::window
