// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a grower can choose from: the stocks and layouts of the book, and the common ones that are
// ready without any.

#include "core/book/label.h"
#include "labels/sheet/stock.h"

#include <string>
#include <vector>

namespace coneline::labels {

/// The book's stocks, then the common ones whose names the book has not taken.
std::vector<Stock> stocks_of(const book::LabelRecords& records);
/// The layouts that are ready ("everything", "code alone", …) after those of the book.
std::vector<book::LabelLayout> layouts_of(const book::LabelRecords& records);

/// Their names as they are said to a person. Those that are ready are said in the language of who
/// reads them and chosen by the names they have; what the grower named stays as it is.
std::string name_said(const Stock& stock);
std::string name_said(const book::LabelLayout& layout);

/// The one of this name; for an empty name the first. Fails, listing those there are.
Result<Stock> stock_named(const book::LabelRecords& records, const std::string& name);
Result<book::LabelLayout> layout_named(const book::LabelRecords& records, const std::string& name);

/// How long a millimetre on paper must be drawn for this printer to print it true.
struct Correction {
  double across = 1;
  double down = 1;
};
/// That of the printer with this stock, else that of the printer with any, else none.
Correction correction_of(const book::LabelRecords& records, const std::string& printer,
                         const std::string& stock);

} // namespace coneline::labels
