// SPDX-License-Identifier: GPL-3.0-or-later
#include "round_pictures.h"

#include "labels/round/bench_pictures.h"
#include "wording.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace coneline::window {

namespace {

labels::BenchPicture picture_of(const QJsonObject& json) {
  labels::BenchPicture picture;
  picture.file = plain(json["file"].toString());
  for (const auto& each : json["texts"].toArray())
    picture.texts.push_back(plain(each.toString()));
  if (const auto taken = Date::parse(plain(json["taken"].toString())))
    picture.taken = *taken;
  if (json["error"].isString())
    picture.error = plain(json["error"].toString());
  return picture;
}

} // namespace

RoundPictures::RoundPictures(QObject* parent)
    : QObject(parent), program_(QCoreApplication::applicationFilePath()),
      moves_({"code", "what", "doubt", "wanted"}, this), rest_({"heading", "code", "what"}, this) {
  connect(&process_, &QProcess::readyReadStandardError, this, [this] {
    progress_ =
        QString::fromUtf8(process_.readAllStandardError()).trimmed().section(QLatin1Char('\n'), -1);
    emit told();
  });
  connect(&process_, &QProcess::stateChanged, this, &RoundPictures::told);
  connect(&process_, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
    if (error == QProcess::FailedToStart)
      refuse_with(tr("%1 could not be started").arg(program_));
  });
  connect(&process_, &QProcess::finished, this, [this](int, QProcess::ExitStatus status) {
    if (status == QProcess::NormalExit)
      take(process_.readAllStandardOutput());
    else
      refuse_with(tr("Reading was stopped; nothing of it is noted."));
  });
}

RoundPictures::~RoundPictures() {
  process_.disconnect(this);
  process_.kill();
  process_.waitForFinished(1000);
}

void RoundPictures::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &RoundPictures::told);
  emit told();
}

QStringList RoundPictures::places() const {
  QStringList names;
  if (session_)
    for (const auto& place : session_->standing().registers.places)
      names << text(place.name);
  return names;
}

void RoundPictures::read(const QString& folder, const QString& place, const QString& day) {
  if (!session_ || reading())
    return;
  found_ = {};
  struck_.clear();
  said_.clear();
  fault_.clear();
  progress_ = tr("0 pictures read");
  tell_found();
  const auto* at = book::named(session_->standing().registers.places, plain(place));
  if (!at)
    return refuse_with(tr("Choose the place that was pictured."));
  place_ = at->code;
  otherwise_.reset();
  if (!day.trimmed().isEmpty()) {
    const auto read = read_day(day);
    if (!read)
      return refuse_with(fault_shown(read.error()));
    otherwise_ = *read;
  }
  process_.start(program_, {QStringLiteral("round"), QStringLiteral("read"),
                            text(Session::path_of(folder).string()), QStringLiteral("--json")});
}

void RoundPictures::stop() {
  process_.kill();
}

void RoundPictures::take(const QByteArray& answer) {
  const auto json = QJsonDocument::fromJson(answer);
  if (!json.isArray())
    return refuse_with(progress_.isEmpty() ? tr("The pictures could not be read.") : progress_);
  std::vector<labels::BenchPicture> pictures;
  QStringList failed;
  for (const auto& each : json.array()) {
    pictures.push_back(picture_of(each.toObject()));
    if (pictures.back().error)
      failed << text(pictures.back().file + ": " + *pictures.back().error);
  }
  const auto read = labels::labels_read(pictures, otherwise_, session_->today());
  if (!read)
    return refuse_with(fault_shown(read.error()));
  const auto found = session_->ask([&](store::Reading& reading) -> Result<work::SeenThere> {
    return work::seen_in_pictures(reading, session_->standing().registers, *place_, *read);
  });
  if (!found)
    return refuse_with(session_->fault());
  found_ = *found;
  std::int64_t noted = 0;
  const auto kept = session_->keep([&](store::Book& book) {
    return work::note_seen(book, found_, book::SeenBy::picture).map([&](std::int64_t count) {
      noted = count;
    });
  });
  if (!kept)
    return refuse_with(fault_shown(kept.error()));
  progress_.clear();
  fault_ = failed.join(QLatin1Char('\n'));
  said_ = tr("%1 pictures: %2 seen, %3 of them noted now; %4 not seen; %5 moves proposed")
              .arg(shown(std::int64_t(pictures.size())), shown(std::int64_t(found_.seen.size())),
                   shown(noted), shown(std::int64_t(found_.not_seen.size())),
                   shown(std::int64_t(found_.moves.size())));
  tell_found();
}

void RoundPictures::tell_found() {
  const auto place = [&](std::optional<book::PlaceId> id) {
    return place_name(session_->standing().registers, id);
  };
  std::vector<Rows::Row> moves;
  for (std::size_t at = 0; at < found_.moves.size(); ++at) {
    const auto& move = found_.moves[at];
    moves.push_back({text(move.code.text()),
                     tr("from %1 to %2, seen on %3 in %4")
                         .arg(place(move.from), place(move.to), shown(move.on), text(move.source)),
                     text(move.doubt), !struck_.contains(at)});
  }
  moves_.replace(std::move(moves));
  std::vector<Rows::Row> rest;
  for (const auto& each : found_.not_seen)
    rest.push_back(
        {tr("Not seen"), text(each.code.text()),
         text(each.origin) + ", " + place(each.place) +
             (each.last_seen ? tr(", last seen on %1").arg(shown(*each.last_seen)) : QString())});
  for (const auto& each : found_.unplaced)
    rest.push_back({tr("Read, but of nothing here"), text(each.text),
                    text(each.why) + " (" + text(each.source) + ")"});
  for (const auto& each : found_.seen)
    rest.push_back({tr("Seen"), text(each.code.text()),
                    text(each.origin) + ", " + place(each.place) + ", " + shown(each.on)});
  rest_.replace(std::move(rest));
  emit told();
}

void RoundPictures::want(int move, bool wanted) {
  const auto at = static_cast<std::size_t>(move);
  if (at >= found_.moves.size())
    return;
  if (wanted)
    struck_.erase(at);
  else
    struck_.insert(at);
  tell_found();
}

bool RoundPictures::accept() {
  std::vector<work::ProposedMove> wanted;
  for (std::size_t at = 0; at < found_.moves.size(); ++at)
    if (!struck_.contains(at))
      wanted.push_back(found_.moves[at]);
  const auto done = session_->act(
      [&](store::Book& book) { return work::accept_moves(book, wanted, std::string()); });
  if (!done) {
    fault_ = fault_shown(done.error());
    emit told();
    return false;
  }
  fault_.clear();
  said_ = text(done->told);
  found_.moves.clear();
  struck_.clear();
  tell_found();
  return true;
}

void RoundPictures::refuse_with(const QString& why) {
  progress_.clear();
  fault_ = why;
  emit told();
}

} // namespace coneline::window
