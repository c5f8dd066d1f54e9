// SPDX-License-Identifier: GPL-3.0-or-later
// Beginning at the real window: an old spreadsheet brought in, the book named, copied and moved,
// and help where it is needed, by keyboard too.
#include "qml/models/beginning.h"
#include "qml/models/book_copies.h"
#include "qml/models/book_file.h"
#include "qml/models/old_table.h"
#include "qml/models/wording.h"
#include "tests/qml/held.h"
#include "tests/qml/shown_window.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

constexpr QSize wide(1280, 800);

QString written(const QTemporaryDir& folder, const char* text) {
  const auto path = folder.filePath(QStringLiteral("old.csv"));
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(text);
  return path;
}

constexpr auto list = "Species,Seeds,Sown on,Tray,Bench\n"
                      "Cycas revoluta,40,2026-03-01,seed tray,Old bench\n"
                      "Cycas revoluta,x38,2026-03-01,seed tray,Old bench\n";

void set_text(ShownWindow& shown, const QString& name, const QString& value) {
  auto* item = shown.find(name);
  ASSERT_NE(item, nullptr) << name.toStdString();
  item->setProperty("text", value);
}

TEST(OldTableInTheWindow, IsMatchedTriedOutAndTakenInOnlyWhenNothingIsWrong) {
  ShownWindow shown(With::demo_season, wide);
  const QTemporaryDir folder;
  OldTable old;
  old.setProperty("session", QVariant::fromValue(&shown.session()));
  const auto before = shown.session().standing().lots.size();
  old.read(written(folder, list));
  shown.settle();
  ASSERT_EQ(old.columns()->size(), 5) << old.fault().toStdString();
  EXPECT_EQ(old.columns()->value(0, "field"), "taxon");
  EXPECT_EQ(old.columns()->value(4, "field"), "place");
  old.tryOut();
  shown.settle();
  EXPECT_FALSE(old.ready());
  EXPECT_TRUE(old.fault().contains("nothing says what the rows are")) << old.fault().toStdString();
  old.forAll("kind", "tray");
  old.forAll("litres", "5");
  old.forAll("width", "300");
  old.tryOut();
  EXPECT_TRUE(old.busy()) << "aside from the window's thread";
  shown.settle();
  EXPECT_FALSE(old.busy());
  EXPECT_TRUE(old.rows()->value(0, "told").toString().contains("line 3, column Seeds"));
  old.takeIn();
  EXPECT_FALSE(old.busy()) << "not before it was tried out without a fault";
  EXPECT_EQ(shown.session().standing().lots.size(), before);

  old.read(written(folder, QByteArray(list).replace("x38", "38").constData()));
  shown.settle();
  ASSERT_EQ(old.columns()->size(), 5) << old.fault().toStdString();
  old.tryOut();
  shown.settle();
  EXPECT_TRUE(old.ready()) << "what was said for all rows still holds";
  EXPECT_EQ(shown.session().standing().lots.size(), before);
  {
    const Held held; // it is not all in before the stop comes
    old.takeIn();
    old.stop();
  }
  shown.settle();
  EXPECT_TRUE(old.fault().contains("nothing came into the book")) << old.fault().toStdString();
  EXPECT_EQ(shown.session().standing().lots.size(), before);
  old.tryOut();
  shown.settle();
  old.takeIn();
  old.match(0, "note");
  EXPECT_TRUE(old.busy()) << "what comes in is not changed on the way";
  shown.settle();
  EXPECT_EQ(old.fault(), "");
  EXPECT_EQ(shown.session().standing().lots.size(), before + 4) << "two trays, each from a batch";
  EXPECT_TRUE(shown.session().told().contains("2"));
  EXPECT_TRUE(shown.session().undo());
}

TEST(OldTableInTheWindow, IsReadAsideAndSaysWhatCannotBeRead) {
  ShownWindow shown(With::demo_season, wide);
  const QTemporaryDir folder;
  OldTable old;
  old.setProperty("session", QVariant::fromValue(&shown.session()));
  const auto path = written(folder, list);
  {
    const Held held;
    old.read(path);
    EXPECT_TRUE(old.busy());
    EXPECT_TRUE(old.reading());
    EXPECT_EQ(old.columns()->size(), 0);
    old.stop();
    EXPECT_FALSE(old.busy()) << "at once";
  }
  shown.settle();
  EXPECT_EQ(old.columns()->size(), 0) << "it was not wanted any more";
  EXPECT_EQ(old.fault(), "");
  old.read(folder.filePath("none.csv"));
  shown.settle();
  EXPECT_TRUE(old.fault().contains("none.csv")) << old.fault().toStdString();
  EXPECT_FALSE(old.busy());
  old.read(path);
  shown.settle();
  EXPECT_EQ(old.fault(), "");
  EXPECT_EQ(old.columns()->size(), 5);
}

