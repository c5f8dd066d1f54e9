// SPDX-License-Identifier: GPL-3.0-or-later
// Going back to a copy and undoing it, at the real window.
#include "tests/core/store/first_cone.h"
#include "tests/qml/shown_window.h"

#include <QDir>
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

TEST_F(CopiesAtTheWindow, BringsBackADamagedBookFromTheStart) {
  std::ofstream(path, std::ios::binary | std::ios::trunc) << "spoilt";
  ShownWindow shown(With::no_book, {1280, 800});
  EXPECT_FALSE(shown.session().openBook(QString::fromStdString(path.string())));
  EXPECT_TRUE(shown.session().fault().contains(".copy")) << shown.session().fault().toStdString();
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
