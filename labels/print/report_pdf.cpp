// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/report_pdf.h"

#include "core/base/heading.h"
#include "core/base/phrase.h"
#include "core/report/cross_said.h"
#include "core/report/title_said.h"
#include "labels/print/report_charts.h"

#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include <cmath>

namespace coneline::labels {

namespace {

using paper::ink;
using paper::left;
using paper::quiet;
using paper::right;
using paper::rule;
constexpr double row_height = 6.4;
constexpr double first_tray = 76; ///< from a cross's name to its first tray, its chart between

QString said(const std::string& words) {
  return QString::fromStdString(words);
}

QString per_cent(const std::optional<double>& share) {
  return share ? said(phrase("{:.1f}", *share * 100)) : QStringLiteral("–");
}

QString number(const std::optional<double>& value, int decimals) {
  return value && std::isfinite(*value) ? said(decimal_said(*value, decimals))
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
  // Narrow columns stand beside each other; every other heading has a line of its own above, since
  // another language may need twice the room.
  constexpr double line_above = 3.6;
  paper.skip(line_above);
  const auto column = [&](double at, const std::string& words, Qt::Alignment side,
                          double above = 0) {
    paper.text(at, paper.y() - above, said(words), 2.8, quiet, side);
  };
  column(left, report::ranked_said(report), Qt::AlignLeft);
  column(alike_at, as_heading("alike"), Qt::AlignLeft, line_above);
  column(sown_at, as_heading("sown"), Qt::AlignRight);
  column(germinated_at, as_heading("up"), Qt::AlignRight, line_above);
  column(share_at, phrase("{:g} % range, share, %", 100 * report.confidence), Qt::AlignRight);
  column(bar_from, "0", Qt::AlignLeft);
  column(bar_to, "100 %", Qt::AlignRight);
  column(t50_at, "T50", Qt::AlignRight);
  column(right, report.degree_days ? phrase("mean °C·d") : phrase("mean days"), Qt::AlignRight);
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
  const auto names = paper.lines_of(said(report::name_said(cross)), name_width, 3.4);
  const auto about = paper.lines_of(
      said(cross.taxon + (cross.told.empty() ? "" : " · " + cross.told)), right - left, 2.7);
  paper.need(row_height * 2 + Paper::below_first(names, 3.4) + Paper::below_first(about, 2.7));
  paper.text(alike_at, paper.y(), said(cross.alike), 3.2, ink);
  paper.text(sown_at, paper.y(), QString::number(cross.figures.sown), 3.4, ink, Qt::AlignRight);
  paper.text(germinated_at, paper.y(), QString::number(cross.figures.germinated), 3.4, ink,
             Qt::AlignRight);
  paper.text(share_at, paper.y(), range_and_share(cross.figures.final), 3.2, ink, Qt::AlignRight);
  range_bar(paper, cross.figures.final);
  paper.text(t50_at, paper.y(), number(cross.together.t50_farooq, 0), 3.4, ink, Qt::AlignRight);
  paper.text(right, paper.y(), number(cross.together.mean_time, 0), 3.4, ink, Qt::AlignRight);
  paper.stand(left, names, 3.4, ink);
  paper.skip(4);
  paper.stand(left, about, 2.7, quiet);
  paper.skip(row_height - 0.6);
}

/// How many more are expected, as a range first.
QString expected(const report::CrossReport& cross) {
  const auto more = cross.expected();
  if (more.high == 0)
    return said(phrase("No more expected."));
  return said(phrase("Still expected: {}–{}, likely {}.", more.low, more.high, more.median));
}

void tray_rows(Paper& paper, const report::GerminationReport& report,
               const report::CrossReport& cross) {
  const auto name = report::name_said(cross);
  const auto names = paper.lines_of(said(name), right - left, 3.6);
  const auto told = paper.lines_of(
      expected(cross) + said(phrase(" As of {}.", report.as_of.iso())) +
          (cross.known ? said(phrase(" It leans on {}.", cross.known->beforehand)) : QString()),
      right - left, 2.8);
  paper.need(first_tray + Paper::below_first(names, 3.6) + Paper::below_first(told, 2.8));
  paper.stand(left, names, 3.6, ink);
  paper.skip(4.4);
  paper.stand(left, told, 2.8, paper::forecast);
  paper.skip(3.5);
  chart_of_cross(paper, report, cross);
  paper.head_pages([&] {
    heading(paper, report);
    paper.stand(left, paper.lines_of(said(phrase("{}, continued", name)), right - left, 3.6), 3.6,
                ink);
    paper.skip(row_height - 1);
  });
  for (const auto& tray : cross.trays) {
    paper.need(row_height);
    paper.text(left + 3, paper.y(), said(tray.seen.lot.code.text()), 3.2, ink);
    paper.text(left + 26, paper.y(), said(phrase("sown {}", tray.seen.sown_on.iso())), 3, quiet);
    paper.text(sown_at, paper.y(), QString::number(tray.seen.sown), 3.2, ink, Qt::AlignRight);
    paper.text(germinated_at, paper.y(), QString::number(tray.germinated), 3.2, ink,
               Qt::AlignRight);
    paper.text(share_at, paper.y(), range_and_share(tray.figures.final), 3, ink, Qt::AlignRight);
    range_bar(paper, tray.figures.final);
    paper.text(t50_at, paper.y(), number(tray.figures.measures.t50_farooq, 0), 3.2, ink,
               Qt::AlignRight);
    paper.text(right, paper.y(), number(tray.figures.measures.mean_time, 0), 3.2, ink,
               Qt::AlignRight);
    paper.skip(row_height - 1);
  }
  paper.skip(3);
}

/// What letters, ranges and bands mean, and which crosses cannot be told apart.
void methods(Paper& paper, const report::GerminationReport& report) {
  const auto say = [&](const std::string& words) { paper.wrapped(said(words), 2.8, quiet); };
  if (report.crosses.size() > 1)
    say(report::alike_method_told());
  for (const auto& sentence : report::alike_told(report))
    paper.wrapped(said(sentence), 3, ink);
  say(report::band_told());
  if (report.degree_days)
    say(report::lacking_told(report));
}

int write(QPdfWriter& writer, const report::GerminationReport& report) {
  const auto about =
      said(phrase("{} · as of {}", report::title_said(report.title), report.as_of.iso()));
  Paper paper(writer, about);
  if (!paper.ready())
    return 0;
  paper.skip(4);
  paper.text(left, paper.y(), said(report::title_of(report)), 7, ink);
  paper.skip(7);
  paper.text(left, paper.y(), about, 3.6, quiet);
  paper.skip(10);
  const auto head = [&] { heading(paper, report); };
  head();
  paper.head_pages(head);
  for (const auto place : report.ranking)
    cross_row(paper, report.crosses[place]);
  paper.head_pages(nullptr);
  paper.skip(2);
  methods(paper, report);
  paper.skip(6);
  chart_of_all(paper, report);
  paper.need(row_height * 3 + first_tray);
  paper.text(left, paper.y(), said(phrase("By tray")), 5, ink);
  paper.skip(7);
  head();
  for (const auto place : report.ranking) {
    paper.head_pages(head);
    tray_rows(paper, report, report.crosses[place]);
  }
  paper.head_pages(nullptr);
  for (const auto& [code, why] : report.left_out) {
    const auto lines =
        paper.lines_of(said(phrase("{} left out: {}", code.text(), why)), right - left, 3);
    paper.need(row_height + Paper::below_first(lines, 3));
    paper.stand(left, lines, 3, quiet);
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
    writer.setTitle(said(report::title_of(report)));
    pages = write(writer, report);
  }
  if (pages == 0 || !file.commit())
    return failed(file.errorString());
  return ReportPrinted{pages};
}

} // namespace coneline::labels
