// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/buying.h"
#include "tests/core/day.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numeric>

namespace coneline::plan {
namespace {

using tests::day;
std::vector<Date> months_from(std::string_view first, int count) {
  std::vector<Date> months;
  for (int month = 0; month < count; ++month)
    months.push_back(day(first).plus_months(month));
  return months;
}

/// One offer by the unit, free but for its delivery.
Supply by_the_unit(const std::vector<double>& delivery) {
  Supply choice{1, 0, 1, {}};
  for (const auto cost : delivery)
    choice.delivery.emplace_back(cost);
  return choice;
}

/// Wagner and Whitin's recursion: orders come when nothing is left.
double by_recursion(const std::vector<double>& need, const std::vector<double>& delivery,
                    double keeping) {
  const auto n = need.size();
  std::vector<double> best(n + 1, std::numeric_limits<double>::infinity());
  best[0] = 0;
  for (std::size_t from = 0; from < n; ++from) {
    double kept = 0;
    for (auto to = from; to < n; ++to) {
      kept += keeping * need[to] * static_cast<double>(to - from);
      best[to + 1] = std::min(best[to + 1], best[from] + delivery[from] + kept);
    }
  }
  return best[n];
}

TEST(Buying, OfWagnerAndWhitinsTwelveMonthsCosts864) {
  // Wagner & Whitin 1958, Management Science 5:89-96 (from memory; recomputed by their recursion).
  const std::vector<double> need{69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56};
  const std::vector<double> delivery{85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114};
  Store store;
  store.cents_a_litre_and_month = 1;
  const auto bought =
      buy(need, store, {by_the_unit(delivery)}, "units", months_from("2026-01-01", 12));
  ASSERT_TRUE(bought) << bought.error().text();
  EXPECT_NEAR(bought->cost, 864, 1e-6);
  EXPECT_NEAR(bought->bound, 864, 1e-6);
  EXPECT_EQ(bought->gap, 0);
  EXPECT_EQ(by_recursion(need, delivery, 1), 864);
}

RC_GTEST_PROP(Buying, CostsWhatTheRecursionFinds, ()) {
  const auto months = static_cast<std::size_t>(*rc::gen::inRange(1, 8));
  std::vector<double> need;
  std::vector<double> delivery;
  for (std::size_t month = 0; month < months; ++month) {
    need.push_back(*rc::gen::inRange(1, 60));
    delivery.push_back(*rc::gen::inRange(0, 120));
  }
  Store store;
  store.cents_a_litre_and_month = *rc::gen::inRange(1, 4);
  const auto bought = buy(need, store, {by_the_unit(delivery)}, "units",
                          months_from("2026-01-01", static_cast<int>(months)));
  RC_ASSERT(bought.has_value());
  RC_ASSERT(std::abs(bought->cost - by_recursion(need, delivery, store.cents_a_litre_and_month)) <
            1e-5);
}

Offer bag(const std::string& good = "bark") {
  return {{}, good, "the mill", Form::bag, 70, 1, 900, 0, 7, 1, 25.0};
}
Offer load() {
  return {{}, "bark", "the quarry", Form::bulk, 1000, 1, 6000, 4000, 21, 1, {}};
}

TEST(OrderList, TakesBagsForLittleAndALoadForMuch) {
  const auto months = months_from("2026-03-01", 3);
  const auto few =
      order_list({{"bark", {0, 100, 0}, {}}}, {bag(), load()}, day("2026-01-10"), months);
  ASSERT_TRUE(few) << few.error().text();
  ASSERT_EQ(few->lines.size(), 1U);
  EXPECT_EQ(few->lines[0].form, Form::bag);
  EXPECT_EQ(few->lines[0].packs, 2);
  EXPECT_EQ(few->lines[0].cents, 1800);
  EXPECT_EQ(few->lines[0].kilograms, 50);
  EXPECT_EQ(few->lines[0].order_by, day("2026-03-25")); // a week before April
  // 900 litres: 13 bags cost 11,700, a load 10,000.
  const auto much =
      order_list({{"bark", {300, 300, 300}, {}}}, {bag(), load()}, day("2026-01-10"), months);
  ASSERT_TRUE(much);
  ASSERT_EQ(much->lines.size(), 1U);
  EXPECT_EQ(much->lines[0].form, Form::bulk);
  EXPECT_NEAR(much->cents, 10000, 1e-6);
  EXPECT_EQ(much->lines[0].order_by, day("2026-02-08"));
  EXPECT_LT(much->gap, 1e-4);
}

TEST(OrderList, ABaleCountsLoose) {
  Offer bale{{}, "peat", "the mill", Form::bale, 100, 2.5, 3000, 0, 0, 1, {}};
  const auto list =
      order_list({{"peat", {600}, {}}}, {bale}, day("2026-01-10"), months_from("2026-03-01", 1));
  ASSERT_TRUE(list);
  EXPECT_EQ(list->lines[0].packs, 3);
  EXPECT_EQ(list->lines[0].litres, 750);
}

TEST(OrderList, KeepsToTheLeastOrderTheRoomAndTheShelfLife) {
  const auto months = months_from("2026-03-01", 4);
  auto small = bag();
  small.delivery_cents = 2500;
  const std::vector<double> need{140, 140, 140, 140};
  const auto packs = [&](const Store& store, const Offer& offer) {
    const auto list = order_list({{"bark", need, store}}, {offer}, day("2026-01-10"), months);
    EXPECT_TRUE(list) << list.error().text();
    std::vector<std::int64_t> counts;
    for (const auto& line : list->lines)
      counts.push_back(line.packs);
    return counts;
  };
  EXPECT_EQ(packs({}, small), (std::vector<std::int64_t>{8})); // one delivery
  Store narrow;
  narrow.room = 150;
  EXPECT_EQ(packs(narrow, small), (std::vector<std::int64_t>{4, 4}));
  Store stale;
  stale.keeps = 1;
  EXPECT_EQ(packs(stale, small), (std::vector<std::int64_t>{2, 2, 2, 2}));
  Store two_months;
  two_months.keeps = 2;
  EXPECT_EQ(packs(two_months, small), (std::vector<std::int64_t>{4, 4}));
  Store stocked;
  stocked.on_hand = 490;
  EXPECT_EQ(packs(stocked, small), (std::vector<std::int64_t>{1}));
  small.least = 10;
  EXPECT_EQ(packs({}, small), (std::vector<std::int64_t>{10}));
}

TEST(OrderList, WhatIsOnHandHelpsOnlyAsLongAsItKeeps) {
  const auto months = months_from("2026-03-01", 4);
  Store store;
  store.on_hand = 200;
  const std::vector<double> need{10, 0, 0, 60};
  const auto ordered = [&] {
    const auto list = order_list({{"bark", need, store}}, {bag()}, day("2026-03-01"), months);
    EXPECT_TRUE(list) << list.error().text();
    double litres = 0;
    for (const auto& line : list->lines)
      litres += line.litres;
    return litres;
  };
  EXPECT_EQ(ordered(), 0);
  store.keeps = 2;
  EXPECT_GE(ordered(), 60) << "by June what is there now has spoilt";
  store.keeps = {};
  store.room = 20;
  EXPECT_GE(ordered(), 40) << "there is room for 20 litres only";
}

TEST(OrderList, NamesWhatCannotBe) {
  const auto months = months_from("2026-03-01", 2);
  const auto refused = [&](const std::vector<GoodNeeded>& goods, const std::vector<Offer>& offers) {
    const auto list = order_list(goods, offers, day("2026-03-10"), months);
    EXPECT_FALSE(list);
    EXPECT_NE(list.error().remedy, "");
    return list.error().what;
  };
  EXPECT_EQ(refused({{"sand", {50, 50}, {}}}, {bag()}),
            "nobody offers 'sand', of which 100.0 L are needed");
  EXPECT_NE(refused({{"bark", {50, 50}, {}}}, {}).find("nobody offers 'bark'"), std::string::npos);
  auto slow = bag();
  slow.lead_days = 40;
  EXPECT_EQ(refused({{"bark", {50, 20}, {}}}, {slow}),
            "'bark' cannot be had in time: 50.0 L in March 2026 are missing");
  auto nothing = bag();
  nothing.litres = 0;
  refused({{"bark", {50, 50}, {}}}, {nothing});
  auto paid = bag();
  paid.cents = -1;
  refused({{"bark", {50, 50}, {}}}, {paid});
}

TEST(IntegerProgram, FindsWholeNumbersAndTheirBound) {
  // Least 5x + 4y with 3x + 2y >= 7, whole: x 1, y 2 costs 13; x 2.33 would cost 11.67.
  IntegerProgram program;
  const auto x = program.column(5, 0, 10, IntegerProgram::Takes::whole);
  const auto y = program.column(4, 0, 10, IntegerProgram::Takes::whole);
  program.row(7, IntegerProgram::endless, {{x, 3}, {y, 2}});
  testing::internal::CaptureStdout();
  const auto solved = program.least_cost().value();
  EXPECT_EQ(testing::internal::GetCapturedStdout(), ""); // it belongs to the answer
  ASSERT_TRUE(solved);
  EXPECT_EQ(solved->values, (std::vector<double>{1, 2}));
  EXPECT_NEAR(solved->cost, 13, 1e-9);
  EXPECT_NEAR(solved->bound, 13, 1e-6);
  program.row(-IntegerProgram::endless, 1, {{x, 1}, {y, 1}});
  EXPECT_FALSE(program.least_cost().value());
}

TEST(IntegerProgram, SolvesWhereNoNumberIsToBeWhole) {
  // Least 5x + 4y with 3x + 2y >= 7: x alone, 7/3, costs 11.67.
  IntegerProgram program;
  const auto x = program.column(5, 0, 10);
  const auto y = program.column(4, 0, 10);
  program.row(7, IntegerProgram::endless, {{x, 3}, {y, 2}});
  const auto solved = program.least_cost();
  ASSERT_TRUE(solved && *solved) << solved.error().text();
  EXPECT_NEAR((*solved)->values[x], 7.0 / 3, 1e-9);
  EXPECT_NEAR((*solved)->cost, 35.0 / 3, 1e-9);
  EXPECT_NEAR((*solved)->bound, 35.0 / 3, 1e-6);
  program.row(-IntegerProgram::endless, 1, {{x, 1}, {y, 1}});
  EXPECT_FALSE(program.least_cost().value());
}

TEST(OrderList, SaysWhatIsMissingWhereNothingComesInTime) {
  const auto months = months_from("2026-03-01", 2);
  auto late = bag();
  late.lead_days = 300;
  const auto list = order_list({{"bark", {50, 50}, {}}}, {late}, day("2026-03-01"), months);
  ASSERT_FALSE(list);
  EXPECT_NE(list.error().what.find("'bark' cannot be had in time"), std::string::npos)
      << list.error().text();
}

} // namespace
} // namespace coneline::plan
