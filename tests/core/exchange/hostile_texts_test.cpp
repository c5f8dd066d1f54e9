// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody might write into any text field to make a database, a spreadsheet, a page or a
// folder do something: it is text, comes in as text and goes out as text.
#include "core/base/csv.h"
#include "core/exchange/export_season.h"
#include "core/exchange/import_season.h"
#include "core/store/proof.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

namespace fs = std::filesystem;

const std::vector<std::string> hostile{
    "'; DROP TABLE movement; --",
    "\"; DELETE FROM entry; --",
    "x' OR '1'='1",
    "'); ATTACH DATABASE '/tmp/other' AS other; --",
    ":name ?1 @who $note",
    "=HYPERLINK(\"http://example.invalid\";\"click\")",
    "=cmd|'/C calc'!A0",
    "+1+1",
    "-2+3",
    "@SUM(A1:A9)",
    "\t=1+1",
    "\r\n=1+1",
    "<script>alert(1)</script>",
    "\"><img src=x onerror=alert(1)>",
    "{} {0} {:n} %s %n",
    "../../etc/passwd",
    "שלום עולם",
    "\u202Eright to left\u202C",
    "🌱🌲👩‍🌾🏳️‍🌈",
    "a\u0301\u0302\u0303\u0304",
    std::string(10'000, 'W'),
    [] {
      std::string trees;
      for (int i = 0; i < 10'000; ++i)
        trees += "🌲";
      return trees;
    }(),
};

/// The names of a season that are its keys get the text with a number, so that they stay apart.
Season with_names(Season season, const std::string& text) {
  auto& r = season.registers;
  for (auto* names : {&r.taxa[0].name, &r.places[0].name, &r.pots[0].name, &r.mixes[0].name,
                      &r.mixes[0].parts[0].name, &r.figures[0].name})
    *names = text;
  return season;
}

TEST(HostileTexts, AreTextInEveryField) {
  for (const auto& text : hostile) {
    SCOPED_TRACE(text.substr(0, 60));
    const tests::Scratch scratch;
    auto season = with_names(tests::small_season([&](const std::string&) { return text; }), text);
    season.labels = {};
    season.links = chain_of(season);
    const auto out = write_season(season, scratch.at("out"), Existing::keep);
    ASSERT_TRUE(out) << out.error().text();
    // No cell that a spreadsheet would run.
    for (const auto& [file, content] : tests::contents(scratch.at("out"))) {
      const auto table = read_csv(content, file).value();
      for (const auto& row : table.rows)
        for (const auto& field : row.fields)
          EXPECT_TRUE(field.empty() ||
                      std::string_view("=+@\t\r").find(field.front()) == std::string_view::npos)
              << file << ": " << field.substr(0, 60);
    }
    auto book =
        store::Book::make(scratch.at("book"), {"", 10, false, tests::day("2026-01-01")}).value();
    const auto in = import_season(scratch.at("out"), book, Import::write);
    ASSERT_TRUE(in) << in.error().text();
    ASSERT_TRUE(in->faults.none()) << in->faults.listed().front().text().substr(0, 300);
    const auto proof = store::prove(book);
    ASSERT_TRUE(proof);
    EXPECT_TRUE(proof->holds()) << proof->faults.front().substr(0, 300);
    const auto held = book.read([](store::Reading& reading) { return season_of(reading); }).value();
    EXPECT_EQ(held.registers.title.name, text);
    EXPECT_EQ(held.registers.taxa.at(0).name, text);
    EXPECT_EQ(held.registers.plants.at(0).name, text);
    EXPECT_EQ(held.entries.at(0).note, text);
    ASSERT_TRUE(export_season(book, scratch.at("again"), Existing::keep));
    EXPECT_EQ(tests::contents(scratch.at("out")), tests::contents(scratch.at("again")));
  }
}

TEST(HostileTexts, MayNameFilesAndFolders) {
  for (const std::string name : {"a book with blanks", "o'clock \"quoted\"", "50% off?mode=ro#x",
                                 "&amp;;|$(true)`true`", "שלום 🌱", "-rf", "a=b,c"}) {
    SCOPED_TRACE(name);
    const tests::Scratch scratch;
    const auto folder = scratch.at(name + " folder");
    ASSERT_TRUE(write_season(tests::small_season(), folder, Existing::keep));
    const auto path = scratch.at(name + ".coneline");
    {
      auto book = store::Book::make(path, {"", 10, false, tests::day("2026-01-01")}).value();
      const auto in = import_season(folder, book, Import::write);
      ASSERT_TRUE(in && in->faults.none());
    }
    ASSERT_TRUE(fs::exists(path));
    auto book = store::Book::open(path, store::Access::write);
    ASSERT_TRUE(book) << book.error().text();
    ASSERT_TRUE(export_season(*book, scratch.at(name + " again"), Existing::keep));
    EXPECT_EQ(tests::contents(folder), tests::contents(scratch.at(name + " again")));
  }
}

class LinksOut : public testing::Test {
 protected:
  LinksOut() {
    EXPECT_TRUE(write_season(tests::small_season(), folder, Existing::keep));
    fs::remove(folder / "taxa.csv");
  }
  void is_refused() {
    auto book =
        store::Book::make(scratch.at("book"), {"", 10, false, tests::day("2026-01-01")}).value();
    const auto in = import_season(folder, book, Import::write);
    ASSERT_TRUE(in) << in.error().text();
    ASSERT_FALSE(in->faults.none());
    EXPECT_EQ(in->faults.listed().front().where->file, "taxa.csv");
  }
  tests::Scratch scratch;
  fs::path folder = scratch.at("season");
};

TEST_F(LinksOut, ToAFileOutsideAreRefused) {
  fs::create_symlink("/etc/passwd", folder / "taxa.csv");
  is_refused();
}
TEST_F(LinksOut, UpAndOutAreRefused) {
  tests::put(scratch.at("outside.csv"), "name\n");
  fs::create_symlink("../outside.csv", folder / "taxa.csv");
  is_refused();
}
TEST_F(LinksOut, ThroughAFolderAreRefused) {
  fs::create_directory(scratch.at("elsewhere"));
  tests::put(scratch.at("elsewhere") / "taxa.csv", "name\n");
  fs::create_directory_symlink(scratch.at("elsewhere"), folder / "taxa.csv");
  is_refused();
}
TEST_F(LinksOut, InACircleAreRefused) {
  fs::create_symlink("taxa.csv", folder / "taxa.csv");
  is_refused();
}

} // namespace
} // namespace coneline::exchange
