// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_file.h"

#include "core/store/copies.h"
#include "core/store/copy_book.h"
#include "wording.h"

#include <QDir>
#include <QFileInfo>

namespace coneline::window {

namespace {

/// To be done aside. The window goes along as soon as the book stands at its new place.
Result<void> move(const QPointer<Session>& session, const std::filesystem::path& from,
                  const std::filesystem::path& to, const std::shared_ptr<Course>& course) {
  const auto follow = [session, from, to]() -> Result<void> {
    return session ? session->follow(text(from.string()), text(to.string())) : Result<void>();
  };
  const auto now_there = [&]() -> Result<void> {
    return store::make_due_copy(to)
        .and_then([&] { return Aside::in_window(follow, *course); })
        .map([&] { Aside::wait_for_readers(from); });
  };
  return store::move_book(from, to, now_there, told_to(course));
}

} // namespace

void BookFile::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &BookFile::changed);
  connect(session, &Session::outcomeChanged, this, &BookFile::changed);
  emit changed();
}

QString BookFile::usualCopy() const {
  const QFileInfo book(path());
  return book.dir().filePath(book.completeBaseName() + "-" + text(session_->today().iso()) +
                             ".coneline");
}

void BookFile::copyTo(const QString& path) {
  const auto course = std::make_shared<Course>();
  const auto to = Session::path_of(path);
  begin(
      tr("The book is being copied …"), Touches::nothing, course,
      [from = Session::path_of(this->path()), to, course] {
        return store::copy_book(from, to, told_to(course));
      },
      [](const Result<void>&) {}, tr("A whole copy stands at %1.").arg(text(to.string())));
}

void BookFile::moveTo(const QString& path) {
  const auto course = std::make_shared<Course>();
  const auto from = Session::path_of(this->path());
  const auto to = Session::path_of(path);
  begin(
      tr("The book is being moved …"), Touches::open_book, course,
      [session = QPointer(session_), from, to, course] { return move(session, from, to, course); },
      [session = session_, from, to](const Result<void>& moved) {
        // The old file, which stays, has the last entries and the copies.
        if (!moved && session->path() == text(to.string()))
          session->openBook(text(from.string()));
      },
      tr("The book now stands at %1.").arg(text(to.string())));
}

bool BookFile::open(const QString& path) {
  const bool opened = session_->openBook(path);
  say(opened ? QString() : session_->fault());
  return opened;
}

void BookFile::begin(const QString& said, Touches touches, const std::shared_ptr<Course>& course,
                     std::function<Result<void>()> work,
                     std::function<void(const Result<void>&)> afterwards, const QString& told) {
  const auto take = [self = QPointer(this), session = session_, afterwards = std::move(afterwards),
                     told](const Result<void>& done) {
    afterwards(done);
    if (done)
      session->set_outcome(told);
    else if (self)
      self->say(fault_shown(done.error()));
    else
      session->set_fault(done.error());
  };
  if (!session_->work_long(said, touches, course, std::move(work), take))
    return;
  session_->set_outcome({});
  say({});
}

void BookFile::say(const QString& fault) {
  fault_ = fault;
  emit changed();
}

} // namespace coneline::window
