// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline {
namespace {

// RFC 4180, section 2.
TEST(Csv, ReadsQuotesCommasAndLineBreaksInFields) {
  const auto table =
      read_csv("a,b\r\n\"x, \"\"y\"\"\",\"two\nlines\"\r\nlast,\r\n", "t.csv").value();
  ASSERT_EQ(table.rows.size(), 2U);
  EXPECT_EQ(table.rows[0].fields, (std::vector<std::string>{"x, \"y\"", "two\nlines"}));
  EXPECT_EQ(table.rows[0].line, 2U);
  EXPECT_EQ(table.rows[1].fields, (std::vector<std::string>{"last", ""}));
  EXPECT_EQ(table.rows[1].line, 4U);
}

TEST(Csv, PassesOverAByteOrderMarkAndReadsALastLineWithoutEnd) {
  const auto table = read_csv("\xEF\xBB\xBFname\nÜ", "t.csv").value();
  EXPECT_EQ(table.columns.front(), "name");
  EXPECT_EQ(table.rows.front().fields.front(), "Ü");
}

// Found by the fuzzer: of two marks the second belongs to the text, and was lost when written.
TEST(Csv, AByteOrderMarkThatIsTextComesBack) {
  const auto table = read_csv("\xEF\xBB\xBF\xEF\xBB\xBFname\n", "t.csv").value();
  EXPECT_EQ(table.columns.front(), "\xEF\xBB\xBFname");
  EXPECT_EQ(read_csv(csv_line(table.columns), "t.csv").value().columns, table.columns);
}

struct Bad {
  const char* text;
  std::size_t line;
  const char* said;
};

TEST(Csv, PlacesEveryFault) {
  for (const auto& bad :
       {Bad{"", 1, "empty"}, Bad{"a,a\n1,2\n", 1, "twice"}, Bad{"a,\n", 1, "without a name"},
        Bad{"a,b\n1,2\n3\n", 3, "1 fields, the header 2"}, Bad{"a,b\n1,2,3\n", 2, "3 fields"},
        Bad{"a\n\"open", 2, "never closed"}, Bad{"a\n\"x\"y\n", 2, "follows a closing quote"},
        Bad{"a\nx\"y\n", 2, "inside an unquoted"}, Bad{"a\n\xFF\n", 2, "no UTF-8"},
        Bad{"a\nx\ry\n", 2, "carriage return"}, Bad{"a,b\n\n1,2\n", 2, "1 fields"}}) {
    const auto table = read_csv(bad.text, "t.csv");
    ASSERT_FALSE(table) << bad.text;
    EXPECT_NE(table.error().what.find(bad.said), std::string::npos) << table.error().text();
    ASSERT_TRUE(table.error().where);
    EXPECT_EQ(table.error().where->line, bad.line) << bad.text;
  }
}

TEST(Csv, RefusesOverlongSurrogateAndNulBytes) {
  EXPECT_FALSE(is_utf8("\xC0\xAF"));
  EXPECT_FALSE(is_utf8("\xED\xA0\x80"));
  EXPECT_FALSE(is_utf8("\xF4\x90\x80\x80"));
  EXPECT_FALSE(is_utf8(std::string_view("a\0b", 3)));
  EXPECT_TRUE(is_utf8("× ü 🌱"));
}

RC_GTEST_PROP(Csv, WrittenRowsComeBack, ()) {
  const auto letters = rc::gen::element<char>('a', ',', '"', '\n', '\r', ' ', '=', '\'', '0');
  const auto fields =
      *rc::gen::container<std::vector<std::string>>(3, rc::gen::container<std::string>(letters));
  const auto text = "a,b,c\n" + csv_line(fields);
  const auto table = read_csv(text, "t.csv");
  RC_ASSERT(table.has_value());
  RC_ASSERT(table->rows.at(0).fields == fields);
}

RC_GTEST_PROP(Csv, SpreadsheetGuardComesOffAgain, ()) {
  const auto letters = rc::gen::element<char>('=', '+', '-', '@', '\'', '1', 'a', '\t');
  const auto value = *rc::gen::container<std::string>(letters);
  const auto guarded = for_spreadsheet(value);
  RC_ASSERT(from_spreadsheet(guarded) == value);
  RC_ASSERT(guarded.empty() || std::string("=+-@\t\r").find(guarded.front()) == std::string::npos);
}

} // namespace
} // namespace coneline
