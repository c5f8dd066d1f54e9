// SPDX-License-Identifier: GPL-3.0-or-later
// A hand scanner that types, told from a person: no letter leaks, no Return is lost, whatever the
// keyboard is in and however busy the window is.
#include "qml/input/key_burst.h"
#include "qml/input/key_watch.h"
#include "tests/qml/shown_window.h"

#include <QPointer>
#include <QTest>
#include <QThread>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

using Moment = KeyBurst::Moment;

QString text_of(const Code& code) {
  return QString::fromStdString(code.text());
}

/// Feeds letters `apart` ms from each other, then the end key, and tells the last verdict.
KeyBurst::Verdict typed(KeyBurst& burst, const QString& text, int apart) {
  Moment at{1000};
  for (const auto letter : text) {
    burst.letter(letter, at);
    at += Moment(apart);
  }
  return burst.end(at);
}

TEST(KeyBurst, TellsAScannerFromAPerson) {
  for (int apart = 0; apart <= 100; apart += 5) {
    KeyBurst burst;
    const auto verdict = typed(burst, "T1742Q", apart);
    EXPECT_EQ(verdict.scan.has_value(), apart <= 35) << apart << " ms";
    EXPECT_FALSE(burst.holds());
  }
  KeyBurst burst;
  EXPECT_FALSE(typed(burst, "ab", 5).scan) << "too short for a label";
  EXPECT_FALSE(burst.end(Moment(1)).hold) << "a Return alone is a person's";
}

TEST(KeyBurst, TakesASoundCodeOfAScannerWithoutAnEndKey) {
  const auto code = text_of(Code::of(Kind::tray, 17, 42).value());
  KeyBurst burst;
  for (const auto letter : code)
    burst.letter(letter, Moment(1));
  EXPECT_EQ(burst.rest().scan, code);
  for (const auto letter : QStringLiteral("sand mix"))
    burst.letter(letter, Moment(2));
  const auto verdict = burst.rest();
  EXPECT_FALSE(verdict.scan);
  EXPECT_TRUE(verdict.release);
}

/// A window that notes every key that reaches it.
class Heard : public QWindow {
 public:
  QString text;

 protected:
  void keyPressEvent(QKeyEvent* event) override { text += event->text(); }
};

class Keys : public testing::Test {
 protected:
  Keys() {
    QObject::connect(&watch, &KeyWatch::scanned, &watch,
                     [this](const QString& text) { scans << text; });
  }
  /// A key pressed at `ms`, whenever the window comes to it.
  void key(QChar letter, std::uint64_t ms) {
    const int code = letter == '\r' ? int(Qt::Key_Return) : int(letter.toUpper().unicode());
    for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
      QKeyEvent event(type, code, Qt::NoModifier, QString(letter));
      event.setTimestamp(ms);
      QCoreApplication::sendEvent(&heard, &event);
    }
  }

  KeyWatch watch;
  Heard heard;
  QStringList scans;
};

TEST_F(Keys, StayOneScanWhileTheWindowIsBusy) {
  std::uint64_t at = 1000;
  for (const auto letter : QStringLiteral("T1742Q\r")) {
    key(letter, at += 8);
    QThread::msleep(50); // longer than the gap, and the timer has run out
  }
  EXPECT_EQ(scans, QStringList("T1742Q"));
  EXPECT_EQ(heard.text, QString());
}

TEST_F(Keys, HaveTheirTurnBeforeTheGapIsOver) {
  std::uint64_t at = 1000;
  const auto send = [&](const QString& text) {
    for (const auto letter : text)
      key(letter, at += 8);
  };
  send("T17");
  // The window is busy for longer than the gap; the rest of the scan waits behind the timer.
  QTimer::singleShot(0, &watch, [&] {
    QThread::msleep(60);
    QMetaObject::invokeMethod(
        &watch, [&] { send("42Q\r"); }, Qt::QueuedConnection);
  });
  QTest::qWait(150);
  EXPECT_EQ(scans, QStringList("T1742Q"));
  EXPECT_EQ(heard.text, QString());
}

TEST_F(Keys, OfAPersonGoOnInTheirOrder) {
  std::uint64_t at = 1000;
  for (const auto letter : QStringLiteral("gritty mix\r")) {
    key(letter, at += 60);
    QTest::qWait(60);
  }
  EXPECT_EQ(heard.text, "gritty mix\r");
  EXPECT_TRUE(scans.isEmpty());
}

TEST_F(Keys, OfTheSameLabelTwiceWithinAMomentAreOneScan) {
  std::uint64_t at = 1000;
  for (int i = 0; i < 3; ++i)
    for (const auto letter : QStringLiteral("T1742Q\r"))
      key(letter, at += 8);
  EXPECT_EQ(scans.size(), 1);
  EXPECT_EQ(heard.text, QString());
}

/// What a thing on the page holds, where it is a field or a counter.
QString held(const QQuickItem* item) {
  return item->property("text").toString() + '|' + item->property("value").toString() + '|' +
         item->property("checked").toString();
}

TEST(Window, TakesAScanWhateverTheKeyboardIsIn) {
  ShownWindow shown(With::demo_season, QSize(1280, 800));
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  const auto batch = shown.lot_with(Kind::batch, book::State::judged_filled).lot.code;
  const auto entries = [&] {
    return shown.session()
        .ask([](store::Reading& reading) { return reading.entries().size(); })
        .value();
  };
  const auto before = entries();
  struct Where {
    const char* page;
    QString chosen;
    const char* deed;
  };
  int tried = 0;
  for (const auto& where :
       {Where{"today", "", ""}, Where{"season", "", ""}, Where{"results", "", ""},
        Where{"crosses", "", ""}, Where{"seed", text_of(batch), "sow"},
        Where{"seed", text_of(batch), "store"}, Where{"trays", text_of(tray), "move"}}) {
    const auto go = [&] {
      shown.set("page", where.page);
      shown.set("chosen", where.chosen);
      shown.set("inHand", false);
      shown.set("deed", where.deed);
    };
    go();
    const auto stops = [&] {
      std::vector<QPointer<QQuickItem>> all;
      for (auto* item : shown.items())
        if (item->activeFocusOnTab() && item->isEnabled())
          all.emplace_back(item);
      return all;
    };
    const auto count = stops().size();
    const auto step = std::max<std::size_t>(1, count / 6); // some of each page
    for (std::size_t i = 0; i < count; i += step) {
      go();
      const auto all = stops();
      if (i >= all.size())
        break;
      const auto item = all[i];
      item->forceActiveFocus(Qt::TabFocusReason);
      const auto stood = held(item);
      SCOPED_TRACE(std::string(where.page) + " " + where.deed + " " +
                   item->metaObject()->className() + " " + item->objectName().toStdString());
      // Not the same label within a moment: two in turn.
      const auto& scanned = tried % 2 == 0 ? tray : batch;
      shown.scan(text_of(scanned));
      EXPECT_EQ(shown.get("chosen").toString(), text_of(scanned));
      if (item) {
        EXPECT_EQ(held(item), stood);
      }
      EXPECT_EQ(shown.find("readyField")->property("text").toString(), "");
      ++tried;
    }
  }
  EXPECT_GE(tried, 35);
  EXPECT_EQ(entries(), before) << "a Return of the scanner pressed a button";
  RecordProperty("focused", tried);
}

} // namespace
} // namespace coneline::window
