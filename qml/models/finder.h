// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the ready field does with a scan, a typed code or a name.

#include "session.h"

namespace coneline::window {

class Finder : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ NOTIFY sessionChanged)
  Q_PROPERTY(QString answer READ answer NOTIFY answered)
  Q_PROPERTY(QString meant READ meant NOTIFY answered)
  Q_PROPERTY(coneline::window::Rows* found READ found CONSTANT)

 public:
  explicit Finder(QObject* parent = nullptr);

  /// The code to open; empty where there is none or several. Then `answer` says why, `meant` is the
  /// one existing code that one slip away would be, and `found` has the matches of a name.
  Q_INVOKABLE QString find(const QString& typed);
  Q_INVOKABLE void forget();

  [[nodiscard]] QString answer() const { return answer_; }
  [[nodiscard]] QString meant() const { return meant_; }
  [[nodiscard]] Rows* found() { return &found_; }

 signals:
  void sessionChanged();
  void answered();

 private:
  QString find_code(const QString& typed, const Result<Code>& code);
  QString find_name(const QString& name);

  Session* session_ = nullptr;
  QString answer_;
  QString meant_;
  Rows found_;
};

} // namespace coneline::window
