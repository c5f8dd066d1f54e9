// SPDX-License-Identifier: GPL-3.0-or-later
#include "pollen_age.h"

#include "wording.h"

namespace coneline::window {

namespace {

QString percents(const std::optional<stats::Interval>& range) {
  return range ? shown(100 * range->low, 0) + QChar(0x2013) + shown(100 * range->high, 0) + " %"
               : QStringLiteral("not known");
}

double low(const std::optional<stats::Interval>& range) {
  return range ? range->low : -1;
}

double high(const std::optional<stats::Interval>& range) {
  return range ? range->high : -1;
}

QString age(int years) {
  if (years == 0)
    return QStringLiteral("less than a year old");
  return years == 1 ? QStringLiteral("1 year old") : QString::number(years) + " years old";
}

Rows::Row row_of(const work::PollenAgeRow& row) {
  const auto store = row.store.empty() ? QStringLiteral("store not said") : text(row.store);
  return {store + ", " + age(row.years),
          shown(std::int64_t(row.cones)) + (row.cones == 1 ? " cone, " : " cones, ") +
              shown(row.seeds) + " seeds; " + shown(row.germinated) + " of " + shown(row.sown) +
              " sown came up",
          percents(row.set),
          low(row.set),
          high(row.set),
          percents(row.germination),
          low(row.germination),
          high(row.germination)};
}

} // namespace

PollenAge::PollenAge(QObject* parent)
    : QObject(parent),
      rows_({"title", "facts", "setText", "setLow", "setHigh", "upText", "upLow", "upHigh"}, this) {
}

void PollenAge::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &PollenAge::read);
  emit asked();
  read();
}

void PollenAge::read() {
  if (!session_->is_open())
    return;
  const auto ages = session_->ask([&](store::Reading& reading) {
    return work::pollen_by_age(reading, session_->standing().registers);
  });
  std::vector<Rows::Row> rows;
  for (const auto& row : ages.value_or(std::vector<work::PollenAgeRow>{}))
    rows.push_back(row_of(row));
  rows_.replace(std::move(rows));
}

} // namespace coneline::window
