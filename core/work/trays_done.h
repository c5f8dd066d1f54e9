// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Which trays can be emptied: those in which most likely not one more seed comes up. What another
// month would bring is said beside it, and what the room on the bench costs meanwhile.

#include "core/work/coming.h"

namespace coneline::work {

struct DoneHabits {
  /// A tray is done when the chance of even one more seed is below this.
  double done_below = 0.05;
  /// What a square metre of bench costs a month, in cents; none where the grower has not said.
  std::optional<std::int64_t> cents_a_square_metre_month;
  double confidence = 0.8; ///< of what another month would bring
};

/// What the grower keeps in the book of these (book/figure.h), else the usual.
DoneHabits done_habits(const book::Registers& registers);

struct TrayDone {
  ComingTray tray; ///< its `coming.within` is the month to come
  std::string cross;
  std::optional<book::PlaceId> place;
  std::int64_t seedlings = 0; ///< roots and leaves that stand in it
  double square_metres = 0;   ///< that the tray takes; 0 where its size is not known
  std::optional<double> cents_a_month;
  /// Cents of bench for each seedling that another month would bring on average; none where it
  /// would bring next to none, less than one in twenty trays.
  std::optional<double> cents_a_seedling;
  bool done = false;
  std::string told; ///< in plain words
};

inline constexpr double days_of_another_month = 30;

/// Every tray with seed waiting on `as_of`, done ones first, then by the chance of one more; with
/// `only`, the one tray. Fails on a figure outside 0 to 1 or a price below 0.
Result<std::vector<TrayDone>> trays_done(store::Reading& reading, Date as_of,
                                         const DoneHabits& habits,
                                         const std::optional<Code>& only = std::nullopt);

} // namespace coneline::work
