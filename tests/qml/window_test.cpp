// SPDX-License-Identifier: GPL-3.0-or-later
// A day's work at the real window: scan, count, take back, sow.
#include "qml/input/tap.h"
#include "tests/qml/shown_window.h"

#include <QAccessible>
#include <QFile>
#include <QTest>
#include <gtest/gtest.h>

#include <set>

namespace coneline::window {
namespace {

constexpr QSize wide(1280, 800);

std::int64_t held(ShownWindow& shown, const Code& code, book::State state) {
  const auto* line = shown.session().standing().lot(code);
  if (!line)
    return -1;
  const auto found = line->on_hand.find(state);
  return found == line->on_hand.end() ? 0 : found->second;
}

QString text_of(const Code& code) {
  return QString::fromStdString(code.text());
}

TEST(Window, TakesAnInspectionInThreeSteps) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  const auto roots = held(shown, tray, book::State::root);
  const auto sown = held(shown, tray, book::State::sown);

  shown.scan(text_of(tray)); // one
  shown.tap("roots-more");   // two
  shown.tap("enterLook");    // three

  EXPECT_EQ(held(shown, tray, book::State::root), roots + 1);
  EXPECT_EQ(held(shown, tray, book::State::sown), sown - 1);
  EXPECT_TRUE(shown.session().told().contains(text_of(tray)));
}

TEST(Window, TakesTheNextScanWhereverTheKeyboardIs) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  shown.scan(text_of(tray));
  shown.tap("roots-more");
  shown.find("roots")->forceActiveFocus();
  const auto batch = shown.lot_with(Kind::batch, book::State::judged_filled).lot.code;
  const auto roots = held(shown, tray, book::State::root);
  shown.scan(text_of(batch));
  EXPECT_EQ(shown.get("chosen").toString(), text_of(batch));
  // What was counted and not entered yet went into the book before the next lot came up.
  EXPECT_EQ(held(shown, tray, book::State::root), roots + 1);
}

TEST(Window, KeepsCountsThatAreRefusedInSight) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  const auto sown = held(shown, tray, book::State::sown);
  shown.scan(text_of(tray));
  QMetaObject::invokeMethod(shown.find("dead"), "counted", Q_ARG(int, 100000));
  shown.scan(text_of(shown.lot_with(Kind::batch, book::State::judged_filled).lot.code));
  EXPECT_EQ(shown.get("chosen").toString(), text_of(tray));
  EXPECT_EQ(held(shown, tray, book::State::sown), sown);
  ASSERT_NE(shown.find("inspectFault"), nullptr);
  EXPECT_FALSE(shown.find("inspectFault")->property("text").toString().isEmpty());
}

TEST(Window, NothingNewIsOneTap) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  shown.scan(text_of(tray));
  shown.tap("enterLook");
  EXPECT_TRUE(shown.session().undoable());
  EXPECT_TRUE(shown.session().told().contains(text_of(tray)));
}

TEST(Window, TakesTheLastEntryBack) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  const auto sown = held(shown, tray, book::State::sown);
  shown.scan(text_of(tray));
  shown.tap("dead-more");
  shown.tap("dead-more");
  shown.tap("enterLook");
  ASSERT_EQ(held(shown, tray, book::State::sown), sown - 2);
  shown.tap("undo");
  EXPECT_EQ(held(shown, tray, book::State::sown), sown);
  EXPECT_FALSE(shown.session().undoable());
}

TEST(Window, TakesAnEntryBackFromTheHistory) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  const auto sown = held(shown, tray, book::State::sown);
  shown.scan(text_of(tray));
  shown.tap("roots-more");
  shown.tap("enterLook");
  ASSERT_EQ(held(shown, tray, book::State::sown), sown - 1);
  shown.press(Qt::Key_Escape);
  auto* back = shown.find("takeBack-0");
  ASSERT_NE(back, nullptr);
  QMetaObject::invokeMethod(back, "clicked"); // it asks first, in place
  EXPECT_EQ(held(shown, tray, book::State::sown), sown - 1);
  QMetaObject::invokeMethod(back, "clicked");
  shown.settle();
  EXPECT_EQ(held(shown, tray, book::State::sown), sown);
}

