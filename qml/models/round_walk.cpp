// SPDX-License-Identifier: GPL-3.0-or-later
#include "round_walk.h"

#include "wording.h"

#include <algorithm>

namespace coneline::window {

namespace {

/// "1 root, 2 dead"; what was not found is left out.
QString found(const book::Tapped& tapped) {
  QStringList parts;
  const auto say = [&](std::int64_t count, const QString& one, const QString& many) {
    if (count > 0)
      parts << shown(count) + ' ' + (count == 1 ? one : many);
  };
  say(tapped.roots, RoundWalk::tr("root"), RoundWalk::tr("roots"));
  say(tapped.leaves, RoundWalk::tr("leaf"), RoundWalk::tr("leaves"));
  say(tapped.dead, RoundWalk::tr("dead"), RoundWalk::tr("dead"));
  return parts.isEmpty() ? RoundWalk::tr("nothing new") : parts.join(QStringLiteral(", "));
}

} // namespace

RoundWalk::RoundWalk(QObject* parent)
    : QObject(parent), to_come_({"code", "what", "place"}, this),
      trays_({"code", "what", "place", "came", "faint"}, this),
      places_({"code", "name", "trays"}, this) {}

void RoundWalk::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &RoundWalk::read);
  emit asked();
  read();
}

work::Noted RoundWalk::now() const {
  return {session_->today(), {}, {}};
}

QString RoundWalk::named(std::optional<book::PlaceId> place) const {
  return place_name(session_->standing().registers, place);
}

void RoundWalk::read() {
  if (!session_ || !session_->is_open())
    return;
  using Found = std::optional<work::RoundView>;
  const auto found = session_->ask([this](store::Reading& reading) -> Found {
    auto round = work::open_round(reading);
    if (!round && id_)
      if (auto last = work::round_of(reading, *id_))
        round = *last;
    if (!round)
      return std::nullopt;
    return work::view_round(reading, session_->standing().registers, *round);
  });
  view_ = found.value_or(std::nullopt);
  id_ = view_ ? std::optional(view_->round.id) : std::nullopt;
  tell();
}

void RoundWalk::tell() {
  title_ = holds_ = place_ = QString();
  if (view_ && view_->in_hand)
    if (const auto* line = session_->standing().lot(*view_->in_hand)) {
      title_ = origin_shown(line->origin.name);
      holds_ = holding(*line);
      place_ = named(line->place);
    }
  tell_trays();
  tell_to_come();
  if (!view_)
    tell_places();
  emit told();
}

void RoundWalk::tell_trays() {
  std::vector<Rows::Row> rows;
  if (view_)
    for (const auto& tray : view_->trays) {
      const auto state = tray.counted  ? found(tray.found)
                         : tray.seen   ? tr("seen, not counted")
                         : !tray.holds ? tr("ended since")
                         : ended()     ? tr("not found")
                                       : QString();
      rows.push_back({text(tray.code.text()), text(tray.origin), named(tray.place),
                      tray.moved ? state + (state.isEmpty() ? "" : ", ") + tr("moved") : state,
                      tray.seen});
    }
  constexpr std::size_t seen = 4; // the last of a row's parts
  if (ended())
    std::ranges::stable_partition(rows, [](const Rows::Row& row) { return !row[seen].toBool(); });
  trays_.replace(std::move(rows));
}

void RoundWalk::tell_to_come() {
  std::vector<Rows::Row> rows;
  std::size_t next = 0;
  if (view_)
    for (const auto& tray : view_->trays)
      if (tray.planned && !tray.seen && tray.holds) {
        if (view_->next == tray.code)
          next = rows.size();
        rows.push_back({text(tray.code.text()), text(tray.origin), named(tray.place)});
      }
  std::ranges::rotate(rows, rows.begin() + static_cast<std::ptrdiff_t>(next));
  to_come_.replace(std::move(rows));
}

