// SPDX-License-Identifier: GPL-3.0-or-later
// What the book knows of labels: coneline labels stocks, enter-stock, layouts, enter-layout,
// test-page, correct, renew.
#include "core/commands/book_options.h"
#include "core/commands/table.h"
#include "core/work/labels_to_renew.h"
#include "labels/commands/commands.h"
#include "labels/print/test_page.h"
#include "labels/print/without_display.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <memory>

namespace coneline::labels {

namespace {

using commands::Answer;
using commands::Command;
using commands::Json;

/// For what can be done without a book too: then only with the stocks and layouts that are ready.
void add_if_there_is(commands::BookOption& option, Command& command) {
  command.add_option("--book", option.path, "The book's file").or_variable("CONELINE_BOOK");
}

Result<book::LabelRecords> records_of(const commands::BookOption& option) {
  if (option.path.empty())
    return book::LabelRecords{};
  auto book = option.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  return book->read([](store::Reading& reading) { return reading.label_records(); });
}

Json as_json(const Stock& stock) {
  return {{"name", stock.name},
          {"page_width", stock.page_width},
          {"page_height", stock.page_height},
          {"left", stock.left},
          {"top", stock.top},
          {"label_width", stock.label_width},
          {"label_height", stock.label_height},
          {"column_pitch", stock.column_pitch},
          {"row_pitch", stock.row_pitch},
          {"columns", stock.columns},
          {"rows", stock.rows},
          {"in_soil", stock.in_soil},
          {"labels_a_page", stock.per_page()},
          {"in_book", stock.id.stored()}};
}

Result<Answer> stocks(const commands::BookOption& option) {
  const auto records = records_of(option);
  if (!records)
    return refuse(records.error());
  Answer answer{Json::array(), "", false};
  commands::Table table({"stock", "page mm", "label mm", "labels a page", "from"});
  for (const auto& stock : stocks_of(*records)) {
    answer.json.push_back(as_json(stock));
    table.row({stock.name, fmt::format("{} × {}", stock.page_width, stock.page_height),
               fmt::format("{} × {}", stock.label_width, stock.label_height),
               fmt::format("{}", stock.per_page()), stock.id.stored() ? "the book" : "ready"});
  }
  answer.table = table.text();
  return answer;
}

struct StockOptions {
  commands::BookOption book;
  Stock stock;
  bool centred = false;

  void define(Command& command) {
    book.add_to(command);
    command.add_option("name", stock.name, "What you call it; a name the book has is changed")
        .required();
    const auto length = [&](const char* option, double& to, const char* help) {
      return command.add_option(option, to, help);
    };
    length("--page-width", stock.page_width, "mm").required();
    length("--page-height", stock.page_height, "mm").required();
    length("--label-width", stock.label_width, "mm").required();
    length("--label-height", stock.label_height, "mm").required();
    command.add_option("--columns", stock.columns, "Labels beside each other").told_default();
    command.add_option("--rows", stock.rows, "Labels below each other").told_default();
    length("--left", stock.left, "mm from the page's edge to the first label");
    length("--top", stock.top, "mm from the page's upper edge to the first label");
    length("--column-pitch", stock.column_pitch,
           "mm from one label's left edge to the next one's; the label's width when left out");
    length("--row-pitch", stock.row_pitch,
           "mm from one label's upper edge to the next one's; the label's height when left out");
    length("--in-soil", stock.in_soil, "mm of a tag that go into the soil");
    command.add_flag("--centred", centred, "Left and top are what is left over, halved");
  }
};

Stock completed(const StockOptions& options) {
  auto stock = options.stock;
  if (stock.column_pitch == 0)
    stock.column_pitch = stock.label_width;
  if (stock.row_pitch == 0)
    stock.row_pitch = stock.label_height;
  if (options.centred) {
    // What does not fit is said of the page, not of a margin that nobody gave.
    const auto margin = [](double page, int labels, double pitch, double label) {
      return std::max(0.0, (page - (labels - 1) * pitch - label) / 2);
    };
    stock.left = margin(stock.page_width, stock.columns, stock.column_pitch, stock.label_width);
    stock.top = margin(stock.page_height, stock.rows, stock.row_pitch, stock.label_height);
  }
  return stock;
}

/// Gives a row the id of the one that has its name, so that it is changed and not added.
template <class Row>
void take_over(Row& row, const std::vector<Row>& rows) {
  const auto known = std::ranges::find(rows, row.name, &Row::name);
  if (known != rows.end())
    row.id = known->id;
}

Result<Answer> enter_stock(const StockOptions& options) {
  auto stock = completed(options);
  if (const auto sound = check(stock); !sound)
    return refuse(sound.error());
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) {
    take_over(stock, writing.label_records().stocks);
    return writing.put(stock);
  });
  if (!put)
    return refuse(put.error());
  return Answer{as_json(stock),
                fmt::format("{}: {} labels of {} × {} mm on a page.\n", stock.name,
                            stock.per_page(), stock.label_width, stock.label_height),
                false};
}

