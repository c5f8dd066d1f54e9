// SPDX-License-Identifier: GPL-3.0-or-later
// A germination report by degree-days, from a logger's readings in the house: its unit, the days
// that lack a temperature, and the trays of which too many do.
#include "core/base/csv.h"
#include "core/report/germination_report.h"
#include "core/work/temperature.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using tests::day;

/// Two trays on a bench in a house whose logger hangs in the house, and one that stands nowhere.
class ByDegreeDays : public testing::Test {
 protected:
  ByDegreeDays() {
    house = place("House", book::PlaceKind::house, {});
    const auto bench = place("Bench", book::PlaceKind::bench, house);
    const auto cone = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
    const auto batch = nursery.harvest(cone, "2025-02-01", 150);
    for (int i = 0; i < 3; ++i) {
      const auto tray = nursery.sow(batch, "2025-03-01", 40);
      trays.push_back(tray);
      if (i < 2)
        stand(tray, bench);
      nursery.inspect(tray, "2025-03-11", 5 + i);
      nursery.inspect(tray, "2025-03-21", 3);
    }
    nursery.write([&](store::Writing& writing) {
      return work::take_in_temperature(writing, house, measured("2025-02-27", 40)).has_value();
    });
  }
  book::PlaceId place(const std::string& name, book::PlaceKind kind,
                      std::optional<book::PlaceId> within) {
    return nursery.write([&](store::Writing& writing) {
      return writing
          .put(book::Place{
              {}, writing.next_code(Kind::place).value(), name, kind, within, 0, 0, {}, 0})
          .value();
    });
  }
  void stand(book::LotId tray, book::PlaceId where) {
    book::Entry move;
    move.verb = book::Verb::move;
    move.date = day("2025-03-01");
    move.lot = tray;
    move.place = where;
    nursery.enter(move);
  }
  /// Every hour, 15 °C at midnight and 25 °C at noon: a mean of 20.
  static std::vector<book::Temperature> measured(std::string_view first, int days) {
    std::vector<book::Temperature> readings;
    for (int hour = 0; hour < days * 24; ++hour) {
      const int of_day = hour % 24;
      readings.push_back({{},
                          {day(first).plus_days(hour / 24), of_day * 3600},
                          15 + 10 * (of_day < 12 ? of_day : 24 - of_day) / 12.0});
    }
    return readings;
  }
  void take_out(std::string_view first, std::string_view last) {
    nursery.write([&](store::Writing& writing) {
      return writing.take_out_temperatures(house, day(first), day(last)) > 0;
    });
  }
  Result<GerminationReport> report(work::DegreeDayRules rules = {}) {
    Asked asked{day("2025-06-01")};
    asked.degree_days = rules;
    return nursery.book().read(
        [&](store::Reading& reading) { return germination_report(reading, asked); });
  }
  static bool has(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
  }

  tests::SmallNursery nursery;
  book::PlaceId house;
  std::vector<book::LotId> trays;
};

// Ten days of (15 + 25) / 2 - 10 = 10 °C above the base are 100 degree-days.
TEST_F(ByDegreeDays, TimesAreWarmthAndTraysWithoutAPlaceAreLeftOut) {
  const auto told = report().value();
  ASSERT_EQ(told.crosses.size(), 1U);
  ASSERT_EQ(told.crosses[0].trays.size(), 2U);
  EXPECT_NEAR(told.crosses[0].trays[0].seen.looks.at(0).day, 100, 1e-9);
  EXPECT_NEAR(told.crosses[0].trays[0].seen.looks.at(1).day, 200, 1e-9);
  EXPECT_EQ(told.crosses[0].trays[0].days, 20);
  ASSERT_EQ(told.left_out.size(), 1U);
  EXPECT_EQ(told.left_out[0].code, nursery.lot_of(trays[2]).code);
  EXPECT_EQ(told.left_out[0].why, "20 of its 20 days have no temperature");
  EXPECT_TRUE(has(lacking_told(told), "Degree-days above 10 °C by the average method."));
  EXPECT_TRUE(has(lacking_told(told), "No day lacks a temperature."));
  EXPECT_TRUE(has(lacking_told(told), "1 tray is left out"));
}

