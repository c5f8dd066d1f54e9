// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Shows a QImage that a model made, as large as it fits.

#include <QImage>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace coneline::window {

class Picture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QVariant image READ image WRITE set_image NOTIFY imageChanged)

 public:
  explicit Picture(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}
  [[nodiscard]] QVariant image() const { return image_; }
  void set_image(const QVariant& image); ///< a QImage
  void paint(QPainter* painter) override;

 signals:
  void imageChanged();

 private:
  QImage image_;
};

} // namespace coneline::window
