// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/papers.h"
#include "core/report/whole_file.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sys/stat.h>

namespace coneline::report {
namespace {

class PapersTest : public testing::Test {
 protected:
  PapersTest() : book(tests::make_first_cone(path, first)) {
    enter(book::Verb::pollinate, "2025-02-01", {},
          book::Pollination{book::PollinationMethod::dry, {{book::PollenLotId{1}, 0.5}}});
    sale = enter(book::Verb::sell, "2026-03-01",
                 {{{first.batch_id, book::State::unsorted},
                   {first.batch_id, book::State::sold},
                   Count::sure(20)}},
                 book::Sale{"Ann <Grower>", 5000});
    lost = enter(book::Verb::discard, "2026-03-02",
                 {{{first.batch_id, book::State::unsorted},
                   {first.batch_id, book::State::discarded},
                   Count::sure(5)}},
                 {});
  }
  book::EntryId enter(book::Verb verb, std::string_view on, std::vector<book::Movement> movements,
                      book::Detail detail, std::optional<book::EntryId> reverses = {}) {
    return book
        .write([&](store::Writing& writing) {
          book::Entry entry;
          entry.verb = verb;
          entry.date = tests::day(on);
          if (verb == book::Verb::pollinate)
            entry.cone = book::ConeId{1};
          else
            entry.lot = first.batch_id;
          entry.reverses = reverses;
          entry.detail = std::move(detail);
          entry.movements = std::move(movements);
          return writing.enter(entry);
        })
        .value();
  }
  Result<Papers> of(PapersAsked asked) {
    asked.printed = tests::day("2026-04-01");
    return book.read([&](store::Reading& reading) { return papers(reading, asked); });
  }
  static bool says(const std::vector<std::string>& texts, std::string_view part) {
    return std::ranges::any_of(
        texts, [&](const auto& text) { return text.find(part) != std::string::npos; });
  }

  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
  store::Book book;
  book::EntryId sale;
  book::EntryId lost;
};

TEST_F(PapersTest, TellTheLineBackToTheParents) {
  const auto told = of({first.batch, {}, {}}).value();
  EXPECT_EQ(told.what, "Mother × Father");
  ASSERT_EQ(told.plants.size(), 2U);
  EXPECT_EQ(told.plants[0].role, "seed parent");
  EXPECT_EQ(told.plants[1].role, "pollen parent");
  ASSERT_EQ(told.passes.size(), 1U);
  EXPECT_NE(told.passes[0].pollen.find("collected 2025-01-20"), std::string::npos);
  ASSERT_EQ(told.harvests.size(), 1U);
  EXPECT_EQ(told.harvests[0].seeds, 500);
  EXPECT_EQ(told.in, 500);
  EXPECT_EQ(told.in, told.on_hand + told.ended);
  EXPECT_EQ(told.disposals.size(), 2U);
  EXPECT_EQ(told.count, 475);
  EXPECT_TRUE(told.chain_holds);
  EXPECT_EQ(told.last_link.size(), 64U);
}

TEST_F(PapersTest, SayWhatIsMissing) {
  const auto missing = of({first.batch, {}, {}})->missing;
  EXPECT_TRUE(says(missing, first.mother.text() + " (Mother): no papers are recorded"));
  EXPECT_TRUE(says(missing, "the origin is not recorded"));
}

TEST_F(PapersTest, AReversedDisposalIsNone) {
  enter(book::Verb::reverse, "2026-03-02",
        {{{first.batch_id, book::State::discarded},
          {first.batch_id, book::State::unsorted},
          Count::sure(5)}},
        {}, lost);
  const auto told = of({first.batch, {}, {}}).value();
  ASSERT_EQ(told.disposals.size(), 1U);
  EXPECT_EQ(told.disposals[0].as, book::State::sold);
  EXPECT_EQ(told.in, told.on_hand + told.ended);
}

TEST_F(PapersTest, OfASaleCountWhatWasSold) {
  const auto told = of({{}, sale, {}}).value();
  EXPECT_EQ(told.count, 20);
  EXPECT_NE(told.subject.find("Ann <Grower>"), std::string::npos);
  EXPECT_EQ(told.plants.size(), 2U);
  const auto no_sale = of({{}, lost, {}});
  ASSERT_FALSE(no_sale);
  EXPECT_NE(no_sale.error().text().find("is no sale: it is 'discard'"), std::string::npos);
}

TEST_F(PapersTest, OfAPlantTellItsConesAndWhatBecameOfThem) {
  const auto told = of({first.mother, {}, {}}).value();
  ASSERT_EQ(told.plants.size(), 1U);
  EXPECT_EQ(told.passes.size(), 1U);
  EXPECT_EQ(told.harvests.size(), 1U);
  EXPECT_EQ(told.disposals.size(), 2U);
  EXPECT_TRUE(says(told.missing, "who this plant comes from is not known"));
}

TEST_F(PapersTest, OfPollenAndOfWhatIsNotThereAreRefused) {
  EXPECT_FALSE(of({first.pollen, {}, {}}));
  EXPECT_FALSE(of({Code::of(Kind::tray, 17, 9).value(), {}, {}}));
}

TEST_F(PapersTest, SayThatTheBookDoesNotProve) {
  ASSERT_EQ(tests::run_raw(path, "DROP TRIGGER movement_stays; UPDATE movement SET count = 4 WHERE "
                                 "entry_id = 4"),
            "");
  const auto told = of({first.batch, {}, {}}).value();
  EXPECT_FALSE(told.chain_holds);
  EXPECT_TRUE(says(told.missing, "does not prove"));
}

TEST_F(PapersTest, AreWrittenWithTheAdviceAndSafely) {
  const auto told = of({{}, sale, {}}).value();
  EXPECT_NE(papers_text(told).find("The authority decides."), std::string::npos);
  const auto page = papers_html(told);
  EXPECT_EQ(page.find("Ann <Grower>"), std::string::npos);
  EXPECT_NE(page.find("Ann &lt;Grower&gt;"), std::string::npos);
  const auto json = papers_json(told);
  EXPECT_EQ(json["disposals"][0]["count"], 20);
  EXPECT_EQ(json["record"]["last_link"], told.last_link);
}

// As Rutherford et al., CITES and Cycads: a user's guide, Kew, slide 26 has them.
TEST(TradeRules, ListASpeciesBeforeItsGenus) {
  const auto appendix = [](std::string_view taxon) -> std::string {
    const auto* rule = listing_of(built_in_trade_rules(), taxon);
    return rule == nullptr ? "" : rule->says;
  };
  EXPECT_EQ(appendix("Encephalartos lehmannii"), "I");
  EXPECT_EQ(appendix("Ceratozamia mexicana"), "I");
  EXPECT_EQ(appendix("Microcycas calocoma"), "I");
  EXPECT_EQ(appendix("Stangeria eriopus"), "I");
  EXPECT_EQ(appendix("Cycas beddomei"), "I");
  EXPECT_EQ(appendix("Zamia restrepoi"), "I");
  EXPECT_EQ(appendix("Cycas revoluta"), "II");
  EXPECT_EQ(appendix("Zamia integrifolia var. umbrosa"), "II");
  EXPECT_EQ(appendix("Ginkgo biloba"), "");
}

TEST(TradeRules, OfAnotherFileAreReadWithTheirFaults) {
  const tests::Scratch scratch;
  const auto file = scratch.at("rules.csv");
  std::ofstream(file) << "kind,name,says,source,as_of\nlisting,Dioon,III,a newer list,2027-02-30\n";
  const auto read = trade_rules_of(file);
  ASSERT_FALSE(read);
  EXPECT_NE(read.error().text().find("line 2, column as_of"), std::string::npos)
      << read.error().text();
  std::ofstream(file) << "kind,name,says,source,as_of\nlisting,Dioon,III,a newer list,2027-02-28\n";
  EXPECT_EQ(trade_rules_of(file).value().front().says, "III");
}

TEST(WholeFile, ForItsOwnerAloneIsReadableByNobodyElse) {
  const tests::Scratch scratch;
  const auto file = scratch.at("papers.txt");
  std::ofstream(file) << "older, and readable by all";
  ::chmod(file.c_str(), 0644);
  ASSERT_TRUE(write_whole(file, "papers", Readers::owner));
  struct stat status {};
  ::stat(file.c_str(), &status);
  EXPECT_EQ(status.st_mode & 0777U, 0600U);
}

} // namespace
} // namespace coneline::report
