// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copies.h"
#include "core/store/engine/sqlite.h"
#include "core/store/migrations.h"
#include "core/store/proof.h"
#include "core/store/statement.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace coneline::store {
namespace {

std::vector<Migration> with(Migration next) {
  auto steps = migrations();
  steps.push_back(std::move(next));
  return steps;
}

class Migrations : public testing::Test {
 protected:
  Migrations() {
    { tests::make_first_cone(path, first); }
    engine::open(session, path, engine::Mode::write);
  }
  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
  soci::session session;
};

TEST_F(Migrations, AreNumberedWithoutGaps) {
  int version = 0;
  for (const auto& step : migrations()) {
    EXPECT_EQ(step.version, ++version);
    EXPECT_FALSE(step.name.empty());
  }
  EXPECT_GE(version, 2);
}

TEST_F(Migrations, CopyTheBookAndBringItUpToDate) {
  const auto steps = with({static_cast<int>(migrations().size()) + 1, "a-new-table",
                           "CREATE TABLE extra (id INTEGER PRIMARY KEY) STRICT;"});
  ASSERT_TRUE(bring_up_to_date(session, path, steps));
  EXPECT_EQ(engine::version(session), steps.back().version);
  const auto copy = path.string() + fmt::format(".version-{}.copy", migrations().back().version);
  auto old = Book::open(copy, Access::read);
  ASSERT_TRUE(old) << old.error().text();
  EXPECT_EQ(old->read([](Reading& reading) { return reading.lots().size(); }).value(), 1U);
}

TEST_F(Migrations, AStepThatFailsLeavesTheBookAsItWas) {
  const auto steps = with(
      {static_cast<int>(migrations().size()) + 1, "a-mistake",
       "CREATE TABLE extra (id INTEGER PRIMARY KEY) STRICT; CREATE TABLE extra (id INTEGER);"});
  EXPECT_THROW(static_cast<void>(bring_up_to_date(session, path, steps)), soci::soci_error);
  EXPECT_EQ(engine::version(session), migrations().back().version);
  EXPECT_EQ(Statement(session, "SELECT count(*) FROM sqlite_master WHERE name = 'extra'").number(),
            0);
  session.close();
  EXPECT_TRUE(Book::open(path, Access::write));
}

TEST_F(Migrations, NeverWriteACopyOverAnotherFile) {
  const auto one = copy_before_migration(path, 1);
  std::ofstream(one) << "mine";
  EXPECT_NE(copy_before_migration(path, 1), one);
}

/// A book of the first schema, with a cone from pollination to plants that were sold.
void make_first_schema(const std::filesystem::path& path) {
  {
    soci::session session;
    engine::open(session, path, engine::Mode::make);
    ASSERT_TRUE(bring_up_to_date(session, path, std::span(migrations()).first(1)));
  }
  std::ostringstream rows;
  rows << std::ifstream(CONELINE_TEST_DATA "/first-schema/book.sql").rdbuf();
  ASSERT_EQ(tests::run_raw(path, rows.str()), "");
}

void holds_the_line_of_old(Reading& reading) {
  const auto entries = reading.entries();
  ASSERT_EQ(entries.size(), 10U);
  EXPECT_EQ(entries[0].who, "Ann");
  const auto& pollen = std::get<book::Pollination>(entries[0].detail).pollen;
  ASSERT_EQ(pollen.size(), 1U);
  EXPECT_EQ(pollen[0].millilitres, 0.5);
  EXPECT_EQ(entries[1].note, "after rain");
  EXPECT_EQ(entries[7].reverses, (book::EntryId{7}));
  EXPECT_EQ(std::get<book::Sale>(entries[9].detail).cents, 4500);
  EXPECT_EQ(reading.links().size(), 10U) << "the entries of old are chained too";
  std::map<book::Account, std::int64_t> held;
  for (const auto& lot : reading.lots())
    for (const auto& balance : reading.balances_of(lot.id))
      held[balance.account] = balance.count;
  using book::State;
  const book::LotId batch{1};
  const book::LotId tray{2};
  const book::LotId group{3};
  EXPECT_EQ((held[{batch, State::judged_filled}]), 140);
  EXPECT_EQ((held[{batch, State::judged_empty}]), 56);
  EXPECT_EQ((held[{tray, State::sown}]), 10);
  EXPECT_EQ((held[{tray, State::root}]), 2);
  EXPECT_EQ((held[{group, State::plant}]), 25);
  EXPECT_EQ(reading.registers().plants.at(1).note, "at the gate");
  EXPECT_EQ(reading.registers().title.name, "Invented nursery");
}

TEST(FirstSchema, ComesUpToDateWithEverySeedAndEveryWord) {
  const tests::Scratch scratch;
  const auto path = scratch.at("old.coneline");
  make_first_schema(path);
  auto book = Book::open(path, Access::write);
  ASSERT_TRUE(book) << book.error().text();
  const auto proof = prove(*book);
  ASSERT_TRUE(proof) << proof.error().text();
  EXPECT_TRUE(proof->holds()) << proof->faults.front();
  ASSERT_TRUE(book->read([](Reading& reading) {
    holds_the_line_of_old(reading);
    return true;
  }));
  const auto copies = copies_of(path);
  ASSERT_EQ(std::ranges::count(copies, Copy::Kind::before_migration, &Copy::kind), 1);
}

TEST(FirstSchema, IsReadOnceItIsUpToDate) {
  const tests::Scratch scratch;
  const auto path = scratch.at("old.coneline");
  make_first_schema(path);
  const auto refused = Book::open(path, Access::read);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().remedy, "");
  EXPECT_TRUE(copies_of(path).empty()) << "a reader writes nothing";
  EXPECT_TRUE(Book::open(path, Access::write));
  EXPECT_TRUE(Book::open(path, Access::read));
}

} // namespace
} // namespace coneline::store
