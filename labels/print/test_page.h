// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A page to measure a printer with: rulers of 100 mm across and down, and the outlines of the
// stock's labels. Needs a QGuiApplication.

#include "labels/print/print_labels.h"

namespace coneline::labels {

/// How long the rulers are: 100 mm, or on a smaller page the most whole tens that fit.
struct Rulers {
  int across = 100;
  int down = 100;
};
Rulers rulers_of(const Stock& stock);

/// Writes the page as PDF, drawn with the correction of `options`: printed again after a
/// correction, the rulers must measure true. Fails as `print_pdf` does, and on a page too small
/// for a ruler of 20 mm.
Result<Rulers> print_test_page(const std::string& path, const Stock& stock,
                               const PrintOptions& options = {});

} // namespace coneline::labels
