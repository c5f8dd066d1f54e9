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

 signals:
  void asked();

 private:
  void read();

  Session* session_ = nullptr;
  Rows rows_;
};

} // namespace coneline::window
