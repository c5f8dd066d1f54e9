// SPDX-License-Identifier: GPL-3.0-or-later
// The chain over the entries goes out with the season folder and comes back the same.
#include "core/exchange/import_season.h"
#include "core/store/proof.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

class Links : public testing::Test {
 protected:
  Links() {
    auto season = tests::small_season();
    season.links = chain_of(season);
    EXPECT_TRUE(write_season(season, folder, Existing::keep));
  }
  store::Book new_book() {
    return store::Book::make(scratch.at(fmt::format("book-{}", ++books)),
                             {"", 10, false, tests::day("2026-01-01")})
        .value();
  }
  void change(const std::string& file, const std::string& before, const std::string& now) {
    auto text = tests::content(folder / file);
    const auto at = text.find(before);
    ASSERT_NE(at, std::string::npos);
    tests::put(folder / file, text.replace(at, before.size(), now));
  }

  tests::Scratch scratch;
  std::filesystem::path folder = scratch.at("season");
  int books = 0;
};

TEST_F(Links, ComeBackTheSame) {
  auto book = new_book();
  const auto in = import_season(folder, book, Import::write).value();
  ASSERT_TRUE(in.faults.none()) << in.faults.listed().front().text();
  ASSERT_TRUE(export_season(book, scratch.at("out"), Existing::keep));
  EXPECT_EQ(tests::contents(folder), tests::contents(scratch.at("out")));
  const auto proof = store::prove(book).value();
  EXPECT_TRUE(proof.holds());
  EXPECT_EQ(proof.links, 22);
}

TEST_F(Links, TellAFolderThatWasChangedOnTheWay) {
  change("movements.csv", ",9\n", ",8\n");
  auto book = new_book();
  const auto in = import_season(folder, book, Import::write).value();
  ASSERT_EQ(in.faults.listed().size(), 1U);
  const auto text = in.faults.listed().front().text();
  EXPECT_NE(text.find("links.csv, line 6, column link"), std::string::npos) << text;
  EXPECT_NE(text.find("breaks at entry 5"), std::string::npos) << text;
  EXPECT_EQ(book.read([](store::Reading& reading) { return reading.lots().size(); }).value(), 0U);
}

TEST_F(Links, TellALinkTooFew) {
  auto text = tests::content(folder / "links.csv");
  text.erase(text.rfind('\n', text.size() - 2) + 1);
  tests::put(folder / "links.csv", text);
  auto book = new_book();
  const auto in = import_season(folder, book, Import::write).value();
  ASSERT_EQ(in.faults.listed().size(), 1U);
  EXPECT_NE(in.faults.listed().front().text().find("21 links for 22 entries"), std::string::npos);
}

TEST_F(Links, TellALinkThatStandsOutOfTurn) {
  const auto text = tests::content(folder / "links.csv");
  const auto first = text.find('\n') + 1;
  const auto second = text.find('\n', first) + 1;
  const auto third = text.find('\n', second) + 1;
  tests::put(folder / "links.csv", text.substr(0, first) + text.substr(second, third - second) +
                                       text.substr(first, second - first) + text.substr(third));
  auto book = new_book();
  const auto in = import_season(folder, book, Import::write).value();
  ASSERT_EQ(in.faults.listed().size(), 1U);
  const auto said = in.faults.listed().front().text();
  EXPECT_NE(said.find("links.csv, line 2, column link: this is not the link of entry 1"),
            std::string::npos)
      << said;
}

TEST_F(Links, BeginAnewWithoutTheirFile) {
  std::filesystem::remove(folder / "links.csv");
  auto book = new_book();
  const auto in = import_season(folder, book, Import::write).value();
  EXPECT_TRUE(in.faults.none());
  const auto proof = store::prove(book).value();
  EXPECT_TRUE(proof.holds());
  EXPECT_EQ(proof.links, 22);
}

} // namespace
} // namespace coneline::exchange
