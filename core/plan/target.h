// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Sowing for a target: so many plants of a cross in a pot, or further on, by the end of a month,
// with an assurance. What stands in the line is counted in, its uncertainty and the sowing's drawn
// together: a cross that germinates badly does so in both.
//
//   of a run: `here`, the plants of the line that are there by then, and `share`, the share of seed
//   sown that is; n seeds reach the target with the mean over the runs of
//   P(Binomial(n, share) >= plants - here)
//
// All seed of the sowing is one lot: its months in a step are drawn once for all of it, as when it
// is sown and potted together.

#include "core/book/plan_records.h"
#include "core/plan/forecast.h"

namespace coneline::plan {

/// By the end of the month that `by` is in.
using book::Target;

/// One month in which could be sown.
struct SowingChance {
  Date month;                        ///< its first day
  double share = 0;                  ///< mean share of seed that gets there in time
  std::optional<std::int64_t> seeds; ///< the fewest that reach the target; none: too late
  std::optional<double> assured;     ///< with what assurance those do
};

struct TargetPlan {
  Target target;
  Likely here;      ///< plants of the line that will be there
  double alone = 0; ///< probability that the line reaches the target without sowing
  std::vector<SowingChance> sowings; ///< from this month to that of the target
  std::optional<std::size_t> latest; ///< the last month of `sowings` in which it can be done
  /// Before the latest sowing, by the taxon's months of ripening, where they are known: the last
  /// days to harvest and to pollinate with the longest of them.
  std::optional<Date> harvest_by;
  std::optional<Date> pollinate_by;
};

/// Fails where can_be_planned does, on no plants, an assurance outside 0 to 1, a taxon without a
/// route or whose route does not come to the pot, and a month outside the 120 after today.
Result<TargetPlan> plan_target(const ForecastInput& input, const Target& target,
                               const ForecastRuns& runs);

/// Cones to pollinate for so much seed, each giving `seeds_a_cone` with probability `succeeds`.
struct ConesNeeded {
  std::int64_t with_seed = 0;    ///< cones that have to give seed
  std::int64_t to_pollinate = 0; ///< so that enough do, with the assurance
};
Result<ConesNeeded> cones_for(std::int64_t seeds, double seeds_a_cone, double succeeds,
                              double assurance);

} // namespace coneline::plan