TEST(Window, PrintsLabelsOfASelectionAsPdf) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "trays");
  shown.settle();
  shown.tap("labels");
  shown.tap("labelsAll");
  shown.tap("labelSave");
  const auto path = shown.find("labelPath")->property("text").toString();
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly))
      << shown.find("labelTold")->property("text").toString().toStdString();
  EXPECT_TRUE(file.readAll().startsWith("%PDF"));
  EXPECT_TRUE(shown.find("labelTold")->property("text").toString().contains(path));
}

TEST(Window, SavesTheGerminationReportBesideTheBook) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "results");
  shown.settle();
  for (const auto& [form, begins] : {std::pair("PDF", "%PDF"), {"XLSX", "PK"}, {"CSV", "level,"}}) {
    auto* press = shown.find(QStringLiteral("save-") + form);
    ASSERT_NE(press, nullptr);
    QMetaObject::invokeMethod(press, "clicked");
    shown.settle();
    QFile file(shown.find("saved")->property("text").toString());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
    EXPECT_TRUE(file.readAll().startsWith(begins)) << form;
  }
}

TEST(Window, HoldsGerminationAgainstACondition) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "results");
  shown.settle();
  shown.tap("results-why");
  auto* choice = shown.find("why-condition");
  ASSERT_NE(choice, nullptr);
  QMetaObject::invokeMethod(choice, "picked", Q_ARG(QString, QStringLiteral("month of sowing")));
  shown.settle();
  bool heading = false;
  for (auto* item : shown.items())
    heading =
        heading || item->property("text").toString().startsWith("Germination by month of sowing");
  EXPECT_TRUE(heading);
}

TEST(Window, SowsATrayFromTheBatch) {
  ShownWindow shown(With::demo_season, wide);
  const auto batch = shown.lot_with(Kind::batch, book::State::judged_filled).lot.code;
  const auto filled = held(shown, batch, book::State::judged_filled);
  const auto trays = shown.session().standing().on_hand.in_trays;
  shown.scan(text_of(batch));
  shown.tap("deed-sow");
  shown.tap("enter");
  EXPECT_EQ(held(shown, batch, book::State::judged_filled), 0)
      << shown.get("deed").toString().toStdString();
  EXPECT_EQ(shown.session().standing().on_hand.in_trays, trays + filled);
  EXPECT_EQ(shown.get("deed").toString(), QString());
}

TEST(Window, OffersTheCodeThatWasMeant) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  auto wrong = text_of(tray);
  wrong[wrong.size() - 1] = wrong.back() == 'A' ? 'B' : 'A';
  shown.scan(wrong);
  EXPECT_EQ(shown.get("chosen").toString(), QString());
  auto* field = shown.find("readyField");
  ASSERT_NE(field, nullptr);
  EXPECT_TRUE(field->hasActiveFocus());
  const auto* meant = shown.find("meant");
  ASSERT_NE(meant, nullptr);
  shown.tap("meant");
  EXPECT_EQ(shown.get("chosen").toString(), text_of(tray));
}

TEST(Window, SaysThatALabelIsOfAnotherBook) {
  ShownWindow shown(With::demo_season, wide);
  const auto series = shown.session().standing().registers.title.series == 55 ? 56 : 55;
  shown.scan(text_of(Code::of(Kind::tray, series, 12345).value()));
  const auto* answer = shown.find("answer");
  ASSERT_NE(answer, nullptr);
  EXPECT_TRUE(answer->property("text").toString().contains("another book"));
}

