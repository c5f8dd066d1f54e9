// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/report_pdf.h"

#include <QFontMetricsF>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <fmt/format.h>

#include <array>
#include <cmath>

namespace coneline::labels {

namespace {

constexpr int dots_an_inch = 600;
constexpr double left = 18;
constexpr double right = 192;
constexpr double top = 18;
constexpr double bottom = 280;
constexpr double row_height = 6.4;
const QColor ink(0x20, 0x28, 0x1F);
const QColor quiet(0x5A, 0x61, 0x56);
const QColor rule(0xC9, 0xCB, 0xC3);
const QColor forecast(0x5B, 0x4B, 0x8A);

double dots(double mm) {
  return mm * dots_an_inch / 25.4;
}

QString per_cent(const std::optional<double>& share) {
  return share ? QString::number(*share * 100, 'f', 1) : QStringLiteral("–");
}

QString number(const std::optional<double>& value, int decimals) {
  return value && std::isfinite(*value) ? QString::number(*value, 'f', decimals)
                                        : QStringLiteral("–");
}

/// Paper that is written from the top; begins a new page when the next thing does not fit.
class Paper {
 public:
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
    if (y_ + mm <= bottom)
      return;
    writer_.newPage();
    ++pages_;
    y_ = top;
    end_page();
  }

  void text(double x, double y, const QString& words, double size, const QColor& colour,
            Qt::Alignment side = Qt::AlignLeft) {
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(static_cast<int>(std::lround(dots(size))));
    painter_.setFont(font);
    painter_.setPen(colour);
    const double width = QFontMetricsF(font, &writer_).horizontalAdvance(words);
    painter_.drawText(QPointF(dots(x) - (side == Qt::AlignRight ? width : 0), dots(y)), words);
  }
  /// Cut at the right with an ellipsis where it would not fit.
  void fitted(double x, double width, const QString& words, double size, const QColor& colour) {
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(static_cast<int>(std::lround(dots(size))));
    text(x, y_, QFontMetricsF(font, &writer_).elidedText(words, Qt::ElideRight, dots(width)), size,
         colour);
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
    text(left, 290, foot_ + QStringLiteral("  ·  ") + QString::number(pages_), 2.8, quiet);
  }

