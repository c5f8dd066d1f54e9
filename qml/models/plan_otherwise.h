// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What would be if something were otherwise: changes that are supposed, both plans beside each
// other, and taking what was supposed into the book. Nothing is written before that.

#include "aside.h"
#include "core/plan/compared.h"
#include "core/plan/supposed_records.h"
#include "session.h"

#include <QTimer>

namespace coneline::window {

class PlanOtherwise : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(bool busy READ busy NOTIFY progressed)
  Q_PROPERTY(double done READ done NOTIFY progressed)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(QStringList taxa READ taxa NOTIFY told)
  Q_PROPERTY(QStringList places READ places NOTIFY told)
  Q_PROPERTY(QStringList pots READ pots NOTIFY told)
  Q_PROPERTY(QStringList mixes READ mixes NOTIFY told)
  Q_PROPERTY(QStringList crosses READ crosses NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* changes READ changes CONSTANT)
  Q_PROPERTY(QStringList most READ most NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* years READ years CONSTANT)
  Q_PROPERTY(coneline::window::Rows* full READ full CONSTANT)
  Q_PROPERTY(bool writable READ writable NOTIFY told)
  Q_PROPERTY(QStringList notWritten READ not_written NOTIFY told)
  Q_PROPERTY(QString entryFault READ entry_fault NOTIFY entryTold)
  Q_PROPERTY(QString accepted READ accepted NOTIFY entryTold)

 public:
  explicit PlanOtherwise(QObject* parent = nullptr);
  ~PlanOtherwise() override;
  void set_session(Session* session);

  /// The steps of a taxon's route, "1 Seed tray of 40".
  Q_INVOKABLE QStringList stepsOf(const QString& taxon) const;
  /// One change more; `typed` by its kind:
  ///   survival  taxon, step (as stepsOf), percent
  ///   pace      of (a taxon or place), factor
  ///   more      name, light, length, width (mm)
  ///   less      name
  ///   mix       pot, mix
  ///   cones     nothing
  ///   sow       cross, seeds, month (2027-05)
  ///   potting   from, to (1 to 12)
  ///   sold      months
  Q_INVOKABLE bool suppose(const QString& kind, const QVariantMap& typed);
  Q_INVOKABLE void forget(int change); ///< of `changes`
  Q_INVOKABLE void stop();
  /// Into the book, what of it can be.
  Q_INVOKABLE bool accept();

  [[nodiscard]] bool busy() const { return busy_; }
  [[nodiscard]] double done() const;
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QStringList taxa() const;
  [[nodiscard]] QStringList places() const;
  [[nodiscard]] QStringList pots() const;
  [[nodiscard]] QStringList mixes() const;
  [[nodiscard]] QStringList crosses() const { return crosses_; }
  [[nodiscard]] Rows* changes() { return &changes_; } ///< told
  [[nodiscard]] QStringList most() const { return most_; }
  [[nodiscard]] Rows* years() { return &years_; } ///< name, year, present, supposed, difference
  [[nodiscard]] Rows* full() { return &full_; }   ///< name, present, supposed
  [[nodiscard]] bool writable() const { return writable_; }
  [[nodiscard]] QStringList not_written() const { return not_written_; }
  [[nodiscard]] QString entry_fault() const { return entry_fault_; }
  [[nodiscard]] QString accepted() const { return accepted_; }

 signals:
  void told();
  void progressed();
  void entryTold();

 private:
  struct Course {
    std::atomic<int> done = 0;
    std::atomic<bool> stop = false;
  };
  struct Answer {
    plan::ForecastInput present;
    std::vector<std::string> told;
    std::optional<plan::Comparison> compared;
    std::optional<Fault> fault;
  };
  Result<plan::Change> change_of(const QString& kind, const QVariantMap& typed) const;
  void reckon();
  void take(Answer answer);
  void tell_compared(const plan::Comparison& compared);

  Session* session_ = nullptr;
  bool busy_ = false;
  std::shared_ptr<Course> course_;
  plan::Supposition supposition_;
  std::optional<plan::ForecastInput> present_;
  QString fault_;
  QStringList crosses_;
  QStringList most_;
  bool writable_ = false;
  QStringList not_written_;
  QString entry_fault_;
  QString accepted_;
  Rows changes_;
  Rows years_;
  Rows full_;
  QTimer look_;
  Aside aside_;
};

} // namespace coneline::window
