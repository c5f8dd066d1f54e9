// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the diary says of a cone, a pollen lot or a parent plant, one fact a row.

#include "session.h"

namespace coneline::window {

class Diary : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString code MEMBER code_ NOTIFY asked)
  Q_PROPERTY(coneline::window::Rows* facts READ facts CONSTANT)

 public:
  explicit Diary(QObject* parent = nullptr);
  void set_session(Session* session);
  [[nodiscard]] Rows* facts() { return &facts_; }

 signals:
  void asked();

 private:
  void read();

  Session* session_ = nullptr;
  QString code_;
  Rows facts_;
};

} // namespace coneline::window
