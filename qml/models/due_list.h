// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Everything due today, in walking order.

#include "session.h"

namespace coneline::window {

class DueList : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)

 public:
  explicit DueList(QObject* parent = nullptr);
  void set_session(Session* session);
  [[nodiscard]] Rows* rows() { return &rows_; }

  /// Makes the entry of what needs nothing more. False where it cannot be made.
  Q_INVOKABLE bool doNow(const QString& key);

 signals:
  void asked();

 private:
  void read();

  Session* session_ = nullptr;
  Rows rows_;
};

} // namespace coneline::window
