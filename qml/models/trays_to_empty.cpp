// SPDX-License-Identifier: GPL-3.0-or-later
#include "trays_to_empty.h"

#include "wording.h"

namespace coneline::window {

TraysToEmpty::TraysToEmpty(QObject* parent)
    : QObject(parent), rows_({"code", "cross", "heading", "said", "chance"}, this) {}

void TraysToEmpty::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &TraysToEmpty::read);
  read();
}

void TraysToEmpty::read() {
  if (!session_->is_open())
    return;
  reckoning_ = true;
  emit told();
  const auto ask = [today = session_->today()](store::Reading& reading) {
    return work::trays_done(reading, today, work::done_habits(reading.registers()));
  };
  aside_->ask(plain(session_->path()), ask,
              [this](const Result<std::vector<work::TrayDone>>& trays) {
                reckoning_ = false;
                if (trays)
                  show(*trays);
                else
                  summary_ = fault_shown(trays.error());
                emit told();
              });
}

void TraysToEmpty::show(const std::vector<work::TrayDone>& trays) {
  std::vector<Rows::Row> rows;
  for (const auto& tray : trays)
    rows.push_back({text(tray.tray.seen.lot.code.text()), origin_shown(tray.cross),
                    tray.done ? phrased("Can be emptied") : phrased("Waits"), text(tray.told),
                    tray.tray.coming.chance_of_one});
  rows_.replace(std::move(rows));
  if (trays.empty()) {
    summary_ = tr("In no tray does seed wait.");
    return;
  }
  const auto done = std::ranges::count(trays, true, &work::TrayDone::done);
  const auto habits = work::done_habits(session_->standing().registers);
  summary_ = tr("%1 of %2 trays with waiting seed can be emptied: the chance of even one more is "
                "below %3 in 100.")
                 .arg(shown(std::int64_t(done)), shown(std::int64_t(trays.size())),
                      shown(100 * habits.done_below, 1));
  if (!habits.cents_a_square_metre_month)
    summary_ += tr(" Say what 1 %1 of bench costs a month (Seed, What you reckon with), and the "
                   "price of waiting is told too.")
                    .arg(session_->speech()->area_unit());
}

} // namespace coneline::window
