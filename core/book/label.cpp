// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/label.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cmath>
#include <initializer_list>
#include <string_view>
#include <utility>

namespace coneline::book {

namespace {

constexpr double rounding = 0.01;     // mm; dimensions are given to a tenth or a hundredth
constexpr double largest_page = 2000; // mm

Result<void> check_lengths(const LabelStock& stock) {
  for (const auto& [what, value] : std::initializer_list<std::pair<std::string_view, double>>{
           {"page width", stock.page_width},
           {"page height", stock.page_height},
           {"label width", stock.label_width},
           {"label height", stock.label_height}})
    if (!std::isfinite(value) || value <= 0 || value > largest_page)
      return refuse(fault(phrase("'{}': a {} of {} mm", stock.name, what, value),
                          "Give a length above 0 and at most 2000 mm."));
  for (const auto& [what, value] : std::initializer_list<std::pair<std::string_view, double>>{
           {"left margin", stock.left},
           {"top margin", stock.top},
           {"part in the soil", stock.in_soil},
           {"column pitch", stock.column_pitch},
           {"row pitch", stock.row_pitch}})
    if (!std::isfinite(value) || value < 0 || value > largest_page)
      return refuse(fault(phrase("'{}': a {} of {} mm", stock.name, what, value),
                          "Give a length from 0 to 2000 mm."));
  if (stock.columns < 1 || stock.rows < 1 || stock.columns > 200 || stock.rows > 200)
    return refuse(
        fault(phrase("'{}': {} columns and {} rows", stock.name, stock.columns, stock.rows),
              "Give 1 to 200 of each."));
  return {};
}

/// One direction of the page: margin, labels and pitch.
Result<void> check_direction(const std::string& name, std::string_view along, std::string_view many,
                             double page, double margin, double label, double pitch, int labels) {
  if (labels > 1 && pitch < label - rounding)
    return refuse(fault(phrase("'{}': {} overlap by {:.2f} mm: one every {:.2f} mm, each "
                               "{:.2f} mm",
                               name, many, label - pitch, pitch, label),
                        "Measure from one label's edge to the same edge of the next."));
  const double needed = margin + (labels > 1 ? (labels - 1) * pitch : 0) + label;
  if (needed > page + rounding)
    return refuse(fault(phrase("'{}': the labels are {:.2f} mm {} than the page: {:.2f} of "
                               "{:.2f} mm",
                               name, needed - page, along, needed, page),
                        "Check the page, the margins and the pitch."));
  return {};
}

} // namespace

Result<void> fits_its_page(const LabelStock& stock) {
  if (auto lengths = check_lengths(stock); !lengths)
    return lengths;
  if (auto across = check_direction(stock.name, "wider", "columns", stock.page_width, stock.left,
                                    stock.label_width, stock.column_pitch, stock.columns);
      !across)
    return across;
  return check_direction(stock.name, "higher", "rows", stock.page_height, stock.top,
                         stock.label_height, stock.row_pitch, stock.rows);
}

} // namespace coneline::book
