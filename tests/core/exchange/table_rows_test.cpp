// SPDX-License-Identifier: GPL-3.0-or-later
// Cells of an older spreadsheet as lines: counts, sizes, parents, dates, and what nobody knows.
#include "core/exchange/old_table.h"
#include "core/exchange/table_rows.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::exchange {
namespace {

using F = TableField;

struct OneRow {
  std::optional<work::BroughtIn> line;
  std::string said; ///< the first fault
};

/// A table of one row, each cell under the word of its field.
OneRow read(const std::map<TableField, std::string>& cells, TableMatch match = {}) {
  CsvTable table{"old.csv", {}, {{2, {}}}};
  for (const auto& [field, cell] : cells) {
    table.columns.emplace_back(book::word(field));
    table.rows.front().fields.push_back(cell);
    match.columns[field] = table.columns.back();
  }
  Faults faults;
  const auto lines = read_lines(table, match, faults);
  if (!lines)
    return {{}, lines.error().text()};
  return {lines->lines.empty() ? std::nullopt : std::optional(lines->lines.front()),
          faults.none() ? "" : faults.listed().front().text()};
}

// "1 200" and "120.0" are what spreadsheets make of 1200 and 120.
TEST(TableRows, CountsAsSpreadsheetsWriteThem) {
  const auto count = [](const std::string& cell) {
    const auto row = read({{F::count, cell}});
    return row.line ? row.line->count.value() : -1;
  };
  EXPECT_EQ(count("40"), 40);
  EXPECT_EQ(count("1 200"), 1200);
  EXPECT_EQ(count("1'200"), 1200);
  EXPECT_EQ(count("120.0"), 120);
  EXPECT_EQ(count("120,00"), 120);
  for (const char* wrong : {"12.5", "1.200", "120.", "1,000", "about 40", "-3"})
    EXPECT_EQ(read({{F::count, wrong}}).said,
              "old.csv, line 2, column count: '" + std::string(wrong) +
                  "' is no count. Write a whole number, such as 40, and words in a note.");
}

TEST(TableRows, SizesWithEitherDecimalSignAboveZero) {
  const auto litres = [](const std::string& cell) { return read({{F::litres, cell}}); };
  EXPECT_EQ(litres("2,5").line->litres, 2.5);
  EXPECT_EQ(litres("2.5").line->litres, 2.5);
  for (const char* wrong : {"0", "-1", "2 L", "1.200,5"}) {
    EXPECT_FALSE(litres(wrong).line);
    EXPECT_NE(litres(wrong).said.find("is no number above 0"), std::string::npos) << wrong;
  }
}

TEST(TableRows, ACrossNamesTwoParentsInAnyOfTheUsualSigns) {
  for (const char* cross : {"Old Gate × Tall Male", "Old Gate x Tall Male", "Old Gate X Tall Male",
                            "Old Gate * Tall Male", "Old Gate×Tall Male"}) {
    const auto row = read({{F::cross, cross}});
    ASSERT_TRUE(row.line) << cross;
    EXPECT_EQ(row.line->seed_parent, "Old Gate");
    EXPECT_EQ(row.line->pollen_parent, "Tall Male");
  }
  for (const char* wrong : {"Old Gate", "Old Gate × ", "×Tall Male", "A × B × C", "Maxim"})
    EXPECT_NE(read({{F::cross, wrong}}).said.find("names no two parents"), std::string::npos)
        << wrong;
}

TEST(TableRows, AParentsOwnColumnCountsBeforeTheCross) {
  const auto row = read({{F::cross, "A1 × B1"}, {F::seed_parent, "Old Gate"}});
  EXPECT_EQ(row.line->seed_parent, "Old Gate");
  EXPECT_EQ(row.line->pollen_parent, "B1");
  const auto other = read({{F::cross, "A1 × ?"}, {F::pollen_parent, "Tall Male"}});
  EXPECT_EQ(other.line->seed_parent, "A1");
  EXPECT_EQ(other.line->pollen_parent, "Tall Male");
  EXPECT_EQ(read({{F::cross, "A1 × unknown"}}).line->pollen_parent, "");
  EXPECT_TRUE(read({{F::cross, "-"}}).line);
}

TEST(TableRows, WhatNobodyKnowsIsLeftEmpty) {
  for (const char* word : {"?", "-", "unknown", "Not Known", "N/A"}) {
    const auto row = read({{F::pollen_parent, word}, {F::count, word}, {F::since, word}});
    ASSERT_TRUE(row.line) << word;
    EXPECT_EQ(row.line->pollen_parent, "");
    EXPECT_EQ(row.line->count.value(), 0);
    EXPECT_FALSE(row.line->since);
  }
  EXPECT_EQ(read({{F::pollen_parent, "Unknown Male"}}).line->pollen_parent, "Unknown Male");
}

TEST(TableRows, KindsAndSexesInTheWordsOfALister) {
  for (const auto& [word, kind] : {std::pair("Seeds", Kind::batch),
                                   {"flats", Kind::tray},
                                   {"potted", Kind::pot_group},
                                   {"Parent plant", Kind::plant}})
    EXPECT_EQ(read({{F::kind, word}}).line->kind, kind) << word;
  EXPECT_NE(read({{F::kind, "bucket"}}).said.find("'bucket' is no kind of lot"), std::string::npos);
  EXPECT_EQ(read({{F::sex, "F"}}).line->sex, book::Sex::female);
  EXPECT_EQ(read({{F::sex, "m"}}).line->sex, book::Sex::male);
  EXPECT_EQ(read({{F::sex, "Male"}}).line->sex, book::Sex::male);
  EXPECT_FALSE(read({{F::sex, "both"}}).line);
}

TEST(TableRows, TheDatesOfAFileTellTheirOrderTogether) {
  const auto since = [](const std::string& cell, std::optional<TableDates> dates = {},
                        const std::string& other = "") {
    TableMatch match;
    match.dates = dates;
    const auto row = read({{F::since, cell}, {F::seen, other}}, match);
    return row.line && row.line->since ? row.line->since->iso() : row.said;
  };
  EXPECT_EQ(since("2026-03-09"), "2026-03-09");
  EXPECT_EQ(since("2026-03-09 14:05"), "2026-03-09");
  EXPECT_EQ(since("9.3.2026"), "2026-03-09");
  EXPECT_EQ(since("23/4/2026"), "2026-04-23");
  EXPECT_EQ(since("4/23/2026"), "2026-04-23");
  EXPECT_EQ(since("3/4/2026", {}, "23/4/2026"), "2026-04-03");
  EXPECT_EQ(since("3/4/2026", TableDates::month_day_year), "2026-03-04");
  EXPECT_EQ(since("3/4/2026", TableDates::day_month_year), "2026-04-03");
  EXPECT_EQ(since("26/4/3", TableDates::year_month_day), "2026-04-03");
  EXPECT_EQ(since("3/4/2026", {}, "4/5/2026"),
            "old.csv, line 2, column since: the dates do not tell whether the day or the month "
            "comes first. Say how they are written: day first, or month first.");
  EXPECT_NE(since("last spring").find("'last spring' is no day"), std::string::npos);
}

TEST(TableRows, OneValueForAllRowsStandsWhereNoColumnHasIt) {
  TableMatch match;
  match.for_all = {{F::kind, "tray"}, {F::since, "9.3.2026"}, {F::count, "x"}};
  const auto row = read({{F::count, "40"}}, match);
  ASSERT_TRUE(row.line);
  EXPECT_EQ(row.line->kind, Kind::tray);
  EXPECT_EQ(row.line->since->iso(), "2026-03-09");
  EXPECT_EQ(row.line->count.value(), 40);
  match.for_all[F::since] = "3/4/2026";
  EXPECT_NE(read({{F::count, "40"}}, match).said.find("column since: the dates do not tell"),
            std::string::npos);
}

std::string old(const std::string& text, const TableLayout& layout = {}) {
  const auto table = read_old_table(text, "old.csv", layout);
  if (!table)
    return table.error().text();
  return table->columns.front() + "=" + table->rows.front().fields.front();
}

TEST(OldTableText, IsReadAsSpreadsheetsSaveIt) {
  EXPECT_EQ(old("\xEF\xBB\xBFname;n\n\"a \"\"b\"\"\";2\n"), "name=a \"b\"");
  EXPECT_EQ(old("name;n\n5\" pot;2\n"), "name=5\" pot"); // inches, not a quote
  EXPECT_EQ(old("name;n\n\"a\nb\";2\n"), "name=a\nb");
  EXPECT_EQ(old("name;n\nf\xFCr;2\n"), "name=für"); // Latin-1
  EXPECT_EQ(old("Our stock\nname;n\na;2;;\n"), "name=a");
  EXPECT_EQ(old("x;y\nname;n\na;2\n", {{}, 2}), "name=a");
}

TEST(OldTableText, WhatIsNoTableIsRefusedWithWhatToDo) {
  EXPECT_NE(old("PK\x03\x04").find("a spreadsheet program's own file"), std::string::npos);
  EXPECT_NE(old("\xD0\xCF\x11\xE0").find("a spreadsheet program's own file"), std::string::npos);
  EXPECT_NE(old(std::string("a;b\n\0;2\n", 8)).find("this is no text"), std::string::npos);
  EXPECT_NE(old("a;b\n1;\"2\n").find("line 2: a quote is opened"), std::string::npos);
  EXPECT_NE(old("a;b\n1;\"").find("line 2: a quote is opened"), std::string::npos);
  EXPECT_NE(old("one\ntwo\n").find("no row with two filled cells"), std::string::npos);
  EXPECT_NE(old("a;b\n1;2\n", {{}, 9}).find("line 9: there is nothing on line 9"),
            std::string::npos);
  EXPECT_NE(old("a;b\n1;2;3\n").find("the row has 3 cells, the header 2"), std::string::npos);
  EXPECT_NE(old("a;b\n").find("no row below the header"), std::string::npos);
}

TEST(OldTableText, FilesThatCannotBeReadAreNamed) {
  const tests::Scratch scratch;
  EXPECT_NE(read_old_table_file(scratch.at("no.csv"), {}).error().what.find("cannot be read"),
            std::string::npos);
  std::ofstream(scratch.at("large.csv")) << "x";
  std::filesystem::resize_file(scratch.at("large.csv"), (64ULL << 20U) + 1);
  EXPECT_NE(read_old_table_file(scratch.at("large.csv"), {}).error().what.find("more than 64 MB"),
            std::string::npos);
}

} // namespace
} // namespace coneline::exchange
