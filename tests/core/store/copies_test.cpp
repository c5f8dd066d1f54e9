// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copies.h"
#include "core/store/proof.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sys/wait.h>
#include <unistd.h>

namespace coneline::store {
namespace {

namespace fs = std::filesystem;

class Copies : public testing::Test {
 protected:
  Copies() { tests::make_first_cone(path, first); }

  [[nodiscard]] std::vector<Copy> of_kind(Copy::Kind kind) const {
    auto copies = copies_of(path);
    std::erase_if(copies, [&](const Copy& copy) { return copy.kind != kind; });
    return copies;
  }
  [[nodiscard]] std::size_t count() const { return of_kind(Copy::Kind::copy).size(); }
  void open() const {
    auto book = Book::open(path, Access::write);
    ASSERT_TRUE(book) << book.error().text();
    EXPECT_FALSE(book->not_copied()) << book->not_copied()->text();
  }
  void add_taxon(const std::string& name) const {
    auto book = Book::open(path, Access::write);
    ASSERT_TRUE(book) << book.error().text();
    ASSERT_TRUE(book->write([&](Writing& writing) {
      return writing.put(book::Taxon{{}, name, {}, {}, {}, {}, {}, {}});
    }));
  }
  [[nodiscard]] std::size_t taxa() const {
    auto book = Book::open(path, Access::read);
    return book->read([](Reading& reading) { return reading.registers().taxa.size(); }).value();
  }
  /// Zeroes in the middle of every page but the first.
  void damage() const {
    std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
    const auto size = fs::file_size(path);
    for (std::uintmax_t at = 4096; at < size; at += 4096) {
      file.seekp(static_cast<std::streamoff>(at));
      file.write("\0\0\0\0\0\0\0\0", 8);
    }
  }

