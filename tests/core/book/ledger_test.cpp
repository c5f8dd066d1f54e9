// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/ledger.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>

namespace coneline::book {
namespace {

Date day(int n) {
  return Date::parse("2026-01-01").value().plus_days(n);
}

constexpr LotId batch{1};
constexpr LotId tray{2};
constexpr LotId group{3};
constexpr LotId other_tray{4};

class LedgerTest : public testing::Test {
 protected:
  LedgerTest() {
    ledger.know(batch, Kind::batch, ConeId{1}, Ledger::History::none);
    ledger.know(tray, Kind::tray, ConeId{1}, Ledger::History::none);
    ledger.know(group, Kind::pot_group, ConeId{1}, Ledger::History::none);
    ledger.know(other_tray, Kind::tray, ConeId{2}, Ledger::History::none);
  }
  Result<void> move(int on, Account from, Account to, std::int64_t count) {
    const Movement movement{from, to, Count::sure(count)};
    return ledger.admit(day(on), std::span(&movement, 1));
  }
  Ledger ledger;
};

// Common practice, no source: a big cone holds about 500 seeds.
TEST_F(LedgerTest, ABigConeGoesThroughToTheLastSeed) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 500));
  ASSERT_TRUE(move(3, {batch, State::unsorted}, {batch, State::lost_in_cleaning}, 12));
  ASSERT_TRUE(move(4, {batch, State::unsorted}, {batch, State::judged_filled}, 400));
  ASSERT_TRUE(move(4, {batch, State::unsorted}, {batch, State::judged_empty}, 88));
  ASSERT_TRUE(move(5, {batch, State::judged_empty}, {batch, State::discarded}, 88));
  ASSERT_TRUE(move(6, {batch, State::judged_filled}, {tray, State::sown}, 400));
  ASSERT_TRUE(move(90, {tray, State::sown}, {tray, State::root}, 300));
  ASSERT_TRUE(move(120, {tray, State::root}, {tray, State::leaf}, 290));
  ASSERT_TRUE(move(200, {tray, State::sown}, {tray, State::dead}, 100));
  ASSERT_TRUE(move(200, {tray, State::root}, {tray, State::dead}, 10));
  ASSERT_TRUE(move(300, {tray, State::leaf}, {group, State::plant}, 290));
  ASSERT_TRUE(move(900, {group, State::plant}, {group, State::sold}, 289));
  ASSERT_TRUE(move(900, {group, State::plant}, {group, State::planted_out}, 1));
  EXPECT_EQ(ledger.balance({batch, State::cone}), -500);
  EXPECT_FALSE(move(901, {group, State::plant}, {group, State::sold}, 1));
}

TEST_F(LedgerTest, SaysByHowMuchAndWhen) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 10));
  const auto refused = move(1, {batch, State::unsorted}, {tray, State::sown}, 12);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().what,
            "lot 1 has 10 'unsorted' on 2026-01-02, and 12 are asked for: 2 too many");
  EXPECT_EQ(ledger.balance({batch, State::unsorted}), 10);
  EXPECT_EQ(ledger.balance({tray, State::sown}), 0);
}

TEST_F(LedgerTest, NamesTheFirstLotOfSeveralThatLack) {
  std::vector<Movement> movements;
  for (std::int64_t id = 40; id > 20; --id) {
    const LotId lot{id};
    ledger.know(lot, Kind::batch, ConeId{1}, Ledger::History::none);
    ASSERT_TRUE(move(0, {lot, State::cone}, {lot, State::unsorted}, 1));
    movements.push_back(
        {{lot, State::unsorted}, {lot, State::lost_in_cleaning}, Count::sure(id == 40 ? 1 : 2)});
  }
  const auto refused = ledger.admit(day(1), movements);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().what,
            "lot 21 has 1 'unsorted' on 2026-01-02, and 2 are asked for: 1 too many");
}

TEST_F(LedgerTest, NothingIsSownBeforeItsConeIsHarvested) {
  ASSERT_TRUE(move(10, {batch, State::cone}, {batch, State::unsorted}, 10));
  EXPECT_FALSE(move(9, {batch, State::unsorted}, {tray, State::sown}, 1));
  EXPECT_TRUE(move(10, {batch, State::unsorted}, {tray, State::sown}, 1));
}

