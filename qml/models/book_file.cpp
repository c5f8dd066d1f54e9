// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_file.h"

#include "core/store/copy_book.h"
#include "wording.h"

#include <QDir>
#include <QFileInfo>

namespace coneline::window {

void BookFile::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &BookFile::changed);
  emit changed();
}

QString BookFile::usualCopy() const {
  const QFileInfo book(path());
  return book.dir().filePath(book.completeBaseName() + "-" + text(session_->today().iso()) +
                             ".coneline");
}

bool BookFile::copyTo(const QString& path) {
  const auto to = Session::path_of(path);
  return say(store::copy_book(Session::path_of(this->path()), to),
             tr("A whole copy stands at %1.").arg(text(to.string())));
}

bool BookFile::moveTo(const QString& path) {
  const auto from = Session::path_of(this->path());
  const auto to = Session::path_of(path);
  const auto moved = store::move_book(from, to, [&]() -> Result<void> {
    if (!session_->openBook(text(to.string())))
      return refuse(book_fault(plain(session_->fault())));
    return {};
  });
  // What the move opened already; the old file, which stays, has the last entries and the copies.
  if (!moved && Session::path_of(this->path()) != from)
    session_->openBook(text(from.string()));
  return say(moved, tr("The book now stands at %1.").arg(text(to.string())));
}

bool BookFile::open(const QString& path) {
  const bool opened = session_->openBook(path);
  return say(opened ? Result<void>() : refuse(book_fault(plain(session_->fault()))), QString());
}

bool BookFile::say(const Result<void>& done, const QString& told) {
  told_ = done ? told : QString();
  fault_ = done ? QString() : fault_shown(done.error());
  emit changed();
  return done.has_value();
}

} // namespace coneline::window
