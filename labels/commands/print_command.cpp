// SPDX-License-Identifier: GPL-3.0-or-later
// coneline labels print --book FILE CODE… --out FILE.pdf
#include "core/commands/book_options.h"
#include "core/commands/first_fault.h"
#include "core/report/label_words.h"
#include "core/work/note_prints.h"
#include "core/work/resolve.h"
#include "labels/commands/commands.h"
#include "labels/print/print_labels.h"
#include "labels/print/without_display.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace coneline::labels {

namespace {

struct Options {
  commands::BookOption book;
  std::vector<std::string> codes;
  std::string all;
  std::string stock;
  std::string layout;
  std::string printer;
  std::string out;
  bool uncounted = false;
  PrintOptions print;
};

Result<std::vector<Code>> codes_wanted(store::Book& book, const Options& options) {
  std::vector<Code> codes;
  for (const auto& typed : options.codes) {
    auto code = commands::code_given(book, typed);
    if (!code)
      return refuse(code.error());
    codes.push_back(*code);
  }
  if (options.all.empty())
    return codes;
  auto kind = kind_named(options.all);
  if (!kind)
    return refuse(kind.error());
  auto more = book.read([&](store::Reading& reading) {
    return report::codes_on_hand(reading, reading.registers(), *kind);
  });
  if (!more)
    return refuse(more.error());
  codes.insert(codes.end(), more->begin(), more->end());
  return codes;
}

/// What is printed and how, by the book.
struct Job {
  std::vector<Code> codes;
  Stock stock;
  std::vector<LabelText> texts;
  PrintOptions print;
};

Result<Job> job_of(store::Book& book, const Options& options) {
  auto codes = codes_wanted(book, options);
  if (!codes)
    return refuse(codes.error());
  if (codes->empty())
    return refuse(
        fault("no labels to print", "Name codes, or --all with a kind, such as --all tray."));
  return book.read([&](store::Reading& reading) -> Result<Job> {
    const auto records = reading.label_records();
    const auto stock = stock_named(records, options.stock);
    const auto layout = layout_named(records, options.layout);
    if (const auto wrong = commands::first_fault(stock, layout))
      return refuse(*wrong);
    auto words = report::label_words(reading, reading.registers(), *codes);
    if (!words)
      return refuse(words.error());
    auto print = options.print;
    print.correction = correction_of(records, options.printer, stock->name);
    return Job{*codes, *stock, label_texts(*words, *layout), print};
  });
}

Result<commands::Answer> print(const Options& options) {
  auto book = options.book.open(options.uncounted ? store::Access::read : store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto job = job_of(*book, options);
  if (!job)
    return refuse(job.error());
  const WithoutDisplay application;
  auto printed = print_pdf(options.out, job->texts, job->stock, job->print);
  if (!printed)
    return refuse(printed.error());
  if (!options.uncounted)
    if (auto noted = book->write([&](store::Writing& writing) {
          return work::note_prints(writing, job->codes, Date::today(), job->stock.name);
        });
        !noted)
      return refuse(noted.error());
  commands::Answer answer;
  answer.json = {{"file", options.out},     {"labels", printed->labels},
                 {"pages", printed->pages}, {"shortened", printed->shortened},
                 {"bytes", printed->bytes}, {"stock", job->stock.name}};
  answer.table =
      fmt::format("{} on {} in {} ({}).\n", work::counted(printed->labels, "label", "labels"),
                  work::counted(printed->pages, "page", "pages"), options.out, job->stock.name);
  if (printed->shortened > 0)
    answer.table +=
        fmt::format("On {} of them something had to be shortened to fit.\n", printed->shortened);
  return answer;
}

} // namespace

std::vector<LabelText> label_texts(const std::vector<report::LabelWords>& words,
                                   const book::LabelLayout& layout) {
  std::vector<LabelText> texts;
  texts.reserve(words.size());
  for (const auto& each : words) {
    const auto kind = each.code.kind();
    const bool seed = kind == Kind::batch || kind == Kind::tray || kind == Kind::cone;
    texts.push_back({each.code.text(), layout.what ? each.cross : "",
                     layout.origin ? each.cone : "", layout.day ? each.sown : "",
                     layout.count ? each.count : "",
                     seed && layout.caution ? "Poisonous: gloves" : ""});
  }
  return texts;
}

void add_print_commands(commands::CommandLine& line) {
  const auto options = std::make_shared<Options>();
  auto& command = line.add("labels", "print", "Print labels of a book as PDF",
                           [options] { return print(*options); });
  options->book.add_to(command);
  command.add_option("codes", options->codes, "What to label");
  command.add_option(
      "--all", options->all,
      "Everything of a kind: cone, batch, tray, 'pot group', plant, 'pollen lot', place");
  command.add_option("--stock", options->stock,
                     "The label stock by name; 'labels stocks' lists them");
  add_pdf_out(command, options->out);
  command.add_option("--dpi", options->print.dpi, "Dots an inch of the printer").told_default();
  command
      .add_option("--start", options->print.start, "The first free label of a sheet begun before")
      .told_default();
  command.add_option("--layout", options->layout,
                     "What the labels say; 'labels layouts' lists the layouts");
  command.add_option("--printer", options->printer,
                     "The printer it will go to, so that its scale is corrected");
  command.add_flag("--uncounted", options->uncounted, "Do not count these prints in the book");
}

} // namespace coneline::labels
