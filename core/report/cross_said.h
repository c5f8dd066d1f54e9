// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The name of a cross or purchase in a report, as it is said.

#include "core/report/germination_report.h"
#include "core/work/origin_said.h"

namespace coneline::report {

inline std::string name_said(const CrossReport& cross) {
  return work::origin_said(cross.name);
}

} // namespace coneline::report