TEST(Window, EscapeGoesBackAStepAtATime) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  shown.set("page", "trays");
  shown.scan(text_of(tray));
  ASSERT_TRUE(shown.get("inHand").toBool());
  shown.press(Qt::Key_Escape);
  EXPECT_FALSE(shown.get("inHand").toBool());
  shown.press(Qt::Key_Escape);
  EXPECT_EQ(shown.get("chosen").toString(), QString());
  shown.press(Qt::Key_Escape);
  EXPECT_EQ(shown.get("page").toString(), "today");
}

TEST(Window, ShowsWhatIsWrongBesideItsField) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  const auto sown = held(shown, tray, book::State::sown);
  shown.set("page", "trays");
  shown.set("chosen", text_of(tray));
  shown.set("deed", "lose");
  auto* field = shown.find("field-count");
  ASSERT_NE(field, nullptr);
  auto* loaded = field->property("item").value<QQuickItem*>();
  QMetaObject::invokeMethod(loaded, "written", Q_ARG(QString, QString::number(sown + 100000)));
  shown.tap("enter");
  EXPECT_EQ(held(shown, tray, book::State::sown), sown);
  EXPECT_EQ(shown.get("deed").toString(), "lose");
  EXPECT_NE(shown.find("formFault"), nullptr);
}

/// Where a form's field is written in.
QQuickItem* line_of(ShownWindow& shown, const QString& field) {
  auto* loaded = shown.find(field)->property("item").value<QQuickItem*>();
  return loaded->property("line").value<QQuickItem*>();
}

TEST(Window, KeepsWhatWasTypedAndCountedBehindTheHelp) {
  ShownWindow shown(With::demo_season, QSize(800, 1280));
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  shown.set("page", "trays");
  shown.set("chosen", text_of(tray));
  shown.set("deed", "lose");
  line_of(shown, "field-count")->forceActiveFocus();
  shown.type("3");
  const auto typed = line_of(shown, "field-count")->property("text").toString();
  ASSERT_TRUE(typed.contains("3"));
  shown.press(Qt::Key_F1);
  ASSERT_EQ(shown.find("field-count"), nullptr) << "the help lies over it";
  shown.press(Qt::Key_F1);
  ASSERT_NE(shown.find("field-count"), nullptr);
  EXPECT_EQ(line_of(shown, "field-count")->property("text").toString(), typed);

  shown.scan(text_of(tray));
  shown.tap("roots-more");
  shown.press(Qt::Key_F1);
  ASSERT_EQ(shown.find("roots"), nullptr);
  shown.press(Qt::Key_F1);
  ASSERT_NE(shown.find("roots"), nullptr);
  EXPECT_EQ(shown.find("roots")->property("value").toInt(), 1);
  // What is counted goes into the book from behind the help, too.
  const auto roots = held(shown, tray, book::State::root);
  shown.press(Qt::Key_F1);
  shown.scan(text_of(shown.lot_with(Kind::batch, book::State::judged_filled).lot.code));
  EXPECT_EQ(held(shown, tray, book::State::root), roots + 1);
}

TEST(Window, EntersWhatWasCountedOnTheWayToLineAndHistory) {
  ShownWindow shown(With::demo_season, wide);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  const auto roots = held(shown, tray, book::State::root);
  shown.scan(text_of(tray));
  shown.tap("roots-more");
  shown.tap("lineAndHistory");
  EXPECT_FALSE(shown.get("inHand").toBool());
  EXPECT_EQ(held(shown, tray, book::State::root), roots + 1);

  shown.set("inHand", true);
  shown.tap("roots-more");
  shown.press(Qt::Key_Escape);
  EXPECT_FALSE(shown.get("inHand").toBool());
  EXPECT_EQ(held(shown, tray, book::State::root), roots + 2);

  // What is refused stays in sight, to be put right.
  shown.set("inHand", true);
  QMetaObject::invokeMethod(shown.find("dead"), "counted", Q_ARG(int, 100000));
  shown.press(Qt::Key_Escape);
  EXPECT_TRUE(shown.get("inHand").toBool());
  EXPECT_NE(shown.find("inspectFault"), nullptr);
}

