// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What would be if something were otherwise: changes that are supposed, both plans beside each
// other, and taking what was supposed into the book. Nothing is written before that.

#include "core/plan/compared.h"
#include "core/plan/supposed_records.h"
#include "plan_part.h"

namespace coneline::window {

class PlanOtherwise : public PlanPart {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QStringList taxa READ taxa NOTIFY told)
  Q_PROPERTY(QStringList places READ places NOTIFY told)
  Q_PROPERTY(QStringList pots READ pots NOTIFY told)
  Q_PROPERTY(QStringList mixes READ mixes NOTIFY told)
  Q_PROPERTY(QStringList crosses READ crosses NOTIFY told)
  Q_PROPERTY(QStringList crossesShown READ crosses_shown NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* changes READ changes CONSTANT)
  Q_PROPERTY(QStringList most READ most NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* years READ years CONSTANT)
  Q_PROPERTY(coneline::window::Rows* full READ full CONSTANT)
  Q_PROPERTY(bool writable READ writable NOTIFY told)
  Q_PROPERTY(QStringList notWritten READ not_written NOTIFY told)
  Q_PROPERTY(QString accepted READ accepted NOTIFY entryTold)

 public:
  explicit PlanOtherwise(QObject* parent = nullptr);

  /// The steps of a taxon's route as they are shown, "1 Seed tray of 40, now 80 %", in their order.
  Q_INVOKABLE QStringList stepsOf(const QString& taxon) const;
  /// One change more; `typed` by its kind:
  ///   survival  taxon, step (its number from 1), percent
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
  /// Into the book, what of it can be.
  Q_INVOKABLE bool accept();

  [[nodiscard]] QStringList taxa() const;
  [[nodiscard]] QStringList places() const;
  [[nodiscard]] QStringList pots() const;
  [[nodiscard]] QStringList mixes() const;
  [[nodiscard]] QStringList crosses() const { return crosses_; }
  [[nodiscard]] QStringList crosses_shown() const; ///< each of `crosses` as it is said
  /// told: one a change, its sentence, or its number while that is not known
  [[nodiscard]] Rows* changes() { return &changes_; }
  [[nodiscard]] QStringList most() const { return most_; }
  [[nodiscard]] Rows* years() { return &years_; } ///< name, year, present, supposed, difference
  [[nodiscard]] Rows* full() { return &full_; }   ///< name, present, supposed
  [[nodiscard]] bool writable() const { return writable_; }
  [[nodiscard]] QStringList not_written() const { return not_written_; }
  [[nodiscard]] QString accepted() const { return accepted_; }

 protected:
  void reckon() override;

 private:
  struct Answer {
    plan::ForecastInput present;
    std::vector<std::string> told;
    std::optional<plan::Comparison> compared;
    std::optional<Fault> fault;
  };
  Result<plan::Change> change_of(const QString& kind, const QVariantMap& typed) const;
  void take(Answer answer);
  void tell_compared(const plan::Comparison& compared);

  plan::Supposition supposition_;
  std::optional<plan::ForecastInput> present_;
  QStringList crosses_;
  QStringList most_;
  bool writable_ = false;
  QStringList not_written_;
  QString accepted_;
  Rows changes_;
  Rows years_;
  Rows full_;
};

} // namespace coneline::window
