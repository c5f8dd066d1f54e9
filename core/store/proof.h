// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Proves a book from its file alone: the proof trusts neither the gate nor the triggers that should
// have kept it true.

#include "core/base/progress.h"
#include "core/store/book.h"

#include <string>
#include <vector>

namespace coneline::store {

struct Proof {
  std::int64_t lots = 0;
  std::int64_t origins = 0; ///< cones and purchases that lots lead back to
  std::int64_t entries = 0;
  std::int64_t movements = 0;
  std::int64_t accounts = 0;
  std::int64_t reversals = 0;
  std::int64_t links = 0;    ///< of the chain over the entries
  std::string last_link;     ///< vouches for all entries; empty in a book without any
  std::int64_t seeds_in = 0; ///< seeds and plants counted in at harvest or bought
  std::int64_t on_hand = 0;
  std::int64_t ended = 0;          ///< seeds_in = on_hand + ended
  std::int64_t unexplained = 0;    ///< part of ended; below zero when recounts found more
  std::vector<std::string> faults; ///< empty: the book is proven

  [[nodiscard]] bool holds() const { return faults.empty(); }
};

/// Proves a book that could be opened. Fails where it cannot be read at all. `printed` is a link
/// that was written down elsewhere, such as on papers; that it stands in the chain is proven too.
/// Where `progress` stops it before its end, it fails or does not hold.
Result<Proof> prove(Book& book, const std::string& printed = {}, const Progress& progress = {});
/// The same of what one transaction sees.
Proof prove(Reading& reading, const std::string& printed = {}, const Progress& progress = {});

} // namespace coneline::store
