// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is at one station, one row a thing: what is due comes first, then by cross or by place.

#include "session.h"

namespace coneline::window {

class StationList : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString station MEMBER station_ NOTIFY asked)
  Q_PROPERTY(bool byPlace MEMBER by_place_ NOTIFY asked)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)

 public:
  explicit StationList(QObject* parent = nullptr);
  void set_session(Session* session);
  [[nodiscard]] Rows* rows() { return &rows_; }

 signals:
  void asked();

 private:
  void read();

  Session* session_ = nullptr;
  QString station_;
  bool by_place_ = false;
  Rows rows_;
};

} // namespace coneline::window