constexpr auto wait_for_it = "Wait until this is done: old.csv comes into the book …";

/// A sheet of two rows with nothing wrong, ready to come into the demo's book.
class SheetThatIsReady : public testing::Test {
 protected:
  SheetThatIsReady() { session.speech()->set_language("en"); }

  std::unique_ptr<OldTable> tried_out() {
    auto sheet = std::make_unique<OldTable>();
    sheet->setProperty("session", QVariant::fromValue(&session));
    sheet->read(written(folder, QByteArray(list).replace("x38", "38").constData()));
    shown.settle();
    sheet->forAll("kind", "tray");
    sheet->forAll("litres", "5");
    sheet->forAll("width", "300");
    sheet->tryOut();
    shown.settle();
    EXPECT_TRUE(sheet->ready()) << sheet->fault().toStdString();
    return sheet;
  }
  Result<void> keep_nothing() {
    return session.keep(std::function([](store::Writing&) { return Result<void>(); }));
  }

  ShownWindow shown{With::demo_season, wide};
  const QTemporaryDir folder;
  Session& session = shown.session();
  std::unique_ptr<OldTable> old = tried_out();
};

TEST_F(SheetThatIsReady, ComesInWhateverPageIsLookedAt) {
  const auto before = session.standing().lots.size();
  {
    const Held held;
    old->takeIn();
    EXPECT_TRUE(old->busy());
    EXPECT_TRUE(session.underway().contains("old.csv")) << session.underway().toStdString();
    EXPECT_EQ(shown.find("lastTold")->property("text"), session.underway());
    shown.type("zam");
    EXPECT_EQ(shown.find("readyField")->property("text"), "zam") << "typed meanwhile";
    old.reset();
  }
  shown.settle();
  EXPECT_EQ(session.underway(), "");
  EXPECT_EQ(session.standing().lots.size(), before + 4) << "two trays, each from a batch";
  EXPECT_EQ(session.told(), "2 rows of old.csv came in");
  ASSERT_TRUE(session.undo());
  for (const auto& line : session.standing().lots)
    EXPECT_FALSE(line.lot.code.kind() == Kind::tray && line.place &&
                 session.standing().registers.place(*line.place).name == "Old bench" &&
                 !line.on_hand.empty());
}

TEST_F(SheetThatIsReady, WhileItComesInNothingElseIsWrittenToTheBook) {
  int written = 0;
  const auto act = [&](store::Book&) {
    ++written;
    return Result<work::Done>(work::Done());
  };
  const auto keep = [&](store::Book&) {
    ++written;
    return Result<void>();
  };
  {
    const Held held;
    old->takeIn();
    const auto entered = session.act(act);
    ASSERT_FALSE(entered);
    EXPECT_EQ(fault_shown(entered.error()), wait_for_it);
    EXPECT_FALSE(session.keep(std::function<Result<void>(store::Book&)>(keep)));
    EXPECT_FALSE(keep_nothing());
    EXPECT_EQ(written, 0);
    EXPECT_FALSE(session.reverse(1));
    EXPECT_EQ(session.fault(), wait_for_it);
    QTest::qWait(60);
    EXPECT_EQ(shown.find("lastTold")->property("text"), session.underway());
    ASSERT_NE(shown.find("barFault"), nullptr) << "a fault is seen while work is underway";
    EXPECT_EQ(shown.find("barFault")->property("text"), session.fault());
    shown.window().grabWindow().save(QStringLiteral(CONELINE_PICTURES_FOLDER "/bar-waits.png"));
  }
  shown.settle();
  EXPECT_EQ(session.fault(), "") << "there is nothing to wait for any more";
  EXPECT_EQ(shown.find("barFault"), nullptr);
  EXPECT_EQ(session.told(), "2 rows of old.csv came in");
  EXPECT_TRUE(session.act(act));
  EXPECT_TRUE(session.keep(std::function<Result<void>(store::Book&)>(keep)));
  EXPECT_TRUE(keep_nothing());
  EXPECT_EQ(written, 2);
}

TEST_F(SheetThatIsReady, WhileItComesInAnotherBookIsWrittenTo) {
  const auto into = session.path();
  const Held held;
  old->takeIn();
  ASSERT_TRUE(session.makeBook(folder.filePath("other.coneline"), "Other"));
  EXPECT_TRUE(keep_nothing());
  ASSERT_TRUE(session.openBook(into));
  EXPECT_FALSE(keep_nothing()) << "back in the book that it comes into";
}

