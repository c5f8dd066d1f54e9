// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Germination per cross or season, the highest share first, and the curve of the chosen one.

#include "aside.h"
#include "core/report/germination_report.h"
#include "session.h"

#include <QVariantList>

namespace coneline::window {

class GerminationResults : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(int chosen MEMBER chosen_ WRITE choose NOTIFY chosenChanged)
  Q_PROPERTY(coneline::window::Rows* crosses READ crosses CONSTANT)
  Q_PROPERTY(coneline::window::Rows* trays READ trays CONSTANT)
  Q_PROPERTY(QString name READ name NOTIFY chosenChanged)
  Q_PROPERTY(QString told READ told NOTIFY chosenChanged)
  Q_PROPERTY(QStringList sentences READ sentences NOTIFY chosenChanged)
  Q_PROPERTY(coneline::window::Rows* series READ series CONSTANT)
  Q_PROPERTY(QVariantList band READ band NOTIFY chosenChanged)
  Q_PROPERTY(QString by READ by WRITE set_by NOTIFY asked)
  Q_PROPERTY(QString time READ time WRITE set_time NOTIFY asked)
  Q_PROPERTY(bool inDays READ in_days NOTIFY asked)
  Q_PROPERTY(QString unit READ unit NOTIFY asked)
  Q_PROPERTY(QString remarks READ remarks NOTIFY asked)
  Q_PROPERTY(double lastDay READ last_day NOTIFY chosenChanged)
  Q_PROPERTY(double horizon READ horizon NOTIFY chosenChanged)
  Q_PROPERTY(double comingLow READ coming_low NOTIFY chosenChanged)
  Q_PROPERTY(double comingHigh READ coming_high NOTIFY chosenChanged)
  Q_PROPERTY(QString leftOut READ left_out NOTIFY asked)
  Q_PROPERTY(bool reckoning READ reckoning NOTIFY asked)
  Q_PROPERTY(QString fault READ fault NOTIFY asked)

 public:
  explicit GerminationResults(QObject* parent = nullptr);
  void set_session(Session* session);
  void choose(int row);
  /// Writes the report beside the book: "PDF", "XLSX", "CSV", "HTML" or "JSON". Returns where it
  /// is, or why it could not be written.
  Q_INVOKABLE QString save(const QString& form);
  void set_by(const QString& by);     ///< "cross", "season", "cross and season"
  void set_time(const QString& time); ///< "days", "degree-days"

  [[nodiscard]] QString by() const;
  [[nodiscard]] QString time() const;
  [[nodiscard]] bool in_days() const { return !in_degree_days_; }
  [[nodiscard]] QString unit() const;
  /// What the letters mean and which crosses cannot be told apart; what lacks a temperature.
  [[nodiscard]] QString remarks() const;
  [[nodiscard]] Rows* crosses() { return &crosses_; }
  [[nodiscard]] Rows* trays() { return &trays_; }
  [[nodiscard]] Rows* series() { return &series_; }
  [[nodiscard]] QString name() const;
  [[nodiscard]] QString told() const;
  [[nodiscard]] QStringList sentences() const;
  /// Range of the fitted curve, in % of the seed sown: { x, low, high } from left to right.
  [[nodiscard]] QVariantList band() const;
  /// Time after sowing: of the last look, and how far the chart looks ahead.
  [[nodiscard]] double last_day() const;
  [[nodiscard]] double horizon() const { return last_day() * 1.25; }
  /// Share of the seed sown between which the cross will end.
  [[nodiscard]] double coming_low() const;
  [[nodiscard]] double coming_high() const;
  [[nodiscard]] QString left_out() const;
  /// True while the figures are worked out anew; what is shown is from before.
  [[nodiscard]] bool reckoning() const { return reckoning_; }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void asked();
  void chosenChanged();

 private:
  void read();
  void show();
  [[nodiscard]] const report::CrossReport* cross() const;

  Session* session_ = nullptr;
  Aside* aside_ = new Aside(this);
  bool reckoning_ = false;
  QString fault_;
  int chosen_ = 0;
  report::By by_ = report::By::cross;
  bool in_degree_days_ = false;
  std::optional<report::GerminationReport> report_;
  Rows crosses_;
  Rows trays_;
  Rows series_;
};

} // namespace coneline::window
