// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/page_setup.h"

#include "core/base/phrase.h"

#include <QBuffer>
#include <QByteArray>
#include <QList>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QString>
#include <fmt/format.h>

namespace coneline::labels {

namespace {

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

/// Qt rounds the page to whole points, up to 0.18 mm. Writes the stock's own size into the finished
/// file, the upper left corner staying where everything was drawn from.
void put_exact_size(QByteArray& pdf, const Stock& stock) {
  constexpr double points = 72 / 25.4;
  const QByteArray mark = "/MediaBox [";
  for (auto at = pdf.indexOf(mark); at >= 0; at = pdf.indexOf(mark, at + 1)) {
    const auto begin = at + mark.size();
    const auto end = pdf.indexOf(']', begin);
    const auto numbers = pdf.mid(begin, end - begin).split(' ');
    if (end < 0 || numbers.size() != 4)
      continue;
    const double top = numbers[3].toDouble();
    const auto exact = "0 " + QByteArray::number(top - stock.page_height * points, 'f', 3) + ' ' +
                       QByteArray::number(stock.page_width * points, 'f', 3) + ' ' +
                       QByteArray::number(top, 'f', 0);
    // Of the same length, so that what follows stays where the file says it is.
    if (exact.size() <= end - begin)
      pdf.replace(begin, end - begin, exact.leftJustified(end - begin, ' '));
  }
}

} // namespace

Result<std::int64_t> write_pdf(const std::string& path, const Stock& stock, int dpi,
                               const DrawPages& draw) {
  const auto cannot = [&](const QString& why) {
    return refuse(fault(phrase("{}: cannot be written: {}", path, why.toStdString()),
                        "Choose another place, or free some space."));
  };
  QSaveFile file(QString::fromStdString(path));
  if (!file.open(QIODevice::WriteOnly))
    return cannot(file.errorString());
  QByteArray pdf;
  {
    QBuffer buffer(&pdf);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    set_up_page(writer, stock, dpi);
    QPainter painter;
    if (!painter.begin(&writer))
      return cannot(buffer.errorString());
    if (auto drawn = draw(writer, painter); !drawn)
      return refuse(drawn.error());
  }
  put_exact_size(pdf, stock);
  if (file.write(pdf) != pdf.size() || !file.commit())
    return cannot(file.errorString());
  return pdf.size();
}

} // namespace coneline::labels
