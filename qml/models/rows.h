// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A list for the screen: named columns, filled whole by the model that owns it.

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace coneline::window {

class Rows : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("filled by the model that owns it")
  Q_PROPERTY(int count READ size NOTIFY countChanged)

 public:
  using Row = std::vector<QVariant>;

  Rows(std::initializer_list<const char*> columns, QObject* parent);

  /// Each row has as many values as there are columns. Rows that stay as many keep their delegates.
  void replace(std::vector<Row> rows);
  [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
  [[nodiscard]] int size() const { return static_cast<int>(rows_.size()); }

  /// One value, for pages that need a single row; nothing where there is no such row or column.
  Q_INVOKABLE QVariant value(int row, const QString& column) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

 signals:
  void countChanged();

 private:
  std::vector<QByteArray> columns_;
  std::vector<Row> rows_;
};

} // namespace coneline::window
