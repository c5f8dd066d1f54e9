// SPDX-License-Identifier: GPL-3.0-or-later
// Copies beside things that are none, copies that are not good, and disks and names that hinder.
#include "core/store/copies.h"
#include "core/store/copy_book.h"
#include "core/store/copying.h"
#include "core/store/engine/sqlite.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sys/wait.h>
#include <unistd.h>

namespace coneline::store {
namespace {

namespace fs = std::filesystem;

std::string bytes(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

class CopyEdges : public testing::Test {
 protected:
  CopyEdges() { tests::make_first_cone(path, first); }

  /// Opens to write, which copies what changed.
  void open() const { ASSERT_TRUE(Book::open(path, Access::write)); }
  void add_taxon(const std::string& name) const {
    auto book = Book::open(path, Access::write).value();
    ASSERT_TRUE(book.write([&](Writing& writing) {
      return writing.put(book::Taxon{{}, name, {}, {}, {}, {}, {}, {}});
    }));
  }
  static std::size_t taxa(const fs::path& at) {
    auto book = Book::open(at, Access::read);
    return book ? book->read([](Reading& reading) { return reading.registers().taxa.size(); })
                      .value()
                : 0;
  }
  static CopyState look(const fs::path& at) {
    Copy copy;
    copy.path = at;
    return look_into(copy);
  }

  tests::Scratch scratch;
  fs::path path = scratch.at("book.coneline");
  fs::path to = scratch.at("moved.coneline");
  tests::FirstCone first;
};

TEST_F(CopyEdges, FoldersAndOtherFilesAreNoCopies) {
  open();
  ASSERT_EQ(copies_of(path).size(), 1U);
  fs::create_directory(copies_folder(path) / "000009-x.copy");
  fs::create_directory(path.string() + ".version-2.copy");
  std::ofstream(path.string() + ".version-3.txt") << "mine";
  std::ofstream(copies_folder(path) / "notes.txt") << "mine";
  EXPECT_EQ(copies_of(path).size(), 1U);
  EXPECT_EQ(next_number(path), 2);
}

TEST_F(CopyEdges, CopiesWithoutANumberAreInTheOrderOfTheirTimesAndNames) {
  const auto make = [&](const char* end, int hour) {
    const fs::path copy = path.string() + end;
    std::ofstream(copy) << "old";
    fs::last_write_time(copy, fs::file_time_type::clock::now() + std::chrono::hours(hour));
    return copy;
  };
  const auto older = make(".version-2.copy", -5);
  const auto newer = make(".version-1.copy", -2);
  const auto same = make(".version-3.copy", -9);
  fs::last_write_time(same, fs::last_write_time(older));
  const auto copies = copies_of(path);
  ASSERT_EQ(copies.size(), 3U);
  EXPECT_EQ(copies[0].path, newer);
  EXPECT_EQ(copies[1].path, same); // the later name of two of the same time
  EXPECT_EQ(copies[2].path, older);
}

TEST_F(CopyEdges, WhatIsWrongWithACopyIsSaid) {
  EXPECT_EQ(look(scratch.at("none")).fault.find("there is no book"), 0U);
  const auto copy = scratch.at("x.copy");
  fs::copy_file(path, copy);
  EXPECT_TRUE(look(copy).good);
  ASSERT_EQ(tests::run_raw(copy, "PRAGMA user_version = 999"), "");
  EXPECT_EQ(look(copy).fault, "a newer program wrote it");
  fs::copy_file(path, copy, fs::copy_options::overwrite_existing);
  ASSERT_EQ(tests::run_raw(copy, "PRAGMA foreign_keys = OFF; DROP TRIGGER lot_stays; DELETE FROM "
                                 "cone"),
            "");
  EXPECT_NE(look(copy).fault.find("that is missing"), std::string::npos);
  EXPECT_FALSE(look(copy).good);
}

// A copy of an older version is whole, and it is proven once it is brought up to date.
TEST_F(CopyEdges, AnOlderCopyIsGoodWhereItIsWhole) {
  const auto copy = scratch.at("x.copy");
  fs::copy_file(path, copy);
  ASSERT_EQ(tests::run_raw(copy, "PRAGMA user_version = 1; DROP TRIGGER movement_stays"), "");
  const auto state = look(copy);
  EXPECT_TRUE(state.good);
  EXPECT_EQ(state.entries, 1);
  EXPECT_EQ(state.last_entry, "2026-02-01");
}

TEST_F(CopyEdges, ABareNameIsOneFromTheList) {
  open();
  add_taxon("Zamia furfuracea");
  const auto copy = copies_of(path).front().path;
  EXPECT_EQ(restore(path, copy.filename())->from.path, copy);
  EXPECT_EQ(taxa(path), 1U);
  const auto missing = restore(path, fs::path("000042-x.copy"));
  ASSERT_FALSE(missing);
  EXPECT_NE(missing.error().what.find((copies_folder(path) / "000042-x.copy").string()),
            std::string::npos);
}

TEST_F(CopyEdges, WithoutAGoodCopyNothingIsRestored) {
  const auto none = restore(path, std::nullopt);
  ASSERT_FALSE(none);
  EXPECT_NE(none.error().what.find("has no good copy"), std::string::npos);
  EXPECT_NE(advice_for_damaged(path).find("No good copy stands beside it"), std::string::npos);
  fs::create_directory(copies_folder(path));
  fs::copy_file(path, copies_folder(path) / "000001-x.replaced");
  EXPECT_FALSE(newest_good_copy(path)) << "what a restore replaced is no copy";
}

TEST_F(CopyEdges, WhereTheOldBookCannotBeKeptItStays) {
  const auto copy = scratch.at("x.copy");
  fs::copy_file(path, copy);
  add_taxon("Zamia furfuracea");
  fs::remove_all(copies_folder(path));
  std::ofstream(copies_folder(path)) << "mine"; // a file where the folder would be
  EXPECT_FALSE(restore(path, copy));
  EXPECT_EQ(taxa(path), 2U);
  EXPECT_FALSE(fs::exists(path.string() + ".coming"));
  fs::remove(copies_folder(path));
  fs::create_directories(path.string() + ".coming/mine");
  EXPECT_FALSE(restore(path, copy));
  EXPECT_EQ(taxa(path), 2U);
  EXPECT_TRUE(fs::exists(path.string() + ".coming/mine"));
}

// What a program that was killed had written stands in the log; both go aside and come back.
TEST_F(CopyEdges, TheLogOfABookThatIsReplacedComesBackWithIt) {
  open();
  const auto good = copies_of(path).front().path;
  std::ofstream(path, std::ios::binary) << "spoilt";
  std::ofstream(path.string() + "-wal", std::ios::binary) << "the log";
  const auto restored = restore(path, good);
  ASSERT_TRUE(restored) << restored.error().text();
  EXPECT_EQ(bytes(restored->replaced->string() + "-wal"), "the log");
  EXPECT_FALSE(fs::exists(path.string() + "-wal"));
  EXPECT_EQ(taxa(path), 1U);
  ASSERT_TRUE(undo_restore(path));
  EXPECT_EQ(bytes(path), "spoilt");
  EXPECT_EQ(bytes(path.string() + "-wal"), "the log");
}

// Above 32 MB a copy is made once in fifteen minutes.
TEST_F(CopyEdges, ALargeBookIsNotCopiedAtEveryOpening) {
  ASSERT_EQ(tests::run_raw(path, "UPDATE plant SET note = printf('%.*c', 34000000, 'x')"), "");
  open();
  ASSERT_EQ(copies_of(path).size(), 1U);
  add_taxon("Zamia furfuracea");
  open();
  EXPECT_EQ(copies_of(path).size(), 1U);
  EXPECT_EQ(taxa(path), 2U);
}

TEST_F(CopyEdges, FilesThatCannotBeMadeOrReadAreNamed) {
  const auto here = scratch.at("here");
  std::ofstream(here) << "x";
  const auto said = [](const Result<void>& done) { return done ? "done" : done.error().what; };
  EXPECT_NE(said(give_name(here, path)).find("cannot be made"), std::string::npos);
  EXPECT_NE(said(give_name(scratch.at("none"), to)).find("cannot be made"), std::string::npos);
  EXPECT_EQ(said(give_name(here, to)), "done");
  EXPECT_NE(said(copy_bytes(scratch.at("none"), to)).find("none' cannot be opened"),
            std::string::npos);
  // A folder opens but cannot be read: what is read is to blame, not what is written.
  EXPECT_NE(said(copy_bytes(scratch.at("here").parent_path(), to)).find("cannot be read"),
            std::string::npos);
  EXPECT_FALSE(fs::exists(to));
  EXPECT_NE(said(has_folder(scratch.at("no/book"))).find("there is no folder"), std::string::npos);
  EXPECT_EQ(said(has_folder(path)), "done");
  EXPECT_NE(said(settle(scratch.at("none"))).find("cannot be opened"), std::string::npos);
  EXPECT_NE(said(make_copies_folder(scratch.at("no/book"))).find("cannot be made"),
            std::string::npos);
  EXPECT_EQ(said(make_copies_folder(path)), "done");
  EXPECT_EQ(said(make_copies_folder(path)), "done"); // it is there
}

TEST_F(CopyEdges, OnlyWhatAProgramThatEndedLeftIsTakenAway) {
  const pid_t ended = ::fork();
  if (ended == 0)
    ::_exit(0);
  ASSERT_EQ(::waitpid(ended, nullptr, 0), ended);
  const auto left = scratch.at(fmt::format("b.{}.unfinished", ended));
  const auto others = scratch.at(fmt::format("other.{}.unfinished", ended));
  for (const auto& file : {left, others})
    std::ofstream(file) << "half";
  for (const auto* name : {"b.0.unfinished", "b.-4.unfinished", "b.99999999999.unfinished",
                           "b.x.unfinished", "b.1.unfinished", "b.77", "other.0.unfinished"})
    std::ofstream(scratch.at(name)) << "half";
  const auto mine = unfinished_name(scratch.at("b"));
  std::ofstream(mine) << "half";
  const auto files = [&] {
    return std::distance(fs::directory_iterator(path.parent_path()), fs::directory_iterator());
  };
  const auto before = files();
  remove_abandoned(path.parent_path(), "b");
  EXPECT_FALSE(fs::exists(left));
  EXPECT_TRUE(fs::exists(others)) << "another file's, though its program ended too";
  EXPECT_EQ(files(), before - 1);
  remove_unfinished(mine);
  EXPECT_EQ(files(), before - 2);
}

TEST_F(CopyEdges, ABookMovesToAnotherDisk) {
  open();
  const auto copies = copies_of(path).size();
  std::string name = (fs::temp_directory_path() / "coneline-XXXXXX").string();
  const fs::path folder = ::mkdtemp(name.data());
  const auto there = folder / "book.coneline";
  const auto moved = move_book(path, there, [] { return Result<void>(); });
  EXPECT_TRUE(moved) << moved.error().text();
  EXPECT_EQ(taxa(there), 1U);
  EXPECT_EQ(copies_of(there).size(), copies);
  EXPECT_TRUE(newest_good_copy(there));
  EXPECT_FALSE(fs::exists(path));
  EXPECT_FALSE(fs::exists(copies_folder(path)));
  fs::remove_all(folder);
}

TEST_F(CopyEdges, ACopyThatCannotBeTakenAlongKeepsTheBookWhereItIs) {
  open();
  std::ofstream(path.string() + ".version-3.copy") << "old";
  const auto before = copies_of(path).size();
  fs::create_directory(to.string() + ".version-3.copy");
  const auto moved = move_book(path, to, [] { return Result<void>(); });
  ASSERT_FALSE(moved);
  EXPECT_NE(moved.error().what.find("cannot be taken along: its new name is taken"),
            std::string::npos);
  EXPECT_FALSE(fs::exists(to));
  EXPECT_EQ(copies_of(path).size(), before);
  EXPECT_EQ(taxa(path), 1U);
}

TEST_F(CopyEdges, ACopyTakesItsLogAlong) {
  open();
  const auto copy = copies_of(path).front().path;
  std::ofstream(copy.string() + "-wal") << "the log";
  const auto moved = move_book(path, to, [] { return Result<void>(); });
  ASSERT_TRUE(moved) << moved.error().text();
  const auto copies = copies_of(to);
  ASSERT_EQ(copies.size(), 1U);
  EXPECT_EQ(copies[0].path.filename(), copy.filename());
  EXPECT_EQ(bytes(copies[0].path.string() + "-wal"), "the log");
}

TEST_F(CopyEdges, WhereNothingCanBeWrittenTheBookStays) {
  EXPECT_FALSE(copy_book(scratch.at("none"), to));
  EXPECT_FALSE(copy_book(path, scratch.at("no/such/folder")));
  EXPECT_FALSE(move_book(path, scratch.at("no/such/folder"), [] { return Result<void>(); }));
  EXPECT_FALSE(move_book(scratch.at("none"), to, [] { return Result<void>(); }));
  EXPECT_FALSE(fs::exists(to));
  EXPECT_EQ(taxa(path), 1U);
  EXPECT_TRUE(nobody_has_it_open(scratch.at("none")));
  EXPECT_TRUE(nobody_has_it_open(path));
}

} // namespace
} // namespace coneline::store
