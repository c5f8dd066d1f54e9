// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// An old spreadsheet on its way into the book: its columns, what each is matched to, and what came
// of trying it out.

#include "core/exchange/take_in_table.h"
#include "session.h"

namespace coneline::window {

class OldTable : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ NOTIFY changed)
  Q_PROPERTY(QString file READ file NOTIFY changed)
  Q_PROPERTY(coneline::window::Rows* columns READ columns CONSTANT)
  Q_PROPERTY(QStringList fields READ fields CONSTANT)
  Q_PROPERTY(QStringList matched READ matched NOTIFY changed)
  Q_PROPERTY(QStringList dateOrders READ date_orders CONSTANT)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(QStringList said READ said NOTIFY changed)
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  Q_PROPERTY(bool ready READ ready NOTIFY changed)

 public:
  explicit OldTable(QObject* parent = nullptr);

  /// Reads the file and matches what its header suggests. False where it cannot be read.
  Q_INVOKABLE bool read(const QString& path);
  /// Matches a column; "left out" takes it away, and another column that had the field lets go.
  Q_INVOKABLE void match(int column, const QString& field);
  /// One value for every row; an empty one takes it back.
  Q_INVOKABLE void forAll(const QString& field, const QString& value);
  Q_INVOKABLE void writeDates(const QString& order);
  /// Says of every row what would come of it. True where nothing is at fault.
  Q_INVOKABLE bool tryOut();
  /// Takes all of it in. Only after it was tried out as it is now.
  Q_INVOKABLE bool takeIn();
  /// What a field is for.
  Q_INVOKABLE static QString about(const QString& field);

  [[nodiscard]] QString file() const;
  [[nodiscard]] Rows* columns() { return &columns_; } ///< column, first, field
  [[nodiscard]] static QStringList fields();          ///< "left out" first
  [[nodiscard]] QStringList matched() const;
  [[nodiscard]] static QStringList date_orders();
  [[nodiscard]] Rows* rows() { return &rows_; } ///< line, told, wrong; what is wrong stands first
  [[nodiscard]] QStringList said() const { return said_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] bool ready() const { return ready_; }

 signals:
  void changed();

 private:
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
};

} // namespace coneline::window
