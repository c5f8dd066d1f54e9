// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"
#include "core/store/copies.h"
#include "core/store/copy_book.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <algorithm>
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

/// Entries enough for some hundred pages, so that more than one step copies them.
void make_larger(const fs::path& path) {
  auto book = Book::open(path, Access::write);
  ASSERT_TRUE(book);
  ASSERT_TRUE(book->write([](Writing& writing) -> Result<void> {
    for (int i = 0; i < 300; ++i)
      if (auto put = writing.put(book::Taxon{
              {}, "Taxon " + std::to_string(i) + std::string(2000, 'x'), {}, {}, {}, {}, {}, {}});
          !put)
        return refuse(put.error());
    return {};
  }));
}

TEST_F(CopyBook, TellsHowFarItIsUpToTheWhole) {
  make_larger(from_);
  std::vector<double> shares;
  const auto progress = [&](std::size_t done, std::size_t of) {
    shares.push_back(static_cast<double>(done) / static_cast<double>(of));
    return true;
  };
  ASSERT_TRUE(copy_book(from_, to_, progress));
  EXPECT_GT(shares.size(), 2U);
  EXPECT_TRUE(std::ranges::is_sorted(shares));
  EXPECT_GT(shares.front(), 0);
  EXPECT_LT(shares.front(), 0.5);
  EXPECT_EQ(shares.back(), 1);
}

TEST_F(CopyBook, StoppedAnywhereNothingNewStandsThere) {
  make_larger(from_);
  const auto copies = copies_of(from_).size();
  int asked = 0;
  int stop_at = 1;
  const auto progress = [&](std::size_t, std::size_t) { return ++asked != stop_at; };
  const auto begin = [&] {
    asked = 0;
    return stop_at % 2 == 0 ? copy_book(from_, to_, progress)
                            : move_book(from_, to_, nothing_to_do, progress);
  };
  for (auto done = begin(); !done; done = begin()) {
    EXPECT_NE(done.error().what.find("stopped"), std::string::npos) << done.error().text();
    nothing_stands_at(to_);
    EXPECT_EQ(copies_of(from_).size(), copies);
    ++stop_at;
    ASSERT_LT(stop_at, 1000);
  }
  EXPECT_GT(stop_at, 3);
  EXPECT_GT(entries(to_), 0U);
}

TEST_F(CopyBook, HoldsOneMomentWhileOthersWrite) {
  make_larger(from_);
  auto elsewhere = Book::open(from_, Access::write);
  ASSERT_TRUE(elsewhere);
  int written = 0;
  const auto progress = [&](std::size_t, std::size_t) {
    EXPECT_TRUE(elsewhere->write([&](Writing& writing) {
      ++written;
      return writing.put(
          book::Taxon{{}, "Zamia " + std::to_string(written), {}, {}, {}, {}, {}, {}});
    }));
    return true;
  };
  const auto taxa = [](const fs::path& path) {
    auto book = Book::open(path, Access::read);
    return book->read([](Reading& reading) { return reading.registers().taxa.size(); }).value();
  };
  const auto before = taxa(from_);
  const auto copied = copy_book(from_, to_, progress);
  ASSERT_TRUE(copied) << copied.error().text();
  EXPECT_GT(written, 2);
  EXPECT_EQ(taxa(to_), before) << "none of what came while it was copied";
  EXPECT_EQ(taxa(from_), before + static_cast<std::size_t>(written));
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
