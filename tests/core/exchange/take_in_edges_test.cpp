// SPDX-License-Identifier: GPL-3.0-or-later
// An older table taken in: which names are to be looked at, and where a fault of a row is shown.
#include "core/exchange/old_table.h"
#include "core/exchange/take_in_table.h"
#include "tests/core/day.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

using F = TableField;

using tests::day;

class TakeInEdges : public testing::Test {
 protected:
  Result<TableTaken> take(const std::string& text, const TableMatch& match,
                          Import how = Import::write) {
    return take_in_table(read_old_table(text, "old.csv", {}).value(), match, book_, how,
                         day("2026-11-20"));
  }
  /// Bought seed of these taxa, each at a place of its own.
  Result<TableTaken> seeds(const std::vector<std::pair<std::string, std::string>>& rows) {
    TableMatch match;
    match.columns = {{F::taxon, "taxon"}, {F::place, "place"}, {F::count, "count"}};
    match.for_all = {{F::kind, "seed"}, {F::since, "2026-01-01"}};
    std::string text = "taxon,place,count,colour\n";
    for (const auto& [taxon, place] : rows)
      text += fmt::format("{},{},5,brown\n", taxon, place);
    return take(text, match);
  }

  tests::Scratch scratch_;
  store::Book book_ =
      store::Book::make(scratch_.at("book.coneline"), {"Test nursery", 17, true, day("2026-11-20")})
          .value();
};

TEST_F(TakeInEdges, NewNamesNearAKnownOneAreToBeLookedAt) {
  ASSERT_TRUE(seeds({{"Cycas revoluta", "North bed"}})->faults.none());
  const auto taken = seeds({{"Cycas revolta", "North bad"}}).value();
  ASSERT_TRUE(taken.faults.none());
  ASSERT_EQ(taken.look_at.size(), 3U);
  EXPECT_EQ(taken.look_at[0], "Is the taxon 'Cycas revolta' the same as 'Cycas revoluta'? Both "
                              "would stand in the book.");
  EXPECT_EQ(taken.look_at[1],
            "Is the place 'North bad' the same as 'North bed'? Both would stand in the book.");
  EXPECT_NE(taken.look_at[2].find("New places have no measures yet"), std::string::npos);
  EXPECT_EQ(taken.left_out, (std::vector<std::string>{"colour"}));
}

TEST_F(TakeInEdges, NamesThatReadAlikeAreThoseOfTheBook) {
  ASSERT_TRUE(seeds({{"Cycas revoluta", "North bed"}})->faults.none());
  const auto taken =
      seeds({{"cycas  REVOLUTA", "north Bed"}, {"Dioon  edule", "South wall"}}).value();
  ASSERT_TRUE(taken.faults.none());
  EXPECT_EQ(taken.taxa, (std::vector<std::string>{"Dioon edule"}));
  EXPECT_EQ(taken.places, (std::vector<std::string>{"South wall"}));
}

TEST_F(TakeInEdges, NamesThatAreShortOrNumberedOrFarApartAreNot) {
  const auto taken = seeds({{"Zamia", "A b"},
                            {"Zamia", "A c"},
                            {"Zamia", "Bench 11"},
                            {"Zamia", "Bench 12"},
                            {"Dioon", "South wall"}})
                         .value();
  ASSERT_TRUE(taken.faults.none());
  EXPECT_EQ(taken.places.size(), 5U);
  ASSERT_EQ(taken.look_at.size(), 1U);
  EXPECT_NE(taken.look_at[0].find("New places"), std::string::npos);
}

TEST_F(TakeInEdges, AFaultOfAParentIsShownInTheCellThatNamesIt) {
  TableMatch plants;
  plants.columns = {{F::name, "name"}, {F::sex, "sex"}};
  plants.for_all = {{F::kind, "parent"}, {F::taxon, "Cycas revoluta"}};
  ASSERT_TRUE(take("name,sex\nTall Male,m\nOld Gate,f\n", plants)->faults.none());
  TableMatch match;
  match.columns = {{F::cross, "parents"}, {F::count, "seeds"}};
  match.for_all = {{F::kind, "seed"},
                   {F::taxon, "Cycas revoluta"},
                   {F::pollinated, "2025-05-01"},
                   {F::harvested, "2026-05-01"}};
  const auto wrong = take("parents,seeds\nTall Male × Old Gate,30\n", match).value();
  ASSERT_FALSE(wrong.faults.none());
  const auto& fault = wrong.faults.listed().front();
  EXPECT_EQ(fault.where, (Where{"old.csv", 2, "parents"})) << fault.text();
  // The same parents, each in a column of its own.
  TableMatch apart;
  apart.columns = {{F::seed_parent, "mother"}, {F::pollen_parent, "father"}, {F::count, "seeds"}};
  apart.for_all = match.for_all;
  const auto other = take("mother,father,seeds\nTall Male,Old Gate,30\n", apart).value();
  ASSERT_FALSE(other.faults.none());
  EXPECT_EQ(other.faults.listed().front().where, (Where{"old.csv", 2, "mother"}));
}

TEST_F(TakeInEdges, AColumnThatIsNotThereIsNamedWithThoseThatAre) {
  TableMatch match;
  match.columns = {{F::taxon, "species"}};
  match.for_all = {{F::kind, "seed"}};
  const auto refused = take("taxon,count\nZamia,5\n", match);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().what, "there is no column 'species'");
  EXPECT_EQ(refused.error().remedy, "The file has: taxon, count.");
}

} // namespace
} // namespace coneline::exchange
