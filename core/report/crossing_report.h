// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The possible crosses and the proposal in words and as JSON.

#include "core/plan/crossing.h"

#include <nlohmann/json.hpp>

#include <string>

namespace coneline::report {

/// Full precision; what does not exist is null.
nlohmann::ordered_json crossing_json(const plan::CrossingInput& input,
                                     const std::vector<plan::PossibleCross>& possible,
                                     const plan::CrossingWish& wish,
                                     const plan::Proposal& proposal);

/// "12–60, likely 31", "likely 31", "not known".
std::string estimate_text(const std::optional<plan::Estimate>& estimate);

/// What was made greatest or least, and how far from the best it can be.
std::string bound_text(const plan::Proposal& proposal);

/// What the reader has to know: where numbers come from, what is assumed, permits.
std::vector<std::string> crossing_rules();

/// The plants with kinship, founders and gene diversity of one taxon as the register has them.
struct TaxonKinship {
  std::string taxon;
  std::size_t plants = 0;
  std::size_t founders = 0;
  double mean_kinship = 0;
  double genome_equivalents = 0;
};
std::vector<TaxonKinship> kinship_by_taxon(const plan::CrossingInput& input);

} // namespace coneline::report
