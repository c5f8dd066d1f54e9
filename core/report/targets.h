// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Targets held against the seed there is and the room there will be: what each needs, and where
// several want the same.

#include "core/book/plan_records.h"
#include "core/plan/target.h"
#include "core/report/forecast_input.h"

namespace coneline::report {

/// What a cone is taken to give. `seeds` 0: not known, so that no cones are reckoned.
struct ConeGives {
  double seeds = 0;
  double succeeds = 0.8; ///< share of pollinated cones that give seed (common practice)
  int passes = 3;        ///< applications to a cone while it is loose (common practice)
  std::string source;    ///< "the mean of 4 earlier cones of Cycas revoluta"
};

/// The geometric mean of the seeds of cones of the taxon harvested by the day.
ConeGives cone_gives(store::Reading& reading, const book::Registers& registers, book::TaxonId taxon,
                     Date today);

struct SeedNeeded {
  std::int64_t seeds = 0;   ///< at the latest sowing
  std::int64_t at_hand = 0; ///< judged filled and unsorted
  std::int64_t lacking = 0;
  std::optional<plan::ConesNeeded> cones; ///< for what is lacking
};

struct TargetTold {
  plan::TargetPlan plan;
  std::optional<SeedNeeded> seed; ///< nothing where no sowing reaches it any more
  ConeGives cone;
};

/// Fails as plan_target does.
Result<TargetTold> told_of(const plan::ForecastInput& input, const plan::Target& target,
                           const std::map<std::pair<std::string, book::TaxonId>, SeedAtHand>& held,
                           const ConeGives& cone, const plan::ForecastRuns& runs);

enum class Scarce { seed, room };

/// Several targets, or one and all that stands, want more than there is.
struct TargetConflict {
  Scarce of = Scarce::seed;
  std::string name; ///< of the cross or light class
  double wanted = 0;
  double there = 0;
  std::optional<Date> month;        ///< of room
  std::vector<std::size_t> targets; ///< places in the list given
  std::string told;
};

/// Seed: of one cross by all its targets against what is at hand. Room: in the month of each
/// target, what its plants take beyond those the line brings, together with what is forecast to
/// stand (the middle of the futures) in that light class. `forecast` may be shorter than a target's
/// month; such a target is then not asked about room.
std::vector<TargetConflict> conflicts(const std::vector<TargetTold>& targets,
                                      const plan::Forecast& forecast,
                                      const book::Registers& registers);

} // namespace coneline::report