TEST_F(ByDegreeDays, EveryFormNamesTheUnitAndWhatLacked) {
  take_out("2025-03-05", "2025-03-05"); // one of twenty days
  const auto told = report().value();
  EXPECT_EQ(told.crosses.at(0).trays.at(0).days_lacking, 1);
  // The day counts like the mean of the others.
  EXPECT_NEAR(told.crosses[0].trays[0].seen.looks.at(1).day, 200, 1e-6);
  EXPECT_TRUE(has(lacking_told(told), "2 days of 2 trays have no temperature"));
  const auto page = germination_html(told);
  EXPECT_TRUE(has(page, "mean degree-days"));
  EXPECT_TRUE(has(page, "2 days of 2 trays"));
  const auto json = germination_json(told);
  EXPECT_EQ(json["time_unit"], "degree-days above 10 °C");
  EXPECT_EQ(json["temperature"], lacking_told(told));
  EXPECT_EQ(json["crosses"][0]["trays"][0]["days_without_temperature"], 1);
  const auto table = read_csv(germination_csv(told), "report.csv").value();
  const auto field = [&](std::size_t row, const char* name) {
    return table.rows.at(row).fields[table.column(name).value()];
  };
  EXPECT_EQ(field(0, "time_unit"), "degree-days above 10 °C");
  EXPECT_EQ(field(1, "level"), "tray");
  EXPECT_EQ(field(1, "days_without_temperature"), "1");
  EXPECT_TRUE(germination_xlsx(told)->starts_with("PK"));
}

TEST_F(ByDegreeDays, TooManyDaysThatLackLeaveATrayOut) {
  take_out("2025-03-05", "2025-03-07"); // three of twenty, and one in ten is allowed
  EXPECT_TRUE(report()->crosses.empty());
  EXPECT_EQ(report()->left_out.size(), 3U);
  work::DegreeDayRules lenient;
  lenient.most_lacking = 0.2;
  EXPECT_EQ(report(lenient)->crosses.size(), 1U);
}

TEST_F(ByDegreeDays, AMeanIsKnownWhereHalfTheDaysAre) {
  const auto celsius = [&] {
    return nursery.ask([&](store::Reading& reading) {
      const auto registers = reading.registers();
      const work::Warmth warmth(reading, registers, {});
      const auto seen = work::observed_trays(reading, registers, day("2025-06-01"));
      return work::celsius_of_trays(warmth, seen);
    });
  };
  ASSERT_EQ(celsius().size(), 2U);
  EXPECT_NEAR(celsius().at(trays[0]), 20, 0.1);
  take_out("2025-03-01", "2025-03-09"); // 9 of 20: the mean of the other 11
  EXPECT_EQ(celsius().size(), 2U);
  take_out("2025-03-01", "2025-03-12"); // 12 of 20
  EXPECT_TRUE(celsius().empty());
}

TEST_F(ByDegreeDays, ATrayCountsFromWhereItStoodOnThatDay) {
  const auto cold = place("Cold frame", book::PlaceKind::house, {}); // without a logger
  book::Entry move;
  move.verb = book::Verb::move;
  move.date = day("2025-03-11");
  move.lot = trays[0];
  move.place = cold;
  nursery.enter(move);
  const auto told = report().value();
  ASSERT_EQ(told.left_out.size(), 2U);
  EXPECT_EQ(told.left_out[0].code, nursery.lot_of(trays[0]).code);
  EXPECT_EQ(told.left_out[0].why, "10 of its 20 days have no temperature");
}

TEST_F(ByDegreeDays, ReadingsThatLookLikeAFaultAreMarked) {
  nursery.write([&](store::Writing& writing) {
    auto readings = measured("2025-05-01", 3);
    readings[30].celsius = 85; // a sensor that was unplugged for one reading
    return work::take_in_temperature(writing, house, readings).has_value();
  });
  const auto places = nursery.ask([](store::Reading& reading) {
    return work::place_temperatures(reading, reading.registers(), 10);
  });
  ASSERT_EQ(places.size(), 1U);
  EXPECT_EQ(places[0].readings, (40U + 3U) * 24U);
  ASSERT_EQ(places[0].marked.size(), 1U);
  EXPECT_EQ(places[0].marked[0].celsius, 85);
  EXPECT_EQ(places[0].marked[0].at.date, day("2025-05-02"));
}

} // namespace
} // namespace coneline::report
