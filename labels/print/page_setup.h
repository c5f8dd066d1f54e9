// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// PDF files whose pages are exactly the stock's, without margins.

#include "core/base/fault.h"
#include "labels/sheet/stock.h"

#include <cstdint>
#include <functional>
#include <string>

class QPainter;
class QPdfWriter;

namespace coneline::labels {

using DrawPages = std::function<Result<void>(QPdfWriter&, QPainter&)>;

/// What `draw` draws, from the upper left corner of each page, in dots; the file is written whole
/// or not at all. Its size in bytes. Fails where `draw` fails or the file cannot be written.
Result<std::int64_t> write_pdf(const std::string& path, const Stock& stock, int dpi,
                               const DrawPages& draw);

} // namespace coneline::labels
