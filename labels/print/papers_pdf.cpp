// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/papers_pdf.h"

#include "core/base/phrase.h"
#include "core/report/plan_paper.h"
#include "labels/print/sections_pdf.h"

namespace coneline::labels {

Result<PapersPrinted> papers_pdf(const std::string& path, const report::Papers& papers) {
  PrintedSections what{phrase("Papers: {}", papers.subject),
                       papers.subject + "  ·  " + report::foot_of(papers.title, papers.printed),
                       report::papers_sections(papers), report::Readers::owner};
  if (!what.sections.empty())
    what.sections.front().title = what.title;
  return sections_pdf(path, what).map([](int pages) { return PapersPrinted{pages}; });
}

} // namespace coneline::labels
