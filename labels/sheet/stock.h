// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The paper that labels are printed on, by its own dimensions: a sheet of rows and columns, a roll
// (one label a page), or a tag that is stuck into the soil.

#include "core/base/fault.h"

#include <string>
#include <vector>

namespace coneline::labels {

/// All lengths in millimetres.
struct Stock {
  std::string name;
  double page_width = 0;
  double page_height = 0;
  double left = 0; ///< from the page's edge to the first label
  double top = 0;
  double label_width = 0;
  double label_height = 0;
  double column_pitch = 0; ///< from one label's left edge to the next one's; of no matter in a roll
  double row_pitch = 0;
  int columns = 1;
  int rows = 1;
  /// How much of a tag goes into the soil: at its right end, or its lower end where it is higher
  /// than wide. Nothing is printed there.
  double in_soil = 0;

  [[nodiscard]] int per_page() const { return columns * rows; }
  /// What can be printed on, of one label.
  [[nodiscard]] double usable_width() const;
  [[nodiscard]] double usable_height() const;
  /// The top left corner of a label on its page; `position` counts from 0 along the rows.
  [[nodiscard]] double x_of(int position) const { return left + position % columns * column_pitch; }
  [[nodiscard]] double y_of(int position) const { return top + position / columns * row_pitch; }
};

/// The smallest module printed, in millimetres: what a telephone reads at arm's length.
constexpr double least_module = 0.4;

/// Fails on a length that is no length, labels that overlap or do not fit their page (by how many
/// millimetres), and labels too small for a code.
Result<void> check(const Stock& stock);

/// A sheet whose labels stand in even rows and columns, the margins being what is left over.
Stock centred_sheet(std::string name, double page_width, double page_height, int columns, int rows,
                    double label_width, double label_height, double column_gap, double row_gap);
/// One label a page.
Stock roll(std::string name, double width, double height, double in_soil = 0);

/// Some common stocks, named by their dimensions.
std::vector<Stock> common_stocks();

} // namespace coneline::labels
