// SPDX-License-Identifier: GPL-3.0-or-later
#include "tap.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QQmlComponent>
#include <QQmlEngine>

#include <algorithm>
#include <utility>

namespace coneline::window {

Tap::Tap(QQuickItem* parent) : QQuickItem(parent) {
  setAcceptedMouseButtons(Qt::LeftButton);
  setActiveFocusOnTab(true);
}

void Tap::set_background(QQuickItem* item) {
  if (item == background_)
    return;
  background_ = item;
  if (item) {
    item->setParentItem(this);
    item->setZ(-1);
  }
  fit();
  emit backgroundChanged();
}

void Tap::set_content(QQuickItem* item) {
  if (item == content_)
    return;
  content_ = item;
  if (item)
    item->setParentItem(this);
  fit();
  emit contentItemChanged();
}

void Tap::set_left_padding(qreal padding) {
  if (std::exchange(left_padding_, padding) == padding)
    return;
  fit();
  emit paddingChanged();
}

void Tap::set_right_padding(qreal padding) {
  if (std::exchange(right_padding_, padding) == padding)
    return;
  fit();
  emit paddingChanged();
}

void Tap::fit() {
  if (background_)
    background_->setSize(size());
  if (!content_)
    return;
  content_->setX(left_padding_);
  content_->setSize({std::max(0.0, width() - left_padding_ - right_padding_), height()});
}

void Tap::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickItem::geometryChange(now, before);
  if (now.size() != before.size())
    fit();
}

void Tap::itemChange(ItemChange change, const ItemChangeData& data) {
  QQuickItem::itemChange(change, data);
  const bool gone =
      (change == ItemVisibleHasChanged || change == ItemEnabledHasChanged) && !data.boolValue;
  if (gone) { // what is let go of now is meant for nothing
    key_down_ = false;
    set_down(false);
  }
}

void Tap::set_down(bool down) {
  if (std::exchange(down_, down) != down)
    emit downChanged();
}

QQuickItem* Tap::new_ring() {
  QQmlComponent made(qmlEngine(this), QUrl(QStringLiteral("qrc:/ConelineWindow/parts/Ring.qml")));
  auto* ring = qobject_cast<QQuickItem*>(made.createWithInitialProperties(
      {{QStringLiteral("parent"), QVariant::fromValue(background_ ? background_ : this)},
       {QStringLiteral("margin"), ring_margin_}},
      qmlContext(this)));
  if (ring)
    ring->setParent(this);
  return ring;
}

void Tap::show_ring(bool shows) {
  if (!ring_ && shows)
    ring_ = new_ring();
  if (ring_)
    ring_->setProperty("shown", shows);
}

void Tap::accessiblePressAction() {
  if (isEnabled())
    emit clicked();
}

void Tap::mousePressEvent(QMouseEvent* /*event*/) {
  set_down(true);
}

void Tap::mouseMoveEvent(QMouseEvent* event) {
  set_down(contains(event->position()));
}

void Tap::mouseReleaseEvent(QMouseEvent* event) {
  const bool here = down_ && contains(event->position());
  set_down(false);
  if (here)
    emit clicked();
}

void Tap::mouseDoubleClickEvent(QMouseEvent* event) {
  event->accept(); // it follows the second press, whose release counts
}

void Tap::mouseUngrabEvent() {
  set_down(false); // a page that is pushed along took the finger
}

void Tap::keyPressEvent(QKeyEvent* event) {
  const bool space = event->key() == Qt::Key_Space;
  if (!space && event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
    QQuickItem::keyPressEvent(event);
    return;
  }
  event->accept();
  if (event->isAutoRepeat()) // a key that is held down does a thing once
    return;
  if (space) {
    key_down_ = true;
    set_down(true);
  } else {
    emit clicked();
  }
}

void Tap::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Space || event->isAutoRepeat()) {
    QQuickItem::keyReleaseEvent(event);
    return;
  }
  event->accept();
  if (!std::exchange(key_down_, false))
    return;
  set_down(false);
  emit clicked();
}

void Tap::focusInEvent(QFocusEvent* event) {
  QQuickItem::focusInEvent(event);
  const auto reason = event->reason();
  if (reason != Qt::ActiveWindowFocusReason && reason != Qt::PopupFocusReason)
    by_key_ = reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason ||
              reason == Qt::ShortcutFocusReason;
  show_ring(by_key_);
}

void Tap::focusOutEvent(QFocusEvent* event) {
  QQuickItem::focusOutEvent(event);
  key_down_ = false;
  set_down(false);
  show_ring(false);
}

} // namespace coneline::window
