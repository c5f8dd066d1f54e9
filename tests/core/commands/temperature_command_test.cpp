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

/// 50 and 68 °F are 10 and 20 °C, in files of every way of writing.
TEST_F(TemperatureCommand, ReadsAFileInTheWayThatIsStated) {
  const auto taken = [&](const std::string& name, const std::string& text,
                         std::vector<std::string> stated) {
    const auto file = nursery_.at(name).string();
    std::ofstream(file) << text;
    stated.insert(stated.begin(), {"temperature", "take-in", file, "--place", place_, "--json"});
    EXPECT_EQ(run(stated), 0) << name << '\n' << err_.str();
    return json();
  };
  const auto comma =
      taken("comma.csv", "when;warmth\n01/02/2025 00:00;50,0\n01/02/2025 06:00;68,0\n",
            {"--unit", "F", "--delimiter", "semicolon", "--decimal", "comma", "--date-order", "dmy",
             "--time-column", "when", "--temperature-column", "warmth"});
  EXPECT_EQ(comma["unit"], "F");
  EXPECT_EQ(comma["first"], "2025-02-01T00:00:00");
  const auto tab =
      taken("tab.csv", "when\twarmth\n03/04/2025 00:00\t10.0\n03/04/2025 06:00\t20.0\n",
            {"--unit", "C", "--delimiter", "tab", "--decimal", "point", "--date-order", "mdy",
             "--time-column", "when", "--temperature-column", "warmth"});
  EXPECT_EQ(tab["first"], "2025-03-04T00:00:00");
  const auto ymd = taken("ymd.csv",
                         "when,warmth\n2025-05-06 00:00,10.0\n2025-05-06 06:00,\n"
                         "2025-05-06 03:00,15\n2025-05-06 00:00,11.0\n",
                         {"--unit", "C", "--delimiter", "comma", "--date-order", "ymd",
                          "--time-column", "when", "--temperature-column", "warmth"});
  EXPECT_EQ(ymd["taken"], 2);
  EXPECT_EQ(ymd["without_reading"], 1);
  EXPECT_EQ(ymd["second_answers"], 1);
  EXPECT_GE(ymd["out_of_order"], 1);
  ASSERT_EQ(run({"temperature", "show", "--place", place_, "--days"}), 0);
  EXPECT_NE(out_.str().find("degree-days above 10 °C (average method)"), std::string::npos)
      << out_.str();
  EXPECT_NE(out_.str().find("gap "), std::string::npos) << "weeks lie between the files";
}

TEST_F(TemperatureCommand, TellsWhatWasThereAlreadyAndWhatDiffers) {
  const auto first = logger("first.csv", "2025-03-01", 2);
  ASSERT_EQ(run({"temperature", "take-in", first, "--place", place_}), 0);
  const auto path = nursery_.at("second.csv").string();
  std::ofstream(path) << "Date Time,\"Temp, °C\"\n2025-03-01 00:00,15.0\n2025-03-01 01:00,3.0\n"
                         "2025-03-04 00:00,12.0\n2025-03-04 00:00,12.0\n";
  ASSERT_EQ(run({"temperature", "take-in", path, "--place", place_}), 0) << err_.str();
  for (const auto* said : {"1 readings taken in", "1 were in the book already",
                           "1 differ from what the book has", "1 rows were written twice"})
    EXPECT_NE(out_.str().find(said), std::string::npos) << said << '\n' << out_.str();
}

TEST_F(TemperatureCommand, WrongPlacesDaysAndBasesAreRefused) {
  EXPECT_EQ(run({"temperature", "show"}), 0);
  EXPECT_NE(out_.str().find("No temperature was taken in yet"), std::string::npos);
  EXPECT_EQ(run({"temperature", "show", "--place", absent(Kind::place)}), 1);
  EXPECT_NE(err_.str().find("is no place"), std::string::npos) << err_.str();
  EXPECT_EQ(run({"temperature", "show", "--from", "spring"}), 1);
  EXPECT_EQ(run({"temperature", "show", "--base", "nan"}), 2);
  EXPECT_EQ(run({"temperature", "show", "--method", "guess"}), 2);
  EXPECT_EQ(
      run({"temperature", "take-out", "--place", place_, "--from", "x", "--until", "2025-01-01"}),
      1);
  EXPECT_EQ(
      run({"temperature", "take-out", "--place", place_, "--from", "2025-01-01", "--until", "x"}),
      1);
  EXPECT_EQ(run({"temperature", "take-out", "--place", absent(Kind::place), "--from", "2025-01-01",
                 "--until", "2025-01-02"}),
            1);
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
