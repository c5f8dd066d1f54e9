// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The one place where a book becomes what a forecast starts from.

#include "core/plan/forecast_input.h"
#include "core/store/reading.h"

namespace coneline::report {

/// What stands on the day `today`, with what the book tells of germination by cross, of survival by
/// taxon and step, and of places. Entries for later days are left out.
plan::ForecastInput forecast_input(store::Reading& reading, Date today, int months,
                                   const plan::Assumptions& assumed);

/// What became of the plants of trays and pot groups that are empty on `today`: alive when they
/// went on into another lot, were sold or planted out; died when they ended any other way. A lot
/// still standing tells nothing yet, since the dead are counted before the living leave. Lots of
/// one season (the year they were emptied in) share its luck.
std::map<plan::StepOf, plan::StepHistory> survival_history(store::Reading& reading,
                                                           const book::Registers& registers,
                                                           Date today, double season_weight);

/// Seeds in batches by cross and taxon, not yet sown: judged filled, judged empty or unsorted.
struct SeedAtHand {
  std::int64_t judged_filled = 0;
  std::int64_t unsorted = 0;
  std::int64_t judged_empty = 0;
};
std::map<std::pair<std::string, book::TaxonId>, SeedAtHand>
seed_at_hand(store::Reading& reading, const book::Registers& registers, Date today);

} // namespace coneline::report