TEST_F(SheetThatIsReady, SaysWhatToWaitForWhoeverAsksForMore) {
  auto more = tried_out();
  Beginning beginning;
  beginning.setProperty("session", QVariant::fromValue(&session));
  BookCopies copies;
  copies.setProperty("session", QVariant::fromValue(&session));
  copies.set_path(session.path());
  const auto other = folder.filePath("season.coneline");
  const Held held;
  old->takeIn();
  EXPECT_EQ(session.fault(), "");
  more->takeIn();
  EXPECT_EQ(session.fault(), wait_for_it);
  EXPECT_TRUE(more->ready()) << "it can be taken in later";
  session.forgetFault();
  beginning.importSeason(QStringLiteral(CONELINE_DEMO_SEASON), other);
  EXPECT_EQ(session.fault(), wait_for_it);
  session.forgetFault();
  copies.restore(folder.filePath("copy"));
  EXPECT_EQ(session.fault(), wait_for_it);
  EXPECT_TRUE(session.is_open()) << "the book is not let go of for it";
}

void click(ShownWindow& shown, const char* name) {
  auto* item = shown.find(name);
  ASSERT_NE(item, nullptr) << name;
  ASSERT_TRUE(QMetaObject::invokeMethod(item, "clicked"));
  shown.settle();
}

void write_into(ShownWindow& shown, const char* name, const QString& text) {
  auto* item = shown.find(name);
  ASSERT_NE(item, nullptr) << name;
  item->forceActiveFocus();
  for (const auto letter : text) {
    QTest::keyClick(&shown.window(), letter.toLatin1());
    QTest::qWait(60); // a person, not a scanner
  }
  shown.settle();
}

TEST(OldTableInTheWindow, GoesThroughThePageToTheEnd) {
  ShownWindow shown(With::demo_season, wide);
  const auto before = shown.session().standing().lots.size();
  shown.tap("bookPage");
  shown.tap("book-table");
  shown.find("tableFile")->setProperty("path", QStringLiteral(CONELINE_OLD_TABLE));
  click(shown, "tableRead");
  ASSERT_NE(shown.find("tableColumn-0"), nullptr);
  click(shown, "tableTry");
  EXPECT_EQ(shown.find("tableTake"), nullptr) << "the pots have no litres yet";
  write_into(shown, "tableAll-litres", "5");
  write_into(shown, "tableAll-width", "300");
  click(shown, "tableTry");
  EXPECT_EQ(shown.session().standing().lots.size(), before);
  click(shown, "tableTake");
  EXPECT_EQ(shown.session().standing().lots.size(), before + 6);
}

TEST(OldTableInTheWindow, BeginsABookOfItsOwn) {
  ShownWindow shown(With::no_book, wide);
  const QTemporaryDir folder;
  shown.tap("way-table");
  set_text(shown, "tableNursery", "Test nursery");
  auto* part = shown.find("tableBook");
  ASSERT_NE(part, nullptr);
  EXPECT_EQ(shown.find("tableRead"), nullptr) << "first there is a book";
  ASSERT_TRUE(shown.session().makeBook(folder.filePath("new.coneline"), "Test nursery"));
  shown.settle();
  ASSERT_NE(shown.find("tableRead"), nullptr) << "the way stays open while the book is empty";
}

TEST(ASeasonFolder, ComesInWhileTheWindowStaysAlive) {
  ShownWindow shown(With::no_book, wide);
  const QTemporaryDir folder;
  const auto path = folder.filePath("season.coneline");
  auto& session = shown.session();
  Beginning beginning;
  beginning.setProperty("session", QVariant::fromValue(&session));
  beginning.importSeason(folder.path(), path);
  shown.settle();
  EXPECT_FALSE(beginning.faults().isEmpty()) << "there is no season in it";
  EXPECT_FALSE(QFile::exists(path));
  EXPECT_FALSE(session.is_open());
  {
    const Held held;
    beginning.importSeason(QStringLiteral(CONELINE_DEMO_SEASON), path);
    EXPECT_TRUE(beginning.faults().isEmpty());
    QTest::qWait(60);
    EXPECT_FALSE(session.is_open());
    ASSERT_NE(shown.find("startUnderway"), nullptr);
    EXPECT_EQ(shown.find("startUnderway")->property("text"), session.underway());
    shown.type("zam");
    EXPECT_EQ(shown.find("readyField")->property("text"), "zam") << "typed meanwhile";
  }
  shown.settle();
  EXPECT_EQ(session.underway(), "");
  EXPECT_TRUE(beginning.faults().isEmpty());
  EXPECT_EQ(session.path(), path);
  EXPECT_FALSE(session.standing().lots.empty());
}