void RoundWalk::tell_places() {
  due_ = 0;
  for (const auto& due : session_->standing().due)
    due_ += due.kind == work::DueKind::inspect ? 1 : 0;
  const auto& registers = session_->standing().registers;
  std::vector<Rows::Row> rows;
  for (const auto& place : registers.places) {
    std::int64_t trays = 0;
    for (const auto& line : session_->standing().lots)
      trays += line.lot.code.kind() == Kind::tray && line.total() > 0 &&
                       work::is_within(registers, line.place, place.id)
                   ? 1
                   : 0;
    if (trays > 0)
      rows.push_back({text(place.code.text()), text(place.name), qlonglong(trays)});
  }
  places_.replace(std::move(rows));
}

bool RoundWalk::say(const Fault& fault) {
  fault_ = fault_shown(fault);
  emit told();
  return false;
}

bool RoundWalk::step(const std::function<Result<work::Done>(store::Book&)>& act) {
  const auto done = session_->act(act);
  if (!done)
    return say(done.error());
  fault_.clear();
  said_ = text(done->told);
  emit told();
  return true;
}

bool RoundWalk::begin(const QString& place) {
  std::optional<Code> code;
  if (!place.isEmpty()) {
    const auto read = Code::parse(plain(place));
    if (!read)
      return say(read.error());
    code = *read;
  }
  return step([&](store::Book& book) {
    return work::begin_round(book, {code, now()}).map([](book::RoundId) {
      return work::Done{{}, {}, phrase("the round has begun"), {}};
    });
  });
}

bool RoundWalk::scan(const QString& typed) {
  if (!open())
    return false;
  const bool taken = step([&](store::Book& book) {
    return work::scan_in_round(book, *id_, plain(typed), now())
        .map([](const work::ScanDone& scanned) { return scanned.done; });
  });
  emit heard(taken);
  return taken;
}

void RoundWalk::count(int roots, int leaves, int dead) {
  if (!open())
    return;
  const book::Tapped tapped{roots, leaves, dead};
  if (tapped == view_->round.tapped)
    return;
  const auto kept =
      session_->keep([&](store::Book& book) { return work::tap_in_round(book, *id_, tapped); });
  if (!kept) {
    say(kept.error());
    return;
  }
  view_->round.tapped = tapped;
  view_->undoable = view_->undoable || !tapped.none();
  fault_.clear();
  emit told();
}

bool RoundWalk::enter() {
  return open() && step([&](store::Book& book) { return work::finish_look(book, *id_, now()); });
}

bool RoundWalk::undo() {
  return open() && step([&](store::Book& book) {
           auto done = work::undo_in_round(book, *id_, now());
           if (done)
             done->entries.clear(); // a reversal is not taken back
           return done;
         });
}

void RoundWalk::leaveBench() {
  if (!open())
    return;
  if (const auto left =
          session_->keep([&](store::Book& book) { return work::leave_bench(book, *id_); });
      !left)
    say(left.error());
  read();
}

bool RoundWalk::end() {
  return open() && step([&](store::Book& book) { return work::end_round(book, *id_, now()); });
}

void RoundWalk::forget() {
  id_.reset();
  fault_.clear();
  said_.clear();
  read();
}

QString RoundWalk::in_hand() const {
  return view_ && view_->in_hand ? text(view_->in_hand->text()) : QString();
}

QString RoundWalk::bench() const {
  return view_ && view_->round.bench ? named(view_->round.bench) : QString();
}

QString RoundWalk::next() const {
  if (!view_ || !view_->next)
    return {};
  for (const auto& tray : view_->trays)
    if (tray.code == *view_->next)
      return text(tray.code.text()) + ", " + named(tray.place);
  return {};
}

QString RoundWalk::progress() const {
  return view_ ? tr("%1 of %2").arg(view_->seen).arg(view_->planned) : QString();
}

QString RoundWalk::sums() const {
  if (!view_)
    return {};
  return tr("%1 counted: %2 · %3 moved · %4 not found")
      .arg(view_->counted)
      .arg(found(view_->found))
      .arg(view_->moved)
      .arg(view_->not_found);
}

} // namespace coneline::window
