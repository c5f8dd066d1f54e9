// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_ahead.h"

#include "core/plan/compared.h"
#include "core/plan/forecast_expected.h"
#include "core/plan/offered.h"
#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/report/forecast_paper.h"
#include "core/report/forecast_report.h"
#include "core/report/sowings_input.h"
#include "core/report/whole_file.h"
#include "plan_words.h"
#include "wording.h"

#include <QFileInfo>

#include <array>

namespace coneline::window {

namespace {

using plan::Shown;

constexpr int runs = 4000;

/// As they stand down the page: what goes on, what it takes, where it stands, what leaves.
constexpr std::array<Shown, 10> in_order{
    Shown::into, Shown::standing, Shown::mix,          Shown::part,       Shown::square_metres,
    Shown::load, Shown::ready,    Shown::place_metres, Shown::place_load, Shown::unplaced_metres};

double capacity_of(const plan::SeriesName& series, const book::Registers& registers) {
  if (series.shown == Shown::square_metres) {
    for (const auto& [light, offered] : plan::offered_square_metres(registers.places))
      if (book::word(light) == series.name)
        return offered;
    return 0;
  }
  if (series.shown == Shown::place_metres)
    if (const auto* place = book::named(registers.places, series.name))
      return place->square_metres();
  return -1;
}

/// Each sorts the runs of a month, which takes a while for all of them.
std::vector<std::vector<plan::Likely>> ranges_of(const plan::Forecast& forecast) {
  std::vector<std::vector<plan::Likely>> ranges;
  for (std::size_t at = 0; at < forecast.series().size(); ++at) {
    auto& of = ranges.emplace_back();
    for (std::size_t month = 0; month < forecast.months().size(); ++month)
      of.push_back(forecast.range(at, month));
  }
  return ranges;
}

/// What stands as one group.
QString group_of(Shown shown) {
  switch (shown) {
  case Shown::into:
    return PlanAhead::tr("Plants into pots");
  case Shown::standing:
    return PlanAhead::tr("Plants standing");
  case Shown::mix:
    return PlanAhead::tr("Finished mix");
  case Shown::part:
    return PlanAhead::tr("Parts of the mixes");
  case Shown::square_metres:
    return PlanAhead::tr("Bench by light");
  case Shown::load:
    return PlanAhead::tr("Load by light");
  case Shown::ready:
    return PlanAhead::tr("Ready, by cross");
  case Shown::place_metres:
    return PlanAhead::tr("Bench by place");
  case Shown::place_load:
    return PlanAhead::tr("Load by place");
  case Shown::unplaced_metres:
    return PlanAhead::tr("Without a place yet");
  }
  return {};
}

} // namespace

PlanAhead::PlanAhead(QObject* parent)
    : PlanPart(parent), rows_({"group", "name", "unit", "happens", "low", "middle", "high",
                               "capacity", "highest", "told"},
                              this),
      cells_({"month", "range", "over"}, this), lots_({"code", "value"}, this) {}

void PlanAhead::set_horizon(int months) {
  horizon_ = months;
  reckon();
}

void PlanAhead::set_sowings(bool counted) {
  sowings_ = counted;
  reckon();
}

void PlanAhead::reckon() {
  ask(
      [today = session_ == nullptr ? Date() : session_->today(), months = horizon_,
       sowings = sowings_](store::Reading& reading,
                           Course& course) -> Result<std::shared_ptr<const Drawn>> {
        auto input = report::forecast_input(reading, today, months,
                                            report::assumptions_in(reading.registers()));
        if (sowings)
          report::add_sowings(input, reading, {true, true});
        auto forecast = plan::forecast_of(input, futures(runs, course));
        if (!forecast)
          return refuse(forecast.error());
        auto ranges = ranges_of(*forecast);
        return std::make_shared<const Drawn>(
            Drawn{std::move(input), *std::move(forecast), std::move(ranges)});
      },
      [this](std::shared_ptr<const Drawn> drawn) {
        drawn_ = std::move(drawn);
        tell();
      });
}

void PlanAhead::tell() {
  if (!drawn_)
    return;
  const auto& [input, forecast, ranges] = *drawn_;
  months_.clear();
  for (const auto month : forecast.months())
    months_ << month_shown(month);
  crowding_.clear();
  for (const auto& sentence : report::crowding_told(forecast, input.standing.registers))
    crowding_ << text(sentence);
  remarks_.clear();
  for (const auto& lot : forecast.ways().left_out)
    remarks_ << text(lot.code.text()) + QStringLiteral(": ") + text(lot.why);
  for (const auto& remark : forecast.ways().remarks)
    remarks_ << text(remark);
  for (const auto& rule : report::forecast_rules(input))
    remarks_ << text(rule);
  tell_rows();
  if (opened() < 0)
    opened_.reset();
  tell_cells();
}

void PlanAhead::tell_rows() {
  const auto& [input, forecast, ranges] = *drawn_;
  std::vector<Rows::Row> rows;
  series_.clear();
  for (const auto kind : in_order)
    for (std::size_t at = 0; at < forecast.series().size(); ++at) {
      const auto& series = forecast.series()[at];
      if (series.shown != kind)
        continue;
      QVariantList low;
      QVariantList middle;
      QVariantList high;
      double highest = 0;
      std::size_t peak = 0;
      for (std::size_t month = 0; month < forecast.months().size(); ++month) {
        const auto& range = ranges[at][month];
        low << range.low;
        middle << range.middle;
        high << range.high;
        if (range.high > highest) {
          highest = range.high;
          peak = month;
        }
      }
      const double capacity = capacity_of(series, input.standing.registers);
      if (highest <= 0 && capacity < 0)
        continue;
      const auto& range = ranges[at][peak];
      const auto told = highest <= 0 ? tr("nothing")
                                     : tr("most in %1: %2 %3")
                                           .arg(month_shown(forecast.months()[peak]),
                                                plan_range(kind, range, report::decimals_of(kind)),
                                                plan_unit(kind));
      series_.push_back(at);
      rows.push_back({group_of(kind), text(report::name_said(series)), plan_unit(kind),
                      plan::happens(kind), low, middle, high, capacity, std::max(highest, capacity),
                      told});
    }
  rows_.replace(std::move(rows));
}

int PlanAhead::opened() const {
  if (!drawn_ || !opened_)
    return -1;
  const auto& series = drawn_->forecast.series();
  const auto found =
      std::ranges::find_if(series_, [&](std::size_t at) { return series[at] == *opened_; });
  return found == series_.end() ? -1 : static_cast<int>(found - series_.begin());
}

void PlanAhead::open(int row) {
  if (!drawn_ || row == opened() || row < 0 || row >= static_cast<int>(series_.size()))
    opened_.reset();
  else
    opened_ = drawn_->forecast.series()[series_[static_cast<std::size_t>(row)]];
  month_ = -1;
  tell_cells();
}

void PlanAhead::look_at(int month) {
  month_ = month;
  tell_lots();
  emit openedChanged();
}

void PlanAhead::tell_cells() {
  std::vector<Rows::Row> cells;
  if (const int row = opened(); row >= 0) {
    const auto& [input, forecast, ranges] = *drawn_;
    const auto at = series_[static_cast<std::size_t>(row)];
    const auto& series = forecast.series()[at];
    const double capacity = capacity_of(series, input.standing.registers);
    constexpr double per_cent = 100;
    for (std::size_t month = 0; month < forecast.months().size(); ++month) {
      const double over = capacity < 0 ? 0 : forecast.share_above(at, month, capacity + 1e-4);
      cells.push_back(
          {month_shown(forecast.months()[month]),
           plan_range(series.shown, ranges[at][month], report::decimals_of(series.shown)),
           over > 0 ? tr("over full with %1 %").arg(shown(per_cent * over, 0)) : QString()});
    }
  }
  cells_.replace(std::move(cells));
  tell_lots();
  emit openedChanged();
}

void PlanAhead::tell_lots() {
  std::vector<Rows::Row> lots;
  made_of_.clear();
  if (const int row = opened(); row >= 0 && month_ >= 0 && month_ < months_.size()) {
    const auto& [input, forecast, ranges] = *drawn_;
    const auto at = series_[static_cast<std::size_t>(row)];
    const auto month = static_cast<std::size_t>(month_);
    const auto kind = forecast.series()[at].shown;
    if (kind == Shown::load) {
      made_of_ = tr("A load by light class is a quotient of all lots; open the load of a place.");
    } else {
      const int decimals = std::max(1, report::decimals_of(kind));
      double sum = forecast.ways().always[at];
      for (const auto& lot : plan::made_of(forecast.ways(), input, at, month)) {
        sum += lot.values[month];
        lots.push_back({text(lot.lot), plan_value(kind, lot.values[month], decimals)});
      }
      made_of_ = tr("%1 in %2: %3 %4 expected, from")
                     .arg(text(report::name_said(forecast.series()[at])), months_[month_],
                          plan_value(kind, sum, decimals), plan_unit(kind));
    }
  }
  lots_.replace(std::move(lots));
}

QString PlanAhead::usualPath(const QString& ending) const {
  return beside(QStringLiteral("season-plan.") + ending);
}

bool PlanAhead::save(const QString& path) {
  if (!drawn_)
    return false;
  const auto& [input, forecast, ranges] = *drawn_;
  const auto ending = QFileInfo(path).suffix().toLower();
  if (ending == "csv")
    return tell_saved(
        path, report::write_whole(Session::path_of(path),
                                  report::forecast_csv(forecast, input.standing.registers.title)));
  return save_paper(path, ending == "xlsx" ? report::forecast_sheets(forecast, input)
                                           : report::forecast_paper(forecast, input));
}

void PlanAhead::copy() {
  if (!drawn_)
    return;
  const auto& [input, forecast, ranges] = *drawn_;
  if (opened() >= 0) {
    using report::Word;
    report::PlanTable table{"", {Word{"month"}, Word{"range"}, Word{"over"}}, {}};
    for (int row = 0; row < cells_.size(); ++row)
      table.rows.push_back({plain(cells_.value(row, "month").toString()),
                            plain(cells_.value(row, "range").toString()),
                            plain(cells_.value(row, "over").toString())});
    copy_out(report::tabbed(table));
    return;
  }
  std::string all;
  for (const auto& table : report::forecast_sheets(forecast, input).tables)
    all += table.name + "\n" + report::tabbed(table) + "\n";
  copy_out(all);
}

} // namespace coneline::window
