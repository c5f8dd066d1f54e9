// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The germination report on A4 paper: a row and a range bar for each cross, the curves, then the
// trays. Needs a QGuiApplication.

#include "core/report/germination_report.h"

#include <string>

namespace coneline::labels {

struct ReportPrinted {
  int pages = 0;
};

/// Fails, leaving an older file as it was, when the file cannot be written.
Result<ReportPrinted> germination_pdf(const std::string& path,
                                      const report::GerminationReport& report);

} // namespace coneline::labels
