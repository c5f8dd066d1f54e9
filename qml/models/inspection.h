// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A tray in the hand: three counters and what is still expected.

#include "aside.h"
#include "session.h"

namespace coneline::window {

class Inspection : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString tray MEMBER tray_ NOTIFY asked)
  Q_PROPERTY(int roots MEMBER roots_ NOTIFY countsChanged)
  Q_PROPERTY(int leaves MEMBER leaves_ NOTIFY countsChanged)
  Q_PROPERTY(int dead MEMBER dead_ NOTIFY countsChanged)
  Q_PROPERTY(bool counted READ counted NOTIFY countsChanged)
  Q_PROPERTY(QString title READ title NOTIFY told)
  Q_PROPERTY(QString holds READ holds NOTIFY told)
  Q_PROPERTY(QString place READ place NOTIFY told)
  Q_PROPERTY(QString looked READ looked NOTIFY told)
  Q_PROPERTY(QString expected READ expected NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY refused)

 public:
  explicit Inspection(QObject* parent = nullptr);
  void set_session(Session* session);

  /// Enters the look with what the counters say; they go back to 0. False where it is refused.
  Q_INVOKABLE bool record();

  [[nodiscard]] bool counted() const { return roots_ + leaves_ + dead_ > 0; }
  [[nodiscard]] QString title() const { return title_; }
  [[nodiscard]] QString holds() const { return holds_; }
  [[nodiscard]] QString place() const { return place_; }
  [[nodiscard]] QString looked() const { return looked_; }
  [[nodiscard]] QString expected() const { return expected_; }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void asked();
  void told();
  void countsChanged();
  void refused();

 private:
  void begin();
  void read();
  void tell_expected(const Code& tray);

  Session* session_ = nullptr;
  Aside* aside_ = new Aside(this);
  QString tray_;
  int roots_ = 0;
  int leaves_ = 0;
  int dead_ = 0;
  QString title_, holds_, place_, looked_, expected_, fault_;
};

} // namespace coneline::window
