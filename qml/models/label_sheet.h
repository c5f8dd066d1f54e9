// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Labels for one thing or for all on hand of a kind: chosen, looked at, printed.

#include "labels/print/print_labels.h"
#include "session.h"

#include <QImage>

namespace coneline::window {

class LabelSheet : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  /// A code, or a station: "trays" for every tray with something in it.
  Q_PROPERTY(QString about MEMBER about_ NOTIFY asked)
  Q_PROPERTY(QString stock MEMBER stock_ NOTIFY stockChanged)
  Q_PROPERTY(int start MEMBER start_ NOTIFY stockChanged)
  Q_PROPERTY(QStringList stocks READ stocks CONSTANT)
  Q_PROPERTY(QStringList printers READ printers CONSTANT)
  Q_PROPERTY(int count READ count NOTIFY laidOut)
  Q_PROPERTY(QImage preview READ preview NOTIFY laidOut)
  Q_PROPERTY(QString fault READ fault NOTIFY laidOut)
  Q_PROPERTY(QString told READ told NOTIFY printed)

 public:
  explicit LabelSheet(QObject* parent = nullptr);
  void set_session(Session* session);

  /// Writes the PDF; true when it is there. `told` says what became of it.
  Q_INVOKABLE bool writePdf(const QString& path);
  Q_INVOKABLE bool print(const QString& printer);
  Q_INVOKABLE QString usualPath() const;

  [[nodiscard]] static QStringList stocks();
  [[nodiscard]] static QStringList printers();
  [[nodiscard]] int count() const { return static_cast<int>(labels_.size()); }
  [[nodiscard]] QImage preview() const { return preview_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString told() const { return told_; }

 signals:
  void asked();
  void stockChanged();
  void laidOut();
  void printed();

 private:
  void read();
  void lay_out();
  bool tell(const Result<labels::Printed>& done, const QString& where);
  [[nodiscard]] std::vector<Code> codes() const;
  [[nodiscard]] labels::Stock chosen_stock() const;

  Session* session_ = nullptr;
  QString about_;
  QString stock_;
  int start_ = 1;
  std::vector<labels::LabelText> labels_;
  QImage preview_;
  QString fault_;
  QString told_;
};

} // namespace coneline::window