TEST(Window, ClosesAFormAndNotTheHelpBesideIt) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "trays");
  shown.set("chosen", text_of(shown.lot_with(Kind::tray, book::State::sown).lot.code));
  shown.set("deed", "lose");
  shown.press(Qt::Key_F1);
  shown.tap("formBack");
  EXPECT_EQ(shown.get("deed").toString(), QString());
  EXPECT_TRUE(shown.get("helping").toBool());
}

TEST(Window, BeginsABookWithItsFirstCone) {
  const tests::Scratch scratch;
  ShownWindow shown(With::no_book, wide);
  ASSERT_EQ(shown.get("page").toString(), "start");
  const auto file = QString::fromStdString(scratch.at("new.coneline").string());
  shown.tap("way-cone");
  shown.find("path")->setProperty("path", file);
  shown.find("nursery")->setProperty("text", "A nursery");
  shown.tap("coneNext");
  auto* taxon = shown.find("field-taxon")->property("item").value<QQuickItem*>();
  taxon->forceActiveFocus();
  shown.type("Cycas revoluta");
  shown.tap("coneNext"); // the plant
  shown.tap("coneNext"); // its cone, tight as most are when they are first seen
  EXPECT_FALSE(shown.session().is_open());
  shown.tap("begin");
  EXPECT_TRUE(shown.session().is_open());
  EXPECT_EQ(shown.session().standing().cones.size(), 1U);
  EXPECT_EQ(shown.get("chosen").toString().left(1), "C");
}

TEST(Window, LaysNoScrollMarkOverWordsOrButtons) {
  ShownWindow shown(With::demo_season, wide);
  const auto in_window = [](QQuickItem* item) {
    return item->mapRectToScene({0, 0, item->width(), item->height()});
  };
  for (const auto& [page, view] :
       {std::pair("results", "results-empty"), {"round", "roundPictures"}}) {
    SCOPED_TRACE(view);
    shown.set("page", page);
    shown.resize(wide);
    shown.tap(view);
    shown.resize({wide.width(), 560}); // there is more of it than can be seen
    const auto items = shown.items();
    int marks = 0;
    for (auto* mark : items) {
      if (!QByteArray(mark->metaObject()->className()).startsWith("ScrollMark"))
        continue;
      ++marks;
      for (auto* item : items)
        if (item->inherits("QQuickText") || item->inherits("coneline::window::Tap")) {
          const auto common = in_window(mark) & in_window(item);
          EXPECT_TRUE(common.isEmpty()) << item->property("text").toString().toStdString();
        }
    }
    EXPECT_GT(marks, 0);
  }
}

/// What a screen reader says of it: rows are made anew as a list scrolls, their names stay.
QString spoken(QQuickItem* item) {
  return QAccessible::queryAccessibleInterface(item)->text(QAccessible::Name);
}

TEST(Window, ReachesEveryControlByKeyboard) {
  ShownWindow shown(With::demo_season, wide);
  std::set<QString> reached;
  for (int i = 0; i < 400; ++i) {
    QTest::keyClick(&shown.window(), Qt::Key_Tab);
    QTest::qWait(1); // what the keyboard comes to is scrolled into view
    if (auto* focus = shown.window().activeFocusItem())
      reached.insert(spoken(focus));
  }
  shown.settle();
  int controls = 0;
  for (auto* item : shown.items())
    if (qobject_cast<Tap*>(item) != nullptr && item->isEnabled()) {
      ++controls;
      EXPECT_FALSE(spoken(item).isEmpty()) << item->objectName().toStdString();
      EXPECT_TRUE(reached.contains(spoken(item))) << spoken(item).toStdString();
    }
  EXPECT_GT(controls, 10);
}

} // namespace
} // namespace coneline::window
