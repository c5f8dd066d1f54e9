// SPDX-License-Identifier: GPL-3.0-or-later
// Texts, files and fields that a spreadsheet or a hand may have left half done.
#include "core/base/csv.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline {
namespace {

std::string fault_of(std::string_view text) {
  const auto table = read_csv(text, "t.csv");
  return table ? "read" : table.error().text();
}

// Unicode 15, table 3-7: the first and last well-formed sequence of each length and those beside.
TEST(CsvEdges, WellFormedTextIsToldByEveryByte) {
  for (const std::string_view good :
       {"\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEF\xBF\xBF",
        "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF", ""})
    EXPECT_TRUE(is_utf8(good)) << good;
  for (const std::string_view bad :
       {"\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF", "\xE0\xA0", "\xE0\xA0\x41", "\xE1",
        "\xE1\x41\x80", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF", "\xF0\x90\x80", "\xF0\x90\x80\x41",
        "\xF0\x90\x41\x80", "\xF1\x41\x80\x80", "\xF0", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80",
        "\xFF"})
    EXPECT_FALSE(is_utf8(bad));
}

TEST(CsvEdges, ALineEndIsOneOnlyWhereItIsWhole) {
  EXPECT_EQ(fault_of("a\nx\r"),
            "t.csv, line 2: a carriage return without a line feed. Save the file with ordinary "
            "line ends.");
  EXPECT_EQ(fault_of("a\n\"x\"\ry\n"),
            "t.csv, line 2: text follows a closing quote. Double a quote that belongs to the "
            "text.");
  const auto table = read_csv("a,b\n\"x\",\"y\"", "t.csv").value();
  EXPECT_EQ(table.rows.front().fields, (std::vector<std::string>{"x", "y"}));
  EXPECT_EQ(read_csv("a,b\n1,", "t.csv").value().rows.front().fields.back(), "");
}

TEST(CsvEdges, AFaultInTheHeaderIsOnItsLine) {
  EXPECT_EQ(fault_of("a,\"b\n"), "t.csv, line 1: a quote is opened and never closed. Close it, or "
                                 "double a quote that belongs to the text.");
}

TEST(CsvEdges, BlankLinesAtTheEndAreNoRowsExceptInASingleColumn) {
  EXPECT_TRUE(read_csv("a,b\n\n\n", "t.csv").value().rows.empty());
  EXPECT_EQ(read_csv("a,b\n1,2\n\n", "t.csv").value().rows.size(), 1U);
  EXPECT_EQ(read_csv("a\n\n\n", "t.csv").value().rows.size(), 2U);
}

TEST(CsvEdges, OtherSeparatorsAreNamed) {
  const auto separator = [](std::string_view header) {
    return other_separator(read_csv(header, "t.csv").value());
  };
  EXPECT_EQ(separator("a;b\n"), "semicolons");
  EXPECT_EQ(separator("a\tb\n"), "tabs");
  EXPECT_EQ(separator("a\n"), std::nullopt);
  EXPECT_EQ(separator("a;b,c\n"), std::nullopt);
  EXPECT_NE(fault_of("a\tb\n1,5\t2\n").find("separated by tabs"), std::string::npos);
  EXPECT_NE(fault_of("a;b\n1,5;2\n").find("separated by semicolons"), std::string::npos);
  EXPECT_NE(fault_of("a,b\n1\n").find("the row has 1 fields, the header 2"), std::string::npos);
}

TEST(CsvEdges, ColumnsAreFoundByName) {
  const auto table = read_csv("a,b\n1,2\n", "t.csv").value();
  EXPECT_EQ(table.column("b"), 1U);
  EXPECT_EQ(table.column("c"), std::nullopt);
  EXPECT_EQ(table.where(table.rows.front(), "b"), (Where{"t.csv", 2, "b"}));
}

TEST(CsvEdges, FieldsComeBackAsTheyWere) {
  const std::vector<std::string> fields{"", " x", "x ", "a,b", "\"", "c\nd", "e\rf", "plain"};
  const auto table = read_csv("1,2,3,4,5,6,7,8\n" + csv_line(fields), "t.csv").value();
  ASSERT_EQ(table.rows.size(), 1U);
  EXPECT_EQ(table.rows.front().fields, fields);
  // A single empty field is written in quotes, or it would be no row.
  EXPECT_EQ(csv_line({""}), "\"\"\n");
  EXPECT_EQ(csv_line({"x"}), "x\n");
}

// What a spreadsheet would take for a formula is kept from it, and comes back.
TEST(CsvEdges, AFormulaIsWrittenAsText) {
  for (const std::string text : {"=1+1", "+1", "-1", "@x", "\tx", "\rx", "'quoted"}) {
    EXPECT_EQ(for_spreadsheet(text), "'" + text);
    EXPECT_EQ(from_spreadsheet("'" + text), text);
  }
  for (const std::string text : {"", "x", "1=1"})
    EXPECT_EQ(for_spreadsheet(text), text);
  EXPECT_EQ(from_spreadsheet("'"), "'");
  EXPECT_EQ(from_spreadsheet("'x"), "'x");
  EXPECT_EQ(from_spreadsheet("xy"), "xy");
}

TEST(CsvEdges, FilesThatCannotBeReadAreNamed) {
  const tests::Scratch scratch;
  const auto missing = read_csv_file(scratch.at("no.csv"));
  ASSERT_FALSE(missing);
  EXPECT_NE(missing.error().what.find("no.csv' cannot be read"), std::string::npos);
  EXPECT_EQ(missing.error().remedy, "Check the name.");
  std::ofstream(scratch.at("large.csv")) << "a\n";
  // It takes no room: nothing is written between its ends.
  std::filesystem::resize_file(scratch.at("large.csv"), (512ULL << 20U) + 1);
  const auto large = read_csv_file(scratch.at("large.csv"));
  ASSERT_FALSE(large);
  EXPECT_NE(large.error().what.find("has 512 MB, more than 512 MB"), std::string::npos);
  EXPECT_EQ(large.error().remedy, "Split it.");
  std::ofstream(scratch.at("good.csv")) << "a\n1\n";
  EXPECT_EQ(read_csv_file(scratch.at("good.csv")).value().rows.front().fields.front(), "1");
}

} // namespace
} // namespace coneline