TEST_F(LedgerTest, ABackDatedEntryMustLeaveEveryLaterDayTrue) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 10));
  ASSERT_TRUE(move(20, {batch, State::unsorted}, {tray, State::sown}, 8));
  const auto refused = move(5, {batch, State::unsorted}, {batch, State::dead}, 3);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().what.find("1 below zero on 2026-01-21"), std::string::npos)
      << refused.error().what;
  EXPECT_NE(refused.error().remedy.find("At most 2"), std::string::npos) << refused.error().remedy;
  EXPECT_TRUE(move(5, {batch, State::unsorted}, {batch, State::dead}, 2));
}

TEST_F(LedgerTest, RefusesWhatTheTradeDoesNotKnow) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 10));
  ASSERT_TRUE(move(0, {batch, State::unsorted}, {tray, State::sown}, 10));
  EXPECT_FALSE(move(1, {tray, State::sown}, {group, State::plant}, 1)) << "not germinated yet";
  EXPECT_FALSE(move(1, {batch, State::cone}, {tray, State::sown}, 1)) << "not harvested";
  EXPECT_FALSE(move(1, {tray, State::dead}, {tray, State::sown}, 1)) << "the dead do not rise";
  EXPECT_FALSE(move(1, {tray, State::sown}, {tray, State::plant}, 1)) << "a tray holds no plants";
  EXPECT_FALSE(move(1, {tray, State::sown}, {tray, State::sown}, 1));
  EXPECT_FALSE(move(1, {tray, State::sown}, {tray, State::root}, 0));
  EXPECT_FALSE(move(1, {tray, State::sown}, {group, State::dead}, 1))
      << "an end belongs to the lot that lost it";
}

TEST_F(LedgerTest, ALotHoldsSeedOfOneCone) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 10));
  const auto refused = move(1, {batch, State::unsorted}, {other_tray, State::sown}, 5);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().what.find("different cones"), std::string::npos);
}

TEST_F(LedgerTest, ARecountMayFindMore) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 10));
  EXPECT_TRUE(move(1, {batch, State::unexplained}, {batch, State::unsorted}, 3));
  EXPECT_EQ(ledger.balance({batch, State::unexplained}), -3);
}

TEST_F(LedgerTest, TakesAllMovementsOfAnEntryOrNone) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 10));
  const std::vector<Movement> entry{
      {{batch, State::unsorted}, {batch, State::judged_filled}, Count::sure(6)},
      {{batch, State::unsorted}, {batch, State::judged_empty}, Count::sure(6)}};
  EXPECT_FALSE(ledger.admit(day(1), entry));
  EXPECT_EQ(ledger.balance({batch, State::judged_filled}), 0);
  EXPECT_EQ(ledger.balance({batch, State::unsorted}), 10);
}

TEST_F(LedgerTest, AReversalIsLookedAtAsAnyEntry) {
  ASSERT_TRUE(move(0, {batch, State::cone}, {batch, State::unsorted}, 10));
  const auto take_back = [&](Account from, Account to, std::int64_t count) {
    const Movement mirrored{from, to, Count::sure(count)};
    return ledger.admit_reversal(day(0), std::span(&mirrored, 1));
  };
  EXPECT_FALSE(take_back({LotId{9}, State::unsorted}, {batch, State::cone}, 10)) << "no such lot";
  EXPECT_FALSE(take_back({batch, State::unsorted}, {batch, State::cone}, 11)) << "one too many";
  EXPECT_EQ(ledger.balance({batch, State::unsorted}), 10);
  EXPECT_TRUE(take_back({batch, State::unsorted}, {batch, State::cone}, 10));
  EXPECT_EQ(ledger.balance({batch, State::unsorted}), 0);
}

TEST(Ledger, RecallsWhatWasRecordedOfALotAndAsksNothingOfANewOne) {
  std::vector<Account> asked;
  Ledger ledger(
      [&](Account account) {
        asked.push_back(account);
        return Timeline({{day(0), 10}});
      },
      [](LotId) { return std::string("a lot"); });
  ledger.know(batch, Kind::batch, ConeId{1}, Ledger::History::recall);
  ledger.know(tray, Kind::tray, ConeId{1}, Ledger::History::none);
  EXPECT_EQ(ledger.balance({batch, State::unsorted}), 10);
  const Movement sown{{batch, State::unsorted}, {tray, State::sown}, Count::sure(10)};
  ASSERT_TRUE(ledger.admit(day(1), std::span(&sown, 1)));
  EXPECT_EQ(ledger.balance({tray, State::sown}), 10);
  EXPECT_EQ(asked, (std::vector<Account>{{batch, State::unsorted}})) << "once, and of it alone";
}

