// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The way of seed and plants along a route: which pot from when until when. It says nothing of how
// many live; whoever walks applies the survival of each stay, as an expected share or as a draw.
//
// The middle of a range of months is the day that is planned with. What should have been moved
// before today is moved today.

#include "core/base/code.h"
#include "core/book/registers.h"

#include <vector>

namespace coneline::plan {

/// Months after a day: whole months by the calendar, the rest as days of a mean month (365.25/12).
/// Ends a hundred years on, which is beyond any plan.
Date after_months(Date from, double months);

/// One stay in a pot. `survival` is the share that leaves it alive; what dies is taken out when the
/// others leave.
struct Stay {
  std::size_t step = 0; ///< place in Route::steps
  book::PotId pot;      ///< of the first stay the pot it really stands in
  Date from;
  Date until;
  double survival = 1;
};

/// The stays from `step` on, the last one ending where a plant is ready. `since` is the day the
/// step's months count from (for the tray: sowing), `now` the earliest day it can leave.
std::vector<Stay> stays(const book::Route& route, std::size_t step, book::PotId pot, Date since,
                        Date now);

/// The step a pot belongs to: the first with this pot, or else the one with the next larger pot by
/// litres of those after the tray. Nothing where every pot of the route is smaller.
std::optional<std::size_t> step_with(const book::Route& route, const book::Registers& registers,
                                     book::PotId pot);

/// A tray with what is in it.
struct TrayStanding {
  Code code;
  std::string cross;
  book::TaxonId taxon;
  book::PotId pot;
  Date sown_on;
  std::int64_t sown = 0;
  std::int64_t germinated = 0; ///< ever, potted ones too
  std::int64_t waiting = 0;    ///< in the tray, not germinated
  std::int64_t seedlings = 0;  ///< in the tray, germinated
};

/// What is still expected to come up, evenly between two days.
struct Sprouting {
  double seeds = 0;
  Date from;
  Date until;

  /// The part of it between two days, the second not included.
  [[nodiscard]] double between(Date first, Date last) const;
};

/// The route's share of what was sown, less what came up, at most what waits in the tray; nothing
/// when the route's months of germination are over.
Sprouting still_to_sprout(const book::Route& route, const TrayStanding& tray, Date today);

} // namespace coneline::plan
