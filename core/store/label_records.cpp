// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/store/reading.h"
#include "core/store/tables.h"
#include "core/store/writing.h"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

namespace coneline::store {

namespace {

Kind kind_of_word(const std::string& word) {
  const auto kind = kind_named(word);
  if (!kind)
    throw std::runtime_error(phrase("the kind '{}' of a printed label", word));
  return *kind;
}

Result<void> is_there(Tables& tables, const Code& code) {
  if (auto ours = of_this_book(code, tables.series()); !ours)
    return ours;
  const auto table = table_of(code.kind());
  auto query = tables.ask(fmt::format("SELECT id FROM {} WHERE number = :number{}", table,
                                      table == "lot" ? " AND kind = :kind" : ""));
  query.with(code.number_in_series());
  if (table == "lot")
    query.with(kind_word(code.kind()));
  if (!query.number())
    return refuse(
        fault(phrase("there is no {} {} in this book", kind_said(code.kind()), code.text()),
              "Check the code, or the book."));
  return {};
}

Result<void> is_free(Tables& tables, const char* table, const char* what, const std::string& name,
                     std::int64_t id) {
  if (name.empty())
    return refuse(fault(phrase("a {} without a name", what), "Give it a name."));
  const auto other =
      tables.ask(fmt::format("SELECT id FROM {} WHERE name = :name", table)).with(name).number();
  if (other && *other != id)
    return refuse(fault(phrase("there is a {} '{}' already", what, name),
                        "Choose another name, or change that one."));
  return {};
}

/// Runs an insert or, with an id, an update of the same columns.
std::int64_t written(Tables& tables, const char* table, std::vector<std::string> columns,
                     std::int64_t id, const std::function<void(Statement&)>& bind) {
  std::string names;
  std::string places;
  std::string pairs;
  for (const auto& column : columns) {
    const auto* comma = names.empty() ? "" : ", ";
    names += comma + column;
    places += fmt::format("{}:{}", comma, column);
    pairs += fmt::format("{}{} = :{}", comma, column, column);
  }
  auto statement = tables.ask(
      id > 0 ? fmt::format("UPDATE {} SET {} WHERE id = :id RETURNING id", table, pairs)
             : fmt::format("INSERT INTO {} ({}) VALUES ({}) RETURNING id", table, names, places));
  bind(statement);
  if (id > 0)
    statement.with(id);
  return statement.number().value_or(id);
}

} // namespace

book::LabelRecords Reading::label_records() {
  book::LabelRecords records;
  tables_.ask("SELECT * FROM label_stock ORDER BY id").each([&](const Row& row) {
    records.stocks.push_back({{row.whole("id")},
                              row.text("name"),
                              row.real("page_width_mm"),
                              row.real("page_height_mm"),
                              row.real("left_mm"),
                              row.real("top_mm"),
                              row.real("label_width_mm"),
                              row.real("label_height_mm"),
                              row.real("column_pitch_mm"),
                              row.real("row_pitch_mm"),
                              static_cast<int>(row.whole("columns")),
                              static_cast<int>(row.whole("rows")),
                              row.real("in_soil_mm")});
  });
  tables_.ask("SELECT * FROM label_layout ORDER BY id").each([&](const Row& row) {
    records.layouts.push_back({{row.whole("id")},
                               row.text("name"),
                               row.whole("what") != 0,
                               row.whole("origin") != 0,
                               row.whole("day") != 0,
                               row.whole("count") != 0,
                               row.whole("caution") != 0});
  });
  tables_.ask("SELECT * FROM printer_scale ORDER BY id").each([&](const Row& row) {
    records.scales.push_back({{row.whole("id")},
                              row.text("printer"),
                              row.text("stock"),
                              row.real("across_mm"),
                              row.real("down_mm")});
  });
  tables_.ask("SELECT * FROM label_print ORDER BY id").each([&](const Row& row) {
    records.prints.push_back({{row.whole("id")},
                              tables_.code(kind_of_word(row.text("kind")), row.whole("number")),
                              row.date("printed"),
                              row.text("stock"),
                              static_cast<int>(row.whole("copies"))});
  });
  return records;
}

Result<book::LabelStockId> Writing::put(const book::LabelStock& stock) {
  if (auto fresh = is_free(tables(), "label_stock", "label stock", stock.name, stock.id.value);
      !fresh)
    return refuse(fresh.error());
  if (auto fits = book::fits_its_page(stock); !fits)
    return refuse(fits.error());
  return book::LabelStockId{written(
      tables(), "label_stock",
      {"name", "page_width_mm", "page_height_mm", "left_mm", "top_mm", "label_width_mm",
       "label_height_mm", "column_pitch_mm", "row_pitch_mm", "columns", "rows", "in_soil_mm"},
      stock.id.value, [&](Statement& statement) {
        statement.with(stock.name);
        for (const double length :
             {stock.page_width, stock.page_height, stock.left, stock.top, stock.label_width,
              stock.label_height, stock.column_pitch, stock.row_pitch})
          statement.with(length);
        statement.with(stock.columns).with(stock.rows).with(stock.in_soil);
      })};
}

Result<book::LabelLayoutId> Writing::put(const book::LabelLayout& layout) {
  if (auto fresh = is_free(tables(), "label_layout", "label layout", layout.name, layout.id.value);
      !fresh)
    return refuse(fresh.error());
  return book::LabelLayoutId{
      written(tables(), "label_layout", {"name", "what", "origin", "day", "count", "caution"},
              layout.id.value, [&](Statement& statement) {
                statement.with(layout.name);
                for (const bool shown :
                     {layout.what, layout.origin, layout.day, layout.count, layout.caution})
                  statement.with(shown ? 1 : 0);
              })};
}

Result<book::PrinterScaleId> Writing::put(const book::PrinterScale& scale) {
  if (scale.printer.empty())
    return refuse(fault("the scale of a printer without a name", "Name the printer."));
  for (const double length : {scale.across_mm, scale.down_mm})
    if (!std::isfinite(length) || length < 90 || length > 110)
      return refuse(fault(phrase("a 100 mm ruler of {} mm", length),
                          "Measure the ruler of the test page; more than 10 mm off is a setting of "
                          "the printer: print at 100 %, without fitting to the page."));
  const auto there =
      tables()
          .ask("SELECT id FROM printer_scale WHERE printer = :printer AND stock = :stock")
          .with(scale.printer)
          .with(scale.stock)
          .number();
  return book::PrinterScaleId{written(
      tables(), "printer_scale", {"printer", "stock", "across_mm", "down_mm"}, there.value_or(0),
      [&](Statement& statement) {
        statement.with(scale.printer).with(scale.stock).with(scale.across_mm).with(scale.down_mm);
      })};
}

Result<book::LabelPrintId> Writing::put(const book::LabelPrint& print) {
  if (auto there = is_there(tables(), print.code); !there)
    return refuse(there.error());
  if (print.copies < 1 || print.copies > 10'000)
    return refuse(fault(phrase("{} copies of a label", print.copies), "Give 1 to 10000."));
  return book::LabelPrintId{written(tables(), "label_print",
                                    {"kind", "number", "printed", "stock", "copies"}, 0,
                                    [&](Statement& statement) {
                                      statement.with(kind_word(print.code.kind()))
                                          .with(print.code.number_in_series())
                                          .with(print.printed)
                                          .with(print.stock)
                                          .with(print.copies);
                                    })};
}

} // namespace coneline::store
