// SPDX-License-Identifier: GPL-3.0-or-later
#include "picture.h"

#include <QPainter>

namespace coneline::window {

void Picture::set_image(const QVariant& image) {
  image_ = image.value<QImage>();
  emit imageChanged();
  update();
}

void Picture::paint(QPainter* painter) {
  if (image_.isNull())
    return;
  const auto size = QSizeF(image_.size()).scaled(boundingRect().size(), Qt::KeepAspectRatio);
  const auto dots = (size * painter->device()->devicePixelRatio()).toSize();
  painter->drawImage(QRectF(QPointF(0, 0), size),
                     image_.scaled(dots, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
}

} // namespace coneline::window
