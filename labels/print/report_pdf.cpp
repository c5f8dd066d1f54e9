// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/report_pdf.h"

#include "core/base/phrase.h"
#include "labels/print/report_charts.h"

#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>
#include <fmt/format.h>

#include <cmath>

namespace coneline::labels {

namespace {

using paper::ink;
using paper::left;
using paper::quiet;
using paper::right;
using paper::rule;
constexpr double row_height = 6.4;

QString per_cent(const std::optional<double>& share) {
  return share ? QString::number(*share * 100, 'f', 1) : QStringLiteral("–");
}

QString number(const std::optional<double>& value, int decimals) {
  return value && std::isfinite(*value) ? QString::number(*value, 'f', decimals)
                                        : QStringLiteral("–");
}

// Where the columns of the table of crosses stand, in mm.
constexpr double name_width = 48;
constexpr double alike_at = 68;
constexpr double sown_at = 85;
constexpr double germinated_at = 97;
constexpr double share_at = 132;
constexpr double bar_from = 136;
constexpr double bar_to = 166;
constexpr double t50_at = 174;

void heading(Paper& paper, const report::GerminationReport& report) {
  paper.text(left, paper.y(), QStringLiteral("cross"), 2.8, quiet);
  paper.text(alike_at, paper.y(), QStringLiteral("alike"), 2.8, quiet);
  paper.text(sown_at, paper.y(), QStringLiteral("sown"), 2.8, quiet, Qt::AlignRight);
  paper.text(germinated_at, paper.y(), QStringLiteral("up"), 2.8, quiet, Qt::AlignRight);
  paper.text(share_at, paper.y(),
             QString::number(100 * report.confidence) + QStringLiteral(" % range, share, %"), 2.8,
             quiet, Qt::AlignRight);
  paper.text(bar_from, paper.y(), QStringLiteral("0"), 2.8, quiet);
  paper.text(bar_to, paper.y(), QStringLiteral("100 %"), 2.8, quiet, Qt::AlignRight);
  paper.text(t50_at, paper.y(), QStringLiteral("T50"), 2.8, quiet, Qt::AlignRight);
  paper.text(right, paper.y(),
             report.degree_days ? QStringLiteral("mean °C·d") : QStringLiteral("mean days"), 2.8,
             quiet, Qt::AlignRight);
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
             std::max(at(share.range->high), at(share.range->low) + 0.3), middle, paper::forecast,
             1.6);
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
  paper.text(alike_at, paper.y(), QString::fromStdString(cross.alike), 3.2, ink);
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

/// How many more are expected, as a range first.
QString expected(const report::CrossReport& cross) {
  const auto more = cross.expected();
  if (more.high == 0)
    return QStringLiteral("No more expected.");
  return QStringLiteral("Still expected: %1–%2, likely %3.")
      .arg(more.low)
      .arg(more.high)
      .arg(more.median);
}

void tray_rows(Paper& paper, const report::GerminationReport& report,
               const report::CrossReport& cross) {
  paper.need(76);
  paper.fitted(left, right - left, QString::fromStdString(cross.name), 3.6, ink);
  paper.skip(4.4);
  paper.fitted(left, right - left,
               expected(cross) + QStringLiteral(" As of ") +
                   QString::fromStdString(report.as_of.iso()) + QStringLiteral(".") +
                   (!cross.known ? QString()
                                 : QStringLiteral(" It leans on ") +
                                       QString::fromStdString(cross.known->beforehand) +
                                       QStringLiteral(".")),
               2.8, paper::forecast);
  paper.skip(3.5);
  chart_of_cross(paper, report, cross);
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

QString heading_of(const report::GerminationReport& report) {
  return report.by == report::By::season  ? QStringLiteral("Germination by season")
         : report.by == report::By::cross ? QStringLiteral("Germination by cross")
                                          : QStringLiteral("Germination by cross and season");
}

/// What letters, ranges and bands mean, and which crosses cannot be told apart.
void methods(Paper& paper, const report::GerminationReport& report) {
  const auto say = [&](std::string_view words) {
    paper.wrapped(QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())), 2.8,
                  quiet);
  };
  if (report.crosses.size() > 1)
    say(report::alike_method_told());
  for (const auto& sentence : report::alike_told(report))
    paper.wrapped(QString::fromStdString(sentence), 3, ink);
  say(report::band_told());
  if (report.degree_days)
    say(report::lacking_told(report));
}

int write(QPdfWriter& writer, const report::GerminationReport& report) {
  const auto name =
      QString::fromStdString(report.title.name + (report.title.invented ? " (invented data)" : ""));
  Paper paper(writer,
              name + QStringLiteral(" · as of ") + QString::fromStdString(report.as_of.iso()));
  if (!paper.ready())
    return 0;
  paper.skip(4);
  paper.text(left, paper.y(), heading_of(report), 7, ink);
  paper.skip(7);
  paper.text(left, paper.y(),
             name + QStringLiteral(" · as of ") + QString::fromStdString(report.as_of.iso()), 3.6,
             quiet);
  paper.skip(10);
  heading(paper, report);
  for (const auto place : report.ranking)
    cross_row(paper, report.crosses[place]);
  paper.skip(2);
  methods(paper, report);
  paper.skip(6);
  chart_of_all(paper, report);
  paper.need(row_height * 5);
  paper.text(left, paper.y(), QStringLiteral("By tray"), 5, ink);
  paper.skip(7);
  heading(paper, report);
  for (const auto place : report.ranking)
    tray_rows(paper, report, report.crosses[place]);
  for (const auto& [code, why] : report.left_out) {
    paper.need(row_height);
    paper.fitted(left, right - left,
                 QString::fromStdString(phrase("{} left out: {}", code.text(), why)), 3, quiet);
    paper.skip(row_height);
  }
  return paper.pages();
}

} // namespace

Result<ReportPrinted> germination_pdf(const std::string& path,
                                      const report::GerminationReport& report) {
  const auto failed = [&](const QString& why) {
    return refuse(fault(phrase("'{}' could not be written: {}", path, why.toStdString()),
                        "Check folder and disk."));
  };
  QSaveFile file(QString::fromStdString(path));
  if (!file.open(QIODevice::WriteOnly))
    return failed(file.errorString());
  int pages = 0;
  {
    QPdfWriter writer(&file);
    writer.setResolution(paper::dots_an_inch);
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
