// SPDX-License-Identifier: GPL-3.0-or-later
#include "season_plan.h"

#include "core/report/needs_input.h"
#include "wording.h"

#include <QLocale>
#include <QPointF>
#include <QVariantList>

#include <numeric>

namespace coneline::window {

namespace {

constexpr int months_shown = 24;

/// In the units people reckon in.
plan::ByMonth in(Quantity quantity, plan::ByMonth values) {
  for (auto& value : values)
    value = in_units(language().units(), quantity, value);
  return values;
}

QVariantList points_of(const plan::ByMonth& kept, Quantity quantity) {
  const auto values = in(quantity, kept);
  QVariantList points;
  for (std::size_t i = 0; i < values.size(); ++i)
    points << QPointF(static_cast<double>(i), values[i]);
  return points;
}

double sum(const plan::ByMonth& values, std::size_t from, std::size_t to) {
  const auto end = std::min(to, values.size());
  return from >= end ? 0
                     : std::accumulate(values.begin() + static_cast<std::ptrdiff_t>(from),
                                       values.begin() + static_cast<std::ptrdiff_t>(end), 0.0);
}

} // namespace

SeasonPlan::SeasonPlan(QObject* parent)
    : QObject(parent), mix_({"name", "points", "style"}, this),
      space_({"name", "points", "style"}, this), parts_({"name", "soon", "year", "all"}, this),
      pots_({"name", "soon", "year", "all"}, this) {}

void SeasonPlan::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &SeasonPlan::read);
  read();
}

void SeasonPlan::read() {
  fault_.clear();
  const auto day = session_->today();
  const auto input = session_->ask(
      [day](store::Reading& reading) { return report::needs_input(reading, day, months_shown); });
  if (!input)
    return;
  const auto needs = plan::needs(*input);
  if (needs)
    tell(*needs);
  else
    fault_ = text(needs.error().text());
  emit told();
}

void SeasonPlan::tell(const plan::Needs& needs) {
  months_.clear();
  for (const auto& month : needs.months)
    months_ << QLocale().toString(QDate(month.year(), static_cast<int>(month.month()), 1),
                                  QStringLiteral("MMM yy"));
  const auto row = [](const std::string& name, const plan::ByMonth& by_month) {
    return Rows::Row{text(name), shown(sum(by_month, 0, 3), 0), shown(sum(by_month, 0, 12), 0),
                     shown(sum(by_month, 0, by_month.size()), 0)};
  };
  std::vector<Rows::Row> mix;
  std::vector<Rows::Row> parts;
  for (const auto& part : needs.parts) {
    mix.push_back(
        {text(part.name), points_of(part.litres, Quantity::litres), QStringLiteral("solid")});
    parts.push_back(row(part.name, in(Quantity::litres, part.litres)));
  }
  std::vector<Rows::Row> pots;
  for (const auto& pot : needs.pots)
    pots.push_back(row(pot.name, pot.into));
  std::vector<Rows::Row> space;
  fits_.clear();
  overfull_ = false;
  for (const auto& light : needs.space) {
    const auto name = text(book::said(light.light));
    space.push_back(
        {name, points_of(light.needed, Quantity::square_metres), QStringLiteral("solid")});
    space.push_back(
        {phrased("{}, there is", name),
         points_of(plan::ByMonth(light.needed.size(), light.offered), Quantity::square_metres),
         QStringLiteral("rule")});
    fits_ << text(light.told);
    overfull_ = overfull_ || light.first_over.has_value();
  }
  remarks_.clear();
  for (const auto& remark : needs.remarks)
    remarks_ << text(remark);
  for (const auto& lot : needs.left_out)
    remarks_ << text(lot.code.text()) + ": " + text(lot.why);
  mix_.replace(std::move(mix));
  space_.replace(std::move(space));
  parts_.replace(std::move(parts));
  pots_.replace(std::move(pots));
}

} // namespace coneline::window
