// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A round from a folder of pictures: what was seen there is noted, what was not is listed, moves
// are proposed and entered only after a look. Pictures are read by a process of its own
// ("coneline round read"), so that none of them can take the window down.

#include "core/work/seen_there.h"
#include "session.h"

#include <QProcess>

#include <set>

namespace coneline::window {

class RoundPictures : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(QStringList places READ places NOTIFY told)
  Q_PROPERTY(bool reading READ reading NOTIFY told)
  Q_PROPERTY(QString progress READ progress NOTIFY told)
  Q_PROPERTY(QString said READ said NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(int wanted READ wanted NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* moves READ moves CONSTANT)
  Q_PROPERTY(coneline::window::Rows* rest READ rest CONSTANT)
  Q_PROPERTY(QString program MEMBER program_)

 public:
  explicit RoundPictures(QObject* parent = nullptr);
  ~RoundPictures() override;
  void set_session(Session* session);

  /// Begins to read; `place` by name, `day` for pictures that say none (may be empty).
  Q_INVOKABLE void read(const QString& folder, const QString& place, const QString& day);
  Q_INVOKABLE void stop();
  /// Whether a proposed move is to be entered; all are, until one is struck.
  Q_INVOKABLE void want(int move, bool wanted);
  Q_INVOKABLE bool accept();

  [[nodiscard]] QStringList places() const;
  [[nodiscard]] bool reading() const { return process_.state() != QProcess::NotRunning; }
  [[nodiscard]] QString progress() const { return progress_; }
  [[nodiscard]] QString said() const { return said_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] int wanted() const {
    return static_cast<int>(found_.moves.size() - struck_.size());
  }
  /// "code", "what", "doubt", "wanted".
  [[nodiscard]] Rows* moves() { return &moves_; }
  /// "heading", "code", "what": what was seen, not seen, not placed.
  [[nodiscard]] Rows* rest() { return &rest_; }

 signals:
  void told();

 private:
  void take(const QByteArray& answer);
  void tell_found();
  void refuse_with(const QString& why);

  Session* session_ = nullptr;
  QString program_;
  QProcess process_;
  std::optional<Code> place_;
  std::optional<Date> otherwise_;
  work::SeenThere found_;
  std::set<std::size_t> struck_;
  QString progress_, said_, fault_;
  Rows moves_;
  Rows rest_;
};

} // namespace coneline::window
