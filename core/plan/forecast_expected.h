// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The expectation of a forecast, by convolution instead of draws: what the mean of all runs tends
// to, and what each number is made of. A step's survival is independent of when it is left, and no
// plant goes through a step twice, so the expectation of a product is the product of expectations.

#include "core/plan/forecast_ways.h"

namespace coneline::plan {

/// What one lot is expected to give a series, by month.
struct Contribution {
  std::string lot; ///< its code; of seed to be sown, what it is and when it is sown
  ByMonth values;
};

/// Every series by month; loads, which are quotients, are those of the expected kilograms and
/// square metres.
std::vector<ByMonth> expected(const Ways& ways, const ForecastInput& input);

/// Every series by month of one lot alone; loads are then kilograms, not yet divided.
struct LotExpected {
  Code code;
  std::vector<ByMonth> series;
};
std::vector<LotExpected> expected_by_lot(const Ways& ways, const ForecastInput& input);

/// The lots that a series is made of, the largest in `month` first; those that give nothing then
/// are left out.
std::vector<Contribution> made_of(const Ways& ways, const ForecastInput& input, std::size_t series,
                                  std::size_t month);

} // namespace coneline::plan
