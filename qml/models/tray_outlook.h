// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is still to come of one tray, in plain words. It takes a moment to work out, since the other
// crosses of the taxon are asked too, so it is told when asked for and forgotten at the next entry.

#include "aside.h"
#include "session.h"

namespace coneline::window {

class TrayOutlook : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString code MEMBER code_ NOTIFY asked)
  Q_PROPERTY(bool tray READ is_tray NOTIFY told)
  Q_PROPERTY(QStringList lines READ lines NOTIFY told)

 public:
  explicit TrayOutlook(QObject* parent = nullptr);
  void set_session(Session* session);

  [[nodiscard]] bool is_tray() const; ///< a tray in which seed waits
  [[nodiscard]] QStringList lines() const { return lines_; }

 signals:
  void asked();
  void told();

 private:
  void reckon();

  Session* session_ = nullptr;
  Aside* aside_ = new Aside(this);
  QString code_;
  QStringList lines_;
};

} // namespace coneline::window
