// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Headings, lines and tables on A4 pages. Needs a QGuiApplication.

#include "core/report/papers.h"
#include "core/report/whole_file.h"

namespace coneline::labels {

struct PrintedSections {
  std::string title; ///< of the file
  std::string foot;  ///< on every page, before its number
  std::vector<report::PapersSection> sections;
  report::Readers readers = report::Readers::as_usual;
};

/// Returns the number of pages. Fails, leaving an older file as it was, when the file cannot be
/// written.
Result<int> sections_pdf(const std::string& path, const PrintedSections& what);

} // namespace coneline::labels
