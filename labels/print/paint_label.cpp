// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/paint_label.h"

#include "labels/print/fonts.h"

#include <QPaintEngine>
#include <QPainter>
#include <QString>

#include <cmath>

namespace coneline::labels {

QVector<QRect> symbol_rectangles(const Symbol& symbol, const LabelLayout& layout, double x,
                                 double y, const DotsPerMm& dots) {
  const int module = layout.dots_per_module;
  const int quiet = quiet_modules * module;
  const int left = static_cast<int>(std::lround((x + layout.symbol.x) * dots.across)) + quiet;
  const int top = static_cast<int>(std::lround((y + layout.symbol.y) * dots.down)) + quiet;
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
    merged.append(QRect(left + runs[i].column * module, top + runs[i].row * module,
                        runs[i].length * module, rows * module));
  }
  return merged;
}

void paint_label(QPainter& painter, Fonts& fonts, const LabelLayout& layout, const Symbol& symbol,
                 double x, double y, const DotsPerMm& dots) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setPen(Qt::NoPen);
  painter.setBrush(Qt::black);
  painter.drawRects(symbol_rectangles(symbol, layout, x, y, dots));
  const bool keeps_fractions = painter.paintEngine()->type() == QPaintEngine::Pdf;
  painter.setRenderHint(QPainter::Antialiasing);
  for (const auto& placed : layout.texts) {
    const QPointF start((x + placed.box.x) * dots.across, (y + placed.baseline) * dots.down);
    if (keeps_fractions) {
      painter.setPen(Qt::black);
      painter.setFont(fonts.of(placed.face, placed.size));
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
