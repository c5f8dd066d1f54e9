// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The file of the open book: where it is, copied, put elsewhere, another one opened. Copying and
// moving are done aside from the window's thread, go on where this is left, and can be stopped;
// then the book is as it was.

#include "session.h"

namespace coneline::window {

class BookFile : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY changed)
  Q_PROPERTY(QString path READ path NOTIFY changed)
  Q_PROPERTY(QString told READ told NOTIFY changed)
  Q_PROPERTY(QString fault READ fault NOTIFY changed)

 public:
  explicit BookFile(QObject* parent = nullptr) : QObject(parent) {}
  void set_session(Session* session);

  // Where one of these cannot be, `fault` says why, and what was open stays open where it was.

  /// Entries that are made meanwhile are not in the copy.
  Q_INVOKABLE void copyTo(const QString& path);
  /// Nothing is entered meanwhile. The moved book is the open one then.
  Q_INVOKABLE void moveTo(const QString& path);
  Q_INVOKABLE bool open(const QString& path);
  /// A name for a copy beside the book, with the day in it.
  [[nodiscard]] Q_INVOKABLE QString usualCopy() const;

  [[nodiscard]] QString path() const { return session_ ? session_->path() : QString(); }
  /// The session keeps it for whoever comes back to the page.
  [[nodiscard]] QString told() const { return session_ ? session_->outcome() : QString(); }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void changed();

 private:
  void begin(const QString& said, Touches touches, const std::shared_ptr<Course>& course,
             std::function<Result<void>()> work,
             std::function<void(const Result<void>&)> afterwards, const QString& told);
  void say(const QString& fault);

  Session* session_ = nullptr;
  QString fault_;
};

} // namespace coneline::window
