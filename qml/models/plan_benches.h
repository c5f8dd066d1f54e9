// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Where every lot is to stand in the year to come: moves, what fills each place, what finds no
// room, and the lots that the grower pinned to a place.

#include "aside.h"
#include "core/plan/placing.h"
#include "session.h"

namespace coneline::window {

class PlanBenches : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(bool busy READ busy NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(QString proof READ proof NOTIFY told)
  Q_PROPERTY(QStringList noRoom READ no_room NOTIFY told)
  Q_PROPERTY(QStringList months READ months NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* todo READ todo CONSTANT)
  Q_PROPERTY(coneline::window::Rows* places READ places CONSTANT)
  Q_PROPERTY(coneline::window::Rows* stands READ stands CONSTANT)
  Q_PROPERTY(coneline::window::Rows* pins READ pins CONSTANT)
  Q_PROPERTY(QStringList placeNames READ place_names NOTIFY told)
  Q_PROPERTY(int opened READ opened WRITE open NOTIFY openedChanged)
  Q_PROPERTY(QString openedName READ opened_name NOTIFY openedChanged)
  Q_PROPERTY(QString entryFault READ entry_fault NOTIFY entryTold)
  Q_PROPERTY(QString saved READ saved NOTIFY savedChanged)
  Q_PROPERTY(QString saveFault READ save_fault NOTIFY savedChanged)

 public:
  explicit PlanBenches(QObject* parent = nullptr);
  ~PlanBenches() override;
  void set_session(Session* session);
  void open(int place); ///< of `places`; -1: none

  /// `place` by its name.
  Q_INVOKABLE bool pin(const QString& code, const QString& place);
  Q_INVOKABLE void unpin(const QString& code);
  /// Takes what was being reckoned as it is.
  Q_INVOKABLE void stop();
  Q_INVOKABLE QString usualPath(const QString& ending) const;
  Q_INVOKABLE bool save(const QString& path);
  Q_INVOKABLE void copy();

  [[nodiscard]] bool busy() const { return busy_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString proof() const { return proof_; }
  [[nodiscard]] QStringList no_room() const { return no_room_; }
  [[nodiscard]] QStringList months() const { return months_; }
  [[nodiscard]] Rows* todo() { return &todo_; }     ///< month, code, what, from, to, begins
  [[nodiscard]] Rows* places() { return &places_; } ///< name, taken, told
  [[nodiscard]] Rows* stands() { return &stands_; } ///< code, what, months: of the opened place
  [[nodiscard]] Rows* pins() { return &pins_; }     ///< code, place
  [[nodiscard]] QStringList place_names() const { return place_names_; }
  [[nodiscard]] int opened() const { return opened_; }
  [[nodiscard]] QString opened_name() const;
  [[nodiscard]] QString entry_fault() const { return entry_fault_; }
  [[nodiscard]] QString saved() const { return saved_; }
  [[nodiscard]] QString save_fault() const { return save_fault_; }

 signals:
  void told();
  void openedChanged();
  void entryTold();
  void savedChanged();

 private:
  struct Answer {
    plan::PlacingInput input;
    std::optional<plan::Placing> placing;
    std::optional<Fault> fault;
    std::map<Code, std::string> pinned; ///< by lot, the place's name
  };
  void reckon();
  void take(Answer answer);
  void tell_todo();
  void tell_places();
  void tell_stands();
  bool keep(const std::function<Result<void>(store::Writing&)>& write);

  Session* session_ = nullptr;
  bool busy_ = false;
  std::shared_ptr<std::atomic<bool>> stop_;
  std::optional<Answer> answer_;
  std::vector<book::PlaceId> shown_places_;
  QString fault_;
  QString proof_;
  QStringList no_room_;
  QStringList months_;
  QStringList place_names_;
  int opened_ = -1;
  QString entry_fault_;
  QString saved_;
  QString save_fault_;
  Rows todo_;
  Rows places_;
  Rows stands_;
  Rows pins_;
  Aside aside_;
};

} // namespace coneline::window
