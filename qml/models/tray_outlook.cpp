// SPDX-License-Identifier: GPL-3.0-or-later
#include "tray_outlook.h"

#include "core/work/trays_done.h"
#include "wording.h"

#include <cmath>

namespace coneline::window {

namespace {

QString seeds_text(const stats::CountRange& seeds) {
  if (seeds.low == seeds.high)
    return QString::number(seeds.low);
  return phrased("{} to {}", seeds.low, seeds.high);
}

QString day_text(const std::optional<double>& days, Date today) {
  return days ? shown(today.plus_days(static_cast<int>(std::ceil(*days))))
              : phrased("a day not yet in sight");
}

QString by_when(fmt::format_string<const QString&, const QString&> what,
                const std::optional<stats::DayRange>& range, Date today) {
  if (!range)
    return {};
  return phrased<QString, QString>(what, day_text(range->low, today), day_text(range->high, today));
}

QStringList lines_of(const work::TrayDone& tray, Date today) {
  const auto& coming = tray.tray.coming;
  QStringList lines{phrased("Of the {1} seeds that wait, {0} still come up (8 times in 10).",
                            seeds_text(coming.seeds), coming.waiting)};
  for (const auto& line :
       {by_when("Half of them between {} and {}.", coming.half, today),
        by_when("Nine tenths between {} and {}.", coming.nine_tenths, today), text(tray.told)})
    if (!line.isEmpty())
      lines << line;
  return lines;
}

} // namespace

TrayOutlook::TrayOutlook(QObject* parent) : QObject(parent) {
  connect(this, &TrayOutlook::asked, this, &TrayOutlook::reckon);
}

void TrayOutlook::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &TrayOutlook::reckon);
  emit asked();
}

bool TrayOutlook::is_tray() const {
  const auto code = Code::parse(plain(code_));
  if (session_ == nullptr || !code || code->kind() != Kind::tray)
    return false;
  const auto* lot = session_->standing().lot(*code);
  return lot != nullptr && lot->on_hand.contains(book::State::sown);
}

void TrayOutlook::reckon() {
  aside_->forget();
  lines_.clear();
  emit told();
  const auto code = Code::parse(plain(code_));
  if (!is_tray() || !code)
    return;
  const auto today = session_->today();
  const auto ask = [today, tray = *code](store::Reading& reading) {
    return work::trays_done(reading, today, work::done_habits(reading.registers()), tray);
  };
  aside_->ask(plain(session_->path()), ask,
              [this, today](const Result<std::vector<work::TrayDone>>& trays) {
                if (!trays)
                  lines_ = QStringList{fault_shown(trays.error())};
                else if (trays->empty())
                  lines_ = QStringList{
                      phrased("Its counts cannot be worked with, or no seed waits in it.")};
                else
                  lines_ = lines_of(trays->front(), today);
                emit told();
              });
}

} // namespace coneline::window
