// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// All that a book holds, as the season folder carries it.

#include "core/store/reading.h"

namespace coneline::exchange {

/// Each list in the order of its ids.
struct Season {
  book::Registers registers;
  std::vector<book::Lot> lots;
  std::vector<book::Entry> entries;
  std::vector<book::Temperature> temperatures;
  std::vector<book::Link> links; ///< one an entry; empty where there is no chain yet
  book::LabelRecords labels;
  std::vector<book::Round> rounds;
  std::vector<book::RoundEntry> round_entries;
  std::vector<book::Sighting> sightings;
};

Season season_of(store::Reading& reading);

/// The chain over the season's entries, made anew.
std::vector<book::Link> chain_of(const Season& season);

} // namespace coneline::exchange
