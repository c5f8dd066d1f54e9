// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The page of a PDF file: exactly the stock's, without margins.

#include "labels/sheet/stock.h"

class QPdfWriter;

namespace coneline::labels {

void set_up_page(QPdfWriter& writer, const Stock& stock, int dpi);

} // namespace coneline::labels
