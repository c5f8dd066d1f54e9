// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The fonts of labels: Noto Sans for words, Noto Sans Mono for codes. Needs a QGuiApplication.

#include "labels/sheet/layout.h"

#include <QFont>
#include <QPainterPath>

#include <map>
#include <string>
#include <utility>

namespace coneline::labels {

/// A face whose em is `size` millimetres on a device that keeps fractions of a dot, as a PDF does.
QFont font_of(Face face, double size);

/// The outlines of a text from its left end on the baseline, its em `size` units long. Devices of
/// few dots round the sizes of fonts and would set words wider than measured; outlines stay true.
QPainterPath outlines(const std::string& text, Face face, double size);

/// Fonts that were made once: making one looks through the fonts of the machine.
class Fonts {
 public:
  const QFont& of(Face face, double size);

 private:
  std::map<std::pair<Face, double>, QFont> made_;
};

/// Widths from the fonts' own outlines, without regard to any device's dots. Remembers what it was
/// asked, since a label is laid out several times over and labels of one cross are much alike.
Measure font_measure();

} // namespace coneline::labels