  tests::Scratch scratch;
  fs::path path = scratch.at("a 'book' of \"cones\".coneline");
  tests::FirstCone first;
};

TEST_F(Copies, AreMadeAtOpeningWhenTheBookChanged) {
  EXPECT_EQ(count(), 0U) << "a new book has nothing to lose";
  open();
  EXPECT_EQ(count(), 1U);
  open();
  EXPECT_EQ(count(), 1U) << "nothing changed";
  add_taxon("Zamia furfuracea");
  EXPECT_EQ(count(), 1U) << "the change came after the opening";
  open();
  ASSERT_EQ(count(), 2U);
  const auto state = look_into(of_kind(Copy::Kind::copy).front());
  EXPECT_TRUE(state.good) << state.fault;
  EXPECT_EQ(state.entries, 1);
  EXPECT_EQ(state.last_entry, "2026-02-01");
}

TEST_F(Copies, WhatAStoppedProgramLeftIsTakenAwayAndWhatARunningOneWritesIsNot) {
  open();
  const pid_t ended = ::fork();
  if (ended == 0)
    ::_exit(0);
  ::waitpid(ended, nullptr, 0);
  const auto left = copies_folder(path) / fmt::format("000009-x.copy.{}.unfinished", ended);
  const auto written =
      copies_folder(path) / fmt::format("000008-x.copy.{}.unfinished", ::getppid());
  const auto somebodys = copies_folder(path) / "notes.unfinished";
  for (const auto& file : {left, written, somebodys})
    std::ofstream(file) << "half";
  add_taxon("Zamia furfuracea");
  open();
  EXPECT_FALSE(fs::exists(left));
  EXPECT_TRUE(fs::exists(written));
  EXPECT_TRUE(fs::exists(somebodys));
}

TEST_F(Copies, AreTheirOwnersAlone) {
  open();
  const auto others = fs::perms::group_all | fs::perms::others_all;
  EXPECT_EQ(fs::status(copies_folder(path)).permissions() & others, fs::perms::none);
  EXPECT_EQ(fs::status(copies_of(path).front().path).permissions() & others, fs::perms::none);
}

TEST_F(Copies, ReadingMakesNoneAndLeavesNothingBeside) {
  {
    auto book = Book::open(path, Access::read);
    ASSERT_TRUE(book->read([](Reading& reading) { return reading.balances().size(); }));
  }
  EXPECT_FALSE(fs::exists(path.string() + "-wal"));
  EXPECT_FALSE(fs::exists(path.string() + "-shm"));
  EXPECT_FALSE(fs::exists(copies_folder(path)));
}

TEST_F(Copies, AClockSetBackNeitherSkipsNorReordersOne) {
  open();
  add_taxon("Zamia furfuracea");
  fs::last_write_time(path, fs::file_time_type::clock::now() - std::chrono::hours(24 * 4000));
  open();
  const auto copies = of_kind(Copy::Kind::copy);
  ASSERT_EQ(copies.size(), 2U);
  EXPECT_LT(copies.at(0).changed, copies.at(1).changed) << "the clock said so";
  EXPECT_GT(copies.at(0).number, copies.at(1).number) << "the newest all the same";
}

TEST_F(Copies, AreThinnedByTheStatedRule) {
  const std::chrono::sys_time<std::chrono::nanoseconds> morning =
      std::chrono::sys_days(std::chrono::year{2026} / 1 / 1) + std::chrono::hours(6);
  const auto start = std::chrono::file_clock::from_sys(morning);
  // Four changes a day for sixty days.
  for (int n = 0; n < 240; ++n) {
    fs::last_write_time(path, start + std::chrono::hours(6 * n));
    open();
  }
  // The ten newest span four days; ten more days one each; January has one of its own.
  EXPECT_EQ(count(), 10U + 10U + 1U);
  EXPECT_EQ(of_kind(Copy::Kind::copy).back().changed.substr(0, 7), "2026-01");
}

TEST_F(Copies, ADamagedBookNamesTheNewestGoodOne) {
  open();
  add_taxon("Zamia furfuracea");
  open();
  const auto good = of_kind(Copy::Kind::copy).at(1).path;
  std::ofstream(of_kind(Copy::Kind::copy).at(0).path) << "spoilt";
  damage();
  const auto opened = Book::open(path, Access::write);
  ASSERT_FALSE(opened);
  EXPECT_NE(opened.error().text().find(good.string()), std::string::npos) << opened.error().text();
  EXPECT_EQ(newest_good_copy(path)->path, good);
}

TEST_F(Copies, ARestoreIsUndoneAndThatToo) {
  open();
  add_taxon("Zamia furfuracea");
  const auto restored = restore(path, std::nullopt);
  ASSERT_TRUE(restored) << restored.error().text();
  ASSERT_TRUE(restored->replaced);
  EXPECT_EQ(taxa(), 1U);
  ASSERT_TRUE(undo_restore(path));
  EXPECT_EQ(taxa(), 2U);
  ASSERT_TRUE(undo_restore(path));
  EXPECT_EQ(taxa(), 1U);
  add_taxon("Encephalartos ferox");
  EXPECT_EQ(taxa(), 2U);
}

TEST_F(Copies, ARestoreTellsHowFarItIsUpToTheWhole) {
  open();
  add_taxon("Zamia furfuracea");
  const auto copy = of_kind(Copy::Kind::copy).back().path;
  for (const bool undone : {false, true}) {
    std::vector<double> shares;
    const auto progress = [&](std::size_t done, std::size_t of) {
      shares.push_back(static_cast<double>(done) / static_cast<double>(of));
      return true;
    };
    ASSERT_TRUE(undone ? undo_restore(path, progress) : restore(path, copy, progress));
    ASSERT_FALSE(shares.empty());
    EXPECT_TRUE(std::ranges::is_sorted(shares));
    EXPECT_EQ(shares.back(), 1);
  }
}

TEST_F(Copies, ARestoreThatIsStoppedLeavesTheBookAsItWas) {
  open();
  add_taxon("Zamia furfuracea");
  const auto copy = of_kind(Copy::Kind::copy).back().path;
  int asked = 0;
  int stop_at = 1;
  const auto progress = [&](std::size_t, std::size_t) { return ++asked != stop_at; };
  for (auto done = restore(path, copy, progress); !done; done = restore(path, copy, progress)) {
    EXPECT_NE(done.error().what.find("stopped"), std::string::npos) << done.error().text();
    EXPECT_EQ(asked, stop_at) << "once is enough";
    EXPECT_EQ(taxa(), 2U);
    EXPECT_TRUE(of_kind(Copy::Kind::replaced).empty());
    EXPECT_FALSE(fs::exists(path.string() + ".coming"));
    asked = 0;
    ++stop_at;
    ASSERT_LT(stop_at, 1000);
  }
  EXPECT_GT(stop_at, 3) << "while it is looked into and while it is copied";
  EXPECT_EQ(asked, stop_at - 1) << "never asked once the book is replaced";
  EXPECT_EQ(taxa(), 1U);
}

TEST_F(Copies, ADamagedBookIsRestoredAndKept) {
  open();
  damage();
  const auto spoilt = fs::file_size(path);
  const auto restored = restore(path, std::nullopt);
  ASSERT_TRUE(restored) << restored.error().text();
  EXPECT_EQ(fs::file_size(*restored->replaced), spoilt);
  auto book = Book::open(path, Access::write);
  ASSERT_TRUE(book) << book.error().text();
  EXPECT_TRUE(prove(*book)->holds());
}

TEST_F(Copies, ALostBookIsRestored) {
  open();
  fs::remove(path);
  ASSERT_TRUE(restore(path, std::nullopt));
  EXPECT_EQ(taxa(), 1U);
}

TEST_F(Copies, ABookThatIsOpenElsewhereIsNotReplaced) {
  open();
  auto other = Book::open(path, Access::write);
  ASSERT_TRUE(other->read([](Reading& reading) { return reading.balances().size(); }));
  const auto restored = restore(path, std::nullopt);
  ASSERT_FALSE(restored);
  EXPECT_NE(restored.error().what.find("open in another program"), std::string::npos);
  EXPECT_TRUE(of_kind(Copy::Kind::replaced).empty());
}

TEST_F(Copies, ABadOrMissingCopyIsRefused) {
  open();
  const auto bad = scratch.at("bad.copy");
  std::ofstream(bad) << "spoilt";
  EXPECT_FALSE(restore(path, bad));
  EXPECT_FALSE(restore(path, scratch.at("none.copy")));
  EXPECT_FALSE(restore(path, path));
  EXPECT_FALSE(undo_restore(path));
  EXPECT_EQ(taxa(), 1U);
}

TEST_F(Copies, AnAlteredCopyIsNotGood) {
  open();
  const auto copy = of_kind(Copy::Kind::copy).front();
  ASSERT_EQ(tests::run_raw(copy.path, "DROP TRIGGER movement_stays"), "");
  EXPECT_FALSE(look_into(copy).good);
  EXPECT_FALSE(restore(path, copy.path));
}

TEST_F(Copies, AFolderThatIsAFileHindersNoOpening) {
  std::ofstream(copies_folder(path)) << "mine";
  auto book = Book::open(path, Access::write);
  ASSERT_TRUE(book) << book.error().text();
  ASSERT_TRUE(book->not_copied());
  EXPECT_FALSE(make_due_copy(path)) << "what is asked for alone fails where it cannot be done";
  EXPECT_TRUE(book->write([](Writing& writing) {
    return writing.put(book::Taxon{{}, "Zamia furfuracea", {}, {}, {}, {}, {}, {}});
  }));
}

TEST_F(Copies, TextThatIsNoUtf8IsRefusedAtTheBook) {
  auto book = Book::open(path, Access::write);
  const auto put = book->write([](Writing& writing) {
    return writing.put(book::Taxon{{}, "Zamia \xff\xfe", {}, {}, {}, {}, {}, {}});
  });
  ASSERT_FALSE(put);
  EXPECT_NE(put.error().what.find("UTF-8"), std::string::npos);
  EXPECT_EQ(put.error().blame, Blame::input);
}

} // namespace
} // namespace coneline::store
