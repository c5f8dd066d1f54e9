// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_ahead.h"

#include "core/plan/compared.h"
#include "core/plan/forecast_expected.h"
#include "core/plan/offered.h"
#include "core/plan/shown_units.h"
#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/report/forecast_paper.h"
#include "core/report/forecast_report.h"
#include "core/report/sowings_input.h"
#include "core/report/whole_file.h"
#include "labels/print/plan_pdf.h"
#include "wording.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>

#include <array>

namespace coneline::window {

namespace {

using plan::Shown;

constexpr int runs = 4000;

/// As they stand down the page: what goes on, what it takes, where it stands, what leaves.
constexpr std::array<Shown, 10> in_order{
    Shown::into, Shown::standing, Shown::mix,          Shown::part,       Shown::square_metres,
    Shown::load, Shown::ready,    Shown::place_metres, Shown::place_load, Shown::unplaced_metres};

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

QString unit_of(Shown shown) {
  return text(plan::readers_unit(shown));
}

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

QString month_shown(Date month) {
  return QLocale().toString(QDate(month.year(), static_cast<int>(month.month()), 1),
                            QStringLiteral("MMM yy"));
}

QString range_shown(const plan::Likely& range, Shown kind) {
  if (range.high <= 0)
    return QStringLiteral("–");
  const int decimals = report::decimals_of(kind);
  const auto point = [&](double value) {
    return shown(plan::in_readers_units(kind, value), decimals);
  };
  return point(range.low) + QStringLiteral(" – ") + point(range.middle) + QStringLiteral(" – ") +
         point(range.high);
}

} // namespace

PlanAhead::PlanAhead(QObject* parent)
    : QObject(parent), rows_({"group", "name", "unit", "happens", "low", "middle", "high",
                              "capacity", "highest", "told"},
                             this),
      cells_({"month", "range", "over"}, this), lots_({"code", "value"}, this), aside_(this) {
  look_.setInterval(100);
  connect(&look_, &QTimer::timeout, this, &PlanAhead::progressed);
}

PlanAhead::~PlanAhead() {
  if (course_)
    course_->stop = true;
}

void PlanAhead::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &PlanAhead::draw);
  draw();
}

void PlanAhead::set_horizon(int months) {
  horizon_ = months;
  draw();
}

void PlanAhead::set_sowings(bool counted) {
  sowings_ = counted;
  draw();
}

double PlanAhead::done() const {
  return course_ ? static_cast<double>(course_->done) / runs : 0;
}

void PlanAhead::draw() {
  if (session_ == nullptr || !session_->is_open())
    return;
  if (course_)
    course_->stop = true;
  course_ = std::make_shared<Course>();
  busy_ = true;
  stopped_ = false;
  look_.start();
  emit progressed();
  const auto today = session_->today();
  aside_.ask(
      session_->path().toStdString(),
      [today, months = horizon_, sowings = sowings_,
       course = course_](store::Reading& reading) -> Result<std::shared_ptr<const Drawn>> {
        auto input = report::forecast_input(reading, today, months,
                                            report::assumptions_in(reading.registers()));
        if (sowings)
          report::add_sowings(input, reading, {true, true});
        auto forecast = plan::forecast_of(input, {runs, 1, 0, [&](int done) {
                                                    course->done = done;
                                                    return !course->stop;
                                                  }});
        if (!forecast)
          return refuse(forecast.error());
        return std::make_shared<const Drawn>(Drawn{std::move(input), *std::move(forecast)});
      },
      [this](Result<std::shared_ptr<const Drawn>> drawn) { take(std::move(drawn)); });
}

void PlanAhead::stop() {
  if (course_)
    course_->stop = true;
}

void PlanAhead::take(Result<std::shared_ptr<const Drawn>> drawn) {
  busy_ = false;
  look_.stop();
  stopped_ = course_ && course_->stop;
  fault_.clear();
  if (drawn)
    drawn_ = *drawn;
  else if (!stopped_)
    fault_ = text(drawn.error().text());
  if (drawn || fault_.isEmpty())
    tell();
  emit told();
  emit progressed();
}

void PlanAhead::tell() {
  if (!drawn_)
    return;
  const auto& [input, forecast] = *drawn_;
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
  if (opened_ >= rows_.size())
    opened_ = -1;
  tell_cells();
}

