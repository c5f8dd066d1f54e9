// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A round as the window walks it. All of it stands in the book; this only tells it.

#include "core/work/round.h"
#include "session.h"

namespace coneline::window {

class RoundWalk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(bool open READ open NOTIFY told)
  Q_PROPERTY(bool ended READ ended NOTIFY told)
  Q_PROPERTY(QString inHand READ in_hand NOTIFY told)
  Q_PROPERTY(QString title READ title NOTIFY told)
  Q_PROPERTY(QString holds READ holds NOTIFY told)
  Q_PROPERTY(QString place READ place NOTIFY told)
  Q_PROPERTY(QString bench READ bench NOTIFY told)
  Q_PROPERTY(QString next READ next NOTIFY told)
  Q_PROPERTY(QString progress READ progress NOTIFY told)
  Q_PROPERTY(QString sums READ sums NOTIFY told)
  Q_PROPERTY(QString said READ said NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(int roots READ roots NOTIFY told)
  Q_PROPERTY(int leaves READ leaves NOTIFY told)
  Q_PROPERTY(int dead READ dead NOTIFY told)
  Q_PROPERTY(bool counted READ counted NOTIFY told)
  Q_PROPERTY(bool undoable READ undoable NOTIFY told)
  Q_PROPERTY(int due READ due NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* toCome READ to_come CONSTANT)
  Q_PROPERTY(coneline::window::Rows* trays READ trays CONSTANT)
  Q_PROPERTY(coneline::window::Rows* places READ places CONSTANT)

 public:
  explicit RoundWalk(QObject* parent = nullptr);
  void set_session(Session* session);

  /// Begins at a place's code; empty: all trays due for a look.
  Q_INVOKABLE bool begin(const QString& place);
  Q_INVOKABLE bool scan(const QString& text);
  Q_INVOKABLE void count(int roots, int leaves, int dead); ///< kept in the book at once
  Q_INVOKABLE bool enter();                                ///< the look, also one of nothing new
  Q_INVOKABLE bool undo();
  Q_INVOKABLE void leaveBench();
  Q_INVOKABLE bool end();
  Q_INVOKABLE void forget(); ///< puts the ended round away

  [[nodiscard]] bool open() const { return view_ && !view_->round.ended; }
  [[nodiscard]] bool ended() const { return view_ && view_->round.ended; }
  [[nodiscard]] QString in_hand() const;
  [[nodiscard]] QString title() const { return title_; }
  [[nodiscard]] QString holds() const { return holds_; }
  [[nodiscard]] QString place() const { return place_; }
  [[nodiscard]] QString bench() const;
  [[nodiscard]] QString next() const;
  [[nodiscard]] QString progress() const;
  [[nodiscard]] QString sums() const;
  [[nodiscard]] QString said() const { return said_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] int roots() const {
    return view_ ? static_cast<int>(view_->round.tapped.roots) : 0;
  }
  [[nodiscard]] int leaves() const {
    return view_ ? static_cast<int>(view_->round.tapped.leaves) : 0;
  }
  [[nodiscard]] int dead() const { return view_ ? static_cast<int>(view_->round.tapped.dead) : 0; }
  [[nodiscard]] bool counted() const { return view_ && !view_->round.tapped.none(); }
  [[nodiscard]] bool undoable() const { return view_ && view_->undoable; }
  [[nodiscard]] int due() const { return due_; }
  [[nodiscard]] Rows* to_come() { return &to_come_; } ///< from the next one on
  /// Once the round has ended, what was not found stands first.
  [[nodiscard]] Rows* trays() { return &trays_; }
  [[nodiscard]] Rows* places() { return &places_; }

 signals:
  void asked();
  void told();
  void heard(bool taken); ///< after each scan: taken, or refused

 private:
  void read();
  void tell();
  void tell_trays();
  void tell_to_come();
  void tell_places();
  bool say(const Fault& fault);
  bool step(const std::function<Result<work::Done>(store::Book&)>& act);
  [[nodiscard]] work::Noted now() const;
  [[nodiscard]] QString named(std::optional<book::PlaceId> place) const;

  Session* session_ = nullptr;
  std::optional<book::RoundId> id_;
  std::optional<work::RoundView> view_;
  QString title_, holds_, place_, said_, fault_;
  int due_ = 0;
  Rows to_come_;
  Rows trays_;
  Rows places_;
};

} // namespace coneline::window
