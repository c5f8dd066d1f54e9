// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/sheet/choices.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::labels {

namespace {

template <class Row>
Result<Row> one_named(const std::vector<Row>& rows, const std::string& name, const char* what) {
  std::string known;
  for (const auto& row : rows) {
    if (name.empty() || row.name == name)
      return row;
    known += fmt::format("\n  {}", row.name);
  }
  return refuse(fault(phrase("there is no {} '{}'", what, name), phrase("There are:{}", known)));
}

template <class Row>
void add_those_not_there(std::vector<Row>& rows, const std::vector<Row>& more) {
  for (const auto& row : more)
    if (std::ranges::find(rows, row.name, &Row::name) == rows.end())
      rows.push_back(row);
}

/// What stands in no book is ready without any.
template <class Row>
std::string said(const Row& row) {
  return row.id.stored() ? row.name : phrase_of(row.name);
}

} // namespace

std::vector<Stock> stocks_of(const book::LabelRecords& records) {
  auto stocks = records.stocks;
  add_those_not_there(stocks, common_stocks());
  return stocks;
}

std::vector<book::LabelLayout> layouts_of(const book::LabelRecords& records) {
  auto layouts = records.layouts;
  add_those_not_there(layouts, {{{}, to_phrase("everything"), true, true, true, true, true},
                                {{}, to_phrase("cross and date"), true, false, true, false, false},
                                {{}, to_phrase("code alone"), false, false, false, false, false}});
  return layouts;
}

std::string name_said(const Stock& stock) {
  return said(stock);
}

std::string name_said(const book::LabelLayout& layout) {
  return said(layout);
}

Result<Stock> stock_named(const book::LabelRecords& records, const std::string& name) {
  return one_named(stocks_of(records), name, "label stock");
}

Result<book::LabelLayout> layout_named(const book::LabelRecords& records, const std::string& name) {
  return one_named(layouts_of(records), name.empty() ? "everything" : name, "label layout");
}

Correction correction_of(const book::LabelRecords& records, const std::string& printer,
                         const std::string& stock) {
  Correction correction;
  bool own = false;
  for (const auto& scale : records.scales)
    if (scale.printer == printer && (scale.stock == stock || (scale.stock.empty() && !own))) {
      correction = {100 / scale.across_mm, 100 / scale.down_mm};
      own = scale.stock == stock;
    }
  return correction;
}

} // namespace coneline::labels
