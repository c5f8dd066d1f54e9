// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A part of the season plan on A4 paper. Needs a QGuiApplication.

#include "core/report/plan_paper.h"

namespace coneline::labels {

/// Returns the number of pages; fails as sections_pdf does.
Result<int> plan_pdf(const std::string& path, const report::PlanPaper& paper);

} // namespace coneline::labels
