// SPDX-License-Identifier: GPL-3.0-or-later
// coneline papers CODE --book FILE [--pdf FILE] [--out FILE]: the line back to the parents for a
// permit office
#include "core/commands/book_options.h"
#include "core/report/papers.h"
#include "core/report/whole_file.h"
#include "core/work/resolve.h"
#include "labels/commands/commands.h"
#include "labels/print/papers_pdf.h"
#include "labels/print/without_display.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::labels {

namespace {

struct Options {
  commands::BookOption book;
  std::string code;
  std::optional<std::int64_t> sale;
  std::string printed;
  std::string rules;
  std::string pdf;
  std::string out;
};

Result<report::PapersAsked> asked_of(store::Book& book, const Options& options) {
  if (options.code.empty() == !options.sale.has_value())
    return refuse(usage_fault("papers are of one code or of one sale",
                              "Give a CODE, or --sale with the number of its entry."));
  report::PapersAsked asked;
  const auto day = commands::date_or_today(options.printed, "--printed");
  if (!day)
    return refuse(day.error());
  asked.printed = *day;
  if (options.sale) {
    asked.sale = book::EntryId{*options.sale};
  } else {
    const auto code = commands::code_given(book, options.code);
    if (!code)
      return refuse(code.error());
    asked.code = *code;
  }
  if (!options.rules.empty()) {
    auto rules = report::trade_rules_of(options.rules);
    if (!rules)
      return refuse(rules.error());
    asked.rules = *std::move(rules);
  }
  return asked;
}

Result<void> write_out(const Options& options, const report::Papers& papers) {
  const auto ending = std::filesystem::path(options.out).extension();
  const auto text = ending == ".html"   ? report::papers_html(papers)
                    : ending == ".json" ? report::papers_json(papers).dump(2) + "\n"
                                        : report::papers_text(papers);
  return report::write_whole(options.out, text, report::Readers::owner);
}

Result<commands::Answer> print(const Options& options) {
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto asked = asked_of(*book, options);
  if (!asked)
    return refuse(asked.error());
  const auto papers =
      book->read([&](store::Reading& reading) { return report::papers(reading, *asked); });
  if (!papers)
    return refuse(papers.error());
  commands::Answer answer{report::papers_json(*papers), report::papers_text(*papers), false};
  if (options.pdf.empty() && options.out.empty())
    return answer;
  answer.table.clear();
  if (!options.out.empty()) {
    if (auto written = write_out(options, *papers); !written)
      return refuse(written.error());
    answer.table += fmt::format("The papers of {}: {}\n", papers->subject, options.out);
  }
  if (!options.pdf.empty()) {
    const WithoutDisplay application;
    const auto printed = papers_pdf(options.pdf, *papers);
    if (!printed)
      return refuse(printed.error());
    answer.json["pages"] = printed->pages;
    answer.table += fmt::format("The papers of {}: {} in {}\n", papers->subject,
                                work::counted(printed->pages, "page", "pages"), options.pdf);
  }
  answer.table += fmt::format("{} missing. Only the file's owner can read it. No legal "
                              "advice; the authority decides.\n",
                              papers->missing.empty()
                                  ? "Nothing is"
                                  : fmt::format("{} thing{}", papers->missing.size(),
                                                papers->missing.size() == 1 ? " is" : "s are"));
  return answer;
}

} // namespace

void add_papers_command(commands::CommandLine& line) {
  const auto options = std::make_shared<Options>();
  auto& command = line.add(
      "papers",
      "Papers that go with a plant, lot or sale: its line back to the parents, listings and rules",
      [options] { return print(*options); });
  options->book.add_to(command);
  command.add_option("code", options->code, "A plant, cone, purchase, batch, tray or pot group");
  command.add_option("--sale", options->sale, "The entry of a sale, instead of a code");
  command.add_option("--printed", options->printed, "The day of the papers; today when left out");
  command.add_option("--rules", options->rules,
                     "A newer table of listings and rules (kind, name, says, source, as_of)");
  command.add_option("--pdf", options->pdf, "The PDF to write, readable by its owner alone");
  command.add_option("--out", options->out,
                     "A text, .html or .json to write, readable by its owner alone");
}

} // namespace coneline::labels
