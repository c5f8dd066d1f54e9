// SPDX-License-Identifier: GPL-3.0-or-later
// Going back to a copy and undoing it, at the real window.
#include "core/store/copies.h"
#include "qml/models/book_copies.h"
#include "tests/core/store/first_cone.h"
#include "tests/qml/held.h"
#include "tests/qml/shown_window.h"

#include <QDir>
#include <QTest>
#include <gtest/gtest.h>

#include <fstream>

namespace coneline::window {
namespace {

class CopiesAtTheWindow : public testing::Test {
 protected:
  CopiesAtTheWindow() {
    { tests::make_first_cone(path, first); }
    { auto copied = store::Book::open(path, store::Access::write); }
    auto book = store::Book::open(path, store::Access::write);
    EXPECT_TRUE(book->write([](store::Writing& writing) {
      return writing.put(book::Taxon{{}, "Zamia furfuracea", {}, {}, {}, {}, {}, {}});
    }));
  }
  [[nodiscard]] static std::size_t taxa(ShownWindow& shown) {
    return shown.session().standing().registers.taxa.size();
  }
  static void take(ShownWindow& shown, const QString& name) {
    QDir().mkpath(QStringLiteral(CONELINE_PICTURES_FOLDER));
    shown.settle();
    shown.window().grabWindow().save(QStringLiteral(CONELINE_PICTURES_FOLDER "/") + name + ".png");
  }
  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
};

TEST_F(CopiesAtTheWindow, GoesBackAndUndoesItInAnOpenBook) {
  ShownWindow shown(With::no_book, {1280, 800});
  ASSERT_TRUE(shown.session().openBook(QString::fromStdString(path.string())));
  shown.settle();
  EXPECT_EQ(taxa(shown), 2U);
  shown.set("page", "today");
  shown.settle();
  shown.tap("copies");
  ASSERT_NE(shown.find("restore-1"), nullptr);
  take(shown, "copies-today");
  shown.tap("restore-1"); // the older of two; the newest was made at this opening
  shown.settle();
  EXPECT_EQ(taxa(shown), 1U);
  take(shown, "copies-restored");
  if (shown.find("undoRestore") == nullptr) {
    shown.set("page", "today");
    shown.settle();
    shown.tap("copies");
  }
  shown.tap("undoRestore");
  EXPECT_EQ(taxa(shown), 2U);
}

TEST_F(CopiesAtTheWindow, ACopyThatCouldNotBeMadeIsToldWhereTheBookOpens) {
  const auto folder = store::copies_folder(path);
  std::filesystem::remove_all(folder);
  std::ofstream(folder) << "mine";
  ShownWindow shown(With::no_book, {1280, 800});
  ASSERT_TRUE(shown.session().openBook(QString::fromStdString(path.string())));
  shown.settle();
  EXPECT_EQ(taxa(shown), 2U) << "the book is open all the same";
  ASSERT_NE(shown.find("barFault"), nullptr);
  const auto told = shown.find("barFault")->property("text").toString();
  EXPECT_TRUE(told.contains("copy that was due could not be made")) << told.toStdString();
  EXPECT_TRUE(told.contains(QString::fromStdString(folder.filename().string())))
      << told.toStdString();
  std::filesystem::remove(folder);
  ASSERT_TRUE(shown.session().openBook(QString::fromStdString(path.string())));
  EXPECT_EQ(shown.session().fault(), "") << "it could be made";
}

TEST_F(CopiesAtTheWindow, TheWindowStaysAliveWhileItGoesBack) {
  constexpr int moment = 60; // ms
  ShownWindow shown(With::no_book, {1280, 800});
  auto& session = shown.session();
  ASSERT_TRUE(session.openBook(QString::fromStdString(path.string())));
  shown.set("page", "today");
  shown.tap("copies");
  auto* back = shown.find("restore-1");
  ASSERT_NE(back, nullptr);
  {
    const Held held;
    ASSERT_TRUE(QMetaObject::invokeMethod(back, "clicked"));
    QTest::qWait(moment);
    EXPECT_FALSE(session.is_open());
    ASSERT_NE(session.underway(), "");
    ASSERT_NE(shown.find("lastTold"), nullptr);
    EXPECT_EQ(shown.find("lastTold")->property("text"), session.underway());
    shown.window().grabWindow().save(
        QStringLiteral(CONELINE_PICTURES_FOLDER "/copies-underway.png"));
    shown.type("zam");
    EXPECT_EQ(shown.find("readyField")->property("text"), "zam") << "typed meanwhile";
    EXPECT_FALSE(session.openBook(QString::fromStdString(path.string())));
    EXPECT_TRUE(session.fault().contains("is being put back")) << session.fault().toStdString();
    EXPECT_FALSE(session.makeBook(QString::fromStdString(scratch.at("n.coneline").string()), "N"));
    EXPECT_FALSE(std::filesystem::exists(scratch.at("n.coneline")));
    shown.window().setProperty("page", "look"); // and left
    QTest::qWait(moment);
  }
  shown.settle();
  EXPECT_EQ(session.underway(), "");
  EXPECT_EQ(session.fault(), "");
  EXPECT_TRUE(session.is_open());
  EXPECT_EQ(taxa(shown), 1U);
}

TEST_F(CopiesAtTheWindow, WhyItDidNotGoBackIsKnownWhereverOneIs) {
  ShownWindow shown(With::no_book, {1280, 800});
  auto& session = shown.session();
  ASSERT_TRUE(session.openBook(QString::fromStdString(path.string())));
  shown.settle();
  auto other = store::Book::open(path, store::Access::read);
  ASSERT_TRUE(other->read([](store::Reading& reading) { return reading.balances().size(); }));
  auto copies = std::make_unique<BookCopies>();
  copies->setProperty("session", QVariant::fromValue(&session));
  copies->set_path(QString::fromStdString(path.string()));
  shown.settle();
  const auto copy = copies->rows()->value(1, "file").toString();
  copies->restore(copy);
  shown.settle();
  EXPECT_TRUE(copies->fault().contains("open in another program")) << copies->fault().toStdString();
  EXPECT_EQ(copies->told(), "");
  session.forgetFault();
  copies->restore(copy);
  copies.reset();
  shown.settle();
  EXPECT_TRUE(session.fault().contains("open in another program")) << session.fault().toStdString();
  EXPECT_TRUE(session.is_open());
  EXPECT_EQ(taxa(shown), 2U) << "the book is as it was";
}

TEST_F(CopiesAtTheWindow, APathThatIsChosenMeanwhileStays) {
  ShownWindow shown(With::no_book, {1280, 800});
  const auto book = QString::fromStdString(path.string());
  const auto other = QString::fromStdString(scratch.at("other.coneline").string());
  BookCopies copies;
  copies.setProperty("session", QVariant::fromValue(&shown.session()));
  copies.set_path(book);
  shown.settle();
  ASSERT_GT(copies.rows()->size(), 0);
  {
    const Held held;
    copies.restore(copies.rows()->value(0, "file").toString());
    copies.set_path(other);
  }
  shown.settle();
  EXPECT_EQ(shown.session().path(), book) << "it was put back";
  EXPECT_EQ(copies.path(), other);
  EXPECT_EQ(copies.rows()->size(), 0) << "it has no copies";
  EXPECT_EQ(copies.told(), "") << "nothing was told of this one";
}

TEST_F(CopiesAtTheWindow, BringsBackADamagedBookFromTheStart) {
  std::ofstream(path, std::ios::binary | std::ios::trunc) << "spoilt";
  ShownWindow shown(With::no_book, {1280, 800});
  EXPECT_FALSE(shown.session().openBook(QString::fromStdString(path.string())));
  EXPECT_TRUE(shown.session().fault().contains(".copy")) << shown.session().fault().toStdString();
  shown.settle();
  const auto says_it = [&](QQuickItem* item) {
    return item->property("text").toString() == shown.session().fault();
  };
  EXPECT_EQ(std::ranges::count_if(shown.items(), says_it), 1) << "once";
  shown.tap("way-copy");
  shown.find("spoiltPath")->setProperty("path", QString::fromStdString(path.string()));
  shown.settle();
  take(shown, "copies-start");
  QMetaObject::invokeMethod(shown.find("restore-0"), "clicked");
  shown.settle();
  EXPECT_TRUE(shown.session().is_open());
  EXPECT_EQ(taxa(shown), 1U);
}

} // namespace
} // namespace coneline::window
