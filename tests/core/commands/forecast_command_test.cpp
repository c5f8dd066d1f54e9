// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/forecast_options.h"
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace coneline::commands {
namespace {

/// The invented nursery of the demonstration.
class ForecastCommand : public RunsCommands {
 protected:
  ForecastCommand() {
    EXPECT_EQ(run({"import", "--book", book_, CONELINE_TEST_DATA "/../../demo/season"}), 0)
        << err_.str();
  }

  int forecast(const std::vector<std::string>& more) {
    std::vector<std::string> arguments{"forecast", "--book", book_,    "--as-of", "2026-11-20",
                                       "--runs",   "200",    "--seed", "4"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run(arguments);
  }
  static Json row(const Json& answer, const std::string& what, const std::string& name) {
    for (const auto& one : answer["series"])
      if (one["what"] == what && one["name"] == name)
        return one;
    return nullptr;
  }

  tests::Scratch scratch_;
  std::string book_ = scratch_.at("book").string();
};

TEST_F(ForecastCommand, GivesRangesByMonth) {
  ASSERT_EQ(forecast({"--months", "24", "--json"}), 0) << err_.str();
  const auto answer = json();
  EXPECT_EQ(answer["runs"], 200);
  EXPECT_EQ(answer["months"].size(), 24U);
  EXPECT_EQ(answer["months"][0], "2026-11");
  const auto mix = row(answer, "mix", "Growing mix");
  ASSERT_EQ(mix["low"].size(), 24U);
  for (std::size_t month = 0; month < 24; ++month) {
    EXPECT_LE(mix["low"][month], mix["middle"][month]);
    EXPECT_LE(mix["middle"][month], mix["high"][month]);
  }
  EXPECT_FALSE(row(answer, "bench", "part shade").is_null());
  EXPECT_FALSE(answer["crowding"].empty());
  const auto again = out_.str();
  ASSERT_EQ(forecast({"--months", "24", "--json"}), 0);
  EXPECT_EQ(out_.str(), again);
}

TEST_F(ForecastCommand, ShowsATableAndWritesCsv) {
  const auto csv = scratch_.at("forecast.csv").string();
  ASSERT_EQ(forecast({"--months", "12", "--csv", csv}), 0) << err_.str();
  EXPECT_NE(out_.str().find("invented data"), std::string::npos);
  EXPECT_NE(out_.str().find("10 - 50 - 90 %"), std::string::npos);
  EXPECT_NE(out_.str().find("Legionella"), std::string::npos);
  std::ifstream file(csv);
  std::string header;
  std::getline(file, header);
  EXPECT_EQ(header.substr(0, 44), "month,what,name,low,middle,high,mean,unit,in");
}

TEST_F(ForecastCommand, OpensANumberIntoItsLots) {
  ASSERT_EQ(forecast({"--months", "12", "--what", "plants standing", "--name", "Deep pot 1 L",
                      "--month", "2026-12", "--json"}),
            0)
      << err_.str();
  const auto answer = json();
  ASSERT_FALSE(answer["lots"].empty());
  double sum = 0;
  for (const auto& lot : answer["lots"])
    sum += lot["expected"].get<double>();
  EXPECT_NEAR(sum, answer["expected"].get<double>(), 1e-9);
  EXPECT_EQ(forecast({"--what", "plants", "--name", "x", "--month", "2026-12"}), 2);
  EXPECT_EQ(forecast({"--what", "mix", "--name", "no such mix", "--month", "2026-12"}), 2);
  EXPECT_EQ(forecast({"--what", "mix", "--name", "Growing mix", "--month", "2036-12"}), 2);
}

TEST_F(ForecastCommand, SupposesAnotherSurvivalWithoutWritingIt) {
  const auto expected_into = [&](const std::vector<std::string>& more) {
    std::vector<std::string> arguments{"--json"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    EXPECT_EQ(forecast(arguments), 0) << err_.str();
    const auto into = row(json(), "plants into", "Pot 2.5 L");
    double sum = 0;
    for (const auto& mean : into["mean"])
      sum += mean.get<double>();
    return sum;
  };
  const auto present = expected_into({});
  EXPECT_GT(present, 0);
  EXPECT_LT(expected_into({"--survival", "Cycas revoluta:2=0.1", "--survival-weight", "1000"}),
            present);
  EXPECT_DOUBLE_EQ(expected_into({}), present);
  EXPECT_EQ(forecast({"--survival", "Cycas revoluta:2"}), 2);
  EXPECT_EQ(forecast({"--survival", "Cycas nobody:2=0.5"}), 2);
  EXPECT_EQ(forecast({"--survival", "Cycas revoluta:9=0.5"}), 2);
  EXPECT_EQ(forecast({"--survival", "Cycas revoluta:2=0"}), 2);
}

TEST_F(ForecastCommand, RefusesWhatCannotBePlanned) {
  for (const std::vector<std::string>& wrong : {std::vector<std::string>{"--months", "0"},
                                                {"--months", "2147483647"},
                                                {"--potting-months", "13"},
                                                {"--potting-months", ""},
                                                {"--runs", "0"},
                                                {"--settling", "1"},
                                                {"--sold-after", "-1"},
                                                {"--survival-weight", "0"},
                                                {"--wet-kilograms", "0"}}) {
    EXPECT_EQ(forecast(wrong), 2) << wrong[0] << ' ' << wrong[1];
    EXPECT_EQ(out_.str(), "");
  }
}

TEST(MonthsOfYear, AreReadAsTheyAreWritten) {
  const auto over_new_year = months_of_year("11-2").value();
  for (std::size_t month = 0; month < 12; ++month)
    EXPECT_EQ(over_new_year.at(month), month >= 10 || month <= 1);
  EXPECT_TRUE(months_of_year("3,5-6").value().at(5));
  EXPECT_FALSE(months_of_year("3,5-6").value().at(3));
  EXPECT_FALSE(months_of_year("3-"));
  EXPECT_FALSE(months_of_year("0-3"));
}

} // namespace
} // namespace coneline::commands
