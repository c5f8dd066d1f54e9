// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/report_charts.h"

#include "core/base/phrase.h"
#include "core/report/chart_axes.h"
#include "core/report/cross_chart.h"
#include "core/report/cross_said.h"

#include <array>

namespace coneline::labels {

namespace {

using paper::ink;
using paper::left;
using paper::quiet;
using paper::right;
using paper::rule;

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

/// Where a chart of one cross stands, and what its places on paper are.
struct Plot {
  double x0 = left + 9;
  double x1 = right - 46;
  double y0 = 0;
  double y1 = 0;
  double until = 1;
  double highest = 1;

  [[nodiscard]] double x(double day) const { return x0 + day / until * (x1 - x0); }
  [[nodiscard]] double y(double share) const {
    return y1 - std::clamp(share / highest, 0.0, 1.0) * (y1 - y0);
  }
  [[nodiscard]] QPointF at(double day, double share) const {
    return {Paper::dots(x(day)), Paper::dots(y(share))};
  }
  [[nodiscard]] QPolygonF line(const std::vector<report::CurvePoint>& points) const {
    QPolygonF line;
    for (const auto& [day, share] : points)
      line << at(day, share);
    return line;
  }
};

void axes(Paper& paper, const Plot& plot, const QString& unit) {
  for (int part = 0; part <= 4; ++part) {
    const double share = plot.highest * part / 4;
    paper.line(plot.x0, plot.y(share), plot.x1, plot.y(share), rule, 0.15);
    paper.text(plot.x0 - 1.5, plot.y(share) + 1,
               QString::fromStdString(phrase("{:g}", 100 * share)) +
                   (part == 4 ? QStringLiteral(" %") : QString()),
               2.6, quiet, Qt::AlignRight);
  }
  const double step = report::round_step(plot.until);
  for (double day = 0; day <= plot.until; day += step)
    paper.text(plot.x(day) + (day == 0 ? 0 : 2), plot.y1 + 4, QString::number(day), 2.6, quiet,
               day == 0 ? Qt::AlignLeft : Qt::AlignRight);
  paper.text(plot.x1 + 3, plot.y1 + 4, unit, 2.6, quiet);
}

void band(Paper& paper, const Plot& plot, const report::CrossChart& chart) {
  QPolygonF edge;
  for (const auto& point : chart.band)
    edge << plot.at(point.day, point.high);
  for (auto point = chart.band.rbegin(); point != chart.band.rend(); ++point)
    edge << plot.at(point->day, point->low);
  paper.area(edge, strokes(0).colour, 0.2);
}

void coming(Paper& paper, const Plot& plot, const report::Coming& coming) {
  QPolygonF box;
  box << plot.at(coming.from, coming.high) << plot.at(plot.until, coming.high)
      << plot.at(plot.until, coming.low) << plot.at(coming.from, coming.low);
  paper.area(box, paper::forecast, 0.3);
  paper.line(plot.x(coming.from), plot.y(coming.likely), plot.x1, plot.y(coming.likely),
             paper::forecast, 0.4);
}

/// What is what, beside the chart; by its kind of line first.
void key(Paper& paper, const Plot& plot, const report::CrossChart& chart) {
  double y = plot.y0 + 3;
  const auto say = [&](const std::string& words, const auto& mark) {
    mark(y - 1);
    paper.text(plot.x1 + 12, y, QString::fromStdString(words), 2.6, ink);
    y += 5;
  };
  const auto line = [&](const QColor& colour, const QList<qreal>& dashes) {
    return [&paper, &plot, colour, dashes](double at) {
      QPolygonF piece;
      piece << QPointF(Paper::dots(plot.x1 + 3), Paper::dots(at))
            << QPointF(Paper::dots(plot.x1 + 10), Paper::dots(at));
      paper.path(piece, colour, 0.45, dashes);
    };
  };
  const auto box = [&](const QColor& colour, double strength) {
    return [&paper, &plot, colour, strength](double at) {
      paper.area(QPolygonF(QRectF(Paper::dots(plot.x1 + 3), Paper::dots(at - 1.2), Paper::dots(7),
                                  Paper::dots(2.4))),
                 colour, strength);
    };
  };
  say(phrase("seen at the looks"), line(ink, {}));
  if (!chart.fitted.empty())
    say(phrase("fitted curve"), line(strokes(0).colour, {4, 2}));
  if (!chart.band.empty())
    say(phrase("range of the curve"), box(strokes(0).colour, 0.2));
  if (chart.coming)
    say(phrase("where it may end"), box(paper::forecast, 0.3));
}

} // namespace

void chart_of_cross(Paper& paper, const report::GerminationReport& report,
                    const report::CrossReport& cross) {
  constexpr double height = 46;
  const auto chart = report::cross_chart(cross);
  if (chart.last <= 0)
    return;
  paper.need(height + 12);
  Plot plot;
  plot.y0 = paper.y();
  plot.y1 = plot.y0 + height;
  plot.until = chart.until;
  double most = chart.coming ? chart.coming->high : 0;
  for (const auto& point : chart.steps)
    most = std::max(most, point.share);
  for (const auto& point : chart.band)
    most = std::max(most, point.high);
  plot.highest = report::round_top(most);
  axes(paper, plot, QString::fromStdString(report.time_unit_said()));
  if (!chart.band.empty())
    band(paper, plot, chart);
  if (chart.coming)
    coming(paper, plot, *chart.coming);
  if (!chart.fitted.empty())
    paper.path(plot.line(chart.fitted), strokes(0).colour, 0.45, {4, 2});
  paper.path(plot.line(chart.steps), ink, 0.45, {});
  key(paper, plot, chart);
  paper.skip(height + 10);
}

void chart_of_all(Paper& paper, const report::GerminationReport& report) {
  constexpr double height = 78;
  constexpr double label_room = 46;
  constexpr double label_size = 2.6;
  double days = 0;
  for (const auto& cross : report.crosses)
    if (!cross.curve.empty())
      days = std::max(days, cross.curve.back().day);
  if (days <= 0)
    return;
  paper.need(height + 22);
  paper.text(left, paper.y(),
             QString::fromStdString(phrase("Germinated, of the seed sown, by {} since sowing",
                                           report.time_unit_said())),
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
    steps << QPointF(Paper::dots(x(0)), Paper::dots(y(0)));
    for (const auto& [day, share] : cross.curve) {
      steps << QPointF(Paper::dots(x(day)), Paper::dots(y(before)))
            << QPointF(Paper::dots(x(day)), Paper::dots(y(share)));
      before = share;
    }
    paper.path(steps, strokes(i).colour, 0.45, strokes(i).dashes);
    ends.emplace_back(y(before), i);
  }
  std::ranges::sort(ends, std::greater<>());
  double lowest = y1 + 4;
  for (const auto& [end, i] : ends) {
    const auto& cross = report.crosses[i];
    const auto name = paper.lines_of(QString::fromStdString(report::name_said(cross)),
                                     label_room - 3, label_size);
    const double at = std::min(end, lowest - 3.4 - Paper::below_first(name, label_size));
    lowest = at;
    paper.line(x(cross.curve.back().day), end, x1 + 2, at, strokes(i).colour, 0.12);
    paper.skip(at + 1 - paper.y());
    paper.stand(x1 + 3, name, label_size, strokes(i).colour);
  }
  paper.skip(y1 + 12 - paper.y());
}

} // namespace coneline::labels
