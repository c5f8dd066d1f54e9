// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The file of the open book: where it is, copied, put elsewhere, another one opened.

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

  /// Each is false where it cannot be; `fault` says why, and what was open stays open.
  Q_INVOKABLE bool copyTo(const QString& path);
  Q_INVOKABLE bool moveTo(const QString& path);
  Q_INVOKABLE bool open(const QString& path);
  /// A name for a copy beside the book, with the day in it.
  [[nodiscard]] Q_INVOKABLE QString usualCopy() const;

  [[nodiscard]] QString path() const { return session_ ? session_->path() : QString(); }
  [[nodiscard]] QString told() const { return told_; }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void changed();

 private:
  bool say(const Result<void>& done, const QString& told);

  Session* session_ = nullptr;
  QString told_;
  QString fault_;
};

} // namespace coneline::window