  QPdfWriter& writer_;
  QPainter painter_;
  QString foot_;
  double y_ = top;
  int pages_ = 1;
};

// Where the columns of the table of crosses stand, in mm.
constexpr double name_width = 56;
constexpr double sown_at = 85;
constexpr double germinated_at = 97;
constexpr double share_at = 132;
constexpr double bar_from = 136;
constexpr double bar_to = 166;
constexpr double t50_at = 174;

void heading(Paper& paper) {
  paper.text(left, paper.y(), QStringLiteral("cross"), 2.8, quiet);
  paper.text(sown_at, paper.y(), QStringLiteral("sown"), 2.8, quiet, Qt::AlignRight);
  paper.text(germinated_at, paper.y(), QStringLiteral("up"), 2.8, quiet, Qt::AlignRight);
  paper.text(share_at, paper.y(), QStringLiteral("95 % range, share, %"), 2.8, quiet,
             Qt::AlignRight);
  paper.text(bar_from, paper.y(), QStringLiteral("0"), 2.8, quiet);
  paper.text(bar_to, paper.y(), QStringLiteral("100 %"), 2.8, quiet, Qt::AlignRight);
  paper.text(t50_at, paper.y(), QStringLiteral("T50"), 2.8, quiet, Qt::AlignRight);
  paper.text(right, paper.y(), QStringLiteral("mean days"), 2.8, quiet, Qt::AlignRight);
  paper.skip(2);
  paper.line(left, paper.y(), right, paper.y(), quiet, 0.2);
  paper.skip(row_height - 1.4);
}

void range_bar(Paper& paper, const stats::FinalShare& share) {
  const double middle = paper.y() - 1.2;
  const auto at = [](double value) { return bar_from + value * (bar_to - bar_from); };
  paper.line(bar_from, middle, bar_to, middle, rule, 0.2);
  if (!share.range || !share.share)
    return;
  paper.line(at(share.range->low), middle,
             std::max(at(share.range->high), at(share.range->low) + 0.3), middle, forecast, 1.6);
  paper.line(at(*share.share), middle - 1.5, at(*share.share), middle + 1.5, ink, 0.4);
}

QString range_and_share(const stats::FinalShare& share) {
  if (!share.range)
    return QStringLiteral("–");
  return per_cent(share.range->low) + QStringLiteral("–") + per_cent(share.range->high) +
         QStringLiteral(", ") + per_cent(share.share);
}

void cross_row(Paper& paper, const report::CrossReport& cross) {
  paper.need(row_height * 2);
  paper.fitted(left, name_width, QString::fromStdString(cross.name), 3.4, ink);
  paper.text(sown_at, paper.y(), QString::number(cross.figures.sown), 3.4, ink, Qt::AlignRight);
  paper.text(germinated_at, paper.y(), QString::number(cross.figures.germinated), 3.4, ink,
             Qt::AlignRight);
  paper.text(share_at, paper.y(), range_and_share(cross.figures.final), 3.2, ink, Qt::AlignRight);
  range_bar(paper, cross.figures.final);
  paper.text(t50_at, paper.y(), number(cross.together.t50_coolbear, 0), 3.4, ink, Qt::AlignRight);
  paper.text(right, paper.y(), number(cross.together.mean_time, 0), 3.4, ink, Qt::AlignRight);
  paper.skip(4);
  paper.fitted(left, right - left,
               QString::fromStdString(cross.taxon + (cross.told.empty() ? "" : " · " + cross.told)),
               2.7, quiet);
  paper.skip(row_height - 0.6);
}

/// Series told apart by dash and direct label first, by colour (Okabe and Ito) second.
struct Strokes {
  QColor colour;
  QList<qreal> dashes;
};
Strokes strokes(std::size_t i) {
  static const std::array<QColor, 7> colours{
      QColor(0, 114, 178),  QColor(213, 94, 0),  QColor(0, 158, 115), QColor(204, 121, 167),
      QColor(86, 180, 233), QColor(230, 159, 0), QColor(0, 0, 0)};
  static const std::array<QList<qreal>, 4> dashes{QList<qreal>{}, QList<qreal>{6, 2},
                                                  QList<qreal>{2, 2}, QList<qreal>{8, 2, 2, 2}};
  return {colours[i % colours.size()], dashes[i / 2 % dashes.size()]};
}

void chart(Paper& paper, const report::GerminationReport& report) {
  constexpr double height = 78;
  constexpr double label_room = 46;
  double days = 0;
  for (const auto& cross : report.crosses)
    if (!cross.curve.empty())
      days = std::max(days, cross.curve.back().day);
  if (days <= 0)
    return;
  paper.need(height + 22);
  paper.text(left, paper.y(), QStringLiteral("Germinated, of the seed sown, by days since sowing"),
             4.2, ink);
  paper.skip(6);
  const double x0 = left + 9;
  const double x1 = right - label_room;
  const double y1 = paper.y() + height;
  const auto x = [&](double day) { return x0 + day / days * (x1 - x0); };
  const auto y = [&](double share) { return y1 - share * height; };
  for (int share = 0; share <= 100; share += 25) {
    paper.line(x0, y(share / 100.0), x1, y(share / 100.0), rule, 0.15);
    paper.text(x0 - 1.5, y(share / 100.0) + 1,
               QString::number(share) + (share == 100 ? QStringLiteral(" %") : QString()), 2.8,
               quiet, Qt::AlignRight);
  }
  for (int part = 0; part <= 4; ++part)
    paper.text(x(days * part / 4) + (part == 0 ? 0 : 3), y1 + 4.5,
               QString::number(std::lround(days * part / 4)), 2.8, quiet,
               part == 0 ? Qt::AlignLeft : Qt::AlignRight);
  // Labels at the curves' ends, pushed apart where they would lie on each other.
  std::vector<std::pair<double, std::size_t>> ends;
  for (std::size_t i = 0; i < report.crosses.size(); ++i) {
    const auto& cross = report.crosses[i];
    if (cross.curve.empty())
      continue;
    QPolygonF steps;
    double before = 0;
    steps << QPointF(dots(x(0)), dots(y(0)));
    for (const auto& [day, share] : cross.curve) {
      steps << QPointF(dots(x(day)), dots(y(before))) << QPointF(dots(x(day)), dots(y(share)));
      before = share;
    }
    paper.path(steps, strokes(i).colour, 0.45, strokes(i).dashes);
    ends.emplace_back(y(before), i);
  }
  std::ranges::sort(ends, std::greater<>());
  double lowest = y1 + 4;
  for (const auto& [end, i] : ends) {
    const double at = std::min(end, lowest - 3.4);
    lowest = at;
    const auto& cross = report.crosses[i];
    paper.line(x(cross.curve.back().day), end, x1 + 2, at, strokes(i).colour, 0.12);
    paper.skip(at + 1 - paper.y());
    paper.fitted(x1 + 3, label_room - 3, QString::fromStdString(cross.name), 2.6,
                 strokes(i).colour);
  }
  paper.skip(y1 + 12 - paper.y());
}

void tray_rows(Paper& paper, const report::CrossReport& cross) {
  paper.need(row_height * 3);
  paper.fitted(left, right - left, QString::fromStdString(cross.name), 3.6, ink);
  paper.skip(row_height);
  for (const auto& tray : cross.trays) {
    paper.need(row_height);
    paper.text(left + 3, paper.y(), QString::fromStdString(tray.seen.lot.code.text()), 3.2, ink);
    paper.text(left + 26, paper.y(), QString::fromStdString("sown " + tray.seen.sown_on.iso()), 3,
               quiet);
    paper.text(sown_at, paper.y(), QString::number(tray.seen.sown), 3.2, ink, Qt::AlignRight);
    paper.text(germinated_at, paper.y(), QString::number(tray.germinated), 3.2, ink,
               Qt::AlignRight);
    paper.text(share_at, paper.y(), range_and_share(tray.figures.final), 3, ink, Qt::AlignRight);
    range_bar(paper, tray.figures.final);
    paper.text(t50_at, paper.y(), number(tray.figures.measures.t50_coolbear, 0), 3.2, ink,
               Qt::AlignRight);
    paper.text(right, paper.y(), number(tray.figures.measures.mean_time, 0), 3.2, ink,
               Qt::AlignRight);
    paper.skip(row_height - 1);
  }
  paper.skip(3);
}

int write(QPdfWriter& writer, const report::GerminationReport& report) {
  const auto name =
      QString::fromStdString(report.title.name + (report.title.invented ? " (invented data)" : ""));
  Paper paper(writer,
              name + QStringLiteral(" · as of ") + QString::fromStdString(report.as_of.iso()));
  if (!paper.ready())
    return 0;
  paper.skip(4);
  paper.text(left, paper.y(), QStringLiteral("Germination by cross"), 7, ink);
  paper.skip(7);
  paper.text(left, paper.y(),
             name + QStringLiteral(" · as of ") + QString::fromStdString(report.as_of.iso()), 3.6,
             quiet);
  paper.skip(10);
  heading(paper);
  for (const auto& cross : report.crosses)
    cross_row(paper, cross);
  paper.skip(6);
  chart(paper, report);
  paper.need(row_height * 5);
  paper.text(left, paper.y(), QStringLiteral("By tray"), 5, ink);
  paper.skip(7);
  heading(paper);
  for (const auto& cross : report.crosses)
    tray_rows(paper, cross);
  for (const auto& [code, why] : report.left_out) {
    paper.need(row_height);
    paper.fitted(left, right - left,
                 QString::fromStdString(fmt::format("{} left out: {}", code.text(), why)), 3,
                 quiet);
    paper.skip(row_height);
  }
  return paper.pages();
}

} // namespace

Result<ReportPrinted> germination_pdf(const std::string& path,
                                      const report::GerminationReport& report) {
  const auto failed = [&](const QString& why) {
    return refuse(fault(fmt::format("'{}' could not be written: {}", path, why.toStdString()),
                        "Check folder and disk."));
  };
  QSaveFile file(QString::fromStdString(path));
  if (!file.open(QIODevice::WriteOnly))
    return failed(file.errorString());
  int pages = 0;
  {
    QPdfWriter writer(&file);
    writer.setResolution(dots_an_inch);
    writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Portrait,
                                     QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter));
    writer.setTitle(QStringLiteral("Germination by cross"));
    pages = write(writer, report);
  }
  if (pages == 0 || !file.commit())
    return failed(file.errorString());
  return ReportPrinted{pages};
}

} // namespace coneline::labels
