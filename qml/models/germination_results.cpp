// SPDX-License-Identifier: GPL-3.0-or-later
#include "germination_results.h"

#include "core/report/cross_chart.h"
#include "core/report/cross_said.h"
#include "core/report/report_file.h"
#include "labels/print/report_pdf.h"
#include "wording.h"

#include <QPointF>

namespace coneline::window {

namespace {

QString percent(double share) {
  return shown(100 * share, 0);
}

/// "41–58 %, now 50 %": the range comes first.
QString range_of(const stats::FinalShare& final) {
  if (!final.share || !final.range)
    return phrased("no figure yet");
  return phrased("{}–{} %, likely {} %", percent(final.range->low), percent(final.range->high),
                 percent(*final.share));
}

QString expected(const report::CrossReport& cross) {
  const auto more = cross.expected();
  if (more.high == 0)
    return phrased("no more expected");
  return phrased("{} more expected, likely {}", range(more.low, more.high), shown(more.median));
}

QVariantList points_of(const std::vector<report::CurvePoint>& curve) {
  QVariantList points;
  for (const auto& [day, share] : curve)
    points << QPointF(day, 100 * share);
  return points;
}

QString name_shown(const report::CrossReport& cross) {
  return text(report::name_said(cross, work::Days::as_read));
}

QString alike_of(const report::CrossReport& cross) {
  return cross.alike.empty() ? QString() : phrased("alike: {}", cross.alike);
}

} // namespace

GerminationResults::GerminationResults(QObject* parent)
    : QObject(parent),
      crosses_({"name", "taxon", "counts", "range", "low", "high", "likely", "expected", "alike"},
               this),
      trays_({"code", "what", "range", "low", "high", "likely", "told"}, this),
      series_({"name", "points", "style"}, this) {}

void GerminationResults::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &GerminationResults::read);
  read();
}

void GerminationResults::read() {
  report::Asked asked_of{session_->today()};
  asked_of.by = by_;
  if (in_degree_days_)
    asked_of.degree_days.emplace();
  if (!session_->is_open())
    return;
  reckoning_ = true;
  fault_.clear();
  emit asked();
  aside_->ask(
      plain(session_->path()),
      [asked_of](store::Reading& reading) { return report::germination_report(reading, asked_of); },
      [this](Result<report::GerminationReport> made) {
        reckoning_ = false;
        fault_ = made ? QString() : fault_shown(made.error());
        report_.reset();
        if (made)
          report_ = std::move(*made);
        show();
      });
}

void GerminationResults::show() {
  std::vector<Rows::Row> rows;
  if (report_)
    for (const auto place : report_->ranking) {
      const auto& cross = report_->crosses[place];
      const auto& final = cross.figures.final;
      rows.push_back({name_shown(cross), text(cross.taxon),
                      phrased_n(std::int64_t(cross.trays.size()), "{1} of {2} sown, {0} tray",
                                "{1} of {2} sown, {0} trays", shown(cross.figures.germinated),
                                shown(cross.figures.sown)),
                      range_of(final), final.range ? final.range->low : 0.0,
                      final.range ? final.range->high : 0.0, final.share.value_or(-1),
                      expected(cross), alike_of(cross)});
    }
  crosses_.replace(std::move(rows));
  emit asked();
  choose(chosen_);
}

void GerminationResults::choose(int row) {
  chosen_ = row;
  std::vector<Rows::Row> trays;
  std::vector<Rows::Row> series;
  if (const auto* one = cross()) {
    const auto chart = report::cross_chart(*one);
    series.push_back({phrased("seen at each look"), points_of(chart.steps), "solid"});
    if (!chart.fitted.empty())
      series.push_back({phrased("fitted curve"), points_of(chart.fitted), "dash"});
    for (const auto& tray : one->trays) {
      const auto& final = tray.figures.final;
      trays.push_back({text(tray.seen.lot.code.text()),
                       phrased("{} of {}", shown(tray.germinated), shown(tray.seen.sown)),
                       range_of(final), final.range ? final.range->low : 0.0,
                       final.range ? final.range->high : 0.0, final.share.value_or(-1),
                       text(tray.told)});
    }
  }
  series_.replace(std::move(series));
  trays_.replace(std::move(trays));
  emit chosenChanged();
}

