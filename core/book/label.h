// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What labels are printed on, what they say, how true a printer prints, and what was printed.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/base/fault.h"
#include "core/book/id.h"

#include <string>
#include <vector>

namespace coneline::book {

using LabelStockId = Id<struct LabelStockTag>;
using LabelLayoutId = Id<struct LabelLayoutTag>;
using PrinterScaleId = Id<struct PrinterScaleTag>;
using LabelPrintId = Id<struct LabelPrintTag>;

/// Paper by its own dimensions: a sheet of rows and columns, a roll (one label a page), or a tag
/// that is stuck into the soil. All lengths in millimetres.
struct LabelStock {
  LabelStockId id;
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
  [[nodiscard]] double usable_width() const {
    return label_width - (label_width >= label_height ? in_soil : 0);
  }
  [[nodiscard]] double usable_height() const {
    return label_height - (label_width >= label_height ? 0 : in_soil);
  }
  /// The top left corner of a label on its page; `position` counts from 0 along the rows.
  [[nodiscard]] double x_of(int position) const { return left + position % columns * column_pitch; }
  [[nodiscard]] double y_of(int position) const { return top + position / columns * row_pitch; }
};

/// Fails on a length that is no length, and on labels that overlap or do not fit their page: by how
/// many millimetres.
Result<void> fits_its_page(const LabelStock& stock);

/// Which lines a label has besides its code, which is always there.
struct LabelLayout {
  LabelLayoutId id;
  std::string name = "everything";
  bool what = true;   ///< cross, taxon or the place's name
  bool origin = true; ///< the cone or purchase, the plant's sex
  bool day = true;    ///< sown, potted, harvested, collected
  bool count = true;
  bool caution = true; ///< the warning that belongs on seed
};

/// How long the 100 mm rulers of the test page came out on a printer. `stock` empty stands for
/// every stock that has no line of its own.
struct PrinterScale {
  PrinterScaleId id;
  std::string printer;
  std::string stock;
  double across_mm = 100;
  double down_mm = 100;
};

/// Some labels of one thing on one day.
struct LabelPrint {
  LabelPrintId id;
  Code code;
  Date printed;
  std::string stock;
  int copies = 1;
};

/// All of it, each list in the order of its ids.
struct LabelRecords {
  std::vector<LabelStock> stocks;
  std::vector<LabelLayout> layouts;
  std::vector<PrinterScale> scales;
  std::vector<LabelPrint> prints;
};

} // namespace coneline::book
