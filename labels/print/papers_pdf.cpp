// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/papers_pdf.h"

#include "labels/print/sections_pdf.h"

namespace coneline::labels {

Result<PapersPrinted> papers_pdf(const std::string& path, const report::Papers& papers) {
  PrintedSections what{"Papers: " + papers.subject,
                       papers.subject + "  ·  " + papers.title.name +
                           (papers.title.invented ? " (invented data)" : "") + "  ·  " +
                           papers.printed.iso(),
                       report::papers_sections(papers), report::Readers::owner};
  if (!what.sections.empty())
    what.sections.front().title.insert(0, "Papers: ");
  return sections_pdf(path, what).map([](int pages) { return PapersPrinted{pages}; });
}

} // namespace coneline::labels
