// SPDX-License-Identifier: GPL-3.0-or-later
// The demonstration's season folder: that it comes in whole, shows what it is to show, and is what
// the generator makes.
#include "core/book/cross.h"
#include "core/exchange/import_season.h"
#include "core/store/proof.h"
#include "demo/invent.h"
#include "demo/seasons.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

#include <set>

namespace coneline::demo {
namespace {

using book::State;
using book::Verb;

const std::filesystem::path season_folder = std::filesystem::path(CONELINE_DEMO) / "season";

class Demo : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    scratch_ = std::make_unique<tests::Scratch>();
    auto made = store::Book::make(scratch_->at("book"), {"", 10, false, day("2026-01-01")});
    ASSERT_TRUE(made);
    book_ = std::make_unique<store::Book>(std::move(*made));
    const auto in = exchange::import_season(season_folder, *book_, exchange::Import::write);
    ASSERT_TRUE(in) << in.error().text();
    ASSERT_TRUE(in->faults.none()) << in->faults.listed().front().text();
    season_ = std::make_unique<exchange::Season>(
        book_->read([](store::Reading& reading) { return exchange::season_of(reading); }).value());
  }
  static void TearDownTestSuite() {
    book_.reset();
    season_.reset();
    scratch_.reset();
  }

  static std::int64_t lots_of(Kind kind) {
    return std::ranges::count_if(season_->lots,
                                 [&](const auto& lot) { return lot.code.kind() == kind; });
  }
  static std::int64_t entries_of(Verb verb) {
    return std::ranges::count(season_->entries, verb, &book::Entry::verb);
  }
  static std::map<book::Account, std::int64_t> balances() {
    std::map<book::Account, std::int64_t> all;
    for (const auto& entry : season_->entries)
      for (const auto& [from, to, count] : entry.movements) {
        all[from] -= count.value();
        all[to] += count.value();
      }
    return all;
  }
  static std::map<book::ConeId, book::Cross> crosses() {
    std::map<book::ConeId, book::Cross> all;
    for (const auto& cone : season_->registers.cones) {
      std::vector<book::Entry> passes;
      std::ranges::copy_if(season_->entries, std::back_inserter(passes), [&](const auto& entry) {
        return entry.verb == Verb::pollinate && entry.cone == cone.id;
      });
      all[cone.id] = book::cross_of(season_->registers, cone, passes);
    }
    return all;
  }

  inline static std::unique_ptr<tests::Scratch> scratch_;
  inline static std::unique_ptr<store::Book> book_;
  inline static std::unique_ptr<exchange::Season> season_;
};

TEST_F(Demo, IsProvenAndMarkedInvented) {
  const auto proof = store::prove(*book_);
  ASSERT_TRUE(proof) << proof.error().text();
  EXPECT_TRUE(proof->holds()) << proof->faults.front();
  EXPECT_TRUE(season_->registers.title.invented);
  EXPECT_NE(season_->registers.title.name.find("invented"), std::string::npos);
}

TEST_F(Demo, IsLargeEnough) {
  const auto& registers = season_->registers;
  EXPECT_GE(registers.plants.size(), 14U);
  EXPECT_EQ(registers.taxa.size(), 6U);
  EXPECT_EQ(registers.routes.size(), 6U);
  EXPECT_GE(registers.places.size(), 6U);
  EXPECT_EQ(registers.mixes.size(), 3U);
  EXPECT_GE(entries_of(Verb::harvest), 12);
  EXPECT_GE(lots_of(Kind::tray), 70);
  EXPECT_GE(lots_of(Kind::pot_group), 40);
  std::set<book::Cross> different;
  for (const auto& [cone, cross] : crosses())
    different.insert(cross);
  EXPECT_GE(different.size(), 9U);
  std::int64_t seeds = 0;
  std::int64_t largest = 0;
  for (const auto& [account, balance] : balances())
    if (account.state == State::cone) {
      seeds -= balance;
      largest = std::max(largest, -balance);
    }
  EXPECT_GE(seeds, 2500);
  EXPECT_EQ(largest, 500);
}

