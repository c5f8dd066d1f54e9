// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/old_table.h"
#include "core/exchange/take_in_table.h"
#include "core/store/proof.h"
#include "core/work/overview.h"
#include "tests/core/day.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

using F = TableField;

using tests::day;

class OldTable : public testing::Test {
 protected:
  static CsvTable table(const std::string& text) {
    return read_old_table(text, "old.csv", {}).value();
  }
  Result<TableTaken> take(const std::string& text, const TableMatch& match,
                          Import how = Import::write) {
    return take_in_table(table(text), match, book_, how, day("2026-11-20"));
  }
  std::size_t lots() {
    return book_.read([](store::Reading& reading) { return reading.lots().size(); }).value();
  }
  book::Registers registers() {
    return book_.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  std::int64_t held(const Code& code, book::State state) {
    return book_
        .read([&](store::Reading& reading) {
          for (const auto& balance : reading.balances_of(reading.lot(code)->id))
            if (balance.account.state == state)
              return balance.count;
          return std::int64_t{0};
        })
        .value();
  }

  tests::Scratch scratch_;
  store::Book book_ =
      store::Book::make(scratch_.at("book.coneline"), {"Test nursery", 17, true, day("2026-11-20")})
          .value();
};

constexpr auto nursery =
    "Our stock 2026;;;;;;;;;;;\n"
    "\n"
    "What;Species;Mother;Father;Pollinated;Harvested;Sown on;Seeds;Up;Pot;Litres;mm\n"
    "tray;Cycas revoluta;Old Gate;Tall Male;10.05.2024;04.05.2025;10.05.2025;40;12;seed "
    "tray;5;400\n"
    "tray;Cycas revoluta;Old Gate;Tall Male;10.05.2024;04.05.2025;11.05.2025;38;;seed tray;5;400\n"
    "seed;Cycas revoluta;Old Gate;Tall Male;10.05.2024;04.05.2025;;100;;;;\n"
    "pots;Cycas revoluta;Old Gate;?;;;01.03.2023;25;;1 L deep;1;100\n"
    "tray;Zamia furfuracea;;;;;01.02.2026;60;;seed tray;;\n";

TableMatch whole_match() {
  TableMatch match;
  match.columns = {{F::kind, "What"},
                   {F::taxon, "Species"},
                   {F::seed_parent, "Mother"},
                   {F::pollen_parent, "Father"},
                   {F::pollinated, "Pollinated"},
                   {F::harvested, "Harvested"},
                   {F::since, "Sown on"},
                   {F::count, "Seeds"},
                   {F::seedlings, "Up"},
                   {F::pot, "Pot"},
                   {F::litres, "Litres"},
                   {F::width, "mm"}};
  return match;
}

TEST_F(OldTable, StoppedOnTheWayLeavesTheBookAsItWas) {
  for (const auto how : {Import::dry_run, Import::write}) {
    std::vector<std::pair<std::size_t, std::size_t>> asked;
    const auto taken = take_in_table(table(nursery), whole_match(), book_, how, day("2026-11-20"),
                                     [&](std::size_t done, std::size_t of) {
                                       asked.emplace_back(done, of);
                                       return done < 3;
                                     });
    ASSERT_FALSE(taken);
    EXPECT_NE(taken.error().what.find("nothing came into the book"), std::string::npos);
    EXPECT_EQ(asked, (std::vector<std::pair<std::size_t, std::size_t>>{{1, 5}, {2, 5}, {3, 5}}));
    EXPECT_EQ(lots(), 0U);
    EXPECT_TRUE(registers().taxa.empty());
  }
}

TEST_F(OldTable, LotsOfOneCrossComeFromOneConeAndEverySeedIsAccountedFor) {
  const auto taken = take(nursery, whole_match());
  ASSERT_TRUE(taken) << taken.error().text();
  ASSERT_TRUE(taken->faults.none()) << taken->faults.listed().front().text();
  ASSERT_EQ(taken->rows.size(), 5U);
  EXPECT_EQ(taken->rows[0].line, 4U);
  EXPECT_EQ(registers().cones.size(), 1U);
  EXPECT_EQ(registers().purchases.size(), 2U); // the pots, and the tray without a cross
  EXPECT_EQ(held(taken->rows[0].made.at(0), book::State::sown), 28);
  EXPECT_EQ(held(taken->rows[0].made.at(0), book::State::root), 12);
  EXPECT_EQ(held(taken->rows[1].made.at(0), book::State::sown), 38);
  EXPECT_EQ(held(taken->rows[2].made.at(0), book::State::unsorted), 100);
  EXPECT_EQ(held(taken->rows[3].made.at(0), book::State::plant), 25);
  EXPECT_EQ(taken->taxa, (std::vector<std::string>{"Cycas revoluta", "Zamia furfuracea"}));
  EXPECT_EQ(taken->plants.size(), 2U);
  const auto plants = registers().plants;
  EXPECT_EQ(book::named(plants, "Old Gate")->sex, book::Sex::female);
  EXPECT_EQ(book::named(plants, "Tall Male")->sex, book::Sex::male);
  EXPECT_EQ(book::named(plants, "Tall Male")->taxon_certainty, book::Certainty::unsure);
  const auto proof = store::prove(book_);
  ASSERT_TRUE(proof);
  EXPECT_TRUE(proof->faults.empty());
}

TEST_F(OldTable, ThePotsOfACrossKeepTheirParentsInWords) {
  ASSERT_TRUE(take(nursery, whole_match()));
  EXPECT_EQ(registers().purchases.front().note, "Old Gate × not known");
}

TEST_F(OldTable, WhatAKindHasNoPlaceForStandsInItsNote) {
  TableMatch match;
  match.columns = {{F::kind, "What"},     {F::taxon, "Species"}, {F::seed_parent, "Mother"},
                   {F::harvested, "Cut"}, {F::since, "Day"},     {F::count, "Seeds"},
                   {F::seedlings, "Up"},  {F::pot, "Pot"},       {F::litres, "Litres"},
                   {F::width, "mm"},      {F::cone, "Cone"},     {F::supplier, "From"},
                   {F::note, "Note"},     {F::name, "Tag"},      {F::pollinated, "Pollinated"}};
  match.dates = TableDates::year_month_day;
  const auto taken =
      take("What;Species;Mother;Cut;Day;Seeds;Up;Pot;Litres;mm;Cone;From;Note;Tag;Pollinated\n"
           "seed;Cycas revoluta;Old Gate;;2025-05-04;100;7;jar;;;K9;a friend;smells;S-1;\n"
           "pots;Cycas revoluta;;2022-02-01;2023-03-01;25;3;1 L deep;1;100;K3;;;P-1;2021-01-01\n",
           match);
  ASSERT_TRUE(taken && taken->faults.none());
  const auto entries =
      book_.read([](store::Reading& reading) { return reading.entries(); }).value();
  ASSERT_EQ(entries.size(), 2U);
  EXPECT_EQ(entries[0].note, "from an earlier list: K9; smells; name: S-1; from: a friend; "
                             "seedlings: 7; pot: jar; the day is that since which seed was there, "
                             "since no other was said");
  EXPECT_EQ(entries[1].note, "name: P-1; cone: K3; pollinated: 2021-01-01; "
                             "harvested: 2022-02-01; seedlings: 3");
}

TEST_F(OldTable, StoppedAfterTheLastRowComesInNoMoreThanBeforeIt) {
  const auto taken =
      take_in_table(table(nursery), whole_match(), book_, Import::write, day("2026-11-20"),
                    [](std::size_t done, std::size_t of) { return done < of; });
  ASSERT_FALSE(taken);
  EXPECT_NE(taken.error().what.find("stopped"), std::string::npos);
  EXPECT_EQ(lots(), 0U);
}

TEST_F(OldTable, SeedOfTwoSuppliersIsTwoPurchasesAndEveryNoteIsKeptOnce) {
  TableMatch match;
  match.columns = {{F::taxon, "Species"}, {F::cone, "Cone"},   {F::supplier, "From"},
                   {F::since, "Day"},     {F::count, "Seeds"}, {F::note, "Note"}};
  match.for_all = {{F::kind, "seed"}};
  const auto taken = take("Species;Cone;From;Day;Seeds;Note\n"
                          "Cycas revoluta;K1;Ann;2026-01-02;10;small\n"
                          "Cycas revoluta;K1;Bob;2026-01-02;20;large\n"
                          "Cycas revoluta;K1;Ann;2026-01-02;30;wet\n",
                          match);
  ASSERT_TRUE(taken && taken->faults.none());
  const auto purchases = registers().purchases;
  ASSERT_EQ(purchases.size(), 2U);
  EXPECT_EQ(purchases[0].supplier, "Ann");
  EXPECT_EQ(purchases[1].supplier, "Bob");
  EXPECT_EQ(purchases[0].note, "");
  EXPECT_EQ(held(taken->rows[0].made.at(0), book::State::unsorted), 40);
  EXPECT_EQ(held(taken->rows[1].made.at(0), book::State::unsorted), 20);
  const auto entries =
      book_.read([](store::Reading& reading) { return reading.entries(); }).value();
  ASSERT_EQ(entries.size(), 2U);
  EXPECT_EQ(entries[0].note, "from an earlier list: K1; small; wet; the day is that since which "
                             "seed was there, since no other was said");
}

TEST_F(OldTable, ATaxonThatTheSeedParentIsNotOfStandsInTheConesNote) {
  ASSERT_TRUE(take(nursery, whole_match()));
  std::string other = nursery;
  for (auto at = other.find("Cycas revoluta"); at != std::string::npos;
       at = other.find("Cycas revoluta", at))
    other.replace(at, 14, "Cycas rumphii");
  ASSERT_TRUE(take(other, whole_match()));
  const auto cones = registers().cones;
  ASSERT_EQ(cones.size(), 2U);
  EXPECT_EQ(cones[0].note, "from an earlier list");
  EXPECT_EQ(cones[1].note, "from an earlier list; taxon: Cycas rumphii");
}

TEST_F(OldTable, OneDayForAllRowsTellsHowDatesAreWrittenToo) {
  TableMatch match;
  match.columns = {{F::taxon, "Species"}, {F::cross, "Cross"}, {F::count, "Seeds"}};
  match.for_all = {{F::kind, "seed"}, {F::since, "4.5.2025"}, {F::pollinated, "1.5.2024"}};
  const std::string text = "Species;Cross;Seeds\nCycas revoluta;Old Gate  x  Tall Male;100\n";
  const auto taken = take(text, match);
  ASSERT_TRUE(taken) << taken.error().text();
  ASSERT_TRUE(taken->faults.none()) << taken->faults.listed().front().text();
  EXPECT_NE(book::named(registers().plants, "Tall Male"), nullptr);
  match.for_all[F::since] = "4/5/2025";
  match.for_all[F::pollinated] = "1/5/2024";
  EXPECT_FALSE(take(text, match)) << "nothing tells whether it is April or May";
}

TEST_F(OldTable, ADryRunSaysTheSameAndWritesNothing) {
  const auto tried = take(nursery, whole_match(), Import::dry_run);
  ASSERT_TRUE(tried && tried->faults.none());
  EXPECT_EQ(lots(), 0U);
  EXPECT_TRUE(registers().taxa.empty());
  const auto taken = take(nursery, whole_match());
  for (std::size_t i = 0; i < tried->rows.size(); ++i)
    EXPECT_EQ(tried->rows[i].told, taken->rows[i].told);
}

struct Spoilt {
  const char* from;
  const char* to;
  std::size_t line;
  const char* column;
  const char* says;
};

TEST_F(OldTable, EveryFaultIsNamedAtItsCellAndNothingComesIn) {
  const std::vector<Spoilt> all{
      {";40;12;", ";forty;12;", 4, "Seeds", "no count"},
      {";40;12;", ";40;41;", 4, "Up", "1 too many"},
      {"10.05.2025;40", "31.04.2025;40", 4, "Sown on", "2025-04-31"},
      {"10.05.2025;40", "10.05.2027;40", 4, "Sown on", "from now"},
      {"10.05.2025;40", "01.05.2025;40", 4, "Sown on", "before the day harvested"},
      {"10.05.2025;40", ";40", 4, "Sown on", "no day"},
      {"tray;Cycas", "shelf;Cycas", 4, "What", "no kind"},
      {"seed tray;5;400", "other tray;;", 4, "Pot", "there is no tray or pot"},
      {"Tall Male;10.05.2024;04.05.2025;;", "Tall Male;;04.05.2025;;", 6, "Pollinated",
       "without the day"},
      {"Zamia furfuracea;;", ";;", 8, "Species", "no taxon"},
      {";60;;seed", ";0;;seed", 8, "Seeds", "0 or none"},
  };
  for (const auto& [from, to, line, column, says] : all) {
    std::string text = nursery;
    text.replace(text.find(from), std::string(from).size(), to);
    const auto taken = take(text, whole_match());
    ASSERT_TRUE(taken) << says << ": " << taken.error().text();
    ASSERT_FALSE(taken->faults.none()) << to;
    const auto& fault = taken->faults.listed().front();
    EXPECT_EQ(fault.where->file, "old.csv");
    EXPECT_EQ(fault.where->line, line) << fault.text();
    EXPECT_EQ(fault.where->column, column) << fault.text();
    EXPECT_NE(fault.what.find(says), std::string::npos) << fault.what;
    EXPECT_EQ(lots(), 0U);
    EXPECT_TRUE(registers().taxa.empty());
  }
}

TEST_F(OldTable, AllFaultsAreNamedNotOnlyTheFirst) {
  TableMatch match;
  match.columns = {{F::taxon, "taxon"}, {F::count, "count"}, {F::since, "since"}};
  match.for_all = {{F::kind, "seed"}};
  const auto taken =
      take("taxon,count,since\nCycas revoluta,x,2026-01-01\nCycas revoluta,4,2026-13-01\n"
           "Cycas revoluta,0,2026-01-01\nCycas revoluta,5,2026-01-01\n",
           match);
  ASSERT_TRUE(taken);
  EXPECT_EQ(taken->faults.listed().size(), 3U);
  EXPECT_EQ(lots(), 0U);
}

TEST_F(OldTable, ParentsFromACrossInOneCell) {
  TableMatch match;
  match.columns = {
      {F::cross, "cross"}, {F::taxon, "taxon"}, {F::count, "count"}, {F::harvested, "harvested"}};
  match.for_all = {{F::kind, "seed"}, {F::pollinated, "2025-05-01"}};
  const auto taken = take(
      "cross,taxon,count,harvested\nOld Gate x Tall Male,Cycas revoluta,30,2026-05-01\n", match);
  ASSERT_TRUE(taken && taken->faults.none());
  EXPECT_EQ(registers().pollen_lots.size(), 1U);
  EXPECT_NE(taken->rows[0].told.find("Old Gate × Tall Male"), std::string::npos);
}

TEST_F(OldTable, ParentPlantsComeIntoTheRegister) {
  TableMatch match;
  match.columns = {{F::name, "name"}, {F::sex, "sex"}, {F::taxon, "taxon"}, {F::place, "bench"}};
  match.for_all = {{F::kind, "parent"}};
  const auto text =
      "name,sex,taxon,bench\nOld Gate,F,Cycas revoluta,North bed\nTall Male,m,Cycas revoluta,\n";
  const auto taken = take(text, match);
  ASSERT_TRUE(taken && taken->faults.none());
  EXPECT_EQ(registers().plants.size(), 2U);
  EXPECT_EQ(registers().plants[1].sex, book::Sex::male);
  EXPECT_EQ(registers().places.front().name, "North bed");
  const auto again = take(text, match);
  ASSERT_TRUE(again);
  EXPECT_EQ(again->faults.listed().size(), 2U) << "plants that are there already";
}

TEST_F(OldTable, NamesThatDifferByASlipAreToBeLookedAt) {
  TableMatch match;
  match.columns = {{F::taxon, "taxon"}, {F::count, "count"}, {F::since, "since"}};
  match.for_all = {{F::kind, "seed"}};
  const auto taken =
      take("taxon,count,since\nCycas revoluta,5,2026-01-01\nCycas revoulta,5,2026-01-01\n", match,
           Import::dry_run);
  ASSERT_TRUE(taken && taken->faults.none());
  ASSERT_EQ(taken->look_at.size(), 1U);
  EXPECT_NE(taken->look_at[0].find("revoulta"), std::string::npos);
}

TEST_F(OldTable, TheOrderOfDayAndMonthIsAskedForWhereTheFileDoesNotTell) {
  TableMatch match;
  match.columns = {{F::taxon, "taxon"}, {F::count, "count"}, {F::since, "since"}};
  match.for_all = {{F::kind, "seed"}};
  const auto text = "taxon,count,since\nCycas revoluta,5,03/04/2026\n";
  const auto asked = take(text, match);
  ASSERT_FALSE(asked);
  EXPECT_EQ(asked.error().where->column, "since");
  match.dates = TableDates::month_day_year;
  ASSERT_TRUE(take(text, match));
  EXPECT_EQ(registers().purchases.front().bought, day("2026-03-04"));
}

TEST_F(OldTable, AMatchThatCannotBeIsRefusedBeforeAnyRow) {
  TableMatch match;
  match.columns = {{F::taxon, "no such column"}};
  match.for_all = {{F::kind, "seed"}};
  EXPECT_FALSE(take("taxon,count\nCycas revoluta,5\n", match));
  match.columns = {{F::taxon, "taxon"}};
  match.for_all.clear();
  EXPECT_FALSE(take("taxon,count\nCycas revoluta,5\n", match)) << "nothing says what the rows are";
}

TEST(ReadOldTable, FindsSeparatorHeaderAndEncoding) {
  const auto semicolons =
      read_old_table("Stock\n\na;b;;b\n1;\"x;\ny\";3;4\n;;;\n5;6\n", "t.csv", {}).value();
  EXPECT_EQ(semicolons.columns, (std::vector<std::string>{"a", "b", "column 3", "column 4"}));
  ASSERT_EQ(semicolons.rows.size(), 2U);
  EXPECT_EQ(semicolons.rows[0].fields[1], "x;\ny");
  EXPECT_EQ(semicolons.rows[1].line, 7U);
  EXPECT_EQ(semicolons.rows[1].fields.size(), 4U);
  const auto latin = read_old_table("Art,Name\n1,C\xED"
                                    "cada\n",
                                    "t.csv", {})
                         .value();
  EXPECT_EQ(latin.rows[0].fields[1], "Cícada");
}

TEST(ReadOldTable, RefusesWhatIsNoTableWithAWayOut) {
  const auto xlsx = read_old_table("PK\x03\x04 and more", "stock.xlsx", {});
  ASSERT_FALSE(xlsx);
  EXPECT_NE(xlsx.error().remedy.find("save the sheet as CSV"), std::string::npos);
  EXPECT_FALSE(read_old_table("", "t.csv", {}));
  EXPECT_FALSE(read_old_table("a,b\n", "t.csv", {})) << "no row";
  const auto open = read_old_table("a,b\n1,\"2\n", "t.csv", {});
  ASSERT_FALSE(open);
  EXPECT_EQ(open.error().where->line, 2U);
  const auto wide = read_old_table("a,b\n1,2,3\n", "t.csv", {});
  ASSERT_FALSE(wide);
  EXPECT_EQ(wide.error().where->line, 2U);
}

TEST(GuessFields, TakesEachColumnOnceAndLeavesTheUnknown) {
  const auto match =
      guess({"Species", "Mother plant", "Pollen from", "Sown date", "Seeds", "Bench", "Weather"});
  EXPECT_EQ(match.columns.at(F::taxon), "Species");
  EXPECT_EQ(match.columns.at(F::seed_parent), "Mother plant");
  EXPECT_EQ(match.columns.at(F::pollen_parent), "Pollen from");
  EXPECT_EQ(match.columns.at(F::since), "Sown date");
  EXPECT_EQ(match.columns.at(F::count), "Seeds");
  EXPECT_EQ(match.columns.at(F::place), "Bench");
  for (const auto& [field, column] : match.columns)
    EXPECT_NE(column, "Weather");
}

} // namespace
} // namespace coneline::exchange
