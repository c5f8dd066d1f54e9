// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Two plans beside each other. Run k of both draws the same for every lot, cross and season that
// they have in common, so the difference of a run is what the change does in that future, and its
// range is not the noise of two forecasts.

#include "core/plan/forecast.h"

namespace coneline::plan {

/// A value in both plans and its change, supposed less present, run by run.
struct Between {
  Likely present;
  Likely supposed;
  Likely difference;
  double mean_present = 0;
  double mean_supposed = 0;
  [[nodiscard]] double mean_difference() const { return mean_supposed - mean_present; }
};

struct SeriesCompared {
  SeriesName name; ///< a series that only one plan has is 0 in the other
  std::vector<Between> months;
  /// Sums of twelve months from the first on, the last ones perhaps fewer: for what happens (plants
  /// into pots, litres, plants ready), empty for what stands.
  std::vector<Between> years;
};

/// How likely a light class is over full.
struct FullCompared {
  std::string name; ///< of the light class
  double offered_present = 0;
  double offered_supposed = 0; ///< m²
  std::vector<double> over_present;
  std::vector<double> over_supposed; ///< probabilities by month
  std::size_t worst_present = 0;
  std::size_t worst_supposed = 0; ///< the first month of the greatest probability
};

struct Comparison {
  Forecast present;
  Forecast supposed;
  std::vector<SeriesCompared> series; ///< the present plan's in their order, then what is new
  std::vector<FullCompared> full;     ///< light classes that take or offer room
  std::vector<std::string> most;      ///< what changes most, a sentence each, at most six
};

/// Fails where forecast_of does.
Result<Comparison> compare(const ForecastInput& present, const ForecastInput& supposed,
                           const ForecastRuns& runs);

/// What happens within a month, and may be summed over months.
bool happens(Shown shown);

} // namespace coneline::plan
