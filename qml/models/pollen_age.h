// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Seed set and germination by store and age of the pollen, from the whole book.

#include "session.h"

namespace coneline::window {

class PollenAge : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)

 public:
  explicit PollenAge(QObject* parent = nullptr);
  void set_session(Session* session);
  /// "title", "facts", and for "set" and "up" the range as words and from 0 to 1; -1 where there is
  /// none.
  [[nodiscard]] Rows* rows() { return &rows_; }

 signals:
  void asked();

 private:
  void read();

  Session* session_ = nullptr;
  Rows rows_;
};

} // namespace coneline::window
