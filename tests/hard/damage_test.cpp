// SPDX-License-Identifier: GPL-3.0-or-later
// Books cut short and with flipped bits: found and named, never a crash, the newest good copy
// offered.
#include "tests/core/store/raw.h"
#include "tests/hard/hard.h"

#include <fstream>
#include <random>
#include <sqlite3.h>

namespace coneline::hard {
namespace {

namespace fs = std::filesystem;

enum Ended { found = 10, found_without_copy = 11, unnoticed = 12 };

std::string bytes_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// All that the book holds, row by row.
std::string content_of(const fs::path& path) {
  sqlite3* file = nullptr;
  sqlite3_open_v2(path.c_str(), &file, SQLITE_OPEN_READONLY, nullptr);
  const auto rows = [&](const std::string& sql) {
    std::vector<std::string> found;
    sqlite3_exec(
        file, sql.c_str(),
        [](void* to, int count, char** values, char**) {
          std::string row;
          for (int n = 0; n < count; ++n)
            row += (values[n] != nullptr ? std::string(values[n]) : "NULL") + '\x1f';
          static_cast<std::vector<std::string>*>(to)->push_back(row);
          return 0;
        },
        &found, nullptr);
    return found;
  };
  std::string all;
  for (auto table : rows("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")) {
    table.pop_back();
    for (const auto& row : rows("SELECT * FROM '" + table + "' ORDER BY rowid"))
      all += table + row + '\n';
  }
  sqlite3_close(file);
  return all;
}

class Damage : public testing::Test {
 protected:
  Damage() {
    tests::FirstCone first;
    {
      auto book = tests::make_first_cone(path, first);
      for (int n = 0; n < 200; ++n)
        EXPECT_TRUE(take_in(book, first));
    }
    { auto copied = store::Book::open(path, store::Access::write); }
    whole = bytes_of(path);
    EXPECT_EQ(store::copies_of(path).size(), 1U);
    copy = store::copies_of(path).front().path.string();
  }

  void put(const std::string& bytes) const {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
  }

  /// Opens and proves in a process of its own, so that a crash is seen as one.
  [[nodiscard]] int look() const {
    const int status = ended(begin([&] {
      ::alarm(60);
      auto book = store::Book::open(path, store::Access::read);
      const auto proof = book ? store::prove(*book) : refuse(book.error());
      if (proof && proof->holds())
        return static_cast<int>(unnoticed);
      if (!proof && proof.error().remedy.find(copy) == std::string::npos)
        fmt::print("{}\n", proof.error().text());
      std::fflush(stdout);
      const auto advice = proof ? store::advice_for_damaged(path) : proof.error().remedy;
      return static_cast<int>(advice.find(copy) != std::string::npos ? found : found_without_copy);
    }));
    EXPECT_TRUE(WIFEXITED(status)) << "it crashed, signal " << WTERMSIG(status);
    return WEXITSTATUS(status);
  }

  tests::Scratch scratch;
  fs::path path = scratch.at("t.coneline");
  std::string whole;
  std::string copy;
  std::mt19937 random{20260103};
};

TEST_F(Damage, EveryTruncationIsFound) {
  const int cuts = times(25, 500);
  int without_copy = 0;
  std::uniform_int_distribution<std::size_t> length(0, whole.size() - 1);
  for (int n = 0; n < cuts; ++n) {
    const auto kept = length(random);
    put(whole.substr(0, kept));
    const int said = look();
    ASSERT_NE(said, unnoticed) << "cut to " << kept;
    if (said != found)
      ++without_copy;
    EXPECT_EQ(said, found) << "cut to " << kept << ": the copy was not offered";
  }
  fmt::print("{} truncations: all found, {} without the copy offered\n", cuts, without_copy);
}

TEST_F(Damage, AFlippedBitIsFoundOrTouchesNoEntry) {
  const int flips = times(25, 500);
  std::uniform_int_distribution<std::size_t> place(0, whole.size() * 8 - 1);
  const auto content = content_of(path);
  int spotted = 0;
  int harmless = 0;
  int in_registers = 0;
  for (int n = 0; n < flips; ++n) {
    const auto bit = place(random);
    auto bytes = whole;
    bytes[bit / 8] =
        static_cast<char>(static_cast<unsigned char>(bytes[bit / 8]) ^ (1U << (bit % 8)));
    put(bytes);
    const int said = look();
    EXPECT_TRUE(said == found || said == unnoticed)
        << "bit " << bit << ": no copy was offered, " << said;
    if (said != unnoticed) {
      ++spotted;
      continue;
    }
    // What the proof lets pass is room that holds nothing, or a register's row, which may be
    // changed.
    ASSERT_EQ(proven_entries(path), 201) << "bit " << bit;
    ++(content_of(path) == content ? harmless : in_registers);
  }
  EXPECT_GT(spotted, 0);
  fmt::print(
      "{} flipped bits: {} found; {} in room that holds nothing; {} changed a register's row "
      "and were not found\n",
      flips, spotted, harmless, in_registers);
}

} // namespace
} // namespace coneline::hard
