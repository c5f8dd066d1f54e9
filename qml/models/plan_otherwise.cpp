// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_otherwise.h"

#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/report/forecast_paper.h"
#include "core/report/sowings_input.h"
#include "wording.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace coneline::window {

namespace {

constexpr int months = 36;
constexpr int runs = 2000;
constexpr double per_cent = 100;

QString month_shown(Date month) {
  return QLocale().toString(QDate(month.year(), static_cast<int>(month.month()), 1),
                            QStringLiteral("MMM yy"));
}

Result<double> number(const QVariantMap& typed, const char* field,
                      std::optional<Quantity> of = {}) {
  const auto written = typed.value(QLatin1String(field)).toString().trimmed();
  if (written.isEmpty())
    return refuse(coneline::fault("a number is missing", "Fill it in."));
  return of ? read_measure(*of, written) : read_number(written);
}

std::string word(const QVariantMap& typed, const char* field) {
  return plain(typed.value(QLatin1String(field)).toString().trimmed());
}

QString range_shown(const plan::Likely& range, int decimals) {
  return shown(range.low, decimals) + QStringLiteral(" – ") + shown(range.middle, decimals) +
         QStringLiteral(" – ") + shown(range.high, decimals);
}

QString signed_shown(double value, int decimals) {
  const auto text = shown(value, decimals);
  return value > 0 ? QStringLiteral("+") + text : text;
}

QStringList names_of(const auto& rows) {
  QStringList names;
  for (const auto& row : rows)
    names << text(row.name);
  return names;
}

} // namespace

PlanOtherwise::PlanOtherwise(QObject* parent)
    : QObject(parent), changes_({"told"}, this),
      years_({"name", "when", "present", "supposed", "difference"}, this),
      full_({"name", "present", "supposed"}, this), aside_(nullptr) {
  look_.setInterval(100);
  connect(&look_, &QTimer::timeout, this, &PlanOtherwise::progressed);
}

PlanOtherwise::~PlanOtherwise() {
  stop();
}

void PlanOtherwise::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &PlanOtherwise::reckon);
  reckon();
}

void PlanOtherwise::stop() {
  if (course_)
    course_->stop = true;
}

double PlanOtherwise::done() const {
  return course_ ? static_cast<double>(course_->done) / runs : 0;
}

Result<plan::Change> PlanOtherwise::change_of(const QString& kind, const QVariantMap& typed) const {
  if (kind == "survival") {
    const auto share = number(typed, "percent");
    const auto step = typed.value("step").toString().section(' ', 0, 0).toInt();
    if (!share)
      return refuse(share.error());
    return plan::OtherSurvival{word(typed, "taxon"), step, *share / per_cent};
  }
  if (kind == "pace") {
    const auto factor = number(typed, "factor");
    if (!factor)
      return refuse(factor.error());
    return plan::OtherPace{word(typed, "of"), *factor};
  }
  if (kind == "more") {
    const auto length = number(typed, "length", Quantity::millimetres);
    const auto width = number(typed, "width", Quantity::millimetres);
    const auto light = book::read_word<book::Light>(word(typed, "light"));
    if (!length || !width || !light)
      return refuse(!length ? length.error() : !width ? width.error() : light.error());
    return plan::PlaceMore{word(typed, "name"), *light, *length, *width};
  }
  if (kind == "less")
    return plan::PlaceLess{word(typed, "name")};
  if (kind == "mix")
    return plan::OtherMix{word(typed, "pot"), word(typed, "mix")};
  if (kind == "sow") {
    const auto seeds = number(typed, "seeds");
    const auto month = Date::parse(word(typed, "month") + "-01");
    if (!seeds)
      return refuse(seeds.error());
    if (!month)
      return refuse(coneline::fault("the month is missing", "Write it such as 2027-05."));
    return plan::MoreSeed{word(typed, "cross"), std::llround(*seeds), *month};
  }
  if (kind == "potting") {
    const auto from = number(typed, "from");
    const auto to = number(typed, "to");
    const auto is_month = [](const Result<double>& month) {
      return month && *month >= 1 && *month <= 12 && *month == std::floor(*month);
    };
    if (!is_month(from) || !is_month(to))
      return refuse(coneline::fault("a month of the year is from 1 to 12", "Write the number."));
    plan::OtherPotting potting;
    for (int month = static_cast<int>(*from);; month = month % 12 + 1) {
      potting.months.at(static_cast<std::size_t>(month) - 1) = true;
      if (month == static_cast<int>(*to))
        break;
    }
    return potting;
  }
  if (kind == "sold") {
    const auto after = number(typed, "months");
    if (!after)
      return refuse(after.error());
    return plan::SoldAfter{static_cast<int>(*after)};
  }
  return plan::NoCones{};
}

