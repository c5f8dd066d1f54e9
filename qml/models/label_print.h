// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Labels of a station's things: which are chosen, on what stock, and out to a file or a printer.

#include "labels/print/print_labels.h"
#include "labels/sheet/choices.h"
#include "session.h"

#include <QImage>

#include <set>

namespace coneline::window {

class LabelPrint : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString station MEMBER station_ WRITE set_station NOTIFY asked)
  /// One thing whose label is wanted: it is chosen from the start, among those of its station.
  Q_PROPERTY(QString first MEMBER first_ NOTIFY asked)
  Q_PROPERTY(QVariant preview READ preview NOTIFY laidOut)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(int chosen READ chosen NOTIFY chosenChanged)
  /// Places are listed at no station; their labels can be had from every one.
  Q_PROPERTY(bool places MEMBER places_ NOTIFY asked)
  Q_PROPERTY(QStringList stocks READ stocks NOTIFY stocksChanged)
  /// The stocks as they are said to a person.
  Q_PROPERTY(QStringList stocksSaid READ stocks_said NOTIFY stocksChanged)
  Q_PROPERTY(QString stock READ stock WRITE set_stock NOTIFY stockChanged)
  Q_PROPERTY(QStringList layouts READ layouts NOTIFY stocksChanged)
  Q_PROPERTY(QStringList layoutsSaid READ layouts_said NOTIFY stocksChanged)
  Q_PROPERTY(QString layout READ layout WRITE set_layout NOTIFY stockChanged)
  Q_PROPERTY(int start MEMBER start_ NOTIFY stockChanged)
  Q_PROPERTY(QStringList printers READ printers CONSTANT)
  Q_PROPERTY(QString told READ told NOTIFY toldChanged)
  Q_PROPERTY(QString fault READ fault NOTIFY toldChanged)

 public:
  explicit LabelPrint(QObject* parent = nullptr);
  void set_session(Session* session);
  void set_station(const QString& station);

  Q_INVOKABLE void toggle(const QString& code);
  Q_INVOKABLE void chooseAll();
  Q_INVOKABLE void chooseNone();
  /// Where a file would go unless another path is typed: beside the book.
  Q_INVOKABLE QString usualPath() const;
  /// Both say in `told` how many were printed, or in `fault` why not.
  Q_INVOKABLE bool save(const QString& path);
  Q_INVOKABLE bool print(const QString& printer);
  /// A page with rulers as PDF; what they measure on paper goes to `correct`.
  Q_INVOKABLE bool saveTestPage(const QString& path);
  Q_INVOKABLE bool correct(const QString& printer, const QString& across, const QString& down);
  /// The chosen stock's dimensions by the names of the form's fields.
  Q_INVOKABLE QVariantMap dimensions() const;
  /// Adds a stock, or changes the book's one of that name, and chooses it.
  Q_INVOKABLE bool enterStock(const QVariantMap& typed);

  [[nodiscard]] Rows* rows() { return &rows_; }
  [[nodiscard]] int chosen() const { return static_cast<int>(chosen_.size()); }
  [[nodiscard]] QStringList stocks() const;
  [[nodiscard]] QStringList stocks_said() const;
  [[nodiscard]] QStringList layouts() const;
  [[nodiscard]] QStringList layouts_said() const;
  [[nodiscard]] QString layout() const { return QString::fromStdString(layout_.name); }
  void set_layout(const QString& name);
  [[nodiscard]] QString stock() const { return QString::fromStdString(stock_.name); }
  void set_stock(const QString& name);
  [[nodiscard]] static QStringList printers();
  [[nodiscard]] QVariant preview() const { return preview_; } ///< of the first page
  [[nodiscard]] QString told() const { return told_; }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void asked();
  void chosenChanged();
  void stockChanged();
  void stocksChanged();
  void toldChanged();
  void laidOut();

 private:
  void read();
  void show();
  void read_stocks();
  void lay_out();
  /// Lays out what is chosen and counts it when `print` sent it out; says what came of it.
  bool
  send(const QString& to,
       const std::function<Result<labels::Printed>(const std::vector<labels::LabelText>&)>& print);
  bool told(const Result<void>& done, const QString& what);
  void say(const QString& told, const QString& fault);
  /// The codes chosen, in the order of the list.
  [[nodiscard]] std::vector<Code> codes() const;

  Session* session_ = nullptr;
  QString station_;
  QString first_;
  QImage preview_;
  std::vector<std::pair<Code, QString>> listed_;
  std::set<Code> chosen_;
  book::LabelRecords records_;
  labels::Stock stock_;
  book::LabelLayout layout_;
  bool places_ = false;
  int start_ = 1;
  Rows rows_;
  QString told_;
  QString fault_;
};

} // namespace coneline::window
