// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The one place where a forecast becomes what a placing starts from.

#include "core/plan/forecast.h"
#include "core/plan/placing.h"
#include "core/store/reading.h"

namespace coneline::report {

/// Each lot in each pot it will stand in, with the containers expected by month; those of a light
/// class are made more alike, so that together they take what the forecast's futures take with the
/// assurance (a share, above 0 and below 1). Lots on no route stay as they are. `months` is at most
/// the forecast's. Gap and pattern are the book's figures.
plan::PlacingInput placing_input(const plan::ForecastInput& input, const plan::Forecast& forecast,
                                 const book::PlanRecords& records,
                                 const std::map<book::LotId, Code>& codes, double assurance,
                                 int months);

/// The codes of all lots, for pins.
std::map<book::LotId, Code> lot_codes(store::Reading& reading);

} // namespace coneline::report