struct LayoutOptions {
  commands::BookOption book;
  book::LabelLayout layout;
  std::vector<std::string> shown;
};

constexpr std::array<std::pair<const char*, bool book::LabelLayout::*>, 5> parts{
    {{"what", &book::LabelLayout::what},
     {"origin", &book::LabelLayout::origin},
     {"day", &book::LabelLayout::day},
     {"count", &book::LabelLayout::count},
     {"caution", &book::LabelLayout::caution}}};

std::vector<std::string> shown_by(const book::LabelLayout& layout) {
  std::vector<std::string> names{"code"};
  for (const auto& [name, part] : parts)
    if (layout.*part)
      names.emplace_back(name);
  return names;
}

Result<Answer> layouts(const commands::BookOption& option) {
  const auto records = records_of(option);
  if (!records)
    return refuse(records.error());
  Answer answer{Json::array(), "", false};
  commands::Table table({"layout", "shows"});
  for (const auto& layout : layouts_of(*records)) {
    const auto shown = shown_by(layout);
    answer.json.push_back({{"name", layout.name}, {"shows", shown}});
    table.row({layout.name, fmt::format("{}", fmt::join(shown, ", "))});
  }
  answer.table = table.text();
  return answer;
}

Result<Answer> enter_layout(const LayoutOptions& options) {
  auto layout = options.layout;
  for (const auto& [name, part] : parts)
    layout.*part = std::ranges::find(options.shown, name) != options.shown.end();
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) {
    take_over(layout, writing.label_records().layouts);
    return writing.put(layout);
  });
  if (!put)
    return refuse(put.error());
  const auto shown = shown_by(layout);
  return Answer{{{"name", layout.name}, {"shows", shown}},
                fmt::format("{}: {}.\n", layout.name, fmt::join(shown, ", ")),
                false};
}

struct TestPageOptions {
  commands::BookOption book;
  std::string stock;
  std::string printer;
  std::string out;
  int dpi = 600;
};

Result<Answer> test_page(const TestPageOptions& options) {
  const auto records = records_of(options.book);
  if (!records)
    return refuse(records.error());
  const auto stock = stock_named(*records, options.stock);
  if (!stock)
    return refuse(stock.error());
  const WithoutDisplay application;
  const auto rulers = print_test_page(
      options.out, *stock, {options.dpi, 1, correction_of(*records, options.printer, stock->name)});
  if (!rulers)
    return refuse(rulers.error());
  return Answer{
      {{"file", options.out}, {"across", rulers->across}, {"down", rulers->down}},
      fmt::format("A test page in {}. Print it at 100 %, measure its rulers ({} mm across, {} mm "
                  "down), and tell 'labels correct' what they measure.\n",
                  options.out, rulers->across, rulers->down),
      false};
}

struct CorrectOptions {
  commands::BookOption book;
  book::PrinterScale scale;
};

Result<Answer> correct(const CorrectOptions& options) {
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  auto scale = options.scale;
  const auto put = book->write([&](store::Writing& writing) -> Result<book::PrinterScaleId> {
    if (!scale.stock.empty())
      if (auto known = stock_named(writing.label_records(), scale.stock); !known)
        return refuse(known.error());
    return writing.put(scale);
  });
  if (!put)
    return refuse(put.error());
  return Answer{{{"printer", scale.printer},
                 {"stock", scale.stock.empty() ? Json() : Json(scale.stock)},
                 {"across", scale.across_mm},
                 {"down", scale.down_mm}},
                fmt::format("{}: drawn {:.2f} % across and {:.2f} % down from now on.\n",
                            scale.printer, 1e4 / scale.across_mm, 1e4 / scale.down_mm),
                false};
}

