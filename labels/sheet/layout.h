// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Where everything stands on one label, in millimetres from its top left corner. Pure geometry: the
// widths of texts are told by whoever knows the font.

#include "core/base/fault.h"
#include "labels/sheet/label_text.h"
#include "labels/sheet/stock.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace coneline::labels {

struct Box {
  double x = 0;
  double y = 0;
  double width = 0;
  double height = 0;

  [[nodiscard]] double right() const { return x + width; }
  [[nodiscard]] double bottom() const { return y + height; }
};

enum class Face { plain, bold, code };

/// How wide a text is as a multiple of its size (of its em).
using Measure = std::function<double(std::string_view text, Face face)>;

struct PlacedText {
  std::string text;
  Face face = Face::plain;
  double size = 0;     ///< the em, mm
  Box box;             ///< the line it stands in
  double baseline = 0; ///< mm from the label's top
};

struct LabelLayout {
  Box symbol;              ///< with its quiet zone
  int dots_per_module = 0; ///< whole dots of the printer
  double module = 0;       ///< mm
  std::vector<PlacedText> texts;
  bool shortened = false; ///< something was elided or left out
};

/// Lays out a label for a printer of `dpi` dots an inch (150 to 2400). The code in letters is
/// always there; longer names shrink, then wrap, then are elided; lines without room are left out,
/// the least needed first. Fails when the stock fails, when the code cannot be a symbol, or when
/// there is no room for symbol and code.
Result<LabelLayout> lay_out(const LabelText& text, const Stock& stock, int dpi,
                            const Measure& measure);

} // namespace coneline::labels
