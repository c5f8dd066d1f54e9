// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The paper a report is written on: millimetres from the top left of A4, a new page when the next
// thing does not fit. Private to this room.

#include "labels/sheet/wrap.h"

#include <QColor>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>
#include <QPolygonF>

#include <cmath>
#include <functional>
#include <utility>

namespace coneline::labels {

namespace paper {
inline constexpr int dots_an_inch = 600;
inline constexpr double left = 18;
inline constexpr double right = 192;
inline constexpr double top = 18;
inline constexpr double bottom = 280;
inline const QColor ink(0x20, 0x28, 0x1F);
inline const QColor quiet(0x5A, 0x61, 0x56);
inline const QColor rule(0xC9, 0xCB, 0xC3);
inline const QColor forecast(0x5B, 0x4B, 0x8A);
} // namespace paper

/// Paper that is written from the paper::top; begins a new page when the next thing does not fit.
class Paper {
 public:
  static double dots(double mm) { return mm * paper::dots_an_inch / 25.4; }

  explicit Paper(QPdfWriter& writer, QString foot)
      : writer_(writer), painter_(&writer), foot_(std::move(foot)) {
    painter_.setRenderHint(QPainter::Antialiasing);
    end_page();
  }
  [[nodiscard]] bool ready() const { return painter_.isActive(); }
  [[nodiscard]] int pages() const { return pages_; }
  [[nodiscard]] double y() const { return y_; }
  void skip(double mm) { y_ += mm; }
  void need(double mm) {
    if (y_ + mm <= paper::bottom)
      return;
    writer_.newPage();
    ++pages_;
    y_ = paper::top;
    end_page();
    // Without itself while it is drawn, or a long one would call for itself.
    if (const auto head = std::exchange(head_, nullptr)) {
      head();
      head_ = head;
    }
  }
  /// What stands at the top of every page from the next on; nullptr for nothing.
  void head_pages(std::function<void()> head) { head_ = std::move(head); }

  void text(double x, double y, const QString& words, double size, const QColor& colour,
            Qt::Alignment side = Qt::AlignLeft) {
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(static_cast<int>(std::lround(dots(size))));
    painter_.setFont(font);
    painter_.setPen(colour);
    const double width = QFontMetricsF(font, &writer_).horizontalAdvance(words);
    painter_.drawText(QPointF(dots(x) - (side == Qt::AlignRight ? width : 0), dots(y)), words);
  }
  /// The lines that words take in a width.
  [[nodiscard]] QStringList lines_of(const QString& words, double width, double size) const {
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(static_cast<int>(std::lround(dots(size))));
    const QFontMetricsF metrics(font, &writer_);
    QStringList lines;
    for (const auto& line :
         labels::wrapped(words.toStdString(), dots(width), [&](std::string_view text) {
           return metrics.horizontalAdvance(
               QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())));
         }))
      lines << QString::fromStdString(line);
    return lines;
  }
  static double step_of(double size) { return 1.3 * size; }
  /// How far the last line stands below the first.
  static double below_first(const QStringList& lines, double size) {
    return lines.isEmpty() ? 0 : static_cast<double>(lines.size() - 1) * step_of(size);
  }
  /// From here down; stays on the last line.
  void stand(double x, const QStringList& lines, double size, const QColor& colour) {
    for (qsizetype at = 0; at < lines.size(); ++at) {
      skip(at == 0 ? 0 : step_of(size));
      text(x, y_, lines[at], size, colour);
    }
  }
  /// Over as many lines as it needs; moves on below.
  void wrapped(const QString& words, double size, const QColor& colour) {
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(static_cast<int>(std::lround(dots(size))));
    const QRectF room(0, 0, dots(paper::right - paper::left), dots(200));
    const double height =
        QFontMetricsF(font, &writer_).boundingRect(room, Qt::TextWordWrap, words).height() * 25.4 /
        paper::dots_an_inch;
    need(height);
    painter_.setFont(font);
    painter_.setPen(colour);
    painter_.drawText(QRectF(dots(paper::left), dots(y_ - size), room.width(), dots(height + 1)),
                      Qt::TextWordWrap, words);
    skip(height + 1);
  }
  void area(const QPolygonF& points, QColor colour, double strength) {
    colour.setAlphaF(static_cast<float>(strength));
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(colour);
    painter_.drawPolygon(points);
  }
  void line(double x1, double y1, double x2, double y2, const QColor& colour, double width,
            Qt::PenStyle style = Qt::SolidLine) {
    painter_.setPen(QPen(colour, dots(width), style, Qt::FlatCap));
    painter_.drawLine(QPointF(dots(x1), dots(y1)), QPointF(dots(x2), dots(y2)));
  }
  void path(const QPolygonF& points, const QColor& colour, double width,
            const QList<qreal>& dashes) {
    QPen pen(colour, dots(width), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    if (!dashes.isEmpty())
      pen.setDashPattern(dashes);
    painter_.setPen(pen);
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolyline(points);
  }

 private:
  void end_page() {
    text(paper::left, 290, foot_ + QStringLiteral("  ·  ") + QString::number(pages_), 2.8,
         paper::quiet);
  }

  QPdfWriter& writer_;
  QPainter painter_;
  QString foot_;
  std::function<void()> head_;
  double y_ = paper::top;
  int pages_ = 1;
};

} // namespace coneline::labels
