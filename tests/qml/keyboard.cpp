// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/keyboard.h"

#include <QAccessible>
#include <QQmlProperty>
#include <QTest>
#include <gtest/gtest.h>

#include <stdexcept>

namespace coneline::window {

namespace {

constexpr int strong = 3; // pixels of a border that shows the keyboard

QString spoken_name(QQuickItem* item) {
  const auto* spoken = QAccessible::queryAccessibleInterface(item);
  return spoken ? spoken->text(QAccessible::Name) : QString();
}

bool has_strong_border(const QObject* item) {
  return item && QQmlProperty::read(item, QStringLiteral("border.width")).toInt() >= strong;
}

bool shows_a_ring(QQuickItem* item) {
  if (!item->isVisible())
    return false;
  if (QByteArray(item->metaObject()->className()).startsWith("Ring_"))
    return has_strong_border(item);
  const auto children = item->childItems();
  return std::ranges::any_of(children, shows_a_ring);
}

/// The middle of an item is inside everything that cuts it off.
bool is_in_sight(QQuickItem* item, QSizeF window) {
  const auto middle = item->mapToScene({item->width() / 2, item->height() / 2});
  for (auto* above = item->parentItem(); above; above = above->parentItem())
    if (above->clip() &&
        !above->mapRectToScene({0, 0, above->width(), above->height()}).contains(middle))
      return false;
  return QRectF(QPointF(), window).contains(middle);
}

} // namespace

std::string Keyboard::unseen() {
  auto& window = shown_.window();
  auto* item = window.activeFocusItem();
  if (!item || item == window.contentItem())
    return "nothing has the keyboard";
  const auto what = std::string(item->metaObject()->className()) + " " +
                    item->objectName().toStdString() + " '" + spoken_name(item).toStdString() + "'";
  if (!item->isVisible())
    return what + " has the keyboard and is not shown";
  if (!is_in_sight(item, window.size()))
    return what + " has the keyboard and is out of sight";
  const auto* ground = item->property("ground").value<QQuickItem*>();
  if (!shows_a_ring(item) && !(item->inherits("QQuickTextInput") && has_strong_border(ground)))
    return what + " has the keyboard and does not show it";
  return {};
}

void Keyboard::press(Qt::Key key, Qt::KeyboardModifiers with) {
  QTest::keyClick(&shown_.window(), key, with);
  ++keys_;
  if (key == Qt::Key_Tab || key == Qt::Key_Down)
    QTest::qWait(2);
  else
    shown_.settle();
  EXPECT_EQ(unseen(), "") << "after key " << keys_;
}

bool Keyboard::is_at(const QString& name, bool field) {
  auto* item = shown_.window().activeFocusItem();
  if (!item || (field && !item->inherits("QQuickTextInput")))
    return false;
  if (spoken_name(item).startsWith(name))
    return true;
  for (const auto* above = item; above; above = above->parentItem())
    if (above->objectName() == name)
      return true;
  return false;
}

void Keyboard::walk_to(const QString& name, Qt::Key way, bool field) {
  constexpr int most = 200;
  std::string passed;
  for (int i = 0; i < most; ++i) {
    if (is_at(name, field))
      return;
    press(way);
    if (auto* item = shown_.window().activeFocusItem())
      passed += " | " + spoken_name(item).toStdString();
  }
  throw std::runtime_error("the keyboard does not reach " + name.toStdString() + ", only" + passed);
}

void Keyboard::go_to(const QString& name, Qt::Key way) {
  walk_to(name, way, false);
}

void Keyboard::go_to_field(const QString& name) {
  walk_to(name, Qt::Key_Tab, true);
}

void Keyboard::choose(const QString& name) {
  go_to(name);
  press(Qt::Key_Return);
}

void Keyboard::write(const QString& field, const QString& text) {
  go_to_field(field);
  press(Qt::Key_A, Qt::ControlModifier);
  shown_.type(text);
  keys_ += static_cast<int>(text.size());
  shown_.settle();
  EXPECT_EQ(shown_.window().activeFocusItem()->property("text").toString(), text);
}

void Keyboard::look_up(const QString& text) {
  go_to("readyField", Qt::Key_F6);
  write("readyField", text);
  press(Qt::Key_Return);
}

} // namespace coneline::window
