// SPDX-License-Identifier: GPL-3.0-or-later
// The chain over the entries finds what was changed behind the program's back, and names it.
#include "core/store/chain.h"
#include "core/store/engine/sqlite.h"
#include "core/store/migrations.h"
#include "core/store/proof.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace coneline::store {
namespace {

class ChainTest : public testing::Test {
 protected:
  ChainTest() {
    auto book = tests::make_first_cone(path, first);
    // Ten more entries after the harvest.
    for (int seeds = 1; seeds <= 10; ++seeds)
      EXPECT_TRUE(book.write([&](Writing& writing) {
        book::Entry entry;
        entry.verb = book::Verb::discard;
        entry.date = tests::day("2026-02-03");
        entry.lot = first.batch_id;
        entry.who = "Ana";
        entry.note = "soft ones";
        entry.movements = {{{first.batch_id, book::State::unsorted},
                            {first.batch_id, book::State::discarded},
                            Count::sure(seeds)}};
        return writing.enter(entry);
      }));
  }

  Proof proof(const std::string& printed = {}) {
    auto book = Book::open(path, Access::read).value();
    return prove(book, printed).value();
  }
  /// Takes the guards away, does the harm, puts the guards back as they were.
  Proof after(const std::string& harm) {
    EXPECT_EQ(tests::run_raw(path, "DROP TRIGGER movement_stays; DROP TRIGGER movement_remains;"
                                   "DROP TRIGGER entry_stays; DROP TRIGGER entry_remains;"
                                   "DROP TRIGGER lot_stays; DROP TRIGGER entry_link_stays;"
                                   "DROP TRIGGER entry_link_remains;" +
                                       harm),
              "");
    return proof();
  }
  static std::string chain_fault(const Proof& proof) {
    const auto found = std::ranges::find_if(
        proof.faults, [](const auto& fault) { return fault.starts_with("the chain breaks"); });
    return found == proof.faults.end() ? "" : *found;
  }
  static bool says(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
  }

  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
};

TEST_F(ChainTest, HoldsInABookThatWasLeftAlone) {
  const auto whole = proof();
  EXPECT_TRUE(whole.holds());
  EXPECT_EQ(whole.links, 11);
  EXPECT_EQ(whole.last_link.size(), 64U);
}

TEST_F(ChainTest, FindsOneChangedDigitOfAnOldMovement) {
  const auto fault = chain_fault(after("UPDATE movement SET count = 3 WHERE entry_id = 3"));
  EXPECT_TRUE(says(fault, "entry 3 of 2026-02-03 (discard; now 3 'unsorted'")) << fault;
}

// Each changes one byte, or one word, of what the third entry says. The sums stay true in most of
// them, so that nothing but the chain can find it.
TEST_F(ChainTest, FindsAnyChangedByteOfAnEntry) {
  for (const auto* harm :
       {"UPDATE movement SET to_state = 'dead' WHERE entry_id = 3",
        "UPDATE movement SET to_state = 'discardee' WHERE entry_id = 3",
        "UPDATE entry SET date = '2026-02-04' WHERE id = 3",
        "UPDATE entry SET date = '2026-02-0x' WHERE id = 3",
        "UPDATE entry SET who = 'Anb' WHERE id = 3",
        "UPDATE entry SET note = 'soft one' WHERE id = 3",
        "UPDATE entry SET entered = '2020-01-01T00:00:00Z' WHERE id = 3",
        "UPDATE entry SET verb = 'lose' WHERE id = 3", "DELETE FROM movement WHERE entry_id = 3",
        "INSERT INTO sale (entry_id, buyer) VALUES (3, 'a buyer')"}) {
    const auto copy = scratch.at("copy.coneline");
    std::filesystem::copy_file(path, copy, std::filesystem::copy_options::overwrite_existing);
    const auto kept = std::exchange(path, copy);
    const auto fault = chain_fault(after(harm));
    EXPECT_TRUE(says(fault, "entry 3 of 2026-02-0")) << harm << ": " << fault;
    path = kept;
  }
}

TEST_F(ChainTest, FindsAnEntryTakenOut) {
  const auto fault = chain_fault(
      after("DELETE FROM movement WHERE entry_id = 5; DELETE FROM entry_link WHERE entry_id = 5;"
            "DELETE FROM entry WHERE id = 5"));
  EXPECT_TRUE(says(fault, "entry 6")) << fault;
  EXPECT_TRUE(says(fault, "taken out")) << fault;
}

TEST_F(ChainTest, FindsAnEntryThatTheProgramDidNotWrite) {
  const auto fault = chain_fault(
      after("INSERT INTO entry (verb, date, lot_id, who, note, entered) VALUES ('inspect', "
            "'2026-02-05', 1, '', '', '2026-02-05T08:00:00Z')"));
  EXPECT_TRUE(says(fault, "entry 12 of 2026-02-05 (inspect) has no link")) << fault;
}

TEST_F(ChainTest, FindsALotGivenToAnotherCone) {
  const auto fault =
      chain_fault(after("INSERT INTO cone (number, plant_id, note) VALUES (2, 1, '');"
                        "UPDATE lot SET cone_id = 2 WHERE id = 1"));
  EXPECT_TRUE(says(fault, "entry 1 of 2026-02-01")) << fault;
}

TEST_F(ChainTest, TellsAPrintedLinkThatIsNoLongerInTheChain) {
  const auto printed = proof().last_link;
  EXPECT_TRUE(proof(printed).holds());
  const auto other = proof(std::string(64, '0'));
  ASSERT_EQ(other.faults.size(), 1U);
  EXPECT_TRUE(says(other.faults.front(), "not in this book's chain"));
}

// Whoever mends the link as well breaks the next one.
TEST_F(ChainTest, MendingOneLinkBreaksTheNext) {
  const auto fault = chain_fault(
      after("UPDATE movement SET count = 3 WHERE entry_id = 3; UPDATE entry_link SET hash = "
            "'" +
            std::string(64, 'a') + "' WHERE entry_id = 3"));
  EXPECT_TRUE(says(fault, "entry 3")) << fault;
}

TEST_F(ChainTest, ChangingANameInARegisterLeavesItWhole) {
  EXPECT_EQ(tests::run_raw(path, "UPDATE plant SET name = 'Grandmother' WHERE id = 1"), "");
  EXPECT_TRUE(proof().holds());
}

// A book from before there was a chain, made by the steps before it.
TEST_F(ChainTest, OlderBooksAreChainedWhenTheyAreBroughtUpToDate) {
  const auto before = std::ranges::find(migrations(), "a-chain-over-the-entries", &Migration::name);
  ASSERT_NE(before, migrations().end());
  const auto old = scratch.at("old.coneline");
  {
    soci::session session;
    engine::open(session, old, engine::Mode::make);
    ASSERT_TRUE(bring_up_to_date(session, old, std::span(migrations().begin(), before)));
  }
  const auto want = proof();
  ASSERT_EQ(tests::run_raw(old, "PRAGMA foreign_keys = OFF; ATTACH '" + path.string() +
                                    "' AS new;"
                                    "INSERT INTO book SELECT id, name, series, invented, made_on "
                                    "FROM new.book;"
                                    "INSERT INTO taxon SELECT * FROM new.taxon;"
                                    "INSERT INTO plant SELECT id, number, name, taxon_id, "
                                    "taxon_certainty, sex, origin, acquired, place_id, note FROM "
                                    "new.plant;"
                                    "INSERT INTO cone SELECT id, number, plant_id, first_seen, "
                                    "note FROM new.cone;"
                                    "INSERT INTO lot SELECT * FROM new.lot;"
                                    "INSERT INTO entry SELECT * FROM new.entry;"
                                    "INSERT INTO movement SELECT * FROM new.movement;"),
            "");
  path = old;
  ASSERT_TRUE(Book::open(path, Access::write));
  const auto got = proof();
  EXPECT_TRUE(got.holds()) << got.faults.front();
  EXPECT_EQ(got.links, 11);
  EXPECT_EQ(got.last_link, want.last_link); // the same entries give the same chain
}

TEST_F(ChainTest, HoldsOverManyEntriesOfOneTransaction) {
  constexpr int entries = 500;
  book::Entry entry;
  entry.verb = book::Verb::recount;
  entry.date = tests::day("2026-02-05");
  entry.lot = first.batch_id;
  entry.who = "Ana";
  entry.movements = {{{first.batch_id, book::State::unexplained},
                      {first.batch_id, book::State::unsorted},
                      Count::sure(1)}};
  const auto before = proof().links;
  auto book = Book::open(path, Access::write).value();
  ASSERT_TRUE(book.write([&](Writing& writing) -> Result<void> {
    for (int i = 0; i < entries; ++i)
      if (auto entered = writing.enter(entry); !entered)
        return refuse(entered.error());
    return {};
  }));
  const auto after = prove(book).value();
  EXPECT_TRUE(after.holds());
  EXPECT_EQ(after.links, before + entries);
}

// Against another implementation: printf '\nabc' | sha256sum, and with x in front.
TEST(Link, IsASha256) {
  EXPECT_EQ(book::next_link("", "abc"),
            "f39d39bfc99287b848780d4110eb663f0e7c344ae41f46a390c4135b89dc2756");
  EXPECT_EQ(book::next_link("x", "abc"),
            "80a9f8da6631567eb7e638daa19dee7540089f69c392200eb6603a10b68ce7d6");
}

} // namespace
} // namespace coneline::store
