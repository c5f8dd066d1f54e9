// SPDX-License-Identifier: GPL-3.0-or-later
// Values in and out of a statement, whatever type the engine gave a column.
#include "core/store/engine/sqlite.h"
#include "core/store/statement.h"

#include <gtest/gtest.h>

namespace coneline::store {
namespace {

class StatementTest : public testing::Test {
 protected:
  StatementTest() { engine::open_in_memory(session); }

  /// What a read of the only column `x` gives, or what is said.
  template <class Read>
  std::string got(const std::string& value, Read read) {
    std::string said = "no row";
    try {
      Statement(session, "SELECT " + value + " AS x").each([&](const Row& row) {
        said = fmt::format("{}", read(row));
      });
    } catch (const std::exception& failed) {
      said = failed.what();
    }
    return said;
  }
  std::string whole(const std::string& value) {
    return got(value, [](const Row& row) { return row.whole("x"); });
  }
  std::string real(const std::string& value) {
    return got(value, [](const Row& row) { return row.real("x"); });
  }
  std::string text(const std::string& value) {
    return got(value, [](const Row& row) { return row.text("x"); });
  }

  soci::session session;
};

TEST_F(StatementTest, AWholeNumberIsReadFromWhateverHoldsOne) {
  EXPECT_EQ(whole("42"), "42");
  EXPECT_EQ(whole("42.0"), "42");
  EXPECT_EQ(whole("'42'"), "42");
  const std::string none = "the column x holds no whole number";
  EXPECT_EQ(whole("'many'"), none);
  EXPECT_EQ(whole("NULL"), none);
  EXPECT_EQ(whole("x'00'"), none);
}

TEST_F(StatementTest, ANumberIsReadFromWhateverHoldsOne) {
  EXPECT_EQ(real("1.5"), "1.5");
  EXPECT_EQ(real("'1.5'"), "1.5");
  EXPECT_EQ(real("2"), "2");
  EXPECT_EQ(real("NULL"), "the column x holds no whole number");
}

TEST_F(StatementTest, ATextIsATextOrNothing) {
  EXPECT_EQ(text("'Zamia'"), "Zamia");
  EXPECT_EQ(text("NULL"), "");
  EXPECT_EQ(text("''"), "");
  EXPECT_EQ(text("5"), "the column x holds no text");
  EXPECT_EQ(text("x'41'"), "the column x holds no text");
}

TEST_F(StatementTest, NothingIsToldFromAValue) {
  const auto has = [](const Row& row) { return row.has("x"); };
  EXPECT_EQ(got("NULL", has), "false");
  EXPECT_EQ(got("0", has), "true");
  const auto maybe = [](const Row& row) {
    const auto whole = row.maybe_whole("x");
    const auto number = row.maybe_real("x");
    return whole && number ? fmt::format("{} {}", *whole, *number) : std::string("none");
  };
  EXPECT_EQ(got("7", maybe), "7 7");
  EXPECT_EQ(got("NULL", maybe), "none");
  const auto day = [](const Row& row) {
    const auto date = row.maybe_date("x");
    return date ? date->iso() : std::string("none");
  };
  EXPECT_EQ(got("'2026-02-01'", day), "2026-02-01");
  EXPECT_EQ(got("NULL", day), "none");
  EXPECT_NE(got("'soon'", day).find("'soon' is no date"), std::string::npos);
}

TEST_F(StatementTest, AColumnThatIsNotThereIsAFaultOfTheProgram) {
  EXPECT_NE(got("1", [](const Row& row) { return row.whole("y"); }), "1");
}

TEST_F(StatementTest, ValuesOfEveryKindGoInAndComeBack) {
  Statement(session, "CREATE TABLE t (id INTEGER PRIMARY KEY, w, r, s, n)").run();
  const auto id = Statement(session, "INSERT INTO t (w, r, s, n) VALUES (:w, :r, :s, :n) RETURNING "
                                     "id")
                      .with(3)
                      .with(2.5)
                      .with(std::string("Dioon"))
                      .with(std::optional<double>())
                      .number();
  EXPECT_EQ(id, 1);
  int rows = 0;
  Statement(session, "SELECT * FROM t").each([&](const Row& row) {
    ++rows;
    EXPECT_EQ(row.whole("w"), 3);
    EXPECT_EQ(row.real("r"), 2.5);
    EXPECT_EQ(row.text("s"), "Dioon");
    EXPECT_FALSE(row.has("n"));
  });
  EXPECT_EQ(rows, 1);
  EXPECT_THROW(Statement(session, "SELECT :x").with(std::string("\xFF")), NotText);
}

TEST_F(StatementTest, TheFirstNumberOfManyRowsAndOfNone) {
  const auto number = [&](const char* sql) { return Statement(session, sql).number(); };
  EXPECT_EQ(number("SELECT 5 UNION ALL SELECT 6"), 5);
  EXPECT_EQ(number("SELECT NULL"), std::nullopt);
  EXPECT_EQ(number("SELECT 5 WHERE 0"), std::nullopt);
  EXPECT_THROW(number("SELEC 5"), std::exception);
}

TEST_F(StatementTest, WhatTheEngineRefusesIsExplained) {
  const auto explained = [&](const char* sql) -> std::string {
    try {
      Statement(session, sql).run();
    } catch (const std::exception& failed) {
      const auto fault = engine::explain(failed, "t.coneline");
      return fault.what + " | " + fault.remedy;
    }
    return "done";
  };
  EXPECT_EQ(explained("CREATE TABLE u (a INTEGER NOT NULL)"), "done");
  EXPECT_EQ(explained("INSERT INTO u VALUES (NULL)").find("the book refused it:"), 0U);
  EXPECT_NE(explained("INSERT INTO u VALUES (NULL)").find("Nothing was written."),
            std::string::npos);
  EXPECT_EQ(explained("PRAGMA query_only = ON"), "done");
  EXPECT_EQ(explained("INSERT INTO u VALUES (1)").find("'t.coneline' may only be read"), 0U);
  const auto other = engine::explain(std::runtime_error("an odd word"), "t.coneline");
  EXPECT_EQ(other.what, "'t.coneline' holds something it should not: an odd word");
  EXPECT_EQ(other.blame, Blame::book);
  EXPECT_FALSE(engine::is_busy(std::runtime_error("x")));
  EXPECT_FALSE(engine::is_of_the_disk(std::runtime_error("x")));
}

TEST_F(StatementTest, AScriptThatFailsSaysWhy) {
  try {
    engine::run_script(session, "CREATE TABLE a (x); CREATE TABLE a (x)");
    FAIL() << "the table is there already";
  } catch (const std::exception& failed) {
    EXPECT_NE(std::string(failed.what()).find("already exists"), std::string::npos);
  }
}

} // namespace
} // namespace coneline::store
