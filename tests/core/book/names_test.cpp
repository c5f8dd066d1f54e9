// SPDX-License-Identifier: GPL-3.0-or-later
// Names with a blank too many, small letters for large, a letter wrong.
#include "core/book/names.h"

#include <gtest/gtest.h>

namespace coneline::book {
namespace {

std::vector<Taxon> taxa() {
  std::vector<Taxon> rows;
  for (const auto* name : {"Cycas revoluta", "Zamia furfuracea", "Dioon edule"}) {
    rows.emplace_back().id = {static_cast<std::int64_t>(rows.size())};
    rows.back().name = name;
  }
  return rows;
}

std::string near(std::string_view name) {
  const auto rows = taxa();
  const auto* row = nearest(rows, name);
  return row == nullptr ? "none" : row->name;
}

TEST(Names, AreSqueezed) {
  EXPECT_EQ(squeezed("Cycas revoluta"), "Cycas revoluta");
  EXPECT_EQ(squeezed("  Cycas \t revoluta\r\n"), "Cycas revoluta");
  EXPECT_EQ(squeezed("   "), "");
  EXPECT_EQ(squeezed(""), "");
  EXPECT_EQ(squeezed("Bench × 3"), "Bench × 3") << "letters of other alphabets stay";
}

TEST(Names, ReadAlikeButForBlanksAndCase) {
  EXPECT_TRUE(read_alike("zamia FURFURACEA ", "Zamia furfuracea"));
  EXPECT_TRUE(read_alike("1 L", "1  l"));
  EXPECT_FALSE(read_alike("1 L", "1L"));
  EXPECT_FALSE(read_alike("Zamia furfuracea", "Zamia furfuracia"));
}

TEST(Names, TheNearestIsToldWhereItMayBeMeant) {
  EXPECT_EQ(near("Cycas revolut"), "Cycas revoluta");
  EXPECT_EQ(near("cycas  revoluta"), "Cycas revoluta");
  EXPECT_EQ(near("Zamia furfuracia"), "Zamia furfuracea");
  EXPECT_EQ(near("Dion edule"), "Dioon edule");
  EXPECT_EQ(near("Dioon mejiae"), "none");
  EXPECT_EQ(near("Cy"), "none");
  EXPECT_EQ(near(""), "none");
}

TEST(Names, AFurtherOneReadsLikeNoOther) {
  const auto rows = taxa();
  EXPECT_EQ(name_for(rows, " Dioon  mejiae ").value(), "Dioon mejiae");
  EXPECT_EQ(name_for(rows, "Dioon edule ").value(), "Dioon edule")
      << "that is for the store to say";
  const auto small = name_for(rows, "dioon edule");
  ASSERT_FALSE(small);
  EXPECT_EQ(small.error().what, "'dioon edule' stands in the book as 'Dioon edule'");
  EXPECT_EQ(name_for(rows, "dioon edule", rows[2].id).value(), "dioon edule") << "its own name";
}

TEST(Names, ARowIsFoundOrTheNearestTold) {
  const auto rows = taxa();
  EXPECT_EQ(row_said(rows, " Dioon edule", "taxon").value()->id, rows[2].id);
  const auto wrong = row_said(rows, "Dioon eduli", "taxon");
  ASSERT_FALSE(wrong);
  EXPECT_EQ(wrong.error().what, "there is no taxon 'Dioon eduli'");
  EXPECT_NE(wrong.error().remedy.find("'Dioon edule'"), std::string::npos) << wrong.error().remedy;
  EXPECT_EQ(row_said(rows, "Encephalartos", "taxon").error().remedy, "Enter it first.");
  EXPECT_EQ(alike(rows, "ZAMIA furfuracea"), &rows[1]);
  EXPECT_EQ(alike(rows, "Zamia"), nullptr);
}

} // namespace
} // namespace coneline::book
