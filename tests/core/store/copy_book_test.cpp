// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"
#include "core/store/copies.h"
#include "core/store/copy_book.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::store {
namespace {

namespace fs = std::filesystem;

constexpr auto nothing_to_do = [] { return Result<void>(); };

class CopyBook : public testing::Test {
 protected:
  void SetUp() override {
    tests::FirstCone made;
    tests::make_first_cone(from_, made);
    // The second opening to write copies what the first one wrote.
    ASSERT_TRUE(Book::open(from_, Access::write));
    ASSERT_FALSE(copies_of(from_).empty());
  }
  static std::size_t entries(const fs::path& path) {
    auto book = Book::open(path, Access::read);
    return book ? book->read([](Reading& reading) { return reading.entries().size(); }).value() : 0;
  }
  void nothing_unfinished() {
    for (const auto& file : fs::directory_iterator(to_.parent_path()))
      EXPECT_EQ(file.path().string().find(".unfinished"), std::string::npos) << file.path();
  }
  void nothing_stands_at(const fs::path& path) {
    for (const auto* end : {"", ".copies"})
      EXPECT_FALSE(fs::exists(path.string() + end)) << end;
    nothing_unfinished();
  }

  tests::Scratch scratch_;
  fs::path from_ = scratch_.at("book.coneline");
  fs::path to_ = scratch_.at("elsewhere.coneline");
};

TEST_F(CopyBook, IsWholeWithTheRightsOfTheOld) {
  fs::permissions(from_, fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
  const auto copied = copy_book(from_, to_);
  ASSERT_TRUE(copied) << copied.error().text();
  EXPECT_EQ(entries(to_), entries(from_));
  EXPECT_EQ(fs::status(to_).permissions(), fs::status(from_).permissions());
  nothing_unfinished();
}

TEST_F(CopyBook, WritesOverNothing) {
  std::ofstream(to_) << "somebody's";
  EXPECT_FALSE(copy_book(from_, to_));
  std::string said;
  std::getline(std::ifstream(to_) >> std::ws, said);
  EXPECT_EQ(said, "somebody's");
  const auto dead = scratch_.at("dead link");
  fs::create_symlink(scratch_.at("nowhere"), dead);
  EXPECT_FALSE(copy_book(from_, dead));
  EXPECT_FALSE(copy_book(from_, ""));
}

TEST_F(CopyBook, KeepsOffTheCopiesOfAnotherBook) {
  ASSERT_TRUE(copy_book(from_, to_));
  ASSERT_TRUE(Book::open(to_, Access::write));
  ASSERT_FALSE(copies_of(to_).empty());
  fs::remove(to_);
  const auto copied = copy_book(from_, to_);
  ASSERT_FALSE(copied) << "a restore there would bring back the other book";
  EXPECT_NE(copied.error().text().find("copies of another book"), std::string::npos);
}

TEST_F(CopyBook, MovesWithItsCopies) {
  const auto held = entries(from_);
  const auto copies = copies_of(from_).size();
  std::ofstream(from_.string() + ".version-3.copy") << "an old one";
  const auto moved = move_book(from_, to_, nothing_to_do);
  ASSERT_TRUE(moved) << moved.error().text();
  EXPECT_EQ(entries(to_), held);
  EXPECT_EQ(copies_of(to_).size(), copies + 1);
  EXPECT_TRUE(newest_good_copy(to_));
  nothing_stands_at(from_);
  EXPECT_FALSE(fs::exists(from_.string() + ".version-3.copy"));
}

TEST_F(CopyBook, StaysWhileAnotherProgramHasItOpen) {
  const auto copies = copies_of(from_).size();
  auto elsewhere = Book::open(from_, Access::write);
  ASSERT_TRUE(elsewhere);
  EXPECT_FALSE(nobody_has_it_open(from_));
  EXPECT_FALSE(move_book(from_, to_, nothing_to_do));
  EXPECT_GT(entries(from_), 0U);
  EXPECT_EQ(copies_of(from_).size(), copies);
}

TEST_F(CopyBook, StaysWhenTheNewPlaceCannotBeUsed) {
  const auto moved = move_book(from_, to_, [] { return refuse(fault("it cannot be used")); });
  ASSERT_FALSE(moved);
  EXPECT_EQ(moved.error().what, "it cannot be used");
  EXPECT_FALSE(copies_of(from_).empty());
  nothing_stands_at(to_);
  EXPECT_GT(entries(from_), 0U);
  EXPECT_TRUE(move_book(from_, to_, nothing_to_do)) << "the same place can be tried again";
  EXPECT_GT(entries(to_), 0U);
}

TEST_F(CopyBook, StaysWhenAnythingWasWrittenMeanwhile) {
  const auto moved = move_book(from_, to_, [&] {
    auto elsewhere = Book::open(from_, Access::write);
    return elsewhere->write([](Writing& writing) {
      return writing.put(book::Taxon{{}, "Zamia furfuracea", {}, {}, {}, {}, {}, {}})
          .map([](book::TaxonId) {});
    });
  });
  ASSERT_FALSE(moved);
  EXPECT_NE(moved.error().text().find("was written to while it was moved"), std::string::npos)
      << moved.error().text();
  auto book = Book::open(from_, Access::read);
  ASSERT_TRUE(book);
  EXPECT_EQ(book->read([](Reading& reading) { return reading.registers().taxa.size(); }), 2U);
}

} // namespace
} // namespace coneline::store
