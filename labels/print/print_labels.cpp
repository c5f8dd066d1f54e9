// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/print_labels.h"

#include "core/base/phrase.h"
#include "labels/print/fonts.h"
#include "labels/print/page_setup.h"
#include "labels/print/paint_label.h"

#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>
#include <QString>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::labels {

namespace {

struct Ready {
  Symbol symbol;
  LabelLayout layout;
};

Result<Ready> ready(const LabelText& text, const Stock& stock, int dpi, const Measure& measure) {
  auto layout = lay_out(text, stock, dpi, measure);
  if (!layout)
    return refuse(layout.error());
  return Ready{symbol_of(text.code).value(), *std::move(layout)};
}

/// All labels are laid out before any is painted, so that a bad one is told before the paper moves.
Result<std::vector<Ready>> all_ready(std::span<const LabelText> labels, const Stock& stock,
                                     const PrintOptions& options) {
  if (const auto sound = check(stock); !sound)
    return refuse(sound.error());
  if (labels.empty())
    return refuse(fault("no labels to print", "Choose at least one lot."));
  if (options.start < 1 || options.start > stock.per_page())
    return refuse(fault(
        phrase("'{}' has no label {}: it has 1 to {}", stock.name, options.start, stock.per_page()),
        "Count along the rows from the top left."));
  const auto measure = font_measure();
  std::vector<Ready> laid_out;
  for (const auto& label : labels) {
    auto one = ready(label, stock, options.dpi, measure);
    if (!one)
      return refuse(one.error());
    laid_out.push_back(*std::move(one));
  }
  return laid_out;
}

void paint_one(QPainter& painter, Fonts& fonts, const Ready& label, const Stock& stock,
               int position, const PrintOptions& options) {
  const double dots = options.dpi / 25.4;
  paint_label(painter, fonts, label.layout, label.symbol, stock.x_of(position),
              stock.y_of(position),
              {dots * options.correction.across, dots * options.correction.down});
}

Result<Printed> paint_ready(QPainter& painter, const std::vector<Ready>& labels, const Stock& stock,
                            const PrintOptions& options, const std::function<bool()>& new_page) {
  Printed printed{static_cast<int>(labels.size()), 1, 0, 0};
  Fonts fonts;
  int position = options.start - 1;
  for (const auto& label : labels) {
    if (position == stock.per_page()) {
      if (!new_page())
        return refuse(fault(phrase("page {} could not be begun", printed.pages + 1),
                            "Check the printer and the space on the disk."));
      ++printed.pages;
      position = 0;
    }
    paint_one(painter, fonts, label, stock, position++, options);
    printed.shortened += label.layout.shortened ? 1 : 0;
  }
  return printed;
}

/// The end of a tag that goes into the soil, in millimetres from its own corner.
QRectF soil_of(const Stock& stock) {
  const bool lying = stock.usable_width() < stock.label_width;
  return lying ? QRectF(stock.usable_width(), 0, stock.in_soil, stock.label_height)
               : QRectF(0, stock.usable_height(), stock.label_width, stock.in_soil);
}

void draw_edges(QPainter& painter, const Stock& stock, int dpi) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(dpi / 25.4, dpi / 25.4);
  for (int i = 0; i < stock.per_page(); ++i) {
    QPainterPath edge;
    edge.addRoundedRect(QRectF(stock.x_of(i), stock.y_of(i), stock.label_width, stock.label_height)
                            .adjusted(0.1, 0.1, -0.1, -0.1),
                        1.5, 1.5);
    QPainterPath soil;
    soil.addRect(soil_of(stock).translated(stock.x_of(i), stock.y_of(i)));
    painter.fillPath(edge.intersected(soil), QColor(0xE9, 0xE4, 0xD8));
    painter.strokePath(edge, QPen(QColor(0xA9, 0xAF, 0xA4), 0.15));
  }
  painter.restore();
}

} // namespace

Result<Printed> paint_labels(QPainter& painter, std::span<const LabelText> labels,
                             const Stock& stock, const PrintOptions& options,
                             const std::function<bool()>& new_page) {
  const auto laid_out = all_ready(labels, stock, options);
  if (!laid_out)
    return refuse(laid_out.error());
  return paint_ready(painter, *laid_out, stock, options, new_page);
}

Result<Printed> print_pdf(const std::string& path, std::span<const LabelText> labels,
                          const Stock& stock, const PrintOptions& options) {
  const auto laid_out = all_ready(labels, stock, options);
  if (!laid_out)
    return refuse(laid_out.error());
  Printed printed;
  const auto bytes =
      write_pdf(path, stock, options.dpi, [&](QPdfWriter& writer, QPainter& painter) {
        return paint_ready(painter, *laid_out, stock, options, [&] { return writer.newPage(); })
            .map([&](const Printed& done) { printed = done; });
      });
  if (!bytes)
    return refuse(bytes.error());
  printed.bytes = *bytes;
  return printed;
}

Result<QImage> preview(std::span<const LabelText> labels, const Stock& stock,
                       const PrintOptions& options, int page, Edges edges) {
  const auto laid_out = all_ready(labels, stock, options);
  if (!laid_out)
    return refuse(laid_out.error());
  const double dots = options.dpi / 25.4;
  QImage picture(static_cast<int>(std::ceil(stock.page_width * dots)),
                 static_cast<int>(std::ceil(stock.page_height * dots)), QImage::Format_RGB32);
  if (picture.isNull())
    return refuse(fault(phrase("a page of {} × {} mm at {} dots an inch is too large to show",
                               stock.page_width, stock.page_height, options.dpi),
                        "Show it with fewer dots an inch."));
  picture.setDotsPerMeterX(static_cast<int>(std::lround(dots * 1000)));
  picture.setDotsPerMeterY(static_cast<int>(std::lround(dots * 1000)));
  picture.fill(Qt::white);
  QPainter painter(&picture);
  if (edges == Edges::shown)
    draw_edges(painter, stock, options.dpi);
  Fonts fonts;
  const int first = page * stock.per_page() - (options.start - 1);
  for (int position = 0; position < stock.per_page(); ++position) {
    const int label = first + position;
    if (label >= 0 && label < static_cast<int>(laid_out->size()))
      paint_one(painter, fonts, (*laid_out)[static_cast<std::size_t>(label)], stock, position,
                options);
  }
  return picture;
}

} // namespace coneline::labels
