// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_otherwise.h"

#include "core/plan/shown_units.h"
#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/report/forecast_paper.h"
#include "core/report/sowings_input.h"
#include "deeds/answers.h"
#include "plan_words.h"
#include "wording.h"

#include <algorithm>
#include <cmath>

namespace coneline::window {

namespace {

constexpr int months = 36;
constexpr int runs = 2000;
constexpr double per_cent = 100;

Result<plan::Change> other_potting(Answers& answers) {
  const int from = answers.whole("from");
  const int to = answers.whole("to");
  constexpr int months_a_year = 12;
  if (std::min(from, to) < 1 || std::max(from, to) > months_a_year)
    return refuse(coneline::fault("a month of the year is from 1 to 12", "Write the number."));
  plan::OtherPotting potting;
  for (int month = from;; month = month % months_a_year + 1) {
    potting.months.at(static_cast<std::size_t>(month) - 1) = true;
    if (month == to)
      return potting;
  }
}

/// What cannot be read is the fault of `answers`; what can be and is none, of the result.
Result<plan::Change> change_in(const QString& kind, Answers& answers) {
  if (kind == "survival")
    return plan::OtherSurvival{answers.words("taxon"), answers.whole("step"),
                               answers.number("percent") / per_cent};
  if (kind == "pace")
    return plan::OtherPace{answers.words("of"), answers.number("factor")};
  if (kind == "more") {
    const auto length = answers.measure("length", Quantity::millimetres);
    const auto width = answers.measure("width", Quantity::millimetres);
    return plan::PlaceMore{answers.words("name"), answers.one_of<book::Light>("light"), length,
                           width};
  }
  if (kind == "less")
    return plan::PlaceLess{answers.words("name")};
  if (kind == "mix")
    return plan::OtherMix{answers.words("pot"), answers.words("mix")};
  if (kind == "sow") {
    const auto month = Date::parse(answers.words("month") + "-01");
    if (!month)
      return refuse(coneline::fault("the month is missing", "Write it such as 2027-05."));
    return plan::MoreSeed{answers.words("cross"), answers.needed_whole("seeds"), *month};
  }
  if (kind == "potting")
    return other_potting(answers);
  if (kind == "sold")
    return plan::SoldAfter{answers.needed_whole("months")};
  return plan::NoCones{};
}

QStringList names_of(const auto& rows) {
  QStringList names;
  for (const auto& row : rows)
    names << text(row.name);
  return names;
}

std::vector<Rows::Row> rows_of(const std::vector<std::string>& told) {
  std::vector<Rows::Row> rows;
  for (const auto& each : told)
    rows.push_back({text(each)});
  return rows;
}

} // namespace

PlanOtherwise::PlanOtherwise(QObject* parent)
    : PlanPart(parent), changes_({"told"}, this),
      years_({"name", "when", "present", "supposed", "difference"}, this),
      full_({"name", "present", "supposed"}, this) {}

Result<plan::Change> PlanOtherwise::change_of(const QString& kind, const QVariantMap& typed) const {
  const Subject subject{&session_->standing(), session_->today(), {}};
  Answers answers(subject, trimmed(typed));
  auto change = change_in(kind, answers);
  if (answers.fault())
    return refuse(*answers.fault());
  return change;
}

bool PlanOtherwise::suppose(const QString& kind, const QVariantMap& typed) {
  entry_fault_.clear();
  accepted_.clear();
  const auto change = change_of(kind, typed);
  if (!change)
    return refuse_entry(change.error());
  auto more = supposition_;
  more.push_back(*change);
  std::vector<Rows::Row> rows;
  if (present_) {
    const auto supposed = plan::suppose(*present_, more);
    if (!supposed)
      return refuse_entry(supposed.error());
    rows = rows_of(supposed->told);
  } else {
    rows = changes_.rows();
    rows.push_back({tr("change %1").arg(shown(std::int64_t(more.size())))});
  }
  supposition_ = std::move(more);
  changes_.replace(std::move(rows));
  emit entryTold();
  reckon();
  return true;
}

void PlanOtherwise::forget(int change) {
  if (change < 0 || change >= static_cast<int>(supposition_.size()))
    return;
  supposition_.erase(supposition_.begin() + change);
  auto rows = changes_.rows();
  rows.erase(rows.begin() + change);
  changes_.replace(std::move(rows));
  entry_fault_.clear(); // it may have been this change's
  emit entryTold();
  reckon();
}

void PlanOtherwise::reckon() {
  ask(
      [today = session_ == nullptr ? Date() : session_->today(),
       supposition = supposition_](store::Reading& reading, Course& course) -> Result<Answer> {
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
        auto compared = plan::compare(answer.present, supposed->input, futures(runs, course));
        if (compared)
          answer.compared = *std::move(compared);
        else
          answer.fault = compared.error();
        return answer;
      },
      [this](Answer answer) { take(std::move(answer)); });
}

void PlanOtherwise::take(Answer answer) {
  if (answer.fault)
    blame(*answer.fault);
  present_ = std::move(answer.present);
  crosses_.clear();
  for (const auto& cross : present_->sprouting)
    crosses_ << text(cross.cross);
  crosses_.removeDuplicates();
  crosses_.sort();
  // A change that cannot be made any more keeps its row, so that it can be forgotten.
  if (answer.told.size() == supposition_.size())
    changes_.replace(rows_of(answer.told));
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
    const auto kind = series.name.shown;
    const int decimals = report::decimals_of(kind);
    for (std::size_t year = 0; year < series.years.size(); ++year) {
      const auto& sums = series.years[year];
      if (sums.present.high <= 0 && sums.supposed.high <= 0)
        continue;
      if (std::abs(sums.mean_difference()) < 0.05)
        continue;
      const auto last = std::min(dates.size(), (year + 1) * 12) - 1;
      years.push_back(
          {text(report::heading_of(kind)) + QStringLiteral(": ") +
               text(report::name_said(series.name)),
           month_shown(dates[year * 12]) + QStringLiteral(" – ") + month_shown(dates[last]),
           plan_range(kind, sums.present, decimals), plan_range(kind, sums.supposed, decimals),
           shown_signed(plan::in_readers_units(kind, sums.mean_difference()), decimals)});
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
    full.push_back({phrased_of(light.name), told(light.over_present, light.worst_present),
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
    refuse_entry(kept.error());
  } else {
    QStringList said;
    for (const auto& told : written->told)
      said << text(told);
    accepted_ = tr("Taken into the book: %1").arg(said.join(QStringLiteral(" ")));
    supposition_.clear();
    changes_.replace({});
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

QStringList PlanOtherwise::crosses_shown() const {
  QStringList names;
  for (const auto& cross : crosses_)
    names << origin_shown(plain(cross));
  return names;
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