const report::CrossReport* GerminationResults::cross() const {
  if (!report_ || chosen_ < 0 || chosen_ >= static_cast<int>(report_->ranking.size()))
    return nullptr;
  return &report_->crosses[report_->ranking[static_cast<std::size_t>(chosen_)]];
}

QString GerminationResults::name() const {
  return cross() ? name_shown(*cross()) : QString();
}

QString GerminationResults::told() const {
  return cross() ? text(cross()->told) : QString();
}

QStringList GerminationResults::sentences() const {
  const auto* one = cross();
  if (!one)
    return {};
  QStringList all{
      phrased("{} of the seed sown, by {}", range_of(one->figures.final), session_->today_shown()),
      expected(*one)};
  if (const auto half = one->together.t50_farooq)
    all << (in_days()
                ? phrased("half of what came up was up by day {}", shown(*half, 0))
                : phrased("half of what came up was up after {} {}", shown(*half, 0), unit()));
  if (one->leaf.days_from_root)
    all << phrased("from root to first leaf {} days in the middle",
                   shown(*one->leaf.days_from_root, 0));
  return all;
}

QString GerminationResults::save(const QString& form) {
  if (!report_)
    return phrased("nothing to write yet");
  const auto ending = form.toLower();
  auto path = Session::path_of(session_->path());
  const auto name = path.stem().string() + " germination " + std::string(by_word(by_)) + " " +
                    report_->as_of.iso() + "." + plain(ending);
  path.replace_filename(name);
  const auto written = ending == "pdf"
                           ? labels::germination_pdf(path.string(), *report_).map([](auto) {})
                           : report::write_germination(*report_, plain(ending), path);
  return written ? QString::fromStdString(path.string()) : fault_shown(written.error());
}

QVariantList GerminationResults::band() const {
  QVariantList points;
  if (cross())
    for (const auto& [day, low, high] : report::cross_chart(*cross()).band)
      points << QVariantMap{{"x", day}, {"low", 100 * low}, {"high", 100 * high}};
  return points;
}

void GerminationResults::set_by(const QString& by) {
  by_ = by == QStringLiteral("season")             ? report::By::season
        : by == QStringLiteral("cross and season") ? report::By::cross_and_season
                                                   : report::By::cross;
  chosen_ = 0;
  read();
}

QString GerminationResults::by() const {
  return by_ == report::By::season  ? QStringLiteral("season")
         : by_ == report::By::cross ? QStringLiteral("cross")
                                    : QStringLiteral("cross and season");
}

void GerminationResults::set_time(const QString& time) {
  in_degree_days_ = time == QStringLiteral("degree-days");
  read();
}

QString GerminationResults::time() const {
  return in_degree_days_ ? QStringLiteral("degree-days") : QStringLiteral("days");
}

QString GerminationResults::unit() const {
  return report_ ? text(report_->time_unit_said()) : QString();
}

QString GerminationResults::remarks() const {
  if (!report_)
    return {};
  QStringList lines;
  if (report_->degree_days)
    lines << text(report::lacking_told(*report_));
  if (report_->crosses.size() > 1) {
    lines << text(report::alike_method_told());
    for (const auto& sentence : report::alike_told(*report_))
      lines << text(sentence);
  }
  lines << text(report::band_told());
  return lines.join('\n');
}

double GerminationResults::last_day() const {
  return cross() && !cross()->curve.empty() ? std::max(1.0, cross()->curve.back().day) : 1.0;
}

double GerminationResults::coming_low() const {
  const auto* one = cross();
  if (!one || one->figures.sown == 0)
    return 0;
  return 100 * static_cast<double>(one->figures.germinated + one->expected().low) /
         static_cast<double>(one->figures.sown);
}

double GerminationResults::coming_high() const {
  const auto* one = cross();
  if (!one || one->figures.sown == 0)
    return 0;
  return 100 * static_cast<double>(one->figures.germinated + one->expected().high) /
         static_cast<double>(one->figures.sown);
}

QString GerminationResults::left_out() const {
  QStringList lines;
  if (report_)
    for (const auto& tray : report_->left_out)
      lines << phrased("{} is left out: {}", tray.code.text(), tray.why);
  return lines.join('\n');
}

} // namespace coneline::window
