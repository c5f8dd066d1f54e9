// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What to buy for the year to come: the list, what more assurance costs, what suppliers offer, and
// what lies in the shed.

#include "core/report/ordering.h"
#include "plan_part.h"

namespace coneline::window {

class PlanOrders : public PlanPart {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QString summary READ summary NOTIFY told)
  Q_PROPERTY(QString proof READ proof NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* assurances READ assurances CONSTANT)
  Q_PROPERTY(coneline::window::Rows* lines READ lines CONSTANT)
  Q_PROPERTY(coneline::window::Rows* offers READ offers CONSTANT)
  Q_PROPERTY(coneline::window::Rows* goods READ goods CONSTANT)
  Q_PROPERTY(QStringList parts READ parts NOTIFY told)

 public:
  explicit PlanOrders(QObject* parent = nullptr);

  /// Keeps it in the book as the assurance of the plan.
  Q_INVOKABLE void assure(double share);
  /// good, supplier, form, litres, price, expansion, delivery, leadDays, least, kilograms, as they
  /// were typed.
  Q_INVOKABLE bool enterOffer(const QVariantMap& typed);
  Q_INVOKABLE void strikeOffer(qlonglong id);
  /// onHand, room, keeps; an empty text is not known.
  Q_INVOKABLE bool enterGood(const QString& name, const QVariantMap& typed);
  Q_INVOKABLE QString usualPath(const QString& ending) const;
  /// A PDF, a spreadsheet or CSV, by the path's ending.
  Q_INVOKABLE bool save(const QString& path);
  Q_INVOKABLE void copy();

  [[nodiscard]] QString summary() const;
  [[nodiscard]] QString proof() const;
  [[nodiscard]] Rows* assurances() { return &assurances_; } ///< share, word, price, chosen
  [[nodiscard]] Rows* lines() { return &lines_; }           ///< by, what, from, price, weight, need
  [[nodiscard]] Rows* offers() { return &offers_; }         ///< id, good, what, price
  [[nodiscard]] Rows* goods() { return &goods_; } ///< name, onHand, counted, room, keeps, need
  [[nodiscard]] QStringList parts() const { return parts_; }

 protected:
  void reckon() override;
  void kept() override; ///< offers, goods and assurance: the forecast stays

 private:
  struct Answer {
    std::shared_ptr<const plan::Forecast> forecast;
    std::vector<Date> months;
    book::PlanRecords records;
    std::vector<std::string> parts;
    std::optional<report::Ordered> ordered;
    std::vector<report::Ordered> by_assurance;
    std::optional<Fault> fault; ///< why there is no list
  };
  void reckon_with(std::shared_ptr<const plan::Forecast> forecast);
  void take(const Answer& answer);
  void tell_lists(const Answer& answer);
  [[nodiscard]] report::PlanPaper paper() const; ///< where there is a list

  std::optional<Answer> answer_;
  QStringList parts_;
  Rows assurances_;
  Rows lines_;
  Rows offers_;
  Rows goods_;
};

} // namespace coneline::window
