// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What to sow so that so many plants of a cross are there by a month: the targets kept in the book,
// what each needs, and where they want the same seed or room.

#include "core/report/targets.h"
#include "plan_part.h"

namespace coneline::window {

class PlanTargets : public PlanPart {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QStringList crosses READ crosses NOTIFY told)
  Q_PROPERTY(QStringList pots READ pots NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* targets READ targets CONSTANT)
  Q_PROPERTY(QStringList conflicts READ conflicts NOTIFY told)

 public:
  explicit PlanTargets(QObject* parent = nullptr);

  /// The pots that the route of a cross comes to.
  Q_INVOKABLE QStringList potsOf(const QString& cross) const;
  /// `by` as 2029-10, `sure` in per cent, as they were typed.
  Q_INVOKABLE bool enter(const QString& cross, const QString& pot, const QString& plants,
                         const QString& by, const QString& sure);
  Q_INVOKABLE void strike(qlonglong id);

  [[nodiscard]] QStringList crosses() const;
  [[nodiscard]] QStringList pots() const;
  [[nodiscard]] Rows* targets() { return &targets_; } ///< id, title, line, seed, dates, reached
  [[nodiscard]] QStringList conflicts() const { return conflicts_; }

 protected:
  void reckon() override;

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
  void take(Answer answer);
  /// As it is chosen: its name, with the taxon where two have one name.
  [[nodiscard]] QString label_of(const Cross& cross) const;
  [[nodiscard]] const Cross* labelled(const QString& label) const;
  std::vector<Cross> crosses_;
  QStringList conflicts_;
  Rows targets_;
};

} // namespace coneline::window
