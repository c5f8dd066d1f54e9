// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are read before the engine sees them, and what the engine says in a person's words.
#include "core/store/engine/sqlite.h"
#include "core/store/proof.h"
#include "core/store/statement.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::store {
namespace {

namespace fs = std::filesystem;

class Engine : public testing::Test {
 protected:
  Engine() { tests::make_first_cone(path, first); }

  void put_byte(std::streamoff at, char byte) const {
    std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
    file.seekp(at);
    file.put(byte);
  }
  void cut_in_half() const { fs::resize_file(path, fs::file_size(path) / 2); }
  std::string opened() const {
    const auto book = Book::open(path, Access::read);
    return book ? "opened" : book.error().what;
  }
  /// What a person is told of the first statement that fails.
  Fault explained(const fs::path& file, const std::vector<std::string>& statements) {
    try {
      soci::session session;
      engine::open(session, file, engine::Mode::write);
      for (const auto& sql : statements)
        Statement(session, sql).each([](const Row& row) { static_cast<void>(row); });
    } catch (const std::exception& failed) {
      full_ = engine::is_of_the_disk(failed);
      return engine::explain(failed, file);
    }
    return fault("nothing failed");
  }

  tests::Scratch scratch;
  fs::path path = scratch.at("t.coneline");
  tests::FirstCone first;
  bool full_ = false;
};

TEST_F(Engine, ABookOfTheLargestPagesIsReadAndItsLengthIsKnown) {
  ASSERT_EQ(tests::run_raw(path, "PRAGMA journal_mode = DELETE; PRAGMA page_size = 65536; VACUUM"),
            "");
  EXPECT_EQ(opened(), "opened");
  auto book = Book::open(path, Access::read).value();
  EXPECT_EQ(prove(book)->seeds_in, 500);
  const auto whole = fs::file_size(path);
  ASSERT_EQ(whole % 65536, 0U);
  cut_in_half();
  EXPECT_NE(opened().find(fmt::format("is cut short: {} of {} bytes", whole / 2, whole)),
            std::string::npos)
      << opened();
}

// SQLite file format, 1.3: the length counts only where the two change counters agree.
TEST_F(Engine, WhereTheHeaderPromisesNothingTheFileIsStillFoundDamaged) {
  ASSERT_EQ(tests::run_raw(path, "PRAGMA journal_mode = DELETE"), "");
  put_byte(95, 'x');
  cut_in_half();
  EXPECT_EQ(opened().find("cut short"), std::string::npos);
  auto book = Book::open(path, Access::read);
  const auto proof = book ? prove(*book) : refuse(book.error());
  EXPECT_TRUE(!proof || !proof->holds());
}

TEST_F(Engine, AFileOfAnotherProgramIsToldByItsMark) {
  ASSERT_EQ(tests::run_raw(path, "PRAGMA application_id = 7"), "");
  EXPECT_NE(opened().find("is no book of Coneline"), std::string::npos);
}

TEST_F(Engine, AFullDiskIsSaidSo) {
  const auto full = explained(
      path, {"PRAGMA max_page_count = 1", "UPDATE plant SET note = printf('%.*c', 3000000, 'x')"});
  EXPECT_EQ(full.what, "the disk with '" + path.string() + "' is full");
  EXPECT_EQ(full.remedy, "Make room, then do it again. Nothing was written.");
  EXPECT_TRUE(full_);
}

TEST_F(Engine, AFileThatIsNotThereCannotBeOpened) {
  const auto missing = explained(scratch.at("none/t.coneline"), {"SELECT 1"});
  EXPECT_NE(missing.what.find("cannot be opened"), std::string::npos) << missing.what;
  EXPECT_FALSE(full_);
}

TEST_F(Engine, AFileThatIsNoneIsDamagedAndTheNewestGoodCopyIsNamed) {
  ASSERT_TRUE(Book::open(path, Access::write)); // copies it
  std::ofstream(path, std::ios::binary) << std::string(4096, 'x');
  const auto damaged = explained(path, {"SELECT * FROM plant"});
  EXPECT_NE(damaged.what.find("is damaged"), std::string::npos) << damaged.what;
  EXPECT_NE(damaged.remedy.find("The newest good copy is '"), std::string::npos) << damaged.remedy;
  EXPECT_EQ(damaged.blame, Blame::book);
}

TEST_F(Engine, AStatementThatIsNoneIsTheProgramsFault) {
  const auto wrong = explained(path, {"SELEC 1"});
  EXPECT_EQ(wrong.blame, Blame::program);
  EXPECT_EQ(wrong.remedy, "Nothing was written.");
}

TEST_F(Engine, ALedgerThatRefusesSaysThatNothingWasWritten) {
  const auto refused = explained(path, {"DELETE FROM movement"});
  EXPECT_EQ(refused.what.find("the book refused it:"), 0U) << refused.what;
}

} // namespace
} // namespace coneline::store
