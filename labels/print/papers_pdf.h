// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The papers of a plant, lot or sale on A4 paper. Needs a QGuiApplication.

#include "core/report/papers.h"

#include <string>

namespace coneline::labels {

struct PapersPrinted {
  int pages = 0;
};

/// The file is readable by its owner alone. Fails, leaving an older file as it was, when it cannot
/// be written.
Result<PapersPrinted> papers_pdf(const std::string& path, const report::Papers& papers);

} // namespace coneline::labels
