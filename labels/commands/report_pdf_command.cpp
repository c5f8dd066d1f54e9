// SPDX-License-Identifier: GPL-3.0-or-later
// coneline report pdf --book FILE --out FILE.pdf: the germination report on paper
#include "core/commands/report_options.h"
#include "core/work/resolve.h"
#include "labels/commands/commands.h"
#include "labels/print/report_pdf.h"
#include "labels/print/without_display.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::labels {

namespace {

struct Options {
  commands::ReportOptions report;
  std::string out;
};

Result<commands::Answer> print(const Options& options) {
  const auto report = options.report.report();
  if (!report)
    return refuse(report.error());
  const WithoutDisplay application;
  auto printed = germination_pdf(options.out, *report);
  if (!printed)
    return refuse(printed.error());
  commands::Answer answer;
  const auto as_of = report->as_of.iso();
  answer.json = {{"file", options.out}, {"pages", printed->pages}, {"as_of", as_of}};
  answer.table = fmt::format("The germination report as of {}: {} in {}.\n", as_of,
                             work::counted(printed->pages, "page", "pages"), options.out);
  return answer;
}

} // namespace

void add_report_pdf_command(commands::CommandLine& line) {
  const auto options = std::make_shared<Options>();
  auto& command = line.add("report", "pdf", "The germination report on A4 paper",
                           [options] { return print(*options); });
  options->report.add_to(command);
  add_pdf_out(command, options->out);
}

} // namespace coneline::labels
