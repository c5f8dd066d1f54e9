// SPDX-License-Identifier: GPL-3.0-or-later
// coneline report pdf --book FILE --out FILE.pdf: the germination report on paper
#include "core/commands/book_options.h"
#include "core/report/germination_report.h"
#include "labels/commands/commands.h"
#include "labels/print/report_pdf.h"
#include "labels/print/without_display.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::labels {

namespace {

struct Options {
  commands::BookOption book;
  std::string as_of;
  std::string out;
};

Result<commands::Answer> print(const Options& options) {
  auto day = commands::date_or_today(options.as_of, "--as-of");
  if (!day)
    return refuse(day.error());
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  auto report = book->read(
      [&](store::Reading& reading) { return report::germination_report(reading, *day); });
  if (!report)
    return refuse(report.error());
  const WithoutDisplay application;
  auto printed = germination_pdf(options.out, *report);
  if (!printed)
    return refuse(printed.error());
  commands::Answer answer;
  answer.json = {{"file", options.out}, {"pages", printed->pages}, {"as_of", day->iso()}};
  answer.table = fmt::format("The germination report as of {}: {} pages in {}.\n", day->iso(),
                             printed->pages, options.out);
  return answer;
}

} // namespace

void add_report_pdf_command(commands::CommandLine& line) {
  const auto options = std::make_shared<Options>();
  auto& command = line.add("report", "pdf", "The germination report on A4 paper",
                           [options] { return print(*options); });
  options->book.add_to(command);
  command.add_option("--as-of", options->as_of,
                     "The day the report stands for; today when left out");
  command.add_option("--out", options->out, "The PDF to write")->required();
}

} // namespace coneline::labels
