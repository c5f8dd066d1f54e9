// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/sheet/stock.h"

#include "core/base/phrase.h"
#include "labels/symbol/symbol.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace coneline::labels {

namespace {

constexpr double rounding = 0.01; // mm; dimensions are given to a tenth or a hundredth

} // namespace

Result<void> check(const Stock& stock) {
  if (auto fits = book::fits_its_page(stock); !fits)
    return fits;
  const double needed = (symbol_modules + 2 * quiet_modules) * least_module;
  const double smaller = std::min(stock.usable_width(), stock.usable_height());
  if (smaller < needed - rounding)
    return refuse(fault(phrase("'{}': {:.1f} × {:.1f} mm to print on is {:.1f} mm too small "
                               "for a code, which needs {:.1f} mm",
                               stock.name, stock.usable_width(), stock.usable_height(),
                               needed - smaller, needed),
                        "Take a larger label."));
  return {};
}

Stock centred_sheet(std::string name, double page_width, double page_height, int columns, int rows,
                    double label_width, double label_height, double column_gap, double row_gap) {
  Stock sheet;
  sheet.name = std::move(name);
  sheet.page_width = page_width;
  sheet.page_height = page_height;
  sheet.columns = columns;
  sheet.rows = rows;
  sheet.label_width = label_width;
  sheet.label_height = label_height;
  sheet.column_pitch = label_width + column_gap;
  sheet.row_pitch = label_height + row_gap;
  sheet.left = (page_width - (columns - 1) * sheet.column_pitch - label_width) / 2;
  sheet.top = (page_height - (rows - 1) * sheet.row_pitch - label_height) / 2;
  return sheet;
}

Stock roll(std::string name, double width, double height, double in_soil) {
  auto one = centred_sheet(std::move(name), width, height, 1, 1, width, height, 0, 0);
  one.in_soil = in_soil;
  return one;
}

std::vector<Stock> common_stocks() {
  return {
      centred_sheet(to_phrase("A4, 3 × 8 of 70 × 37 mm"), 210, 297, 3, 8, 70, 37, 0, 0),
      centred_sheet(to_phrase("A4, 3 × 7 of 63.5 × 38.1 mm"), 210, 297, 3, 7, 63.5, 38.1, 2.5, 0),
      centred_sheet(to_phrase("A4, 2 × 7 of 99.1 × 38.1 mm"), 210, 297, 2, 7, 99.1, 38.1, 2.5, 0),
      centred_sheet(to_phrase("A4, 5 × 13 of 38.1 × 21.2 mm"), 210, 297, 5, 13, 38.1, 21.2, 2.5, 0),
      centred_sheet(to_phrase("Letter, 3 × 10 of 66.7 × 25.4 mm"), 215.9, 279.4, 3, 10, 66.7, 25.4,
                    3.1, 0),
      roll(to_phrase("Roll, 57 × 32 mm"), 57, 32),
      roll(to_phrase("Roll, 50 × 25 mm"), 50, 25),
      roll(to_phrase("Roll, 40 × 60 mm"), 40, 60),
      roll(to_phrase("Tag, 150 × 25 mm, 60 mm in the soil"), 150, 25, 60),
      roll(to_phrase("Tag, 120 × 16 mm, 45 mm in the soil"), 120, 16, 45),
      roll(to_phrase("Tag, 30 × 120 mm, 55 mm in the soil"), 30, 120, 55),
  };
}

} // namespace coneline::labels
