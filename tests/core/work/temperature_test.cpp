// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/temperature.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using tests::day;
using tests::SmallNursery;

/// A tray on a bench in a house; the logger hangs in the house.
class Temperatures : public testing::Test {
 protected:
  Temperatures() {
    house_ = place("House", book::PlaceKind::house, {});
    bench_ = place("Bench", book::PlaceKind::bench, house_);
    tray_ = nursery_.sow(
        nursery_.harvest(nursery_.cone(nursery_.plant("Old Sentinel", book::Sex::female)),
                         "2025-02-01", 50),
        "2025-03-01", 40);
    book::Entry move;
    move.verb = book::Verb::move;
    move.date = day("2025-03-01");
    move.lot = tray_;
    move.place = bench_;
    nursery_.enter(move);
    nursery_.inspect(tray_, "2025-03-11", 5);
    nursery_.inspect(tray_, "2025-03-21", 3);
  }

  book::PlaceId place(const std::string& name, book::PlaceKind kind,
                      std::optional<book::PlaceId> within) {
    return nursery_.write([&](store::Writing& writing) {
      book::Place one{{}, writing.next_code(Kind::place).value(), name, kind, within, 0, 0, {}, 0};
      return writing.put(one).value();
    });
  }

  /// Every hour of some days at one temperature by night and another by day.
  static std::vector<book::Temperature> measured(std::string_view first, int days, double night,
                                                 double noon) {
    std::vector<book::Temperature> readings;
    for (int hour = 0; hour < days * 24; ++hour) {
      const int of_day = hour % 24;
      readings.push_back({{},
                          {day(first).plus_days(hour / 24), of_day * 3600},
                          night + (noon - night) * (of_day < 12 ? of_day : 24 - of_day) / 12.0});
    }
    return readings;
  }
  TakenIn take_in(const std::vector<book::Temperature>& readings) {
    return nursery_.write([&](store::Writing& writing) {
      return take_in_temperature(writing, house_, readings).value();
    });
  }
  ObservedTray tray() {
    return nursery_.ask([](store::Reading& reading) {
      return observed_trays(reading, reading.registers(), day("2025-06-01")).front();
    });
  }
  Warmth warmth() {
    return nursery_.ask(
        [](store::Reading& reading) { return Warmth(reading, reading.registers(), {}); });
  }

  SmallNursery nursery_;
  book::PlaceId house_;
  book::PlaceId bench_;
  book::LotId tray_;
};

TEST_F(Temperatures, AnOverlappingFileAddsOnlyWhatIsNew) {
  EXPECT_EQ(take_in(measured("2025-03-01", 10, 15, 25)).taken, 240U);
  const auto again = take_in(measured("2025-03-08", 10, 15, 25));
  EXPECT_EQ(again.taken, 168U);
  EXPECT_EQ(again.known, 72U);
  const auto other = take_in(measured("2025-03-08", 1, 16, 26));
  EXPECT_EQ(other.taken, 0U);
  EXPECT_EQ(other.differing, 24U);
}

TEST_F(Temperatures, ABenchHasThatOfItsHouse) {
  take_in(measured("2025-02-27", 40, 15, 25));
  const auto celsius = warmth().celsius(tray());
  ASSERT_TRUE(celsius);
  EXPECT_NEAR(*celsius, 20, 0.1);
  const auto warm = warmth().in_degree_days(tray());
  ASSERT_TRUE(warm) << warm.error().text();
  EXPECT_EQ(warm->days, 20);
  EXPECT_EQ(warm->lacking, 0);
  ASSERT_EQ(warm->tray.looks.size(), 2U);
  EXPECT_NEAR(warm->tray.looks[0].day, 100, 1e-9); // ten days of (15+25)/2 - 10
  EXPECT_NEAR(warm->tray.looks[1].day, 200, 1e-9);
}

TEST_F(Temperatures, AFewDaysThatLackAreSaidManyAreRefused) {
  take_in(measured("2025-02-27", 22, 15, 25)); // up to 2025-03-20: the last day lacks an end
  const auto warm = warmth().in_degree_days(tray());
  ASSERT_TRUE(warm) << warm.error().text();
  EXPECT_EQ(warm->lacking, 0);
  SmallNursery other;
  const auto cold = nursery_.ask([](store::Reading& reading) {
    return Warmth(reading, reading.registers(), {10, stats::DegreeDays::average, 0});
  });
  EXPECT_TRUE(cold.in_degree_days(tray()));
  nursery_.write([&](store::Writing& writing) {
    return writing.take_out_temperatures(house_, day("2025-03-05"), day("2025-03-08"));
  });
  const auto lacking = warmth().in_degree_days(tray());
  ASSERT_FALSE(lacking);
  EXPECT_EQ(lacking.error().what, "4 of its 20 days have no temperature");
}

TEST_F(Temperatures, LooksWithoutWarmthBetweenThemAreOne) {
  take_in(measured("2025-02-27", 13, 15, 25));
  take_in(measured("2025-03-12", 20, 2, 6));
  const auto warm = warmth().in_degree_days(tray());
  ASSERT_TRUE(warm) << warm.error().text();
  ASSERT_EQ(warm->tray.looks.size(), 2U); // one warm day, the 11th, lies between
  nursery_.inspect(tray_, "2025-03-25", 2);
  const auto later = warmth().in_degree_days(tray());
  ASSERT_EQ(later->tray.looks.size(), 2U);
  EXPECT_EQ(later->tray.looks[1].germinated, 5);
}

TEST_F(Temperatures, ComeInWithHowFarTheyAreAndNotOnceStopped) {
  const auto readings = measured("2025-02-27", 100, 15, 25);
  std::vector<double> shares;
  int stop_at = 2;
  const auto progress = [&](std::size_t done, std::size_t of) {
    shares.push_back(static_cast<double>(done) / static_cast<double>(of));
    return static_cast<int>(shares.size()) != stop_at;
  };
  const auto stopped = nursery_.book().write([&](store::Writing& writing) {
    return take_in_temperature(writing, house_, readings, progress);
  });
  ASSERT_FALSE(stopped);
  EXPECT_NE(stopped.error().what.find("stopped"), std::string::npos);
  EXPECT_FALSE(warmth().celsius(tray()));
  stop_at = 0;
  shares.clear();
  const auto taken = nursery_.book().write([&](store::Writing& writing) {
    return take_in_temperature(writing, house_, readings, progress);
  });
  ASSERT_TRUE(taken);
  EXPECT_EQ(taken->taken, readings.size());
  EXPECT_EQ(shares.size(), 4U) << "every thousandth, and at the end";
  EXPECT_TRUE(std::ranges::is_sorted(shares));
  EXPECT_EQ(shares.back(), 1);
}

TEST_F(Temperatures, WithoutALoggerThereIsNothing) {
  EXPECT_FALSE(warmth().celsius(tray()));
  EXPECT_FALSE(warmth().in_degree_days(tray()));
}

} // namespace
} // namespace coneline::work
