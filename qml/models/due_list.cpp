// SPDX-License-Identifier: GPL-3.0-or-later
#include "due_list.h"

#include "core/exchange/book_calendar.h"
#include "core/report/whole_file.h"
#include "wording.h"

#include <QFileInfo>

namespace coneline::window {

DueList::DueList(QObject* parent) : QObject(parent), rows_(this) {
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
  rows_.show(*session_, by_day_ ? DueRows::Order::by_day : DueRows::Order::as_walked);
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
    say({}, fault_shown(written.error()));
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
    say({}, fault_shown(done.error()));
  return done.has_value();
}

void DueList::say(const QString& told, const QString& fault) {
  told_ = told;
  fault_ = fault;
  emit toldChanged();
}

} // namespace coneline::window
