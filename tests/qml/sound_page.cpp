// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/sound_page.h"

#include "qml/input/tap.h"

#include <QAccessible>
#include <gtest/gtest.h>

#include <set>

namespace coneline::window {

namespace {

std::string described(const QQuickItem* item) {
  auto text = item->property("text").toString();
  if (text.isEmpty())
    text = item->property("says").toString();
  return item->objectName().toStdString() + " '" + text.toStdString() + "'";
}

bool is_control(const QQuickItem* item) {
  return qobject_cast<const Tap*>(item) != nullptr || item->inherits("QQuickTextInput");
}

/// What is seen of an item, in the window: lists and pages that scroll cut off the rest.
QRectF seen(QQuickItem* item, QRectF inside) {
  auto rect = item->mapRectToScene(inside);
  for (auto* above = item; above; above = above->parentItem())
    if (above->clip())
      rect &= above->mapRectToScene({0, 0, above->width(), above->height()});
  return rect;
}

QRectF seen(QQuickItem* item) {
  return seen(item, {0, 0, item->width(), item->height()});
}

bool is_within(const QQuickItem* item, const QQuickItem* other) {
  for (const auto* above = item; above; above = above->parentItem())
    if (above == other)
      return true;
  return false;
}

bool scrolls(const QQuickItem* item) {
  for (const auto* above = item; above; above = above->parentItem())
    if (above->inherits("QQuickFlickable"))
      return true;
  return false;
}

bool touch(const QRectF& one, const QRectF& other) {
  const auto common = one & other;
  return common.width() > 2 && common.height() > 2;
}

std::vector<QQuickItem*> texts_of(ShownWindow& shown) {
  std::vector<QQuickItem*> texts;
  for (auto* item : shown.items())
    if (item->inherits("QQuickText") && !item->property("text").toString().trimmed().isEmpty())
      texts.push_back(item);
  return texts;
}

/// Where the letters stand, which may be a small part of a wide box.
QRectF letters(QQuickItem* text) {
  const auto wide = text->property("contentWidth").toReal();
  const auto high = text->property("contentHeight").toReal();
  const auto across = text->property("horizontalAlignment").toInt();
  const auto down = text->property("verticalAlignment").toInt();
  const auto x = across & Qt::AlignRight     ? text->width() - wide
                 : across & Qt::AlignHCenter ? (text->width() - wide) / 2
                                             : 0;
  const auto y =
      down & Qt::AlignVCenter ? (text->height() - high) / 2 : text->property("topPadding").toReal();
  return seen(text, {x, y, wide, high});
}

void is_whole(ShownWindow& shown, QQuickItem* text) {
  const auto wide = text->property("contentWidth").toReal();
  EXPECT_FALSE(text->property("truncated").toBool()) << described(text) << " is truncated";
  EXPECT_LE(wide, text->width() + 1) << described(text) << " is wider than its box";
  EXPECT_LE(text->property("contentHeight").toReal(), text->height() + 1)
      << described(text) << " is higher than its box";
  EXPECT_LE(text->x() + wide, text->parentItem()->width() + 1)
      << described(text) << " is wider than its parent";
  const auto box = text->mapRectToScene({0, 0, text->width(), text->height()});
  EXPECT_GE(box.left(), -1) << described(text) << " begins left of the window";
  EXPECT_LE(box.right(), shown.window().width() + 1)
      << described(text) << " ends right of the window";
  if (scrolls(text))
    return;
  EXPECT_GE(box.top(), -1) << described(text) << " begins above the window";
  EXPECT_LE(box.bottom(), shown.window().height() + 1)
      << described(text) << " ends below the window";
  const auto* page = text->parentItem();
  EXPECT_LE(text->y() + text->property("contentHeight").toReal(), page->height() + 1)
      << described(text) << " is lower than its parent";
}

/// Every object of the tree that a screen reader walks through.
void walk(QAccessibleInterface* node, std::set<const QObject*>& met) {
  if (node->object())
    met.insert(node->object());
  for (int i = 0; i < node->childCount(); ++i)
    if (auto* child = node->child(i))
      walk(child, met);
}

} // namespace

void no_text_is_cut(ShownWindow& shown) {
  const auto texts = texts_of(shown);
  for (auto* text : texts)
    is_whole(shown, text);
  for (std::size_t i = 0; i < texts.size(); ++i)
    for (std::size_t j = i + 1; j < texts.size(); ++j)
      EXPECT_FALSE(touch(letters(texts[i]), letters(texts[j])))
          << described(texts[i]) << " and " << described(texts[j]) << " lie over each other";
}

void no_controls_overlap(ShownWindow& shown) {
  std::vector<QQuickItem*> controls;
  for (auto* item : shown.items())
    if (is_control(item))
      controls.push_back(item);
  for (std::size_t i = 0; i < controls.size(); ++i)
    for (std::size_t j = i + 1; j < controls.size(); ++j)
      EXPECT_FALSE(touch(seen(controls[i]), seen(controls[j])) &&
                   !is_within(controls[i], controls[j]) && !is_within(controls[j], controls[i]))
          << described(controls[i]) << " and " << described(controls[j]) << " overlap";
}

void controls_are_named(ShownWindow& shown) {
  QAccessible::setActive(true);
  std::set<const QObject*> met;
  auto* root = QAccessible::queryAccessibleInterface(&shown.window());
  ASSERT_NE(root, nullptr);
  walk(root, met);
  for (auto* item : shown.items()) {
    if (!is_control(item) && !item->activeFocusOnTab())
      continue;
    EXPECT_TRUE(met.contains(item)) << described(item) << " is not in the accessibility tree";
    auto* node = QAccessible::queryAccessibleInterface(item);
    ASSERT_NE(node, nullptr) << described(item);
    EXPECT_NE(node->role(), QAccessible::NoRole) << described(item) << " has no role";
    EXPECT_NE(node->role(), QAccessible::Client) << described(item) << " has no role";
    EXPECT_FALSE(node->text(QAccessible::Name).trimmed().isEmpty())
        << described(item) << " (" << item->metaObject()->className() << ") has no name";
  }
}

void controls_are_large(ShownWindow& shown) {
  constexpr int smallest = 44;
  for (auto* item : shown.items())
    if (is_control(item)) {
      EXPECT_GE(item->width(), smallest) << described(item) << " is narrow";
      EXPECT_GE(item->height(), smallest) << described(item) << " is low";
    }
}

} // namespace coneline::window
