// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Puts labels on pages: as a file, on a printer or as a picture. All need a QGuiApplication (see
// without_display.h).

#include "core/base/fault.h"
#include "labels/sheet/choices.h"
#include "labels/sheet/label_text.h"
#include "labels/sheet/stock.h"

#include <QImage>

#include <cstdint>
#include <functional>
#include <span>
#include <string>

class QPainter;

namespace coneline::labels {

struct PrintOptions {
  int dpi = 600; ///< dots an inch of the printer it will go to: modules become whole dots of it
  int start = 1; ///< the first label used, counted along the rows of a sheet begun before
  Correction correction = {}; ///< of the printer's scale, as its test page showed
};

struct Printed {
  int labels = 0;
  int pages = 0;
  int shortened = 0;      ///< labels on which something was elided or left out
  std::int64_t bytes = 0; ///< of the file
};

/// Writes one PDF with every label, true to the millimetre, words and codes as outlines and
/// rectangles. Fails, leaving no file and an older one as it was, when a label or the stock fails,
/// `start` is not on the sheet, there are no labels, or the file cannot be written.
Result<Printed> print_pdf(const std::string& path, std::span<const LabelText> labels,
                          const Stock& stock, const PrintOptions& options = {});

/// The same on a painter whose coordinates are the dots of its device, the page's corner being
/// (0, 0). `new_page` is called before every page but the first, and says whether there is one.
Result<Printed> paint_labels(QPainter& painter, std::span<const LabelText> labels,
                             const Stock& stock, const PrintOptions& options,
                             const std::function<bool()>& new_page);

/// One page as a picture, for looking at before printing; `page` counts from 0. The outlines of
/// labels and the part of tags that goes into the soil are drawn faintly where `edges` says so.
enum class Edges { hidden, shown };
Result<QImage> preview(std::span<const LabelText> labels, const Stock& stock,
                       const PrintOptions& options, int page, Edges edges);

} // namespace coneline::labels
