// SPDX-License-Identifier: GPL-3.0-or-later
#include "station_list.h"

#include "listed.h"
#include "wording.h"

namespace coneline::window {

namespace {

QString heading(const Listed& item) {
  if (item.ended)
    return phrased("Ended");
  return item.due.isEmpty() ? item.group : phrased("Due");
}

/// What left the nursery, one row a sale or planting out, the latest first.
std::vector<Rows::Row> gone_out(Session& session) {
  std::vector<Rows::Row> rows;
  const auto entries = session.ask([](store::Reading& reading) {
    auto all = reading.standing_entries(book::Verb::sell);
    for (auto& entry : reading.standing_entries(book::Verb::plant_out))
      all.push_back(std::move(entry));
    return all;
  });
  auto latest_first = entries.value_or(std::vector<book::Entry>{});
  std::ranges::stable_sort(latest_first, std::greater{}, &book::Entry::date);
  for (const auto& entry : latest_first) {
    std::int64_t count = 0;
    for (const auto& movement : entry.movements)
      count += movement.count.value();
    const auto found = std::ranges::find_if(session.standing().lots, [&](const auto& line) {
      return entry.lot && line.lot.id == *entry.lot;
    });
    if (found == session.standing().lots.end())
      continue;
    const auto* sale = std::get_if<book::Sale>(&entry.detail);
    const auto to = sale && !sale->buyer.empty() ? phrased(" to {}", sale->buyer) : QString();
    rows.push_back({text(found->lot.code.text()), QString::number(entry.date.year()),
                    (sale ? phrased_n(count, "{} sold", "{} sold")
                          : phrased_n(count, "{} planted out", "{} planted out")) +
                        to,
                    shown(entry.date), QString(), false});
  }
  return rows;
}

} // namespace

StationList::StationList(QObject* parent)
    : QObject(parent), rows_({"code", "heading", "what", "place", "due", "ended"}, this) {
  connect(this, &StationList::asked, this, &StationList::read);
}

void StationList::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &StationList::read);
  emit asked();
}

void StationList::read() {
  if (!session_ || station_.isEmpty())
    return;
  const auto station = station_named(station_);
  if (station == Station::out) {
    rows_.replace(gone_out(*session_));
    return;
  }
  std::vector<Rows::Row> rows;
  for (const auto& item : listed(session_->standing(), station, by_place_))
    rows.push_back(
        {text(item.code.text()), heading(item), item.what, item.where, item.due, item.ended});
  rows_.replace(std::move(rows));
}

} // namespace coneline::window
