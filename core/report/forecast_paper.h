// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A forecast for paper, where a range is one text, and for a spreadsheet, where it is three
// numbers.

#include "core/plan/forecast.h"
#include "core/report/plan_paper.h"
#include "core/work/origin_said.h"

namespace coneline::report {

/// "Plants into each pot", "Finished mix, L" and so on, with the unit of who reads it.
std::string heading_of(plan::Shown shown);
int decimals_of(plan::Shown shown);
/// What a line is of, as it is said: light classes are words of the program, all else has the
/// grower's names.
std::string name_said(const plan::SeriesName& series, work::Days days = work::Days::as_read);

/// "'sun' has 3.20 m². Over full with 84 % in May 2027; more likely than not from April 2027."
std::vector<std::string> crowding_told(const plan::Forecast& forecast,
                                       const book::Registers& registers);

PlanPaper forecast_paper(const plan::Forecast& forecast, const plan::ForecastInput& input);
PlanPaper forecast_sheets(const plan::Forecast& forecast, const plan::ForecastInput& input);

} // namespace coneline::report
