// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What loggers measured at the places, and taking in another file.

#include "session.h"

namespace coneline::window {

class TemperatureLog : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(QStringList places READ places NOTIFY told)
  Q_PROPERTY(QString place READ place WRITE choose NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* measured READ measured CONSTANT)
  Q_PROPERTY(coneline::window::Rows* series READ series CONSTANT)
  Q_PROPERTY(double across READ across NOTIFY told)
  Q_PROPERTY(QVariantList marks READ marks NOTIFY told)
  Q_PROPERTY(QStringList said READ said NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)

 public:
  explicit TemperatureLog(QObject* parent = nullptr);
  void set_session(Session* session);
  void choose(const QString& place);

  /// Takes a file in at the chosen place. `unit`: "°C", "°F", or what the file says. False where it
  /// cannot be; `fault` says why.
  Q_INVOKABLE bool takeIn(const QString& path, const QString& unit);

  [[nodiscard]] QStringList places() const;
  [[nodiscard]] QString place() const { return place_; }
  [[nodiscard]] Rows* measured() { return &measured_; }
  [[nodiscard]] Rows* series() { return &series_; } ///< low, mean and high of each day
  [[nodiscard]] double across() const { return across_; }
  [[nodiscard]] QVariantList marks() const { return marks_; }
  [[nodiscard]] QStringList said() const { return said_; } ///< of the chosen place
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void told();

 private:
  void read();

  Session* session_ = nullptr;
  QString place_;
  bool chosen_ = false; ///< by the grower
  Rows measured_;
  Rows series_;
  double across_ = 1;
  QVariantList marks_;
  QStringList said_;
  QString fault_;
};

} // namespace coneline::window