TEST_F(Demo, CoversThreeSeasonsUpToItsDay) {
  std::set<int> years;
  for (const auto& entry : season_->entries) {
    EXPECT_LE(entry.date, as_of());
    if (entry.verb == Verb::harvest)
      years.insert(entry.date.year());
  }
  EXPECT_EQ(years, (std::set<int>{2024, 2025, 2026}));
}

TEST_F(Demo, HasTwoFathersAnUnknownOneAndAHybrid) {
  bool two = false;
  bool unknown = false;
  bool hybrid = false;
  for (const auto& [cone, cross] : crosses()) {
    two = two || cross.pollen_parents.size() == 2;
    unknown = unknown || cross.unknown_father;
    hybrid =
        hybrid || book::taxon_formula(season_->registers, cross).find("×") != std::string::npos;
  }
  EXPECT_TRUE(two);
  EXPECT_TRUE(unknown);
  EXPECT_TRUE(hybrid);
}

TEST_F(Demo, HasACrossOfWhichNothingCameUp) {
  std::map<book::Origin, std::pair<std::int64_t, std::int64_t>> sown_and_up;
  std::map<book::LotId, book::Origin> origins;
  for (const auto& lot : season_->lots)
    origins[lot.id] = lot.origin;
  for (const auto& entry : season_->entries)
    for (const auto& [from, to, count] : entry.movements) {
      auto& [sown, up] = sown_and_up[origins.at(to.lot)];
      if (entry.verb == Verb::sow)
        sown += count.value();
      else if (entry.verb == Verb::inspect && from.state == State::sown && to.state == State::root)
        up += count.value();
    }
  EXPECT_TRUE(std::ranges::any_of(sown_and_up, [](const auto& each) {
    return each.second.first >= 20 && each.second.second == 0;
  }));
}

TEST_F(Demo, HasGoodSeedThatFloats) {
  const auto taxon = std::ranges::find_if(season_->registers.taxa, [](const auto& each) {
    return each.float_test.value == book::FloatTest::unreliable;
  });
  ASSERT_NE(taxon, season_->registers.taxa.end());
  std::int64_t opened_filled = 0;
  for (const auto& entry : season_->entries)
    for (const auto& [from, to, count] : entry.movements)
      if (from.state == State::judged_empty && to.state == State::opened_filled)
        opened_filled += count.value();
  EXPECT_GE(opened_filled, 4);
}

TEST_F(Demo, HasWhatGoesOtherwise) {
  EXPECT_GE(entries_of(Verb::reverse), 1);
  EXPECT_GE(entries_of(Verb::move), 2);
  EXPECT_GE(entries_of(Verb::buy_in), 1);
  EXPECT_GE(entries_of(Verb::plant_out), 1);
  std::int64_t unexplained = 0;
  std::int64_t waiting = 0;
  std::set<book::LotId> sprouting;
  std::set<book::LotId> sold;
  std::set<book::LotId> standing;
  for (const auto& [account, balance] : balances()) {
    unexplained += account.state == State::unexplained ? balance : 0;
    waiting += account.state == State::judged_filled ? balance : 0;
    if (account.state == State::sown && balance > 0)
      sprouting.insert(account.lot);
    if (account.state == State::sold)
      sold.insert(account.lot);
    if (account.state == State::plant && balance > 0)
      standing.insert(account.lot);
  }
  EXPECT_EQ(unexplained, 2);
  EXPECT_GE(waiting, 100);
  EXPECT_GE(sprouting.size(), 5U);
  EXPECT_TRUE(std::ranges::any_of(sold, [&](auto lot) { return !standing.contains(lot); }));
}

TEST_F(Demo, IsMadeTheSameAgain) {
  const auto again = scratch_->at("again");
  const auto made = invent(scratch_->at("passing"), again, exchange::Existing::keep);
  ASSERT_TRUE(made) << made.error().text();
  EXPECT_EQ(tests::contents(again), tests::contents(season_folder));
}

} // namespace
} // namespace coneline::demo
