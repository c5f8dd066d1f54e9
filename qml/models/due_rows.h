// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Rows of what is due, each written when it is looked at: a large nursery has more due than anybody
// scrolls through.

#include "by_code.h"
#include "session.h"

#include <QAbstractListModel>

#include <optional>
#include <vector>

namespace coneline::window {

class DueRows : public QAbstractListModel {
  Q_OBJECT
  QML_ANONYMOUS

 public:
  explicit DueRows(QObject* parent) : QAbstractListModel(parent) {}

  enum class Order { as_walked, by_day };
  /// What stands in the session now, until it is shown anew. Rows that stay as many keep their
  /// delegates.
  void show(const Session& session, Order order);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

 private:
  [[nodiscard]] QString place_of(const Code& code) const;

  std::shared_ptr<const Standing> standing_; ///< as it was shown; the book may be read anew since
  Order order_ = Order::as_walked;
  int count_ = 0;
  std::vector<std::size_t> by_day_;                   ///< places in the list as walked
  mutable std::optional<ByCode<work::LotLine>> lots_; ///< made when first needed
};

} // namespace coneline::window
