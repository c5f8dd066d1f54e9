// SPDX-License-Identifier: GPL-3.0-or-later
#include "germination_results.h"

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
    return QStringLiteral("no figure yet");
  return percent(final.range->low) + QChar(0x2013) + percent(final.range->high) + " %, likely " +
         percent(*final.share) + " %";
}

QString expected(const report::CrossReport& cross) {
  const auto& more = cross.figures.still_expected;
  if (more.high == 0)
    return QStringLiteral("no more expected");
  return range(more.low, more.high) + " more expected, likely " + shown(more.median);
}

QVariantList stepped(const std::vector<report::CurvePoint>& curve) {
  QVariantList points{QPointF(0, 0)};
  double before = 0;
  for (const auto& point : curve) {
    points << QPointF(point.day, 100 * before) << QPointF(point.day, 100 * point.share);
    before = point.share;
  }
  return points;
}

QVariantList fitted(const stats::Curve& curve, double until) {
  constexpr int pieces = 80;
  QVariantList points;
  for (int i = 0; i <= pieces; ++i) {
    const auto day = until * i / pieces;
    points << QPointF(day, day > 0 ? 100 * curve.germinated_by(day) : 0.0);
  }
  return points;
}

} // namespace

GerminationResults::GerminationResults(QObject* parent)
    : QObject(parent),
      crosses_({"name", "taxon", "counts", "range", "low", "high", "likely", "expected"}, this),
      trays_({"code", "what", "range", "low", "high", "likely", "told"}, this),
      series_({"name", "points", "style"}, this) {}

void GerminationResults::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &GerminationResults::read);
  read();
}

void GerminationResults::read() {
  const auto day = session_->today();
  report_ = session_->ask(
      [day](store::Reading& reading) { return report::germination_report(reading, {day}); });
  std::vector<Rows::Row> rows;
  if (report_)
    for (const auto& cross : report_->crosses) {
      const auto& final = cross.figures.final;
      rows.push_back({text(cross.name), text(cross.taxon),
                      shown(cross.figures.germinated) + " of " + shown(cross.figures.sown) +
                          " sown, " + shown(std::int64_t(cross.trays.size())) +
                          (cross.trays.size() == 1 ? " tray" : " trays"),
                      range_of(final), final.range ? final.range->low : 0.0,
                      final.range ? final.range->high : 0.0, final.share.value_or(-1),
                      expected(cross)});
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
    series.push_back({QStringLiteral("seen at each look"), stepped(one->curve), "solid"});
    if (one->figures.curve)
      series.push_back(
          {QStringLiteral("fitted curve"), fitted(one->figures.curve->curve, horizon()), "dash"});
    for (const auto& tray : one->trays) {
      const auto& final = tray.figures.final;
      trays.push_back({text(tray.seen.lot.code.text()),
                       shown(tray.germinated) + " of " + shown(tray.seen.sown), range_of(final),
                       final.range ? final.range->low : 0.0, final.range ? final.range->high : 0.0,
                       final.share.value_or(-1), text(tray.told)});
    }
  }
  series_.replace(std::move(series));
  trays_.replace(std::move(trays));
  emit chosenChanged();
}

const report::CrossReport* GerminationResults::cross() const {
  if (!report_ || chosen_ < 0 || chosen_ >= static_cast<int>(report_->crosses.size()))
    return nullptr;
  return &report_->crosses[static_cast<std::size_t>(chosen_)];
}

QString GerminationResults::name() const {
  return cross() ? text(cross()->name) : QString();
}

QString GerminationResults::told() const {
  return cross() ? text(cross()->told) : QString();
}

QStringList GerminationResults::sentences() const {
  const auto* one = cross();
  if (!one)
    return {};
  QStringList all{range_of(one->figures.final) + " of the seed sown, by " + session_->today_shown(),
                  expected(*one)};
  if (const auto half = one->together.t50_coolbear)
    all << "half of what came up was up by day " + shown(*half, 0);
  if (one->leaf.days_from_root)
    all << "from root to first leaf " + shown(*one->leaf.days_from_root, 0) + " days in the middle";
  return all;
}

double GerminationResults::last_day() const {
  return cross() && !cross()->curve.empty() ? std::max(1.0, cross()->curve.back().day) : 1.0;
}

double GerminationResults::coming_low() const {
  const auto* one = cross();
  if (!one || one->figures.sown == 0)
    return 0;
  return 100 * static_cast<double>(one->figures.germinated + one->figures.still_expected.low) /
         static_cast<double>(one->figures.sown);
}

double GerminationResults::coming_high() const {
  const auto* one = cross();
  if (!one || one->figures.sown == 0)
    return 0;
  return 100 * static_cast<double>(one->figures.germinated + one->figures.still_expected.high) /
         static_cast<double>(one->figures.sown);
}

QString GerminationResults::left_out() const {
  QStringList lines;
  if (report_)
    for (const auto& tray : report_->left_out)
      lines << text(tray.code.text()) + " is left out: " + text(tray.why);
  return lines.join('\n');
}

} // namespace coneline::window
