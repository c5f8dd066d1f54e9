// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/paint_label.h"

#include "labels/print/fonts.h"

#include <QPaintEngine>
#include <QPainter>
#include <QString>
#include <QVector>

#include <cmath>

namespace coneline::labels {

namespace {

/// Runs that lie one below the other become one rectangle: fewer to send, and no seams.
QVector<QRect> rectangles(const Symbol& symbol, int left, int top, int dots) {
  const auto runs = symbol.runs();
  QVector<QRect> merged;
  std::vector<bool> taken(runs.size(), false);
  for (std::size_t i = 0; i < runs.size(); ++i) {
    if (taken[i])
      continue;
    int rows = 1;
    for (std::size_t k = i + 1; k < runs.size(); ++k)
      if (runs[k] == Run{runs[i].row + rows, runs[i].column, runs[i].length}) {
        taken[k] = true;
        ++rows;
      }
    merged.append(QRect(left + runs[i].column * dots, top + runs[i].row * dots,
                        runs[i].length * dots, rows * dots));
  }
  return merged;
}

} // namespace

void paint_label(QPainter& painter, const LabelLayout& layout, const Symbol& symbol, double x,
                 double y, const DotsPerMm& dots) {
  const int quiet = quiet_modules * layout.dots_per_module;
  const int left = static_cast<int>(std::lround((x + layout.symbol.x) * dots.across)) + quiet;
  const int top = static_cast<int>(std::lround((y + layout.symbol.y) * dots.down)) + quiet;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setPen(Qt::NoPen);
  painter.setBrush(Qt::black);
  painter.drawRects(rectangles(symbol, left, top, layout.dots_per_module));
  const bool keeps_fractions = painter.paintEngine()->type() == QPaintEngine::Pdf;
  painter.setRenderHint(QPainter::Antialiasing);
  for (const auto& placed : layout.texts) {
    const QPointF start((x + placed.box.x) * dots.across, (y + placed.baseline) * dots.down);
    if (keeps_fractions) {
      painter.setPen(Qt::black);
      painter.setFont(font_of(placed.face, placed.size));
      painter.drawText(start, QString::fromStdString(placed.text));
    } else {
      painter.fillPath(
          outlines(placed.text, placed.face, placed.size * dots.across).translated(start),
          Qt::black);
    }
  }
  painter.restore();
}

} // namespace coneline::labels