bool PlanOtherwise::suppose(const QString& kind, const QVariantMap& typed) {
  entry_fault_.clear();
  accepted_.clear();
  const auto refused = [&](const Fault& fault) {
    entry_fault_ = text(fault.text());
    emit entryTold();
    return false;
  };
  const auto change = change_of(kind, typed);
  if (!change)
    return refused(change.error());
  auto more = supposition_;
  more.push_back(*change);
  if (present_)
    if (const auto supposed = plan::suppose(*present_, more); !supposed)
      return refused(supposed.error());
  supposition_ = std::move(more);
  emit entryTold();
  reckon();
  return true;
}

void PlanOtherwise::forget(int change) {
  if (change < 0 || change >= static_cast<int>(supposition_.size()))
    return;
  supposition_.erase(supposition_.begin() + change);
  reckon();
}

void PlanOtherwise::reckon() {
  if (session_ == nullptr || !session_->is_open())
    return;
  stop();
  course_ = std::make_shared<Course>();
  busy_ = true;
  look_.start();
  emit progressed();
  aside_.ask(
      session_->path().toStdString(),
      [today = session_->today(), course = course_,
       supposition = supposition_](store::Reading& reading) -> Result<Answer> {
        Answer answer;
        answer.present = report::forecast_input(reading, today, months,
                                                report::assumptions_in(reading.registers()));
        // What is to come is counted in, so that a year without cones shows.
        report::add_sowings(answer.present, reading, {true, true});
        if (supposition.empty())
          return answer;
        const auto supposed = plan::suppose(answer.present, supposition);
        if (!supposed) {
          answer.fault = supposed.error();
          return answer;
        }
        answer.told = supposed->told;
        auto compared = plan::compare(answer.present, supposed->input, {runs, 1, 0, [&](int done) {
                                                                          course->done = done;
                                                                          return !course->stop;
                                                                        }});
        if (compared)
          answer.compared = *std::move(compared);
        else if (!course->stop)
          answer.fault = compared.error();
        return answer;
      },
      [this](Result<Answer> answer) {
        busy_ = false;
        look_.stop();
        fault_.clear();
        if (answer)
          take(*std::move(answer));
        else
          fault_ = text(answer.error().text());
        emit told();
        emit progressed();
      });
}

void PlanOtherwise::take(Answer answer) {
  if (answer.fault)
    fault_ = text(answer.fault->text());
  present_ = std::move(answer.present);
  crosses_.clear();
  for (const auto& cross : present_->sprouting)
    crosses_ << text(cross.cross);
  crosses_.removeDuplicates();
  crosses_.sort();
  std::vector<Rows::Row> changes;
  for (const auto& told : answer.told)
    changes.push_back({text(told)});
  changes_.replace(std::move(changes));
  most_.clear();
  writable_ = false;
  not_written_.clear();
  if (answer.compared) {
    for (const auto& told : answer.compared->most)
      most_ << text(told);
    if (const auto records = plan::changes_of(*present_, supposition_)) {
      writable_ = records->any();
      for (const auto& why : records->not_written)
        not_written_ << text(why);
    }
    tell_compared(*answer.compared);
  } else {
    years_.replace({});
    full_.replace({});
  }
}

