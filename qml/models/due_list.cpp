// SPDX-License-Identifier: GPL-3.0-or-later
#include "due_list.h"

#include "station.h"
#include "wording.h"

namespace coneline::window {

namespace {

QString place_of(const Standing& standing, const Code& code) {
  if (const auto* line = standing.lot(code))
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
  return days <= 0 ? QStringLiteral("today") : "since " + shown(due.from);
}

} // namespace

DueList::DueList(QObject* parent)
    : QObject(parent), rows_({"code", "verb", "told", "place", "since", "key", "atOnce"}, this) {}

void DueList::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &DueList::read);
  emit asked();
  read();
}

bool DueList::doNow(const QString& key) {
  return session_
      ->act([&](store::Book& book) {
        return work::do_due(book, plain(key), {session_->today(), {}, {}});
      })
      .has_value();
}

void DueList::read() {
  std::vector<Rows::Row> rows;
  for (const auto& due : session_->standing().due)
    rows.push_back({text(due.code.text()), verb_of(due.kind), text(due.told),
                    place_of(session_->standing(), due.code), since(due, session_->today()),
                    text(due.key), due.done_at_once});
  rows_.replace(std::move(rows));
}

} // namespace coneline::window
