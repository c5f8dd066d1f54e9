// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the ready field does with a scan, a typed code or a name.

#include "session.h"

#include <vector>

namespace coneline::window {

class Finder : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(
      coneline::window::Session* session READ session WRITE set_session NOTIFY sessionChanged)
  Q_PROPERTY(QString answer READ answer NOTIFY answered)
  Q_PROPERTY(QString ahead READ ahead NOTIFY answered)
  Q_PROPERTY(QString meant READ meant NOTIFY answered)
  Q_PROPERTY(coneline::window::Rows* found READ found CONSTANT)

 public:
  explicit Finder(QObject* parent = nullptr);

  /// The code to open; empty where there is none or several. Then `answer` says why, `meant` is the
  /// one existing code that one slip away would be, and `found` has the matches of a name.
  Q_INVOKABLE QString find(const QString& typed);
  Q_INVOKABLE void forget();
  /// After each letter: `ahead` says what goes by the name so far, before Return asks for it.
  Q_INVOKABLE void lookAhead(const QString& typed);

  [[nodiscard]] Session* session() const { return session_; }
  void set_session(Session* session);
  [[nodiscard]] QString ahead() const { return ahead_; }
  [[nodiscard]] QString answer() const { return answer_; }
  [[nodiscard]] QString meant() const { return meant_; }
  [[nodiscard]] Rows* found() { return &found_; }

 signals:
  void sessionChanged();
  void answered();

 private:
  /// A thing by its name, in the book as it stands.
  struct Known {
    QString name;
    QString folded; ///< without regard to capitals
    Code code;
  };
  const std::vector<Known>& known();
  /// Which of them have this in their names.
  std::vector<std::size_t> called(const QString& name);
  QString find_code(const QString& typed, const Result<Code>& code);
  QString find_name(const QString& name);

  Session* session_ = nullptr;
  std::vector<Known> known_;        ///< read when first asked for, until the book changes
  QString before_;                  ///< what was looked for last, folded
  std::vector<std::size_t> called_; ///< and what goes by it
  QString ahead_;
  QString answer_;
  QString meant_;
  Rows found_;
};

} // namespace coneline::window
