// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The one place where a book becomes what a choice of crosses starts from.
//
// Which cones: those neither harvested nor closed by the day that were not pollinated yet, or whose
// first pass was at most two weeks ago (common practice, no source). Which pollen: every lot
// collected by the day with something left of it.
//
// Seeds of a cone: from the cones harvested before, of the plant where it had three, else of its
// taxon. The likely value is the geometric mean; the range is the one of 10 to 90 % for the next
// cone if the logarithms of the counts are normal: mean ± t(0.9; n - 1) · s · sqrt(1 + 1/n). With
// fewer than three there is no range. Where the cone's fertile scales were counted, earlier cones
// with counted scales tell the share of two seeds a scale instead, and two a scale are the ceiling
// (common practice, no source). Of these, the share that earlier cones' seed came to be sown.
// Germination: mean and 10 to 90 % of the beta-binomial fit to the trays of the taxon whose time by
// the route is over, from three on; else the route's own value without a range.

#include "core/plan/crossing.h"
#include "core/store/reading.h"

#include <span>

namespace coneline::report {

struct CrossingAsked {
  Date today;
  /// Females whose cones are expected, besides the cones that stand.
  std::vector<Code> females;
  bool every_female = false; ///< as though every female in the register would cone
  std::optional<double> millilitres_a_cone;
  std::optional<double> seeds_a_cone; ///< where the book has counted none
  /// m² by light class; none: what the book's places offer less what stands there.
  std::optional<std::map<book::Light, double>> room;
  bool any_room = false; ///< room is not asked about
};

/// Fails on a code that is no plant, and on one that is male.
Result<plan::CrossingInput> crossing_input(store::Reading& reading, const CrossingAsked& asked);

/// The possible cross of a cone (or a female) and a pollen lot. Fails where one of them is not
/// among those to choose from; the fault says why.
Result<std::size_t> cross_meant(const plan::CrossingInput& input,
                                const std::vector<plan::PossibleCross>& possible,
                                const Code& female, const Code& pollen);

} // namespace coneline::report