TEST(Timeline, KnowsEveryDay) {
  Timeline line({{day(10), 5}, {day(0), 2}, {day(10), -3}});
  EXPECT_EQ(line.on(day(-1)), 0);
  EXPECT_EQ(line.on(day(0)), 2);
  EXPECT_EQ(line.on(day(9)), 2);
  EXPECT_EQ(line.on(day(10)), 4);
  line.add(day(5), -2);
  EXPECT_EQ(line.now(), 2);
  EXPECT_EQ(line.lowest_from(day(0)).by, 0);
  EXPECT_EQ(line.lowest_from(day(0)).date, day(5));
}

TEST(Timeline, TellsTheFirstOfItsLowestDays) {
  const Timeline timeline({{day(0), 10}, {day(31), -4}, {day(59), 3}, {day(90), -3}});
  EXPECT_EQ(timeline.lowest_from(day(0)).date, day(31));
  EXPECT_EQ(timeline.lowest_from(day(0)).by, 6);
  EXPECT_EQ(timeline.lowest_from(day(59)).date, day(90));
}

RC_GTEST_PROP(Timeline, AgreesWithAPlainSum, (const std::vector<std::pair<int, int>>& raw)) {
  Timeline line;
  std::vector<std::pair<int, int>> changes;
  for (const auto& [d, by] : raw) {
    const int on = d % 50;
    changes.emplace_back(on, by % 1000);
    line.add(day(on), by % 1000);
    for (int probe = -51; probe <= 51; probe += 17) {
      std::int64_t sum = 0;
      std::int64_t lowest = 0;
      for (int at = 51; at >= probe; --at) {
        sum = 0;
        for (const auto& [when, change] : changes)
          sum += when <= at ? change : 0;
        lowest = at == 51 ? sum : std::min(lowest, sum);
      }
      RC_ASSERT(line.on(day(probe)) == sum);
      RC_ASSERT(line.lowest_from(day(probe)).by == lowest);
    }
  }
}

// Whatever is asked of the gate, in whatever order of days: what it admits never leaves an account
// below zero on any day, and nothing is made or lost.
RC_GTEST_PROP(LedgerProperty, WhatIsAdmittedIsTrue, ()) {
  Ledger ledger;
  ledger.know(batch, Kind::batch, ConeId{1}, Ledger::History::none);
  ledger.know(tray, Kind::tray, ConeId{1}, Ledger::History::none);
  ledger.know(group, Kind::pot_group, ConeId{1}, Ledger::History::none);
  const auto account =
      rc::gen::map(rc::gen::pair(rc::gen::element(batch, tray, group), rc::gen::inRange(0, 17)),
                   [](const std::pair<LotId, int>& raw) {
                     return Account{raw.first, static_cast<State>(raw.second)};
                   });
  std::vector<std::pair<int, Movement>> admitted;
  const auto steps = *rc::gen::inRange(1, 60);
  for (int i = 0; i < steps; ++i) {
    const Movement movement{*account, *account, Count::sure(*rc::gen::inRange(0, 9))};
    const int on = *rc::gen::inRange(0, 6);
    const Movement harvest{{batch, State::cone}, {batch, State::unsorted}, Count::sure(20)};
    const auto& tried = i % 5 == 0 ? harvest : movement;
    if (ledger.admit(day(on), std::span(&tried, 1)))
      admitted.emplace_back(on, tried);
    std::map<Account, std::map<int, std::int64_t>> balances;
    std::int64_t all = 0;
    for (int d = 0; d < 6; ++d)
      for (const auto& [when, m] : admitted)
        if (when <= d) {
          balances[m.from][d] -= m.count.value();
          balances[m.to][d] += m.count.value();
        }
    for (const auto& [at, by_day] : balances) {
      for (const auto& [d, balance] : by_day)
        RC_ASSERT(balance >= 0 || standing(at.state) == Standing::beginning ||
                  at.state == State::unexplained);
      if (by_day.contains(5)) {
        RC_ASSERT(ledger.balance(at) == by_day.at(5));
        all += by_day.at(5);
      }
    }
    RC_ASSERT(all == 0);
  }
}

} // namespace
} // namespace coneline::book
