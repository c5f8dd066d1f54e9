// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the coming months need: mix by its parts, and bench against what there is.

#include "core/plan/needs.h"
#include "session.h"

namespace coneline::window {

class SeasonPlan : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(QStringList months READ months NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* mix READ mix CONSTANT)
  Q_PROPERTY(coneline::window::Rows* space READ space CONSTANT)
  Q_PROPERTY(coneline::window::Rows* parts READ parts CONSTANT)
  Q_PROPERTY(coneline::window::Rows* pots READ pots CONSTANT)
  Q_PROPERTY(QStringList fits READ fits NOTIFY told)
  Q_PROPERTY(bool overfull READ overfull NOTIFY told)
  Q_PROPERTY(QStringList remarks READ remarks NOTIFY told)

 public:
  explicit SeasonPlan(QObject* parent = nullptr);
  void set_session(Session* session);

  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QStringList months() const { return months_; }
  [[nodiscard]] Rows* mix() { return &mix_; }     ///< series of litres a month
  [[nodiscard]] Rows* space() { return &space_; } ///< series of m², with what is offered
  [[nodiscard]] Rows* parts() { return &parts_; } ///< litres of each part, by half-years
  [[nodiscard]] Rows* pots() { return &pots_; }
  [[nodiscard]] QStringList fits() const { return fits_; }
  [[nodiscard]] bool overfull() const { return overfull_; }
  [[nodiscard]] QStringList remarks() const { return remarks_; }

 signals:
  void told();

 private:
  void read();
  void tell(const plan::Needs& needs);

  Session* session_ = nullptr;
  QString fault_;
  QStringList months_;
  Rows mix_;
  Rows space_;
  Rows parts_;
  Rows pots_;
  QStringList fits_;
  bool overfull_ = false;
  QStringList remarks_;
};

} // namespace coneline::window
