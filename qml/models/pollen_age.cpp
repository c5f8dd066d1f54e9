// SPDX-License-Identifier: GPL-3.0-or-later
#include "pollen_age.h"

#include "wording.h"

namespace coneline::window {

namespace {

QString percents(const std::optional<stats::Interval>& range) {
  return range ? shown(100 * range->low, 0) + QChar(0x2013) + shown(100 * range->high, 0) + " %"
               : phrased("not known");
}

double low(const std::optional<stats::Interval>& range) {
  return range ? range->low : -1;
}

double high(const std::optional<stats::Interval>& range) {
  return range ? range->high : -1;
}

QString age(int years) {
  if (years == 0)
    return phrased("less than a year old");
  return phrased_n(years, "{} year old", "{} years old");
}

Rows::Row row_of(const work::PollenAgeRow& row) {
  const auto store = row.store.empty() ? phrased("store not said") : text(row.store);
  return {store + ", " + age(row.years),
          phrased_n(std::int64_t(row.cones), "{} cone, {} seeds; {} of {} sown came up",
                    "{} cones, {} seeds; {} of {} sown came up", shown(row.seeds),
                    shown(row.germinated), shown(row.sown)),
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
