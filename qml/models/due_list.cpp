// SPDX-License-Identifier: GPL-3.0-or-later
#include "due_list.h"

#include "by_code.h"
#include "core/exchange/book_calendar.h"
#include "core/report/whole_file.h"
#include "station.h"
#include "wording.h"

#include <QFileInfo>

namespace coneline::window {

namespace {

QString place_of(const Standing& standing, const ByCode<work::LotLine>& lots, const Code& code) {
  if (const auto* line = lots.find(code))
    return place_name(standing.registers, line->place);
  if (const auto* plant = book::coded(standing.registers.plants, code))
    return place_name(standing.registers, plant->place);
  if (const auto* line = standing.cone(code))
    return place_name(standing.registers, standing.registers.plant(line->cone.plant).place);
  return place_name(standing.registers, std::nullopt);
}

QString since(const work::Due& due, Date today) {
  if (!due.missed.empty())
    return text(due.missed);
  if (due.to && *due.to > today)
    return shown(due.from) + QChar(0x2013) + shown(*due.to);
  const auto days = days_between(due.from, today);
  return days <= 0 ? phrased("today") : phrased("since {}", shown(due.from));
}

} // namespace

DueList::DueList(QObject* parent)
    : QObject(parent),
      rows_({"code", "verb", "told", "heading", "since", "key", "atOnce", "word"}, this) {
  connect(this, &DueList::asked, this, &DueList::read);
}

void DueList::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &DueList::read);
  emit asked();
}

bool DueList::doNow(const QString& key) {
  return session_
      ->act([&](store::Book& book) {
        return work::do_due(book, plain(key), {session_->today(), {}, {}});
      })
      .has_value();
}

void DueList::read() {
  if (!session_)
    return;
  const auto& standing = session_->standing();
  const ByCode<work::LotLine> lots(standing.lots,
                                   [](const work::LotLine& line) { return line.lot.code; });
  std::vector<Rows::Row> rows;
  for (const auto& due : by_day_ ? work::by_day(standing.due) : standing.due) {
    const auto place = place_of(standing, lots, due.code);
    const auto when = since(due, session_->today());
    rows.push_back({text(due.code.text()), verb_of(due.kind), text(due.told),
                    by_day_ ? shown(due.from) : place,
                    by_day_ ? place + (due.missed.empty() ? QString() : ", " + when) : when,
                    text(due.key), due.done_at_once, phrased_of(plain(verb_of(due.kind)))});
  }
  rows_.replace(std::move(rows));
}

QString DueList::usualCalendar() const {
  const auto name = QStringLiteral("due.ics");
  if (!session_ || session_->path().isEmpty())
    return name;
  return QFileInfo(session_->path()).absolutePath() + QLatin1Char('/') + name;
}

bool DueList::saveCalendar(const QString& path) {
  constexpr int weeks_ahead = 8;
  if (!session_)
    return false;
  std::size_t count = 0;
  const auto calendar = session_->ask([&](store::Reading& reading) {
    const auto& registers = session_->standing().registers;
    work::DueHabits habits;
    habits.days_ahead = 7 * weeks_ahead;
    const auto due = work::due_on(reading, registers, session_->today(), habits);
    count = due.size();
    return exchange::book_calendar(reading, registers, due, session_->today(),
                                   exchange::CalendarAs::todo);
  });
  if (!calendar) {
    say({}, session_->fault());
    return false;
  }
  const auto written = report::write_whole(Session::path_of(path).string(), calendar->text);
  if (!written) {
    say({}, text(written.error().text()));
    return false;
  }
  say(tr("%1 due in the coming %2 weeks, and %3 settled lately, in %4")
          .arg(shown(std::int64_t(count)), QString::number(weeks_ahead),
               shown(std::int64_t(calendar->settled)), path),
      {});
  return true;
}

bool DueList::takeInCalendar(const QString& path) {
  if (!session_)
    return false;
  const auto done = session_->act([&](store::Book& book) {
    return exchange::take_in_calendar(book, Session::path_of(path).string(),
                                      {session_->today(), {}, {}});
  });
  if (done)
    say(text(done->told), {});
  else
    say({}, text(done.error().text()));
  return done.has_value();
}

void DueList::say(const QString& told, const QString& fault) {
  told_ = told;
  fault_ = fault;
  emit toldChanged();
}

} // namespace coneline::window