void PlanAhead::tell_rows() {
  const auto& [input, forecast] = *drawn_;
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
        const auto range = forecast.range(at, month);
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
      const auto range = forecast.range(at, peak);
      const auto told = highest <= 0 ? tr("nothing")
                                     : tr("most in %1: %2 %3")
                                           .arg(month_shown(forecast.months()[peak]),
                                                range_shown(range, kind), unit_of(kind));
      series_.push_back(at);
      rows.push_back({group_of(kind), text(series.name), unit_of(kind), plan::happens(kind), low,
                      middle, high, capacity, std::max(highest, capacity), told});
    }
  rows_.replace(std::move(rows));
}

void PlanAhead::open(int row) {
  opened_ = row == opened_ ? -1 : row;
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
  if (drawn_ && opened_ >= 0 && opened_ < static_cast<int>(series_.size())) {
    const auto& [input, forecast] = *drawn_;
    const auto at = series_[static_cast<std::size_t>(opened_)];
    const auto& series = forecast.series()[at];
    const double capacity = capacity_of(series, input.standing.registers);
    constexpr double per_cent = 100;
    for (std::size_t month = 0; month < forecast.months().size(); ++month) {
      const double over = capacity < 0 ? 0 : forecast.share_above(at, month, capacity + 1e-4);
      cells.push_back(
          {month_shown(forecast.months()[month]),
           range_shown(forecast.range(at, month), series.shown),
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
  if (drawn_ && opened_ >= 0 && month_ >= 0 && month_ < months_.size()) {
    const auto& [input, forecast] = *drawn_;
    const auto at = series_[static_cast<std::size_t>(opened_)];
    const auto month = static_cast<std::size_t>(month_);
    const auto kind = forecast.series()[at].shown;
    if (kind == Shown::load) {
      made_of_ = tr("A load by light class is a quotient of all lots; open the load of a place.");
    } else {
      const int decimals = std::max(1, report::decimals_of(kind));
      double sum = forecast.ways().always[at];
      for (const auto& lot : plan::made_of(forecast.ways(), input, at, month)) {
        sum += lot.values[month];
        lots.push_back(
            {text(lot.lot), shown(plan::in_readers_units(kind, lot.values[month]), decimals)});
      }
      made_of_ = tr("%1 in %2: %3 %4 expected, from")
                     .arg(text(forecast.series()[at].name), months_[month_],
                          shown(plan::in_readers_units(kind, sum), decimals), unit_of(kind));
    }
  }
  lots_.replace(std::move(lots));
}

QString PlanAhead::usualPath(const QString& ending) const {
  const auto name = QStringLiteral("season-plan.") + ending;
  if (session_ == nullptr || session_->path().isEmpty())
    return name;
  return QFileInfo(session_->path()).absolutePath() + QLatin1Char('/') + name;
}

bool PlanAhead::save(const QString& path) {
  saved_.clear();
  save_fault_.clear();
  if (drawn_) {
    const auto& [input, forecast] = *drawn_;
    const auto file = Session::path_of(path);
    const auto ending = QFileInfo(path).suffix().toLower();
    Result<void> written;
    if (ending == "xlsx") {
      const auto sheets = report::xlsx_of(report::forecast_sheets(forecast, input));
      written = sheets ? report::write_whole(file, *sheets) : Result<void>(refuse(sheets.error()));
    } else if (ending == "csv") {
      written =
          report::write_whole(file, report::forecast_csv(forecast, input.standing.registers.title));
    } else {
      const auto pages = labels::plan_pdf(file.string(), report::forecast_paper(forecast, input));
      written = pages ? Result<void>() : Result<void>(refuse(pages.error()));
    }
    if (written)
      saved_ = tr("Saved in %1").arg(path);
    else
      save_fault_ = text(written.error().text());
  }
  emit savedChanged();
  return !saved_.isEmpty();
}

void PlanAhead::copy() {
  if (!drawn_)
    return;
  const auto& [input, forecast] = *drawn_;
  std::string all;
  if (opened_ >= 0) {
    report::PlanTable table{"", {"month", "range", "over"}, {}};
    for (int row = 0; row < cells_.size(); ++row)
      table.rows.push_back({plain(cells_.value(row, "month").toString()),
                            plain(cells_.value(row, "range").toString()),
                            plain(cells_.value(row, "over").toString())});
    all = report::tabbed(table);
  } else {
    for (const auto& table : report::forecast_sheets(forecast, input).tables)
      all += table.name + "\n" + report::tabbed(table) + "\n";
  }
  QGuiApplication::clipboard()->setText(text(all));
  saved_ = tr("Copied; paste it into a spreadsheet.");
  save_fault_.clear();
  emit savedChanged();
}

} // namespace coneline::window
