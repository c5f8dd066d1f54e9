// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The curves of a germination report on paper. Private to this room.

#include "core/report/germination_report.h"
#include "labels/print/report_paper.h"

namespace coneline::labels {

/// All crosses as steps, their names at the ends; nothing before a tray was looked at.
void chart_of_all(Paper& paper, const report::GerminationReport& report);

/// One cross: steps, fitted curve with its band, and where it may end.
void chart_of_cross(Paper& paper, const report::GerminationReport& report,
                    const report::CrossReport& cross);

} // namespace coneline::labels
