// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The book's trays as germination data: seeds sown, and at each look the newly germinated and the
// removed.

#include "core/stats/germination_data.h"
#include "core/store/reading.h"
#include "core/work/line_back.h"

#include <map>

namespace coneline::work {

/// A look with its day counted from sowing.
struct Observed {
  Date date;
  double day = 0;
  std::int64_t germinated = 0; ///< root, or leaf without a root seen before
  std::int64_t leaves = 0;
  std::int64_t straight_to_leaf = 0; ///< of both: the root was not seen before the leaf
  std::int64_t removed = 0;          ///< ungerminated seed taken out or missing
};

struct ObservedTray {
  book::Lot lot;
  OriginName origin;
  Date sown_on;
  std::int64_t sown = 0;
  std::vector<Observed> looks; ///< by date
};

/// Every tray that was ever sown and stands, in the order of codes. Entries after `as_of` are left
/// out.
std::vector<ObservedTray> observed_trays(store::Reading& reading, const book::Registers& registers,
                                         Date as_of);

/// The counts of a tray as stats takes them, its group being its cross.
stats::Tray counts_of(const ObservedTray& seen);

} // namespace coneline::work
