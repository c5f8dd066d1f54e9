// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What to sow so that so many plants of a cross are there by a month: the targets kept in the book,
// what each needs, and where they want the same seed or room.

#include "aside.h"
#include "core/report/targets.h"
#include "session.h"

namespace coneline::window {

class PlanTargets : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(bool busy READ busy NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(QStringList crosses READ crosses NOTIFY told)
  Q_PROPERTY(QStringList pots READ pots NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* targets READ targets CONSTANT)
  Q_PROPERTY(QStringList conflicts READ conflicts NOTIFY told)
  Q_PROPERTY(QString entryFault READ entry_fault NOTIFY entryTold)

 public:
  explicit PlanTargets(QObject* parent = nullptr);
  ~PlanTargets() override;
  void set_session(Session* session);

  /// The pots that the route of a cross comes to.
  Q_INVOKABLE QStringList potsOf(const QString& cross) const;
  /// `by` as 2029-10, `sure` in per cent, as they were typed.
  Q_INVOKABLE bool enter(const QString& cross, const QString& pot, const QString& plants,
                         const QString& by, const QString& sure);
  Q_INVOKABLE void strike(qlonglong id);

  [[nodiscard]] bool busy() const { return busy_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QStringList crosses() const;
  [[nodiscard]] QStringList pots() const;
  [[nodiscard]] Rows* targets() { return &targets_; } ///< id, title, line, seed, dates, reached
  [[nodiscard]] QStringList conflicts() const { return conflicts_; }
  [[nodiscard]] QString entry_fault() const { return entry_fault_; }

 signals:
  void told();
  void entryTold();

 private:
  struct Cross {
    std::string name;
    book::TaxonId taxon;
  };
  struct Answer {
    std::vector<Cross> crosses;
    std::vector<report::TargetTold> targets;
    std::vector<std::string> conflicts;
    std::optional<Fault> fault;
  };
  void reckon();
  void take(Answer answer);
  bool keep(const std::function<Result<void>(store::Writing&)>& write);
  bool refuse_entry(const QString& why);

  Session* session_ = nullptr;
  bool busy_ = false;
  std::shared_ptr<std::atomic<bool>> stop_;
  std::vector<Cross> crosses_;
  QStringList conflicts_;
  QString fault_;
  QString entry_fault_;
  Rows targets_;
  Aside aside_;
};

} // namespace coneline::window
