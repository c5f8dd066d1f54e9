// SPDX-License-Identifier: GPL-3.0-or-later
// coneline labels print --book FILE CODE… --out FILE.pdf, and coneline labels stocks
#include "core/commands/book_options.h"
#include "core/commands/table.h"
#include "core/report/label_words.h"
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
  std::string out;
  PrintOptions print;
};

Result<Stock> stock_named(const std::string& name) {
  std::string known;
  for (const auto& stock : common_stocks()) {
    if (name.empty() || stock.name == name)
      return stock;
    known += fmt::format("\n  {}", stock.name);
  }
  return refuse(fault(fmt::format("there is no label stock '{}'", name), "There are:" + known));
}

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
  auto kind = book::read_word<Kind>(options.all);
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

Result<commands::Answer> print(const Options& options) {
  auto stock = stock_named(options.stock);
  if (!stock)
    return refuse(stock.error());
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  auto codes = codes_wanted(*book, options);
  if (!codes)
    return refuse(codes.error());
  if (codes->empty())
    return refuse(fault("no labels to print",
                        "Name codes, or --all tray, --all batch or --all 'pot group'."));
  auto texts = book->read([&](store::Reading& reading) -> Result<std::vector<LabelText>> {
    return report::label_words(reading, reading.registers(), *codes).map(label_texts);
  });
  if (!texts)
    return refuse(texts.error());
  const WithoutDisplay application;
  auto printed = print_pdf(options.out, *texts, *stock, options.print);
  if (!printed)
    return refuse(printed.error());
  commands::Answer answer;
  answer.json = {{"file", options.out},     {"labels", printed->labels},
                 {"pages", printed->pages}, {"shortened", printed->shortened},
                 {"bytes", printed->bytes}, {"stock", stock->name}};
  answer.table = fmt::format("{} labels on {} pages in {} ({}).\n", printed->labels, printed->pages,
                             options.out, stock->name);
  if (printed->shortened > 0)
    answer.table +=
        fmt::format("On {} of them something had to be shortened to fit.\n", printed->shortened);
  return answer;
}

commands::Answer stocks() {
  commands::Answer answer{commands::Json::array(), "", false};
  commands::Table table({"stock", "labels a page"});
  for (const auto& stock : common_stocks()) {
    answer.json.push_back({{"name", stock.name}, {"labels_a_page", stock.per_page()}});
    table.row({stock.name, fmt::format("{}", stock.per_page())});
  }
  answer.table = table.text();
  return answer;
}

} // namespace

std::vector<LabelText> label_texts(const std::vector<report::LabelWords>& words) {
  std::vector<LabelText> texts;
  texts.reserve(words.size());
  for (const auto& each : words) {
    const auto kind = each.code.kind();
    const bool seed = kind == Kind::batch || kind == Kind::tray || kind == Kind::cone;
    texts.push_back({each.code.text(), each.cross, each.cone, each.sown, each.count,
                     seed ? "Poisonous: gloves" : ""});
  }
  return texts;
}

void add_print_commands(commands::CommandLine& line) {
  const auto options = std::make_shared<Options>();
  auto& command = line.add("labels", "print", "Print labels of a book as PDF",
                           [options] { return print(*options); });
  options->book.add_to(command);
  command.add_option("codes", options->codes, "What to label");
  command.add_option("--all", options->all,
                     "Everything on hand of a kind: batch, tray or 'pot group'");
  command.add_option("--stock", options->stock,
                     "The label stock by name; 'labels stocks' lists them");
  command.add_option("--out", options->out, "The PDF to write")->required();
  command.add_option("--dpi", options->print.dpi, "Dots an inch of the printer")
      ->capture_default_str();
  command
      .add_option("--start", options->print.start, "The first free label of a sheet begun before")
      ->capture_default_str();
  line.add("labels", "stocks", "The label stocks there are",
           []() -> Result<commands::Answer> { return stocks(); });
}

} // namespace coneline::labels
