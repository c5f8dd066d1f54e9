// SPDX-License-Identifier: GPL-3.0-or-later
#include "comes_next.h"

#include "wording.h"

namespace coneline::window {

namespace {

constexpr int two_years_and_more = 800; // days: as long as cones take to ripen

QString when(const work::Due& due) {
  return !due.to || *due.to == due.from ? shown(due.from)
                                        : shown(due.from) + QChar(0x2013) + shown(*due.to);
}

} // namespace

ComesNext::ComesNext(QObject* parent) : QObject(parent), rows_({"when", "told"}, this) {
  connect(this, &ComesNext::asked, this, &ComesNext::read);
}

void ComesNext::set_session(Session* session) {
  session_ = session;
  if (session)
    connect(session, &Session::changed, this, &ComesNext::read, Qt::UniqueConnection);
  emit asked();
}

void ComesNext::read() {
  aside_->forget();
  const auto code = Code::parse(plain(code_));
  const auto of = std::pair(session_ ? session_->path() : QString(), code_);
  if (of != rows_of_)
    rows_.replace({}); // until what is asked here is known
  rows_of_ = of;
  const auto* course =
      session_ && session_->is_open() && code ? session_->standing().cone_course(*code) : nullptr;
  if (!course || course->line.harvested_on) {
    rows_.replace({});
    return;
  }
  const auto ask = [today = session_->today()](store::Reading& reading) {
    work::DueHabits habits;
    habits.days_ahead = two_years_and_more;
    return work::by_day(work::due_on(reading, reading.registers(), today, habits));
  };
  aside_->ask(plain(session_->path()), ask,
              [this, cone = *code](const Result<std::vector<work::Due>>& due) {
                std::vector<Rows::Row> rows;
                if (due)
                  for (const auto& each : *due)
                    if (each.code == cone)
                      rows.push_back({when(each), text(each.told)});
                rows_.replace(std::move(rows));
              });
}

} // namespace coneline::window
