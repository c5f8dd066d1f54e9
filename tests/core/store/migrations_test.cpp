// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/engine/sqlite.h"
#include "core/store/migrations.h"
#include "core/store/statement.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <fstream>

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

} // namespace
} // namespace coneline::store
