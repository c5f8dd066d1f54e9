// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/export_season.h"
#include "core/exchange/import_season.h"
#include "core/store/proof.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::exchange {
namespace {

using tests::contents;
using tests::small_season;

store::Book new_book(const tests::Scratch& scratch) {
  return store::Book::make(scratch.at("book"), {"", 10, false, tests::day("2026-01-01")}).value();
}

/// Season -> folder -> book -> folder; the texts of both folders.
void comes_back(Season season) {
  const tests::Scratch scratch;
  season.links = chain_of(season);
  const auto out = write_season(season, scratch.at("out"), Existing::keep);
  ASSERT_TRUE(out) << out.error().text();
  auto book = new_book(scratch);
  const auto in = import_season(scratch.at("out"), book, Import::write);
  ASSERT_TRUE(in) << in.error().text();
  ASSERT_TRUE(in->faults.none()) << in->faults.listed().front().text();
  const auto again = export_season(book, scratch.at("again"), Existing::keep);
  ASSERT_TRUE(again) << again.error().text();
  EXPECT_EQ(contents(scratch.at("out")), contents(scratch.at("again")));
  const auto proof = store::prove(book);
  ASSERT_TRUE(proof);
  EXPECT_TRUE(proof->holds()) << proof->faults.front();
}

TEST(ExportSeason, ComesBackToTheByte) {
  comes_back(small_season());
}

TEST(ExportSeason, WritesEveryFileWithItsHeader) {
  const tests::Scratch scratch;
  const auto files = write_season(small_season(), scratch.at("out"), Existing::keep).value();
  EXPECT_EQ(files.size(), 38U);
  const auto texts = contents(scratch.at("out"));
  EXPECT_EQ(texts.size(), 38U);
  EXPECT_EQ(texts.at("movements.csv").substr(0, 54),
            "entry,from_lot,from_state,to_lot,to_state,count\n2,B171");
  EXPECT_NE(texts.at("pots.csv").find("'=2.5 L,2.5,round,170,170,1,\n"), std::string::npos);
  EXPECT_NE(texts.at("keepings.csv").find("6,box,-4.5,2025-03-01,2025-05-01\n"), std::string::npos);
}

RC_GTEST_PROP(ExportSeason, KeepsAnyText, ()) {
  const auto piece = rc::gen::element<std::string>(
      "", ",", "\"", "\n", "\r\n", "\r", "=1+1", "+", "-2", "@x", "'", "''", "\t", " ", "a", "0012",
      "1,5", "🌱", "é", "e\u0301", "שלום", "\u202Eabc", "\uFEFF", ";", "2026-02-30");
  const auto any = rc::gen::map(rc::gen::container<std::vector<std::string>>(piece),
                                [](const std::vector<std::string>& pieces) {
                                  std::string text;
                                  for (const auto& each : pieces)
                                    text += each;
                                  return text;
                                });
  comes_back(small_season([&](const std::string&) { return *any; }));
}

TEST(ExportSeason, KeepsVeryLongTexts) {
  comes_back(small_season([](const std::string&) { return std::string(10'000, '='); }));
}

TEST(ExportSeason, RefusesATextThatIsNoUtf8) {
  const tests::Scratch scratch;
  auto season = small_season();
  season.entries.at(2).note = "\xFF";
  const auto out = write_season(season, scratch.at("out"), Existing::keep);
  ASSERT_FALSE(out);
  EXPECT_EQ(out.error().where, (Where{"entries.csv", 0, "note"}));
  EXPECT_FALSE(std::filesystem::exists(scratch.at("out")));
}

} // namespace
} // namespace coneline::exchange
