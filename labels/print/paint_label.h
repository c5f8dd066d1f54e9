// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Draws one laid-out label on anything that can be painted on.

#include "labels/sheet/layout.h"
#include "labels/symbol/symbol.h"

#include <QRect>
#include <QVector>

class QPainter;

namespace coneline::labels {

class Fonts;

/// How many of a device's dots make a millimetre on its paper; the two differ where a printer's
/// scale was corrected.
struct DotsPerMm {
  double across = 0;
  double down = 0;
};

/// The dark modules of a label whose corner is `x`, `y` millimetres from the page's, in dots. Runs
/// that lie one below the other become one rectangle: fewer to send, and no seams.
QVector<QRect> symbol_rectangles(const Symbol& symbol, const LabelLayout& layout, double x,
                                 double y, const DotsPerMm& dots);

/// Draws with its top left corner `x`, `y` millimetres from the page's. The painter's own
/// coordinates must be the dots of its device, so that every module is whole dots
/// wide and stands on whole dots.
void paint_label(QPainter& painter, Fonts& fonts, const LabelLayout& layout, const Symbol& symbol,
                 double x, double y, const DotsPerMm& dots);

} // namespace coneline::labels
