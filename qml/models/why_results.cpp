// SPDX-License-Identifier: GPL-3.0-or-later
#include "why_results.h"

#include "core/work/temperature.h"
#include "wording.h"

#include <QPointF>
#include <fmt/format.h>

namespace coneline::window {

namespace {

QString all_taxa() {
  return phrased("all taxa");
}

QString percent(double share) {
  return shown(100 * share, 0);
}

QString points(double difference) {
  return shown_signed(100 * difference, 0);
}

/// "12 to 31 points more, likely 21": the range first.
QString difference_text(const std::optional<work::ShareDifference>& found) {
  if (!found)
    return {};
  return phrased("{} to {}, likely {}", points(found->low), points(found->high),
                 points(found->difference));
}

QVariantList stepped(const std::vector<report::CurvePoint>& curve) {
  QVariantList corners;
  double before = 0;
  for (const auto& [day, share] : curve) {
    corners << QPointF(day, 100 * before) << QPointF(day, 100 * share);
    before = share;
  }
  return corners;
}

QString counts_of(const work::WhyLevel& level) {
  return phrased("{} of {} sown, {} of {}", shown(level.germinated), shown(level.sown),
                 phrase_n(static_cast<std::int64_t>(level.trays), "{} tray", "{} trays"),
                 phrase_n(static_cast<std::int64_t>(level.cones), "{} cone", "{} cones"));
}

} // namespace

WhyResults::WhyResults(QObject* parent)
    : QObject(parent), levels_({"level", "counts", "range", "low", "high", "likely", "alone",
                                "together", "reference"},
                               this),
      series_({"name", "points", "style"}, this) {}

void WhyResults::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &WhyResults::read);
  read();
}

Result<std::optional<double>> WhyResults::day_asked() const {
  if (by_day_.trimmed().isEmpty())
    return std::optional<double>();
  const auto day = read_number(by_day_);
  if (!day || !(*day > 0))
    return refuse(
        coneline::fault("this is no day after sowing", "Write a number above 0, or nothing."));
  return std::optional(*day);
}

void WhyResults::read() {
  why_.reset();
  fault_.clear();
  const auto day = day_asked();
  if (!day)
    fault_ = fault_shown(day.error());
  work::WhyAsked asked;
  asked.as_of = session_->today();
  asked.taxon = taxon_;
  if (day)
    asked.by_day = *day;
  if (day)
    why_ = session_->ask([&](store::Reading& reading) {
      const auto registers = reading.registers();
      const auto trays = work::observed_trays(reading, registers, asked.as_of);
      asked.celsius = work::celsius_of_trays(work::Warmth(reading, registers, {}), trays);
      return work::why(reading, asked);
    });
  show();
}

void WhyResults::show() {
  std::vector<Rows::Row> levels;
  std::vector<Rows::Row> series;
  sentences_.clear();
  across_ = 1;
  if (const auto* condition = chosen()) {
    for (const auto& level : condition->levels)
      levels.push_back({text(level.level), counts_of(level),
                        phrased("{}–{} %, likely {} %", percent(level.range.low),
                                percent(level.range.high), percent(level.share)),
                        level.range.low, level.range.high, level.share,
                        difference_text(level.alone), difference_text(level.together),
                        level.reference});
    constexpr std::size_t most_lines = 5;
    const auto curves = report::why_curves(*why_, *condition);
    for (std::size_t i = 0; i < std::min(most_lines, curves.size()); ++i) {
      series.push_back({text(curves[i].level), stepped(curves[i].curve), "solid"});
      across_ = std::max(across_, curves[i].curve.back().day);
    }
    if (curves.size() > most_lines)
      sentences_ << phrased("The chart shows the {} with most seed.", most_lines);
    if (!condition->told.empty())
      sentences_ << text(condition->told);
    if (const auto& slope = condition->slope; slope && slope->alone)
      sentences_ << phrased("{}: {} points in a hundred", slope->each,
                            difference_text(slope->alone)) +
                        (slope->together ? phrased("; the others held as they were {}",
                                                   difference_text(slope->together))
                                         : QString());
  }
  levels_.replace(std::move(levels));
  series_.replace(std::move(series));
  emit told();
}

const work::WhyCondition* WhyResults::chosen() const {
  return why_ && condition_ < why_->conditions.size() ? &why_->conditions[condition_] : nullptr;
}

void WhyResults::choose(const QString& condition) {
  for (std::size_t i = 0; i < work::all_conditions.size(); ++i)
    if (text(work::condition_title(work::all_conditions.at(i))) == condition)
      condition_ = i;
  show();
}

void WhyResults::choose_taxon(const QString& taxon) {
  taxon_.reset();
  for (const auto& one : session_->standing().registers.taxa)
    if (text(one.name) == taxon)
      taxon_ = one.id;
  read();
}

void WhyResults::set_by_day(const QString& days) {
  by_day_ = days;
  read();
}

QStringList WhyResults::conditions() const {
  QStringList titles;
  for (const auto condition : work::all_conditions)
    titles << phrased_of(work::condition_title(condition));
  return titles;
}

QString WhyResults::condition() const {
  return phrased_of(work::condition_title(work::all_conditions.at(condition_)));
}

QStringList WhyResults::taxa() const {
  QStringList names{all_taxa()};
  if (session_ != nullptr)
    for (const auto& taxon : session_->standing().registers.taxa)
      names << text(taxon.name);
  return names;
}

QString WhyResults::taxon() const {
  if (taxon_)
    for (const auto& taxon : session_->standing().registers.taxa)
      if (taxon.id == *taxon_)
        return text(taxon.name);
  return all_taxa();
}

QString WhyResults::cautions() const {
  return why_ ? text(why_->told) : QString();
}

} // namespace coneline::window
