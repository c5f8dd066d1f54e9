// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Every tray in which seed waits: whether it can be emptied, what another month would bring, and
// what its bench costs meanwhile.

#include "aside.h"
#include "core/work/trays_done.h"
#include "session.h"

namespace coneline::window {

class TraysToEmpty : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(QString summary READ summary NOTIFY told)
  Q_PROPERTY(bool reckoning READ reckoning NOTIFY told)

 public:
  explicit TraysToEmpty(QObject* parent = nullptr);
  void set_session(Session* session);

  /// "code", "cross", "heading", "said", "chance" (0 to 1).
  [[nodiscard]] Rows* rows() { return &rows_; }
  [[nodiscard]] QString summary() const { return summary_; }
  [[nodiscard]] bool reckoning() const { return reckoning_; }

 signals:
  void told();

 private:
  void read();
  void show(const std::vector<work::TrayDone>& trays);

  Session* session_ = nullptr;
  Aside* aside_ = new Aside(this);
  Rows rows_;
  QString summary_;
  bool reckoning_ = false;
};

} // namespace coneline::window