void PlanOtherwise::tell_compared(const plan::Comparison& compared) {
  std::vector<Rows::Row> years;
  const auto& dates = compared.present.months();
  for (const auto& series : compared.series) {
    const int decimals = report::decimals_of(series.name.shown);
    for (std::size_t year = 0; year < series.years.size(); ++year) {
      const auto& sums = series.years[year];
      if (sums.present.high <= 0 && sums.supposed.high <= 0)
        continue;
      if (std::abs(sums.mean_difference()) < 0.05)
        continue;
      const auto last = std::min(dates.size(), (year + 1) * 12) - 1;
      years.push_back(
          {text(report::heading_of(series.name.shown)) + QStringLiteral(": ") +
               text(series.name.name),
           month_shown(dates[year * 12]) + QStringLiteral(" – ") + month_shown(dates[last]),
           range_shown(sums.present, decimals), range_shown(sums.supposed, decimals),
           signed_shown(sums.mean_difference(), decimals)});
    }
  }
  years_.replace(std::move(years));
  std::vector<Rows::Row> full;
  const auto told = [&](const std::vector<double>& over, std::size_t worst) {
    if (worst >= over.size() || over[worst] <= 0)
      return tr("everything fits");
    return tr("over full with %1 % in %2")
        .arg(shown(per_cent * over[worst], 0), month_shown(dates[worst]));
  };
  for (const auto& light : compared.full)
    full.push_back({text(light.name), told(light.over_present, light.worst_present),
                    told(light.over_supposed, light.worst_supposed)});
  full_.replace(std::move(full));
}

bool PlanOtherwise::accept() {
  entry_fault_.clear();
  accepted_.clear();
  if (!present_ || session_ == nullptr)
    return false;
  std::optional<plan::SupposedRecords> written;
  const auto kept = session_->keep(
      std::function<Result<void>(store::Book&)>([&](store::Book& book) -> Result<void> {
        auto records = plan::accept(book, *present_, supposition_);
        if (!records)
          return refuse(records.error());
        written = *std::move(records);
        return {};
      }));
  if (!kept) {
    entry_fault_ = text(kept.error().text());
  } else {
    QStringList said;
    for (const auto& told : written->told)
      said << text(told);
    accepted_ = tr("Taken into the book: %1").arg(said.join(QStringLiteral(" ")));
    supposition_.clear();
    session_->read_anew();
  }
  emit entryTold();
  return kept.has_value();
}

QStringList PlanOtherwise::stepsOf(const QString& taxon) const {
  QStringList steps;
  if (session_ == nullptr)
    return steps;
  const auto& registers = session_->standing().registers;
  const auto* found = book::named(registers.taxa, plain(taxon));
  const auto* route = found == nullptr ? nullptr : registers.route(found->id);
  if (route == nullptr)
    return steps;
  for (int number = 0; const auto& step : route->steps)
    steps << tr("%1 %2, now %3 %")
                 .arg(++number)
                 .arg(text(registers.pot(step.pot).name), shown(per_cent * step.survival, 0));
  return steps;
}

QStringList PlanOtherwise::taxa() const {
  QStringList names;
  if (session_ != nullptr)
    for (const auto& taxon : session_->standing().registers.taxa)
      if (session_->standing().registers.route(taxon.id) != nullptr)
        names << text(taxon.name);
  return names;
}
QStringList PlanOtherwise::places() const {
  return session_ == nullptr ? QStringList() : names_of(session_->standing().registers.places);
}
QStringList PlanOtherwise::pots() const {
  return session_ == nullptr ? QStringList() : names_of(session_->standing().registers.pots);
}
QStringList PlanOtherwise::mixes() const {
  return session_ == nullptr ? QStringList() : names_of(session_->standing().registers.mixes);
}

} // namespace coneline::window