struct RenewOptions {
  commands::BookOption book;
  std::string as_of;
  int days = work::usual_days_unseen;
};

Result<Answer> renew(const RenewOptions& options) {
  const auto today = commands::date_or_today(options.as_of, "--as-of");
  if (!today)
    return refuse(today.error());
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  Answer answer{Json::array(), "", false};
  commands::Table table({"code", "last seen", "printed", "times", "place"});
  const auto told = book->read([&](store::Reading& reading) {
    const auto registers = reading.registers();
    const auto iso = [](const std::optional<Date>& date) {
      return date ? Json(date->iso()) : Json();
    };
    for (const auto& label : work::labels_to_renew(reading, *today, options.days)) {
      const auto place = label.place ? registers.place(*label.place).name : "";
      answer.json.push_back({{"code", label.code.text()},
                             {"seen", iso(label.seen)},
                             {"printed", iso(label.printed)},
                             {"times_printed", label.times_printed},
                             {"place", label.place ? Json(place) : Json()}});
      table.row({label.code.text(), label.seen ? label.seen->iso() : "never",
                 label.printed ? label.printed->iso() : "never",
                 fmt::format("{}", label.times_printed), place});
    }
    return true;
  });
  if (!told)
    return refuse(told.error());
  answer.table = answer.json.empty()
                     ? fmt::format("Every label was seen in the last {} days.\n", options.days)
                     : table.text();
  return answer;
}

void add_lists(commands::CommandLine& line) {
  const auto of_stocks = std::make_shared<commands::BookOption>();
  add_if_there_is(*of_stocks, line.add("labels", "stocks", "The label stocks there are",
                                       [of_stocks] { return stocks(*of_stocks); }));
  const auto of_layouts = std::make_shared<commands::BookOption>();
  add_if_there_is(*of_layouts, line.add("labels", "layouts", "What labels can say",
                                        [of_layouts] { return layouts(*of_layouts); }));
  const auto options = std::make_shared<RenewOptions>();
  auto& command = line.add("labels", "renew", "Labels that nobody has seen for a while",
                           [options] { return renew(*options); });
  options->book.add_to(command);
  command.add_option("--days", options->days, "Days without being seen")
      .told_default()
      .between(0, 36500);
  command.add_option("--as-of", options->as_of, "The day it is asked for; today when left out");
}

void add_printer_commands(commands::CommandLine& line) {
  const auto page = std::make_shared<TestPageOptions>();
  auto& test = line.add("labels", "test-page", "A page with rulers, to measure a printer with",
                        [page] { return test_page(*page); });
  add_if_there_is(page->book, test);
  test.add_option("--stock", page->stock, "The label stock by name");
  test.add_option("--printer", page->printer, "The printer, to try its correction");
  test.add_option("--dpi", page->dpi, "Dots an inch of the printer").told_default();
  add_pdf_out(test, page->out);
  const auto scale = std::make_shared<CorrectOptions>();
  auto& command =
      line.add("labels", "correct", "What the rulers of an uncorrected test page measured",
               [scale] { return correct(*scale); });
  scale->book.add_to(command);
  command.add_option("--printer", scale->scale.printer, "The printer").required();
  command.add_option("--stock", scale->scale.stock, "With this stock only");
  command.add_option("--across", scale->scale.across_mm, "mm that 100 mm across came out as")
      .required();
  command.add_option("--down", scale->scale.down_mm, "mm that 100 mm down came out as").required();
}

} // namespace

void add_label_book_commands(commands::CommandLine& line) {
  add_lists(line);
  const auto stock = std::make_shared<StockOptions>();
  stock->define(line.add("labels", "enter-stock", "Add or change a label stock of the book",
                         [stock] { return enter_stock(*stock); }));
  const auto layout = std::make_shared<LayoutOptions>();
  auto& command = line.add("labels", "enter-layout", "Add or change what labels say",
                           [layout] { return enter_layout(*layout); });
  layout->book.add_to(command);
  command.add_option("name", layout->layout.name, "What you call it").required();
  command
      .add_option("--show", layout->shown, "what, origin, day, count, caution; the code always is")
      .separated_by(',')
      .one_of({"what", "origin", "day", "count", "caution"});
  add_printer_commands(line);
}

} // namespace coneline::labels
