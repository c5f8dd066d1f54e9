// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What loggers measured at the places, and taking in another file. All readings are summed up, and
// a file is read and taken in, aside from the window's thread. Taking in goes on where this is
// left; stopped, nothing of the file is in.

#include "core/work/temperature.h"
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
  Q_PROPERTY(bool looking READ looking NOTIFY told)

 public:
  explicit TemperatureLog(QObject* parent = nullptr);
  void set_session(Session* session);
  void choose(const QString& place);

  /// Takes a file in at the chosen place. `unit`: "°C", "°F", or what the file says. Where it
  /// cannot be, `fault` says why.
  Q_INVOKABLE void takeIn(const QString& path, const QString& unit);

  [[nodiscard]] QStringList places() const;
  [[nodiscard]] QString place() const { return place_; }
  [[nodiscard]] Rows* measured() { return &measured_; }
  [[nodiscard]] Rows* series() { return &series_; } ///< low, mean and high of each day
  [[nodiscard]] double across() const { return across_; }
  [[nodiscard]] QVariantList marks() const { return marks_; }
  [[nodiscard]] QStringList said() const { return said_; } ///< of the chosen place
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] bool looking() const { return looking_; } ///< nothing is known of this book yet

 signals:
  void told();

 private:
  using Measured = std::vector<work::PlaceTemperature>;
  void read();
  void show();
  void fail(const Fault& fault);

  Session* session_ = nullptr;
  QString place_;
  bool chosen_ = false; ///< by the grower
  Rows measured_;
  Rows series_;
  double across_ = 1;
  QVariantList marks_;
  QStringList said_;
  QString fault_;
  QString of_;     ///< the book that `known_` is of
  Measured known_; ///< of every place with a logger
  bool looking_ = false;
  Aside aside_{nullptr};
};

} // namespace coneline::window
