// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_targets.h"

#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/work/line_back.h"
#include "wording.h"

#include <QLocale>

namespace coneline::window {

namespace {

constexpr int months = 36;
constexpr int runs = 2000;
constexpr double per_cent = 100;

QString seed_told(const report::TargetTold& told) {
  if (!told.plan.latest)
    return PlanTargets::tr("No sowing from today on reaches it: choose a later month, a smaller "
                           "pot, fewer plants or less assurance.");
  const auto& sowing = told.plan.sowings[*told.plan.latest];
  if (sowing.seeds.value() == 0)
    return PlanTargets::tr("What is in the line is enough: nothing has to be sown.");
  const auto now = told.plan.sowings.front().seeds;
  auto said = PlanTargets::tr("Sow %1 seeds by %2")
                  .arg(shown(sowing.seeds.value()), month_in_full(sowing.month));
  if (now && *told.plan.latest > 0)
    said += PlanTargets::tr(", or %1 this month").arg(shown(*now));
  if (told.seed)
    said += told.seed->lacking > 0 ? PlanTargets::tr("; %1 are at hand, %2 are lacking.")
                                         .arg(shown(told.seed->at_hand), shown(told.seed->lacking))
                                   : PlanTargets::tr("; they are at hand.");
  if (told.seed && told.seed->cones && told.seed->lacking > 0)
    said += PlanTargets::tr(" That takes cones: pollinate %1, %2 applications in all.")
                .arg(shown(told.seed->cones->to_pollinate),
                     shown(told.seed->cones->to_pollinate * told.cone.passes));
  return said;
}

QString dates_told(const report::TargetTold& told, Date today) {
  QString said;
  const auto add = [&](const QString& what, const std::optional<Date>& day) {
    if (!day)
      return;
    said += (said.isEmpty() ? "" : " ") + what.arg(shown(*day));
    if (*day < today)
      said += PlanTargets::tr(" (that day is over)");
  };
  if (!told.plan.latest || told.plan.sowings[*told.plan.latest].seeds == 0)
    return {};
  add(PlanTargets::tr("Harvest by %1."), told.plan.harvest_by);
  add(PlanTargets::tr("Pollinate by %1."), told.plan.pollinate_by);
  return said;
}

} // namespace

PlanTargets::PlanTargets(QObject* parent)
    : PlanPart(parent), targets_({"id", "title", "line", "seed", "dates", "reached"}, this) {}

void PlanTargets::reckon() {
  ask(
      [today = session_ == nullptr ? Date() : session_->today()](store::Reading& reading,
                                                                 Course& course) -> Result<Answer> {
        const auto registers = reading.registers();
        Answer answer;
        std::set<std::pair<std::string, book::TaxonId>> seen;
        for (const auto& [origin, name] : work::origin_names(reading, registers))
          if (seen.emplace(name.name, name.taxon_id).second &&
              registers.route(name.taxon_id) != nullptr)
            answer.crosses.push_back({name.name, name.taxon_id});
        std::ranges::sort(answer.crosses, {}, &Cross::name);
        const auto records = reading.plan_records();
        if (records.targets.empty())
          return answer;
        const auto input =
            report::forecast_input(reading, today, months, report::assumptions_in(registers));
        // Each target is a search of its own; nobody knows how many forecasts it takes.
        const plan::ForecastRuns wanted{runs, 1, 0, [&](int) { return course.go_on(); }};
        const auto held = report::seed_at_hand(reading, registers, today);
        for (const auto& target : records.targets) {
          const auto cone = report::cone_gives(reading, registers, target.taxon, today);
          auto one = report::told_of(input, target, held, cone, wanted);
          if (!one) {
            answer.fault = one.error();
            return answer;
          }
          answer.targets.push_back(*std::move(one));
        }
        const auto forecast = plan::forecast_of(input, wanted);
        if (forecast)
          for (const auto& conflict : report::conflicts(answer.targets, *forecast, registers))
            answer.conflicts.push_back(conflict.told);
        return answer;
      },
      [this](Answer answer) { take(std::move(answer)); });
}

void PlanTargets::take(Answer answer) {
  if (answer.fault)
    blame(*answer.fault);
  crosses_ = std::move(answer.crosses);
  conflicts_.clear();
  for (const auto& conflict : answer.conflicts)
    conflicts_ << text(conflict);
  std::vector<Rows::Row> rows;
  for (const auto& told : answer.targets) {
    const auto& target = told.plan.target;
    const auto& registers = session_->standing().registers;
    rows.push_back(
        {static_cast<qlonglong>(target.id.value),
         tr("%1 plants of %2 in %3 by %4, %5 % sure")
             .arg(shown(target.plants), origin_shown(target.cross),
                  text(registers.pot(target.pot).name), month_in_full(target.by),
                  shown(per_cent * target.assurance, 0)),
         tr("%1 – %2 – %3 of what is in the line will be there; alone it is enough in %4 of 100 "
            "futures.")
             .arg(shown(told.plan.here.low, 0), shown(told.plan.here.middle, 0),
                  shown(told.plan.here.high, 0), shown(per_cent * told.plan.alone, 0)),
         seed_told(told), dates_told(told, session_->today()), told.plan.latest.has_value()});
  }
  targets_.replace(std::move(rows));
}

QString PlanTargets::label_of(const Cross& cross) const {
  const auto name = origin_shown(cross.name);
  return std::ranges::count(crosses_, cross.name, &Cross::name) > 1
             ? name + QStringLiteral(" · ") +
                   text(session_->standing().registers.taxon(cross.taxon).name)
             : name;
}

const PlanTargets::Cross* PlanTargets::labelled(const QString& label) const {
  const auto found =
      std::ranges::find_if(crosses_, [&](const Cross& cross) { return label_of(cross) == label; });
  return found == crosses_.end() ? nullptr : &*found;
}

QStringList PlanTargets::crosses() const {
  QStringList names;
  for (const auto& cross : crosses_)
    names << label_of(cross);
  return names;
}

QStringList PlanTargets::pots() const {
  QStringList names;
  if (session_ != nullptr)
    for (const auto& pot : session_->standing().registers.pots)
      names << text(pot.name);
  return names;
}

QStringList PlanTargets::potsOf(const QString& cross) const {
  QStringList names;
  if (const auto* one = labelled(cross))
    if (const auto* route = session_->standing().registers.route(one->taxon))
      for (const auto& step : route->steps)
        names << text(session_->standing().registers.pot(step.pot).name);
  names.removeDuplicates();
  return names;
}

bool PlanTargets::enter(const QString& cross, const QString& pot, const QString& plants,
                        const QString& by, const QString& sure) {
  const auto no = [this](const QString& why) { return refuse_entry(coneline::fault(plain(why))); };
  const auto* found = labelled(cross);
  if (found == nullptr)
    return no(tr("Choose a cross."));
  const auto* into = book::named(session_->standing().registers.pots, plain(pot));
  if (into == nullptr)
    return no(tr("Choose a pot."));
  bool number = false;
  const auto count = QLocale().toLongLong(plants.trimmed(), &number);
  if (!number || count < 1)
    return no(tr("How many plants? '%1' is no number of them.").arg(plants));
  const auto month = Date::parse(plain(by.trimmed()) + "-01");
  if (!month)
    return no(tr("By which month? Write it such as 2029-10."));
  const auto share = read_number(sure.trimmed());
  if (!share || !(*share > 0 && *share < per_cent))
    return no(tr("How sure? Write per cent above 0 and below 100, such as 90."));
  const book::Target target{{},    found->name, found->taxon,     into->id,
                            count, *month,      *share / per_cent};
  return keep([&](store::Writing& writing) -> Result<void> {
    if (auto put = writing.put(target); !put)
      return refuse(put.error());
    return {};
  });
}

void PlanTargets::strike(qlonglong id) {
  keep([id](store::Writing& writing) -> Result<void> {
    writing.take_out(book::TargetId{id});
    return {};
  });
}

} // namespace coneline::window
