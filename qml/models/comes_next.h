// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a cone on its plant will want next, and when: one row a piece of work, in the order of days.

#include "aside.h"
#include "session.h"

namespace coneline::window {

class ComesNext : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString code MEMBER code_ NOTIFY asked)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT) ///< "when", "told"

 public:
  explicit ComesNext(QObject* parent = nullptr);
  void set_session(Session* session);
  [[nodiscard]] Rows* rows() { return &rows_; }

 signals:
  void asked();

 private:
  void read();

  Session* session_ = nullptr;
  QString code_;
  std::pair<QString, QString> rows_of_; ///< the book and the cone
  Aside* aside_ = new Aside(this);
  Rows rows_;
};

} // namespace coneline::window
