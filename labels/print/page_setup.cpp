// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/page_setup.h"

#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QString>

namespace coneline::labels {

void set_up_page(QPdfWriter& writer, const Stock& stock, int dpi) {
  writer.setResolution(dpi);
  // Orientation stays portrait: a landscape one would turn the page that is already as wide as it
  // should be.
  writer.setPageSize(QPageSize(QSizeF(stock.page_width, stock.page_height), QPageSize::Millimeter,
                               QString(), QPageSize::ExactMatch));
  writer.setPageOrientation(QPageLayout::Portrait);
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  writer.setCreator("Coneline");
  writer.setTitle(QString::fromStdString(stock.name));
}

} // namespace coneline::labels
