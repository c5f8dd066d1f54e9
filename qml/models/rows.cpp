// SPDX-License-Identifier: GPL-3.0-or-later
#include "rows.h"

#include <algorithm>

namespace coneline::window {

namespace {
constexpr int first_role = Qt::UserRole + 1;
}

Rows::Rows(std::initializer_list<const char*> columns, QObject* parent)
    : QAbstractListModel(parent), columns_(columns.begin(), columns.end()) {}

void Rows::replace(std::vector<Row> rows) {
  if (rows.size() == rows_.size()) {
    rows_ = std::move(rows);
    if (!rows_.empty())
      emit dataChanged(index(0), index(size() - 1));
    return;
  }
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
  emit countChanged();
}

QVariant Rows::value(int row, const QString& column) const {
  const auto found = std::ranges::find(columns_, column.toUtf8());
  if (row < 0 || row >= size() || found == columns_.end())
    return {};
  return rows_[static_cast<std::size_t>(row)][static_cast<std::size_t>(found - columns_.begin())];
}

int Rows::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : size();
}

QVariant Rows::data(const QModelIndex& index, int role) const {
  const auto column = static_cast<std::size_t>(role - first_role);
  if (!index.isValid() || role < first_role || column >= columns_.size())
    return {};
  return rows_[static_cast<std::size_t>(index.row())][column];
}

QHash<int, QByteArray> Rows::roleNames() const {
  QHash<int, QByteArray> names;
  for (std::size_t i = 0; i < columns_.size(); ++i)
    names[first_role + static_cast<int>(i)] = columns_[i];
  return names;
}

} // namespace coneline::window
