// SPDX-License-Identifier: GPL-3.0-or-later
// Choosing crosses and saving papers at the real window.
#include "qml/models/crossing_choice.h"
#include "tests/qml/held.h"
#include "tests/qml/shown_window.h"

#include <QFile>
#include <QFileInfo>
#include <QTest>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

constexpr QSize wide(1280, 800);

/// The state of the first possible cross that is shown, by its pin button's name.
QQuickItem* first_pin(ShownWindow& shown) {
  for (auto* item : shown.items())
    if (item->objectName().startsWith(QStringLiteral("pin-")))
      return item;
  return nullptr;
}

TEST(Crossing, IsReachedFromThePollenAndSaysWhatToDoWhereNoConeIsLoose) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "pollen");
  shown.settle();
  shown.tap("chooseCrosses");
  EXPECT_EQ(shown.get("page").toString(), "crosses");
  ASSERT_NE(shown.find("crossesFault"), nullptr);
  EXPECT_TRUE(shown.find("crossesFault")->property("text").toString().contains("No female"));
}

TEST(Crossing, AProposalIsEditedAndTakenBack) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "crosses");
  shown.settle();
  shown.tap("everyFemale");
  shown.tap("anyRoom");
  EXPECT_EQ(shown.find("crossesFault"), nullptr);
  auto* pin = first_pin(shown);
  ASSERT_NE(pin, nullptr);
  const auto key = pin->objectName().mid(4);
  const auto is_checked = [&](const QString& prefix) {
    auto* button = shown.find(prefix + key);
    return button != nullptr && button->property("checked").toBool();
  };
  EXPECT_EQ(shown.find("freeAll"), nullptr);
  shown.tap("pin-" + key);
  EXPECT_TRUE(is_checked("pin-"));
  shown.tap("forbid-" + key); // the one takes the other back
  EXPECT_FALSE(is_checked("pin-"));
  EXPECT_TRUE(is_checked("forbid-"));
  shown.tap("freeAll");
  EXPECT_FALSE(is_checked("forbid-"));
}

TEST(Crossing, TheWindowDoesNotWaitForTheProposal) {
  constexpr int moment = 60; // ms
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "crosses");
  shown.tap("everyFemale");
  shown.tap("anyRoom");
  EXPECT_EQ(shown.find("crossesReckoning"), nullptr);
  auto* pin = first_pin(shown);
  ASSERT_NE(pin, nullptr);
  const auto name = pin->objectName();
  {
    const Held held;
    ASSERT_TRUE(QMetaObject::invokeMethod(pin, "clicked"));
    QTest::qWait(moment);
    EXPECT_NE(shown.find("crossesReckoning"), nullptr);
    ASSERT_NE(shown.find(name), nullptr) << "what was shown before stays";
    EXPECT_TRUE(shown.find(name)->property("checked").toBool()) << "what is fixed is seen at once";
  }
  shown.settle();
  EXPECT_EQ(shown.find("crossesReckoning"), nullptr);
  ASSERT_NE(shown.find(name), nullptr);
  EXPECT_TRUE(shown.find(name)->property("checked").toBool());
}

TEST(Crossing, OfABookThatWasClosedNothingIsProposed) {
  ShownWindow shown(With::demo_season, wide);
  CrossingChoice choice;
  choice.set_session(&shown.session());
  shown.settle();
  EXPECT_FALSE(choice.remarks().isEmpty());
  {
    const Held held;
    shown.session().read_anew();
    EXPECT_TRUE(choice.reckoning());
    shown.session().close();
    EXPECT_FALSE(choice.reckoning());
  }
  shown.settle();
  EXPECT_FALSE(choice.reckoning());
  EXPECT_TRUE(choice.remarks().isEmpty());
  EXPECT_EQ(choice.rows()->rowCount(), 0);
}

TEST(PapersAtTheWindow, AreSavedForTheirOwnerAlone) {
  ShownWindow shown(With::demo_season, wide);
  const auto lot = shown.lot_with(Kind::pot_group, book::State::plant).lot.code;
  shown.scan(QString::fromStdString(lot.text()));
  // The lot's page may have to be scrolled for these; a person scrolls, a test presses.
  for (const auto* name : {"papers", "papersSave"}) {
    auto* button = shown.find(name);
    ASSERT_NE(button, nullptr) << name;
    QMetaObject::invokeMethod(button, "clicked");
    shown.settle();
  }
  const auto path = shown.find("papersPath")->property("text").toString();
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  EXPECT_TRUE(file.readAll().startsWith("%PDF"));
  EXPECT_EQ(QFileInfo(path).permissions() & (QFileDevice::ReadGroup | QFileDevice::ReadOther |
                                             QFileDevice::WriteGroup | QFileDevice::WriteOther),
            QFileDevice::Permissions());
  EXPECT_TRUE(shown.find("papersTold")->property("text").toString().contains("page"));
}

} // namespace
} // namespace coneline::window
