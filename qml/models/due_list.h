// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Everything due today, in walking order or by day, and its way to a calendar and back.

#include "due_rows.h"
#include "session.h"

namespace coneline::window {

class DueList : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(bool byDay MEMBER by_day_ NOTIFY asked)
  Q_PROPERTY(coneline::window::DueRows* rows READ rows CONSTANT)
  Q_PROPERTY(QString told READ told NOTIFY toldChanged)
  Q_PROPERTY(QString fault READ fault NOTIFY toldChanged)

 public:
  explicit DueList(QObject* parent = nullptr);
  void set_session(Session* session);
  [[nodiscard]] DueRows* rows() { return &rows_; }

  /// Makes the entry of what needs nothing more. False where it cannot be made.
  Q_INVOKABLE bool doNow(const QString& key);
  /// A calendar file beside the book.
  Q_INVOKABLE QString usualCalendar() const;
  /// Writes what is due in the coming weeks, and what was settled lately. `told` or `fault` say how
  /// it went.
  Q_INVOKABLE bool saveCalendar(const QString& path);
  /// Takes in what was moved, ticked or struck in a calendar program.
  Q_INVOKABLE bool takeInCalendar(const QString& path);

  [[nodiscard]] QString told() const { return told_; }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void asked();
  void toldChanged();

 private:
  void read();
  void say(const QString& told, const QString& fault);

  Session* session_ = nullptr;
  bool by_day_ = false;
  DueRows rows_;
  QString told_;
  QString fault_;
};

} // namespace coneline::window
