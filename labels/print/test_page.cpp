// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/test_page.h"

#include "core/base/phrase.h"
#include "labels/print/fonts.h"
#include "labels/print/page_setup.h"

#include <QPainter>
#include <QString>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::labels {

namespace {

constexpr double edge = 5;   // mm that many printers cannot reach
constexpr double line = 0.2; // mm

/// Draws in millimetres of paper as this printer makes them. Lines are whole dots of the device.
class Ruled {
 public:
  Ruled(QPainter& painter, const PrintOptions& options)
      : painter_(painter), across_(options.dpi / 25.4 * options.correction.across),
        down_(options.dpi / 25.4 * options.correction.down),
        thick_(std::max(1, static_cast<int>(std::lround(line * options.dpi / 25.4)))) {
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(Qt::black);
  }

  /// The line's first dot stands at x; so two lines 100 mm apart are so from edge to edge.
  void vertical(double x, double top, double length) {
    painter_.drawRect(QRect(x_of(x), y_of(top), thick_, y_of(top + length) - y_of(top)));
  }
  void horizontal(double left, double y, double length) {
    painter_.drawRect(QRect(x_of(left), y_of(y), x_of(left + length) - x_of(left), thick_));
  }
  void words(double left, double baseline, double size, const std::string& text) {
    painter_.save();
    painter_.setPen(Qt::black);
    painter_.setFont(font_of(Face::plain, size));
    painter_.drawText(QPointF(left * across_, baseline * down_), QString::fromStdString(text));
    painter_.restore();
  }

 private:
  [[nodiscard]] int x_of(double mm) const { return static_cast<int>(std::lround(mm * across_)); }
  [[nodiscard]] int y_of(double mm) const { return static_cast<int>(std::lround(mm * down_)); }

  QPainter& painter_;
  double across_;
  double down_;
  int thick_;
};

/// The longest whole tens on a side of the page, at most 100 mm.
int ruler_on(double side) {
  return std::min(100, static_cast<int>(std::floor((side - 2 * edge - line) / 10)) * 10);
}

double tick(int mm) {
  return mm % 10 == 0 ? 4 : mm % 5 == 0 ? 3 : 1.5;
}

void draw_rulers(Ruled& page, const Stock& stock, const Rulers& rulers) {
  const double left = (stock.page_width - rulers.across) / 2;
  const double top = (stock.page_height - rulers.down) / 2;
  const double across_at = edge;
  page.horizontal(left, across_at, rulers.across);
  for (int mm = 0; mm <= rulers.across; ++mm)
    page.vertical(left + mm, across_at, tick(mm));
  page.vertical(edge, top, rulers.down);
  for (int mm = 0; mm <= rulers.down; ++mm)
    page.horizontal(edge, top + mm, tick(mm));
}

void draw_labels(Ruled& page, const Stock& stock) {
  for (int i = 0; i < stock.per_page(); ++i) {
    const double x = stock.x_of(i);
    const double y = stock.y_of(i);
    const double right = std::min(x + stock.label_width, stock.page_width - line);
    const double bottom = std::min(y + stock.label_height, stock.page_height - line);
    page.horizontal(x, y, right - x);
    page.horizontal(x, bottom, right - x + line);
    page.vertical(x, y, bottom - y);
    page.vertical(right, y, bottom - y);
  }
}

void draw_words(Ruled& page, const Stock& stock, const Rulers& rulers,
                const PrintOptions& options) {
  const double size = std::clamp(stock.page_width / 60, 1.6, 3.2);
  double y = edge + 4 + size * 1.6;
  const auto say = [&](const std::string& text) {
    page.words(edge + 6, y, size, text);
    y += size * 1.4;
  };
  say(phrase("{}: test page", stock.name));
  say(phrase("Print at 100 %, without fitting to the page."));
  say(phrase("Measure both rulers: {} mm across, {} mm down.", rulers.across, rulers.down));
  if (options.correction.across != 1 || options.correction.down != 1)
    say(phrase("Drawn {:.2f} % across, {:.2f} % down.", 100 * options.correction.across,
               100 * options.correction.down));
}

} // namespace

Rulers rulers_of(const Stock& stock) {
  return {ruler_on(stock.page_width), ruler_on(stock.page_height)};
}

Result<Rulers> print_test_page(const std::string& path, const Stock& stock,
                               const PrintOptions& options) {
  if (const auto sound = check(stock); !sound)
    return refuse(sound.error());
  const auto rulers = rulers_of(stock);
  if (std::max(rulers.across, rulers.down) < 20)
    return refuse(fault(phrase("a page of {} × {} mm is too small for a ruler of 20 mm",
                               stock.page_width, stock.page_height),
                        "Test the printer with a larger stock."));
  return write_pdf(path, stock, options.dpi,
                   [&](QPdfWriter&, QPainter& painter) -> Result<void> {
                     Ruled page(painter, options);
                     draw_labels(page, stock);
                     draw_rulers(page, stock, rulers);
                     draw_words(page, stock, rulers, options);
                     return {};
                   })
      .map([&](auto) { return rulers; });
}

} // namespace coneline::labels
