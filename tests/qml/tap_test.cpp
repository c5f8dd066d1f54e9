// SPDX-License-Identifier: GPL-3.0-or-later
// What counts as a tap, by finger, mouse, key and screen reader, and when the ring shows.
#include "qml/window.h"

#include <QAccessible>
#include <QQmlComponent>
#include <QQuickItem>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

constexpr auto page = R"(
import QtQuick
import ConelineWindow
Window {
    width: 300; height: 200; visible: true
    Flickable {
        objectName: "flick"; anchors.fill: parent; contentHeight: 1000
        Press { objectName: "first"; x: 20; y: 20; text: "first" }
        Press { objectName: "second"; x: 20; y: 100; text: "second"; enabled: false }
        Field { objectName: "field"; x: 150; y: 20; width: 100 }
    }
})";

class TapTest : public testing::Test {
 protected:
  std::unique_ptr<QQuickWindow> shown() {
    engine.addImportPath("qrc:/");
    QQmlComponent made(&engine);
    made.setData(page, QUrl("qrc:/ConelineWindow/test.qml"));
    std::unique_ptr<QQuickWindow> made_window(qobject_cast<QQuickWindow*>(made.create()));
    if (!made_window)
      throw std::runtime_error(made.errorString().toStdString());
    static_cast<void>(QTest::qWaitForWindowActive(made_window.get()));
    return made_window;
  }
  QQuickItem* item(const QString& name) { return window->findChild<QQuickItem*>(name); }
  QPoint middle(const QString& name) {
    auto* at = item(name);
    return at->mapToScene({at->width() / 2, at->height() / 2}).toPoint();
  }
  /// Whether a ring is seen in an item.
  static bool ringed(QQuickItem* item) {
    for (auto* part : item->childItems())
      if (part->isVisible() &&
          (QByteArray(part->metaObject()->className()).startsWith("Ring_") || ringed(part)))
        return true;
    return false;
  }

  QQmlEngine engine;
  std::unique_ptr<QQuickWindow> window = shown();
  QSignalSpy clicks{item("first"), SIGNAL(clicked())};
};

TEST_F(TapTest, CountsWhereItIsLetGoOf) {
  QTest::mouseClick(window.get(), Qt::LeftButton, {}, middle("first"));
  EXPECT_EQ(clicks.size(), 1);
  QTest::mousePress(window.get(), Qt::LeftButton, {}, middle("first"));
  EXPECT_TRUE(item("first")->property("down").toBool());
  QTest::mouseMove(window.get(), middle("first") + QPoint(200, 0));
  EXPECT_FALSE(item("first")->property("down").toBool());
  QTest::mouseRelease(window.get(), Qt::LeftButton, {}, middle("first") + QPoint(200, 0));
  EXPECT_EQ(clicks.size(), 1) << "let go of beside it";
  QTest::mouseClick(window.get(), Qt::RightButton, {}, middle("first"));
  EXPECT_EQ(clicks.size(), 1) << "another button";
}

TEST_F(TapTest, CountsQuickTapsOneByOne) {
  QTest::mouseDClick(window.get(), Qt::LeftButton, {}, middle("first"));
  EXPECT_EQ(clicks.size(), 2);
  QTest::mouseClick(window.get(), Qt::LeftButton, {}, middle("first"));
  EXPECT_EQ(clicks.size(), 3);
}

TEST_F(TapTest, CountsAFinger) {
  std::unique_ptr<QPointingDevice> finger(QTest::createTouchDevice());
  const auto at = middle("first");
  QTest::touchEvent(window.get(), finger.get()).press(1, at, window.get());
  QTest::touchEvent(window.get(), finger.get()).release(1, at, window.get());
  EXPECT_EQ(clicks.size(), 1);
}

