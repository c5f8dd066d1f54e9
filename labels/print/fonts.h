// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The fonts of labels: Noto Sans for words, Noto Sans Mono for codes. Needs a QGuiApplication.

#include "labels/sheet/layout.h"

#include <QFont>
#include <QPainterPath>

#include <string>

namespace coneline::labels {

/// A face whose em is `size` millimetres on a device that keeps fractions of a dot, as a PDF does.
QFont font_of(Face face, double size);

/// The outlines of a text from its left end on the baseline, its em `size` units long. Devices of
/// few dots round the sizes of fonts and would set words wider than measured; outlines stay true.
QPainterPath outlines(const std::string& text, Face face, double size);

/// Widths from the fonts' own outlines, without regard to any device's dots.
Measure font_measure();

} // namespace coneline::labels
