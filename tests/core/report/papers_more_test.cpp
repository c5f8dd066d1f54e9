// SPDX-License-Identifier: GPL-3.0-or-later
// The papers of every kind of thing, and what they say is missing.
#include "core/report/papers.h"
#include "core/work/harvest.h"
#include "core/work/leave.h"
#include "core/work/pollinate.h"
#include "core/work/recount.h"
#include "core/work/reverse.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::report {
namespace {

using book::State;
using tests::day;

class MorePapers : public testing::Test {
 protected:
  MorePapers() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  static work::Noted on(std::string_view iso) { return {day(iso), "", ""}; }
  Result<Papers> of(const PapersAsked& asked) {
    auto on_the_day = asked;
    on_the_day.printed = day("2026-04-01");
    return book.read([&](store::Reading& reading) { return papers(reading, on_the_day); });
  }
  Papers of(const Code& code) { return of(PapersAsked{code, {}, {}}).value(); }
  void refused(const PapersAsked& asked, std::string_view why) {
    const auto told = of(asked);
    ASSERT_FALSE(told) << why;
    EXPECT_NE(told.error().text().find(why), std::string::npos) << told.error().text();
  }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  book::Plant plant(const Code& code) { return *book::coded(registers().plants, code); }
  void put(const book::Plant& plant) {
    ASSERT_TRUE(book.write([&](store::Writing& writing) { return writing.put(plant); }));
  }
  Code purchase(const std::string& supplier, const std::string& note) {
    return work::buy_in(book, {"Cycas revoluta",
                               supplier,
                               Count::sure(30),
                               std::nullopt,
                               std::nullopt,
                               {day("2026-01-05"), "", note}})
        ->made.at(0);
  }
  static bool says(const std::vector<std::string>& texts, std::string_view part) {
    return std::ranges::any_of(
        texts, [&](const auto& text) { return text.find(part) != std::string::npos; });
  }
  static bool has(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(MorePapers, OfWhatIsNotThereOrHasNoneAreRefused) {
  for (const auto kind : all_kinds) {
    const auto code = Code::of(kind, 17, 99).value();
    refused({code, {}, {}}, kind == Kind::pollen || kind == Kind::place ? "has no papers of its own"
                                                                        : "there is no");
  }
  refused({{}, book::EntryId{99}, {}}, "99");
}

TEST_F(MorePapers, OfASaleThatWasReversedAreRefused) {
  const auto sold = work::leave(
      book, {first.batch, work::WayOut::sold, {}, Count::sure(20), "", {}, on("2026-03-01")});
  const auto sale = sold->entries.at(0);
  const auto told = of({{}, sale, {}}).value();
  EXPECT_TRUE(told.sold);
  EXPECT_EQ(told.subject.find(" to "), std::string::npos); // nobody was named
  EXPECT_TRUE(says(told.missing, "who bought is not recorded"));
  const auto sales = [&] {
    return book.read([&](store::Reading& reading) { return sales_of(reading, first.batch); })
        .value();
  };
  ASSERT_EQ(sales().size(), 1U);
  EXPECT_EQ(sales()[0].count, 20);
  EXPECT_EQ(sales()[0].entry, sale);
  const auto back = work::reverse(book, {sale, "", ""});
  refused({{}, sale, {}}, fmt::format("was reversed by entry {}", back->entries.at(0).value));
  EXPECT_TRUE(sales().empty());
  const auto other = book.read([&](store::Reading& reading) {
                           return sales_of(reading, Code::of(Kind::batch, 17, 99).value());
                         })
                         .value();
  EXPECT_TRUE(other.empty());
}

TEST_F(MorePapers, OfSalesAreThoseOfTheLotAlone) {
  const auto bought = purchase("Kiln", "");
  ASSERT_EQ(bought, Code::of(Kind::batch, 17, 2).value());
  ASSERT_TRUE(work::leave(
      book, {bought, work::WayOut::sold, {}, Count::sure(3), "Ann", {}, on("2026-03-01")}));
  const auto sales =
      book.read([&](store::Reading& reading) {
            return std::pair(sales_of(reading, first.batch), sales_of(reading, bought));
          })
          .value();
  EXPECT_TRUE(sales.first.empty());
  ASSERT_EQ(sales.second.size(), 1U);
  EXPECT_EQ(sales.second[0].buyer, "Ann");
}

TEST_F(MorePapers, OfAConeWithoutAPassSayThatTheFatherIsNotKnown) {
  const auto told = of(first.cone);
  EXPECT_EQ(told.count, 500);
  EXPECT_EQ(told.plants.size(), 1U);
  EXPECT_TRUE(says(told.missing, "no pollination of " + first.cone.text() + " is recorded"));
  const auto text = papers_text(told);
  EXPECT_TRUE(has(text, "none recorded"));
  EXPECT_TRUE(papers_json(told)["purchase"].is_null());
}

TEST_F(MorePapers, OfAConeWithSomeUnknownPollenSaySo) {
  const auto cone = work::pollinate(book, {first.mother,
                                           {},
                                           {{first.pollen, 0.25}, {std::nullopt, std::nullopt}},
                                           on("2026-03-01")})
                        ->made.at(0);
  const auto told = of(cone);
  EXPECT_TRUE(says(told.missing, "some of the pollen came from a father that is not known"));
  ASSERT_EQ(told.passes.size(), 2U);
  EXPECT_TRUE(has(told.passes[0].pollen, "(Father), collected 2025-01-20"));
  EXPECT_EQ(told.passes[1].pollen, "not known");
  const auto json = papers_json(told);
  EXPECT_EQ(json["pollinations"][0]["millilitres"], 0.25);
  EXPECT_TRUE(json["pollinations"][1]["millilitres"].is_null());
  EXPECT_TRUE(json["harvests"][0]["date"].is_null()); // nothing harvested yet
  EXPECT_TRUE(has(papers_text(told), "0.25"));
}

TEST_F(MorePapers, OfAPurchaseTellTheSupplierOrThatNobodyWroteIt) {
  const auto nameless = purchase("", "");
  EXPECT_TRUE(nameless.kind() == Kind::batch);
  auto told = of(nameless);
  ASSERT_TRUE(told.purchase);
  EXPECT_TRUE(says(told.missing, "the supplier is not recorded"));
  EXPECT_TRUE(says(told.missing, "what the supplier said of parents and papers"));
  told = of(Code::of(Kind::purchase, 17, 1).value());
  EXPECT_EQ(told.count, 30);
  ASSERT_EQ(told.listings.size(), 1U);
  EXPECT_EQ(told.listings[0].name, "Cycas revoluta");
  const auto known = of(purchase("Kiln", "A × B, permit 7"));
  EXPECT_FALSE(says(known.missing, "supplier"));
  EXPECT_EQ(papers_json(known)["purchase"]["supplier"], "Kiln");
  EXPECT_TRUE(has(papers_html(known), "A × B, permit 7"));
}

TEST_F(MorePapers, OfAPlantTellItsParentsAndWhatTheirPapersLack) {
  auto mother = plant(first.mother);
  mother.taxon_certainty = book::Certainty::likely;
  mother.origin = "the old park";
  mother.acquired = day("2019-05-01");
  mother.note = "by the gate";
  mother.papers = {{"permit", "12", day("2019-04-01"), "the office", ""}, {"", "13", {}, "", ""}};
  put(mother);
  auto child = mother;
  child.id = {};
  child.code = Code::of(Kind::plant, 17, 9).value();
  child.name = "Daughter";
  child.papers.clear();
  child.seed_parent = mother.id;
  put(child);
  auto told = of(child.code);
  ASSERT_EQ(told.plants.size(), 2U);
  EXPECT_EQ(told.count, 1);
  EXPECT_TRUE(says(told.missing, "who this plant comes from is not known")); // half of it
  child = plant(child.code);
  child.pollen_parent = plant(first.father).id;
  put(child);
  told = of(child.code);
  ASSERT_EQ(told.plants.size(), 3U);
  EXPECT_EQ(told.plants[2].role, "pollen parent");
  EXPECT_FALSE(says(told.missing, "who this plant comes from"));
  EXPECT_TRUE(says(told.missing, "the name Cycas revoluta is likely"));
  EXPECT_TRUE(says(told.missing, "number, day or authority of the paper is not recorded"));
  EXPECT_FALSE(says(told.missing, "of the permit is not recorded"));
  EXPECT_FALSE(says(told.missing, "(Mother): the day it came"));
  const auto page = papers_html(told);
  EXPECT_TRUE(has(page, "by the gate"));
  EXPECT_EQ(papers_json(told)["plants"][1]["papers"].size(), 2U);
  // A cone of the daughter's: her own parents stand in its papers.
  const auto cone =
      work::pollinate(book, {child.code, {}, {{first.pollen, {}}}, on("2026-03-01")})->made.at(0);
  const auto of_cone = of(cone);
  EXPECT_TRUE(std::ranges::any_of(of_cone.plants, [&](const auto& each) {
    return each.role == "seed parent of " + child.code.text();
  }));
  EXPECT_TRUE(std::ranges::any_of(of_cone.plants, [&](const auto& each) {
    return each.role == "pollen parent of " + child.code.text();
  }));
}

TEST_F(MorePapers, SayWhatRecountsFoundThatNothingExplains) {
  ASSERT_TRUE(work::recount(book, {first.batch, {}, Count::sure(490), on("2026-03-01")}));
  EXPECT_TRUE(says(of(first.batch).missing, "recounts found missing 10 that nothing explains"));
  ASSERT_TRUE(work::recount(book, {first.batch, {}, Count::sure(507), on("2026-03-02")}));
  const auto told = of(first.batch);
  EXPECT_TRUE(says(told.missing, "recounts found more by 7 that nothing explains"));
  EXPECT_EQ(told.in, told.on_hand + told.ended);
  EXPECT_EQ(told.count, 507);
}

TEST_F(MorePapers, OfATaxonWithoutAListingSayToLookItUp) {
  PapersAsked asked{first.batch, {}, {}};
  asked.rules = {{TradeRule::Kind::rule, "Permits", "ask first", "an office", day("2026-01-01")}};
  const auto told = of(asked).value();
  EXPECT_TRUE(told.listings.empty());
  ASSERT_EQ(told.rules.size(), 1U);
  EXPECT_TRUE(says(told.missing, "no listing for Cycas revoluta: look it up"));
}

TEST_F(MorePapers, OfABookThatDoesNotProveWarn) {
  auto told = of(first.batch);
  EXPECT_TRUE(has(papers_text(told), "The book was proven"));
  told.chain_holds = false;
  told.last_link.clear();
  told.missing.clear();
  const auto text = papers_text(told);
  EXPECT_TRUE(has(text, "did NOT prove"));
  EXPECT_TRUE(has(text, "nothing that the program asks for"));
  EXPECT_TRUE(has(papers_html(told), "<h2 class=\"warns\">The record"));
  EXPECT_TRUE(papers_json(told)["record"]["last_link"].is_null());
  EXPECT_EQ(papers_json(told)["record"]["proven"], false);
}

TEST(TradeRulesOfAFile, AreRefusedWithLineAndColumn) {
  const tests::Scratch scratch;
  const auto file = scratch.at("rules.csv");
  const auto refused = [&](const std::string& text, std::string_view where, std::string_view why) {
    std::ofstream(file) << text;
    const auto read = trade_rules_of(file);
    ASSERT_FALSE(read) << text;
    EXPECT_NE(read.error().text().find(where), std::string::npos) << read.error().text();
    EXPECT_NE(read.error().text().find(why), std::string::npos) << read.error().text();
  };
  const std::string header = "kind,name,says,source,as_of\n";
  refused("kind,name,says,source\n", "column as_of", "the column 'as_of' is missing");
  refused(header + "wish,Dioon,I,a list,2027-01-01\n", "line 2, column kind", "'wish' is no kind");
  refused(header + "listing,,I,a list,2027-01-01\n", "column name", "nothing stands here");
  refused(header + "rule,Dioon,,a list,2027-01-01\n", "column says", "nothing stands here");
  refused(header + "rule,Dioon,I,,2027-01-01\n", "column source", "nothing stands here");
  EXPECT_FALSE(trade_rules_of(scratch.at("none.csv")));
  std::ofstream(file) << header << "rule,Permits,ask,a list,2027-01-01\n"
                      << "listing,Dioon,II,a list,2027-01-01\n";
  const auto rules = trade_rules_of(file).value();
  EXPECT_EQ(rules[0].kind, TradeRule::Kind::rule);
  ASSERT_NE(listing_of(rules, "Dioon"), nullptr); // a genus alone
  EXPECT_EQ(listing_of(rules, "Permits"), nullptr);
}

} // namespace
} // namespace coneline::report