TEST_F(TapTest, IsNoneWhenThePageIsPushedAlong) {
  const auto from = middle("first");
  QTest::mousePress(window.get(), Qt::LeftButton, {}, from);
  for (int y = 0; y <= 100; y += 10) {
    QTest::mouseMove(window.get(), from - QPoint(0, y));
    QTest::qWait(5);
  }
  EXPECT_FALSE(item("first")->property("down").toBool());
  QTest::mouseRelease(window.get(), Qt::LeftButton, {}, from - QPoint(0, 100));
  EXPECT_GT(item("flick")->property("contentY").toDouble(), 0);
  EXPECT_EQ(clicks.size(), 0);
}

TEST_F(TapTest, LeavesTheKeyboardWhereItIs) {
  item("field")->forceActiveFocus();
  QTest::mouseClick(window.get(), Qt::LeftButton, {}, middle("first"));
  EXPECT_TRUE(item("field")->hasActiveFocus());
  EXPECT_FALSE(ringed(item("first")));
}

TEST_F(TapTest, ShowsARingWhereAKeyBroughtTheKeyboard) {
  item("field")->forceActiveFocus();
  QTest::keyClick(window.get(), Qt::Key_Backtab, Qt::ShiftModifier);
  ASSERT_TRUE(item("first")->hasActiveFocus()) << "what is not enabled is passed over";
  EXPECT_TRUE(ringed(item("first")));
  QTest::keyClick(window.get(), Qt::Key_Tab);
  EXPECT_FALSE(ringed(item("first")));
  item("first")->forceActiveFocus(Qt::MouseFocusReason);
  EXPECT_FALSE(ringed(item("first")));
}

TEST_F(TapTest, KeepsItsRingWhileAnotherWindowIsWorkedIn) {
  item("first")->forceActiveFocus(Qt::TabFocusReason);
  QQuickWindow other;
  other.show();
  other.requestActivate();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&other));
  window->requestActivate();
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  ASSERT_TRUE(item("first")->hasActiveFocus());
  EXPECT_TRUE(ringed(item("first")));
}

TEST_F(TapTest, CountsKeysOnceHoweverLongTheyAreHeld) {
  item("first")->forceActiveFocus(Qt::TabFocusReason);
  const auto send = [&](QEvent::Type type, Qt::Key key, bool again) {
    QKeyEvent event(type, key, Qt::NoModifier, {}, again);
    QCoreApplication::sendEvent(window.get(), &event);
  };
  for (const auto key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Space}) {
    clicks.clear();
    send(QEvent::KeyPress, key, false);
    for (int i = 0; i < 5; ++i) {
      send(QEvent::KeyPress, key, true);
      send(QEvent::KeyRelease, key, true);
    }
    send(QEvent::KeyRelease, key, false);
    EXPECT_EQ(clicks.size(), 1) << key;
  }
  clicks.clear();
  send(QEvent::KeyPress, Qt::Key_Space, false);
  item("field")->forceActiveFocus();
  send(QEvent::KeyRelease, Qt::Key_Space, false);
  EXPECT_EQ(clicks.size(), 0) << "the keyboard went elsewhere before the key was let go of";
}

TEST_F(TapTest, IsPressedByAScreenReader) {
  QAccessible::setActive(true);
  auto* spoken = QAccessible::queryAccessibleInterface(item("first"));
  ASSERT_NE(spoken, nullptr);
  EXPECT_EQ(spoken->role(), QAccessible::Button);
  EXPECT_EQ(spoken->text(QAccessible::Name), "first");
  EXPECT_EQ(spoken->childCount(), 0) << "its words are read out once";
  auto* act = spoken->actionInterface();
  ASSERT_NE(act, nullptr);
  ASSERT_TRUE(act->actionNames().contains(QAccessibleActionInterface::pressAction()));
  act->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_EQ(clicks.size(), 1);
  QSignalSpy second(item("second"), SIGNAL(clicked()));
  QAccessible::queryAccessibleInterface(item("second"))
      ->actionInterface()
      ->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_EQ(second.size(), 0) << "what is not enabled does nothing";
}

} // namespace
} // namespace coneline::window
