// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Germination held against one condition: its levels beside each other, with differences and
// curves.

#include "core/report/why_curves.h"
#include "session.h"

namespace coneline::window {

class WhyResults : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(QStringList conditions READ conditions NOTIFY told)
  Q_PROPERTY(QString condition READ condition WRITE choose NOTIFY told)
  Q_PROPERTY(QStringList taxa READ taxa NOTIFY told)
  Q_PROPERTY(QString taxon READ taxon WRITE choose_taxon NOTIFY told)
  Q_PROPERTY(QString byDay READ by_day WRITE set_by_day NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* levels READ levels CONSTANT)
  Q_PROPERTY(coneline::window::Rows* series READ series CONSTANT)
  Q_PROPERTY(double across READ across NOTIFY told)
  Q_PROPERTY(QStringList sentences READ sentences NOTIFY told)
  Q_PROPERTY(QString cautions READ cautions NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)

 public:
  explicit WhyResults(QObject* parent = nullptr);
  void set_session(Session* session);
  void choose(const QString& condition);
  void choose_taxon(const QString& taxon);
  void set_by_day(const QString& days);

  [[nodiscard]] QStringList conditions() const;
  [[nodiscard]] QString condition() const;
  [[nodiscard]] QStringList taxa() const;
  [[nodiscard]] QString taxon() const;
  [[nodiscard]] QString by_day() const { return by_day_; }
  [[nodiscard]] Rows* levels() { return &levels_; }
  [[nodiscard]] Rows* series() { return &series_; }
  [[nodiscard]] double across() const { return across_; }
  [[nodiscard]] QStringList sentences() const { return sentences_; }
  [[nodiscard]] QString cautions() const;
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void told();

 private:
  void read();
  void show();
  [[nodiscard]] const work::WhyCondition* chosen() const;
  [[nodiscard]] Result<std::optional<double>> day_asked() const;

  Session* session_ = nullptr;
  std::size_t condition_ = 0;
  std::optional<book::TaxonId> taxon_;
  QString by_day_;
  QString fault_;
  std::optional<work::Why> why_;
  Rows levels_;
  Rows series_;
  double across_ = 1;
  QStringList sentences_;
};

} // namespace coneline::window