TEST(BookPage, NamesCopiesAndMovesTheBook) {
  ShownWindow shown(With::demo_season, wide);
  const QTemporaryDir folder;
  BookFile file;
  file.setProperty("session", QVariant::fromValue(&shown.session()));
  const auto old_path = file.path();
  const auto copy = folder.filePath("copy.coneline");
  file.copyTo(copy);
  shown.settle();
  ASSERT_EQ(file.fault(), "");
  EXPECT_TRUE(file.told().contains(copy)) << file.told().toStdString();
  EXPECT_TRUE(QFile::exists(copy));
  EXPECT_EQ(file.path(), old_path);
  file.copyTo(copy);
  shown.settle();
  EXPECT_EQ(file.told(), "") << "nothing is written over";
  EXPECT_TRUE(file.fault().contains("is there already"));
  const auto moved = folder.filePath("moved.coneline");
  file.moveTo(moved);
  shown.settle();
  ASSERT_EQ(file.fault(), "");
  EXPECT_TRUE(file.told().contains(moved)) << file.told().toStdString();
  EXPECT_EQ(file.path(), moved);
  EXPECT_FALSE(QFile::exists(old_path));
  EXPECT_FALSE(shown.session().standing().lots.empty());
  ASSERT_TRUE(file.open(copy));
  EXPECT_EQ(file.path(), copy);
  EXPECT_FALSE(file.open(folder.filePath("no such file")));
  EXPECT_EQ(file.path(), copy) << "what was open stays open";
}

TEST(BookPage, AMoveThatFailsLeavesTheOldBookOpen) {
  ShownWindow shown(With::demo_season, wide);
  const QTemporaryDir folder;
  BookFile file;
  file.setProperty("session", QVariant::fromValue(&shown.session()));
  const auto old_path = file.path();
  auto other = store::Book::open(Session::path_of(old_path), store::Access::read);
  ASSERT_TRUE(other->read([](store::Reading& reading) { return reading.balances().size(); }));
  file.moveTo(folder.filePath("moved.coneline"));
  shown.settle();
  EXPECT_EQ(file.told(), "");
  EXPECT_TRUE(file.fault().contains("open in another program")) << file.fault().toStdString();
  EXPECT_EQ(file.path(), old_path);
  EXPECT_FALSE(shown.session().standing().lots.empty());
}

TEST(BookPage, IsReachedFromTheFieldAndLeftByEscape) {
  ShownWindow shown(With::demo_season, wide);
  shown.tap("bookPage");
  ASSERT_NE(shown.find("bookName"), nullptr);
  shown.tap("book-copy");
  EXPECT_NE(shown.find("copyNow"), nullptr);
  shown.press(Qt::Key_Escape);
  EXPECT_EQ(shown.find("bookName"), nullptr);
}

QString title(ShownWindow& shown) {
  auto* item = shown.find("helpTitle");
  return item ? item->property("text").toString() : QString();
}

TEST(Help, OpensAtThePageOrDeedThatIsShown) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "pollen");
  shown.press(Qt::Key_F1);
  EXPECT_EQ(title(shown), "Pollen");
  shown.press(Qt::Key_Escape);
  EXPECT_EQ(title(shown), "");
  EXPECT_EQ(shown.get("page"), "pollen") << "Escape closes the help first";
  const auto& tray = shown.lot_with(Kind::tray, book::State::sown);
  shown.set("page", "trays");
  shown.set("chosen", QString::fromStdString(tray.lot.code.text()));
  shown.tap("help");
  EXPECT_EQ(title(shown), "One lot");
  shown.set("deed", "move");
  shown.settle();
  EXPECT_EQ(title(shown), "Move") << "help goes along";
  shown.tap("helpClose");
  EXPECT_EQ(title(shown), "");
}

TEST(Help, IsSearchedAndReadByKeyboardAlone) {
  ShownWindow shown(With::demo_season, wide);
  shown.press(Qt::Key_F1);
  for (const char letter : std::string("legionella seedlings")) {
    QTest::keyClick(&shown.window(), letter);
    QTest::qWait(60); // a person, not a scanner
  }
  shown.settle();
  ASSERT_NE(shown.find("help-pot"), nullptr);
  EXPECT_EQ(shown.find("help-round"), nullptr);
  shown.press(Qt::Key_Tab);
  shown.press(Qt::Key_Return);
  EXPECT_EQ(title(shown), "Pot seedlings");
}

TEST(Help, HasATextForEveryPage) {
  ShownWindow shown(With::demo_season, wide);
  shown.press(Qt::Key_F1);
  for (const auto* page : {"today", "pollen", "cones", "seed", "trays", "pots", "out", "crosses",
                           "results", "season", "round", "book"}) {
    shown.set("page", page);
    shown.settle();
    EXPECT_NE(title(shown), "Finding your way") << page;
  }
}

} // namespace
} // namespace coneline::window
