// SPDX-License-Identifier: GPL-3.0-or-later
#include "inspection.h"

#include "core/report/germination_report.h"
#include "core/work/inspect.h"
#include "wording.h"

namespace coneline::window {

Inspection::Inspection(QObject* parent) : QObject(parent) {
  connect(this, &Inspection::asked, this, &Inspection::begin);
}

void Inspection::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &Inspection::read);
  emit asked();
}

void Inspection::begin() {
  roots_ = leaves_ = dead_ = 0;
  fault_.clear();
  emit countsChanged();
  emit refused();
  read();
}

void Inspection::read() {
  const auto code = Code::parse(plain(tray_));
  const auto* line = session_ && code ? session_->standing().lot(*code) : nullptr;
  if (!line)
    return;
  title_ = text(line->origin.name);
  holds_ = holding(*line);
  place_ = place_name(session_->standing().registers, line->place);
  looked_ = QStringLiteral("not looked at yet");
  const auto entries =
      session_->ask([&](store::Reading& reading) { return reading.entries_of(line->lot.id); });
  for (const auto& entry : entries.value_or(std::vector<book::Entry>{}))
    if (entry.verb == book::Verb::inspect)
      looked_ = "last look " + shown(entry.date);
  expected_ = expected_of(line->lot.id);
  emit told();
}

QString Inspection::expected_of(book::LotId tray) {
  const auto day = session_->today();
  const auto& registers = session_->standing().registers;
  const auto report = session_->ask([&](store::Reading& reading) {
    auto trays = work::observed_trays(reading, registers, day);
    std::erase_if(trays, [&](const auto& one) { return one.lot.id != tray; });
    return report::germination_report(trays, registers, {day});
  });
  if (!report || report->crosses.empty())
    return {};
  const auto& more = report->crosses.front().figures.still_expected;
  return more.high == 0
             ? QStringLiteral("no more expected")
             : range(more.low, more.high) + " more expected, likely " + shown(more.median);
}

bool Inspection::record() {
  const auto code = Code::parse(plain(tray_));
  if (!session_ || !code)
    return false;
  const work::Inspect wanted{*code,
                             Count::sure(std::max(roots_, 0)),
                             Count::sure(std::max(leaves_, 0)),
                             Count::sure(std::max(dead_, 0)),
                             {session_->today(), {}, {}}};
  const auto done = session_->act([&](store::Book& book) { return work::inspect(book, wanted); });
  if (!done) {
    fault_ = text(done.error().text());
    emit refused();
    return false;
  }
  begin();
  return true;
}

} // namespace coneline::window
