// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Seed that is to be sown, by the months in which that may be, and how it comes up then.

#include "core/plan/forecast_times.h"

namespace coneline::plan {

/// One month in which a sowing may be made.
struct SownMonth {
  int month = 0;
  Date sown_on;                    ///< its middle; today where that is over
  std::vector<std::int64_t> seeds; ///< by draw of the sowing; 0 where it is made in another month
};

/// In the order of the months; what falls beyond the plan is left out.
std::vector<SownMonth> sown_months(const Sowing& sowing, const Calendar& calendar, Date today);

/// By draw of its cross, the chances of a seed of the sowing to come up in each month: from the
/// curves of the cross, where there are some, else from what the book tells of a further cross of
/// the taxon, else from the route. `known` is the cross in ForecastInput::sprouting, or null. The
/// seed lies in so many trays: their own luck evens out among them.
CrossSprouting sprouting_of(const ForecastInput& input, const Sowing& sowing,
                            const CrossSprouting* known, const book::Route& route, Date sown_on,
                            std::int64_t trays);

} // namespace coneline::plan
