// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The name of a cross or purchase in a report, as it is said; where crosses are told apart by
// season, with the season behind it.

#include "core/report/germination_report.h"
#include "core/work/origin_said.h"

namespace coneline::report {

inline std::string name_said(const CrossReport& cross, work::Days days = work::Days::iso) {
  const auto season = ", " + cross.season;
  if (cross.season.empty() || !cross.name.ends_with(season))
    return work::origin_said(cross.name, days);
  return work::origin_said(cross.name.substr(0, cross.name.size() - season.size()), days) + season;
}

} // namespace coneline::report
