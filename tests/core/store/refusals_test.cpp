// SPDX-License-Identifier: GPL-3.0-or-later
// A book that cannot be opened or written says why, and is left as it was.
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <csignal>
#include <fstream>
#include <iterator>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace coneline::store {
namespace {

std::string bytes(const std::filesystem::path& path) {
  if (std::filesystem::is_directory(path))
    return {};
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

class Refusals : public testing::Test {
 protected:
  Refusals() { tests::make_first_cone(path, first); }

  void refused(const std::filesystem::path& file, std::string_view why) {
    for (const auto access : {Access::read, Access::write}) {
      const auto before = bytes(file);
      const auto opened = Book::open(file, access);
      ASSERT_FALSE(opened) << file;
      EXPECT_NE(opened.error().text().find(why), std::string::npos) << opened.error().text();
      EXPECT_EQ(opened.error().blame, Blame::book);
      EXPECT_EQ(bytes(file), before);
    }
  }

  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
};

TEST_F(Refusals, AMissingBook) {
  refused(scratch.at("nowhere.coneline"), "there is no book");
  EXPECT_FALSE(std::filesystem::exists(scratch.at("nowhere.coneline")));
}

TEST_F(Refusals, AFolder) {
  refused(path.parent_path(), "is no file");
}

TEST_F(Refusals, AForeignFile) {
  std::ofstream(scratch.at("letter.txt")) << "Dear grower, this is no book.";
  refused(scratch.at("letter.txt"), "is no book of Coneline");
  std::ofstream(scratch.at("empty"));
  refused(scratch.at("empty"), "is no book of Coneline");
  tests::run_raw(scratch.at("other.db"), "CREATE TABLE birds (name TEXT)");
  refused(scratch.at("other.db"), "is no book of Coneline");
}

TEST_F(Refusals, ATruncatedBook) {
  for (const auto part : {4, 2}) {
    const auto cut = scratch.at(fmt::format("cut-{}.coneline", part));
    std::filesystem::copy_file(path, cut);
    std::filesystem::resize_file(cut, std::filesystem::file_size(cut) /
                                          static_cast<std::uintmax_t>(part));
    refused(cut, "cut short");
  }
  std::filesystem::copy_file(path, scratch.at("stub"));
  std::filesystem::resize_file(scratch.at("stub"), 60);
  refused(scratch.at("stub"), "cut short");
}

TEST_F(Refusals, ANewerBook) {
  ASSERT_EQ(tests::run_raw(path, "PRAGMA user_version = 999"), "");
  refused(path, "newer program");
}

TEST_F(Refusals, ABookThatIsThereAlready) {
  const auto made = Book::make(path, {"Again", 18, false, tests::day("2026-01-01")});
  ASSERT_FALSE(made);
  EXPECT_NE(made.error().what.find("is there already"), std::string::npos);
  EXPECT_FALSE(Book::make(scratch.at("no/such/folder/t.coneline"),
                          {"Nowhere", 18, false, tests::day("2026-01-01")}));
}

TEST_F(Refusals, ALockedBook) {
  sqlite3* other = nullptr;
  sqlite3_open(path.c_str(), &other);
  ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
  auto book = Book::open(path, Access::write).value();
  const auto refused = book.write([](Writing& writing) { return writing.next_code(Kind::tray); });
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().what.find("in use"), std::string::npos) << refused.error().text();
  sqlite3_exec(other, "COMMIT", nullptr, nullptr, nullptr);
  sqlite3_close(other);
  EXPECT_TRUE(book.write([](Writing& writing) { return writing.next_code(Kind::tray); }));
}

TEST_F(Refusals, AReadOnlyBook) {
  auto book = Book::open(path, Access::read).value();
  const auto refused = book.write([](Writing& writing) {
    return writing.put(book::Taxon{{}, "Zamia", {}, {}, {}, {}, {}, {}});
  });
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().what.find("may only be read"), std::string::npos)
      << refused.error().text();
}

/// Writes in a child process whose files may not grow, and returns what the book then said.
std::string write_on_a_full_disk(const std::filesystem::path& path) {
  std::array<int, 2> pipe{};
  EXPECT_EQ(::pipe(pipe.data()), 0);
  const auto child = ::fork();
  if (child == 0) {
    std::signal(SIGXFSZ, SIG_IGN);
    auto book = Book::open(path, Access::write);
    const rlimit full{4096, 4096};
    ::setrlimit(RLIMIT_FSIZE, &full);
    std::string said = book ? "opened" : book.error().text();
    if (book) {
      const auto wrote = book->write([](Writing& writing) -> Result<int> {
        for (int i = 0; i < 2000; ++i)
          static_cast<void>(
              writing
                  .put(book::Taxon{{},
                                   fmt::format("Taxon {} {}", i, std::string(200, 'x')),
                                   {},
                                   {},
                                   {},
                                   {},
                                   {},
                                   {}})
                  .value());
        return 1;
      });
      said = wrote ? "written" : wrote.error().text();
    }
    static_cast<void>(::write(pipe[1], said.data(), said.size()));
    ::_exit(0);
  }
  ::close(pipe[1]);
  std::string said;
  std::array<char, 512> buffer{};
  for (ssize_t n = 0; (n = ::read(pipe[0], buffer.data(), buffer.size())) > 0;)
    said.append(buffer.data(), static_cast<std::size_t>(n));
  ::close(pipe[0]);
  int status = 0;
  ::waitpid(child, &status, 0);
  EXPECT_EQ(status, 0);
  return said;
}

TEST_F(Refusals, AFullDisk) {
  const auto said = write_on_a_full_disk(path);
  EXPECT_NE(said.find("look before doing it again"), std::string::npos) << said;
  auto book = Book::open(path, Access::read).value();
  EXPECT_EQ(book.read([](Reading& reading) { return reading.registers().taxa.size(); }).value(),
            1U);
}

} // namespace
} // namespace coneline::store
