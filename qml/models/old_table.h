// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// An old spreadsheet on its way into the book: its columns, what each is matched to, and what came
// of trying it out. Reading, trying and taking in are done aside from the window's thread and can
// be stopped; then the book is as it was. Taking in goes on where this is left, and the session
// tells what came of it.

#include "aside.h"
#include "core/exchange/take_in_table.h"
#include "session.h"

#include <QTimer>

namespace coneline::window {

class OldTable : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ NOTIFY changed)
  Q_PROPERTY(QString file READ file NOTIFY changed)
  Q_PROPERTY(coneline::window::Rows* columns READ columns CONSTANT)
  Q_PROPERTY(QStringList fields READ fields CONSTANT)
  Q_PROPERTY(QStringList fieldsShown READ fields_shown NOTIFY changed)
  Q_PROPERTY(QStringList matched READ matched NOTIFY changed)
  Q_PROPERTY(QStringList dateOrders READ date_orders CONSTANT)
  Q_PROPERTY(QStringList dateOrdersShown READ date_orders_shown NOTIFY changed)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(QStringList said READ said NOTIFY changed)
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  Q_PROPERTY(bool busy READ busy NOTIFY progressed)
  Q_PROPERTY(bool reading READ reading NOTIFY progressed)
  Q_PROPERTY(double done READ done NOTIFY progressed)

 public:
  explicit OldTable(QObject* parent = nullptr);
  ~OldTable() override;

  // While it is read or comes in, nothing of the match can be changed.

  /// Reads the file and matches what its header suggests; `fault` says why where it cannot be read.
  Q_INVOKABLE void read(const QString& path);
  /// Matches a column; "none" takes it away, and another column that had the field lets go.
  Q_INVOKABLE void match(int column, const QString& field);
  /// One value for every row; an empty one takes it back.
  Q_INVOKABLE void forAll(const QString& field, const QString& value);
  /// "file", "day" or "month": what stands first, or what the file tells.
  Q_INVOKABLE void writeDates(const QString& order);
  /// Says of every row what would come of it; `ready` where nothing is at fault.
  Q_INVOKABLE void tryOut();
  /// Takes all of it in. Only after it was tried out as it is now.
  Q_INVOKABLE void takeIn();
  /// What is read, tried out or taken in is not wanted any more. What was tried out or taken in
  /// says so as its `fault` once it has stopped, unless all was in by then.
  Q_INVOKABLE void stop();
  /// A field as it is said, and what it is for.
  Q_INVOKABLE static QString named(const QString& field);
  Q_INVOKABLE static QString about(const QString& field);

  [[nodiscard]] QString file() const;
  [[nodiscard]] Rows* columns() { return &columns_; } ///< column, first, field
  [[nodiscard]] static QStringList fields();          ///< "none" first
  [[nodiscard]] static QStringList fields_shown();
  [[nodiscard]] QStringList matched() const; ///< of `fields`
  [[nodiscard]] static QStringList date_orders();
  [[nodiscard]] static QStringList date_orders_shown();
  [[nodiscard]] Rows* rows() { return &rows_; } ///< line, told, wrong; what is wrong stands first
  [[nodiscard]] QStringList said() const { return said_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] bool ready() const { return ready_; }
  [[nodiscard]] bool busy() const { return course_ != nullptr; }
  [[nodiscard]] bool reading() const { return busy() && doing_ == Doing::reading; }
  [[nodiscard]] double done() const; ///< of 1

 signals:
  void changed();
  void progressed();

 private:
  enum class Doing { reading, trying, writing };
  [[nodiscard]] bool writing() const { return busy() && doing_ == Doing::writing; }
  /// Nothing of the match can be changed.
  [[nodiscard]] bool fixed() const { return reading() || writing(); }
  void begin(Doing what, std::shared_ptr<Course> course);
  void end();
  void was_read(Result<CsvTable> table);
  void try_out();
  void write();
  void take(const Result<exchange::TableTaken>& taken);
  void wrote(bool still_open, const Result<exchange::TableTaken>& taken);
  void show_columns();
  void was_changed();
  void show(const exchange::TableTaken& taken);

  Session* session_ = nullptr;
  std::optional<CsvTable> table_;
  exchange::TableMatch match_;
  Rows columns_;
  Rows rows_;
  QStringList said_;
  QString fault_;
  bool ready_ = false;
  std::shared_ptr<Course> course_; ///< while something runs
  Doing doing_ = Doing::reading;   ///< what runs, or ran last
  QTimer look_;
  Aside aside_;
};

} // namespace coneline::window
