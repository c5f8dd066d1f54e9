// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The paper that labels are printed on, by its own dimensions: a sheet of rows and columns, a roll
// (one label a page), or a tag that is stuck into the soil.

#include "core/base/fault.h"
#include "core/book/label.h"

#include <string>
#include <vector>

namespace coneline::labels {

using Stock = book::LabelStock;

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
