// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/with_nursery.h"

#include <fmt/format.h>

#include <cmath>
#include <fstream>

namespace coneline::commands {
namespace {

/// A tray on a bench with a logger, looked at three times.
class TemperatureCommand : public WithNursery {
 protected:
  TemperatureCommand() {
    const auto bench = nursery_.write([&](store::Writing& writing) {
      book::Place one{{}, writing.next_code(Kind::place).value(), "Bench", {}, {}, 0, 0, {}, 0};
      place_ = one.code.text();
      return writing.put(one).value();
    });
    const auto cone = nursery_.cone(nursery_.plant("Old Sentinel", book::Sex::female));
    const auto tray = nursery_.sow(nursery_.harvest(cone, "2025-02-01", 50), "2025-03-01", 40);
    book::Entry move;
    move.verb = book::Verb::move;
    move.date = tests::day("2025-03-01");
    move.lot = tray;
    move.place = bench;
    nursery_.enter(move);
    for (const auto* on : {"2025-03-11", "2025-03-21", "2025-03-31"})
      nursery_.inspect(tray, on, 5);
  }

  /// Hourly, 15 °C at midnight and 25 °C at noon: ten degree-days above 10 a day.
  std::string logger(const std::string& name, std::string_view first, int days) {
    std::ofstream out(nursery_.at(name));
    out << "Date Time,\"Temp, °C\"\n";
    for (int hour = 0; hour < 24 * days; ++hour) {
      const int of_day = hour % 24;
      out << fmt::format("{} {:02}:00,{:.4f}\n", tests::day(first).plus_days(hour / 24).iso(),
                         of_day, 15 + 10.0 * (of_day < 12 ? of_day : 24 - of_day) / 12);
    }
    return nursery_.at(name).string();
  }

  std::string place_;
};

TEST_F(TemperatureCommand, TakesInShowsAndTakesOut) {
  const auto file = logger("log.csv", "2025-02-27", 40);
  ASSERT_EQ(run({"temperature", "take-in", file, "--place", place_, "--json"}), 0) << err_.str();
  EXPECT_EQ(json()["taken"], 960);
  EXPECT_EQ(json()["unit"], "C");
  ASSERT_EQ(run({"temperature", "take-in", file, "--place", place_, "--json"}), 0);
  EXPECT_EQ(json()["taken"], 0);
  EXPECT_EQ(json()["known"], 960);
  ASSERT_EQ(run({"temperature", "show", "--json", "--days", "--from", "2025-03-01", "--until",
                 "2025-03-10"}),
            0)
      << err_.str();
  const auto place = json()["places"][0];
  EXPECT_EQ(place["days"].size(), 10U);
  EXPECT_NEAR(place["degree_days"].get<double>(), 100, 1e-9);
  EXPECT_TRUE(place["marked"].empty());
  ASSERT_EQ(run({"temperature", "take-out", "--place", place_, "--from", "2025-02-27", "--until",
                 "2025-02-28", "--json"}),
            0);
  EXPECT_EQ(json()["taken_out"], 48);
}

TEST_F(TemperatureCommand, TheReportCountsInDegreeDays) {
  ASSERT_EQ(run({"temperature", "take-in", logger("log.csv", "2025-02-27", 40), "--place", place_}),
            0)
      << err_.str();
  ASSERT_EQ(
      run({"report", "germination", "--as-of", "2025-06-01", "--time", "degree-days", "--json"}), 0)
      << err_.str();
  const auto report = json();
  EXPECT_EQ(report["time_unit"], "degree-days above 10 °C");
  ASSERT_EQ(report["crosses"].size(), 1U);
  EXPECT_NEAR(report["crosses"][0]["mean_time"].get<double>(), 200, 1e-9); // 100, 200 and 300
  EXPECT_EQ(report["crosses"][0]["trays"][0]["days_without_temperature"], 0);
  ASSERT_EQ(run({"report", "germination", "--as-of", "2025-06-01", "--time", "degree-days",
                 "--base", "15", "--json"}),
            0);
  EXPECT_NEAR(json()["crosses"][0]["mean_time"].get<double>(), 100, 1e-9);
}

TEST_F(TemperatureCommand, WhyKnowsHowWarmATrayStood) {
  ASSERT_EQ(run({"temperature", "take-in", logger("log.csv", "2025-02-27", 40), "--place", place_}),
            0);
  ASSERT_EQ(run({"why", "--as-of", "2025-06-01", "--by", "temperature", "--json"}), 0)
      << err_.str();
  EXPECT_EQ(json()["conditions"][0]["trays_known"], 1);
}

TEST_F(TemperatureCommand, RefusesWithoutWritingAnything) {
  const auto path = nursery_.at("bad.csv").string();
  std::ofstream(path) << "time,temp_c\n2025-03-01 00:00,20\n2025-03-01 01:00,warm\n";
  EXPECT_EQ(run({"temperature", "take-in", path, "--place", place_}), 1);
  EXPECT_NE(err_.str().find("line 3"), std::string::npos);
  EXPECT_EQ(run({"temperature", "take-in", path + "x", "--place", place_}), 1);
  EXPECT_EQ(run({"temperature", "take-in", path}), 2);
  EXPECT_EQ(run({"temperature", "take-in", path, "--place", place_, "--unit", "K"}), 2);
  ASSERT_EQ(run({"temperature", "show", "--json"}), 0);
  EXPECT_TRUE(json()["places"].empty());
}

} // namespace
} // namespace coneline::commands
