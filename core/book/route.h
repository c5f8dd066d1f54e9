// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The steps a taxon goes through from sowing to sale or planting out.

#include "core/book/id.h"
#include "core/book/sourced.h"
#include "core/book/taxon.h"

#include <vector>

namespace coneline::book {

/// One step: so long in this pot. The first step is the tray: its months count from sowing to
/// potting, its survival is of what germinated.
struct RouteStep {
  PotId pot;
  MixId mix;
  Range months;        ///< in this pot
  double survival = 1; ///< share that leaves the step alive, above 0 to 1
  Light light = Light::part_shade;
  std::string source;
};

/// No stay in a pot, no germination and no ripening lasts longer: a hundred years.
inline constexpr double longest_months = 1200;

struct Route {
  RouteId id;
  TaxonId taxon;
  double germination = 0;   ///< share of sown seed expected to germinate, above 0 to 1
  Range germination_months; ///< from sowing until the first and until the last come up
  std::string source;
  std::vector<RouteStep> steps; ///< at least the tray; after the last one a plant is ready
};

/// Fails unless there are steps, each with months from low to high that end and with a share that
/// survives it, and germination ends. `taxon` is its name, for what is said.
Result<void> leads_to_an_end(const Route& route, const std::string& taxon);

} // namespace coneline::book
