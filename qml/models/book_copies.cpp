// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_copies.h"

#include "wording.h"

#include <QDateTime>

namespace coneline::window {

namespace {

/// In the grower's own time and form.
QString when(const store::Copy& copy) {
  auto time = QDateTime::fromString(text(copy.changed), QStringLiteral("yyyy-MM-dd hh:mm:ss"));
  time.setTimeSpec(Qt::UTC);
  const auto own = time.toLocalTime();
  // Several copies can be of one minute.
  const auto date = own.date();
  const auto day =
      Date::of(date.year(), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  return (day ? shown(*day) : text(copy.changed)) +
         own.time().toString(QStringLiteral(" hh:mm:ss"));
}

QString about(const store::Copy& copy, const store::CopyState& state) {
  if (!state.good)
    return BookCopies::tr("not good: %1").arg(text(state.fault));
  const auto entries = phrased_n(state.entries, "{} entry", "{} entries");
  return copy.kind == store::Copy::Kind::before_migration
             ? BookCopies::tr("%1, before a newer program").arg(entries)
             : entries;
}

} // namespace

BookCopies::BookCopies(QObject* parent)
    : QObject(parent), rows_({"file", "when", "about", "good"}, this), aside_(nullptr) {}

void BookCopies::set_path(const QString& path) {
  if (path == path_)
    return;
  path_ = path;
  told_.clear();
  fault_.clear();
  read_anew();
}

void BookCopies::restore(const QString& file) {
  bring_back([copy = std::filesystem::path(plain(file))](const auto& book,
                                                         const Progress& progress) -> Result<void> {
    auto done = store::restore(book, copy, progress);
    return done ? Result<void>() : refuse(done.error());
  });
}

void BookCopies::undo() {
  bring_back([](const auto& book, const Progress& progress) -> Result<void> {
    auto done = store::undo_restore(book, progress);
    return done ? Result<void>() : refuse(done.error());
  });
}

void BookCopies::bring_back(
    std::function<Result<void>(const std::filesystem::path&, const Progress&)> bring) {
  told_.clear();
  fault_.clear();
  const auto path = path_; // closing changes what it is bound to
  const auto course = std::make_shared<Course>();
  session_->replace_file(
      path, tr("The book is being put back …"), course,
      [bring = std::move(bring), book = Session::path_of(path), course] {
        return bring(book, told_to(course));
      },
      [self = QPointer(this), path](const Result<void>& done) {
        if (self)
          self->brought_back(path, done);
      });
  emit changed();
}

void BookCopies::brought_back(const QString& path, const Result<void>& done) {
  if (path != path_)
    return; // another book's copies are looked at meanwhile
  if (done)
    told_ = tr("The book was put back. What stood there is kept.");
  else
    fault_ = fault_shown(done.error());
  read_anew();
}

void BookCopies::read_anew() {
  looking_ = true;
  emit changed();
  aside_.run(
      [path = Session::path_of(path_)] {
        std::vector<Seen> seen;
        if (!path.empty())
          for (auto& copy : store::copies_of(path))
            seen.push_back({copy, copy.kind == store::Copy::Kind::replaced
                                      ? store::CopyState()
                                      : store::look_into(copy)});
        return seen;
      },
      [this](const std::vector<Seen>& seen) { tell(seen); });
}

void BookCopies::tell(const std::vector<Seen>& seen) {
  looking_ = false;
  undoable_ = false;
  std::vector<Rows::Row> rows;
  for (const auto& [copy, state] : seen)
    if (copy.kind == store::Copy::Kind::replaced)
      undoable_ = true;
    else
      rows.push_back({text(copy.path.string()), when(copy), about(copy, state), state.good});
  rows_.replace(std::move(rows));
  emit changed();
}

} // namespace coneline::window
