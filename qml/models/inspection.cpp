// SPDX-License-Identifier: GPL-3.0-or-later
#include "inspection.h"

#include "core/work/inspect.h"
#include "core/work/trays_done.h"
#include "wording.h"

namespace coneline::window {

namespace {

QString expected_of(const stats::CountRange& seeds) {
  return seeds.high == 0 ? phrased("no more expected")
                         : phrased("{} more expected (8 times in 10), likely {}",
                                   range(seeds.low, seeds.high), shown(seeds.median));
}

} // namespace

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
  title_ = origin_shown(line->origin.name);
  holds_ = holding(*line);
  place_ = place_name(session_->standing().registers, line->place);
  looked_ = phrased("not looked at yet");
  const auto entries =
      session_->ask([&](store::Reading& reading) { return reading.entries_of(line->lot.id); });
  for (const auto& entry : entries.value_or(std::vector<book::Entry>{}))
    if (entry.verb == book::Verb::inspect)
      looked_ = phrased("last look {}", shown(entry.date));
  tell_expected(*code);
  emit told();
}

/// The whole cross and its taxon are reckoned with, which takes longer than a scan may.
void Inspection::tell_expected(const Code& tray) {
  expected_.clear();
  const auto ask = [tray, day = session_->today()](store::Reading& reading) {
    return work::coming(reading, day, {work::DoneHabits{}.confidence, {}}, tray);
  };
  aside_->ask(plain(session_->path()), ask, [this, tray](const Result<work::ComingBook>& answer) {
    if (!answer)
      return;
    for (const auto& cross : answer->crosses)
      for (const auto& waiting : cross.trays)
        if (waiting.seen.lot.code == tray)
          expected_ = expected_of(waiting.coming.seeds);
    emit told();
  });
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
    fault_ = fault_shown(done.error());
    emit refused();
    return false;
  }
  begin();
  return true;
}

} // namespace coneline::window
