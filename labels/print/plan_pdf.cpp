// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/plan_pdf.h"

#include "labels/print/sections_pdf.h"

namespace coneline::labels {

Result<int> plan_pdf(const std::string& path, const report::PlanPaper& paper) {
  return sections_pdf(path, {paper.title, paper.title + "  ·  " + paper.foot,
                             report::sections_of(paper), report::Readers::as_usual});
}

} // namespace coneline::labels
