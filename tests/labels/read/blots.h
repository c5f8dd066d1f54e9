// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Dirt on a code, and what the library makes of a picture by itself.

#include "tests/labels/read/chance.h"

#include <QColor>
#include <QImage>
#include <QPainter>

#include <vector>

namespace coneline::labels {

/// A splash of mud, in modules from the code's corner.
struct Blot {
  double x = 0;
  double y = 0;
  double radius = 0;
  double flat = 1; ///< its height as a share of its width
  double turn = 0; ///< degrees
  QColor colour;
};

/// Blots that cover `share` of a code of `modules` a side, to within a few tenths of a percent;
/// none on the three squares where `corners_clean`.
std::vector<Blot> make_blots(double share, int modules, bool corners_clean, Chance& chance);

void draw_blots(QPainter& painter, const std::vector<Blot>& blots);

/// How many QR codes one plain pass of the library over the whole picture finds: at most `most`.
int plain_pass(const QImage& picture, int most);

} // namespace coneline::labels
