// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/logger_file.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::exchange {
namespace {

LoggerFile read(const std::string& text, const LoggerOptions& options = {}) {
  auto file = read_logger(text, "log.csv", options);
  EXPECT_TRUE(file) << file.error().text();
  return file ? *file : LoggerFile{};
}

std::string refusal(const std::string& text, const LoggerOptions& options = {}) {
  const auto file = read_logger(text, "log.csv", options);
  EXPECT_FALSE(file);
  return file ? "" : file.error().text();
}

std::string first(const LoggerFile& file) {
  return file.readings.empty()
             ? ""
             : fmt::format("{} {:.2f}", file.readings[0].at.iso(), file.readings[0].celsius);
}

TEST(LoggerFile, FindsItsColumnsAfterAPreamble) {
  const auto file = read("\xEF\xBB\xBF\"Plot Title: Bench, left\"\n\n"
                         "#,Date Time,\"Temp, °C (LGR 1)\",Logged\n"
                         "1,2026-03-09 14:00:00,24.5,\n2,2026-03-09 14:15,24.25,x\n");
  EXPECT_EQ(file.readings.size(), 2U);
  EXPECT_EQ(first(file), "2026-03-09T14:00:00 24.50");
  EXPECT_EQ(file.temperature_column, "Temp, °C (LGR 1)");
  EXPECT_EQ(file.readings[1].line, 5U);
}

TEST(LoggerFile, ReadsSemicolonsAndDecimalCommas) {
  EXPECT_EQ(first(read("Datum/Date;Temperature [C];Feuchte\n09.03.2026 14:00;24,5;80,1\n")),
            "2026-03-09T14:00:00 24.50");
  EXPECT_EQ(first(read("date\ttime\ttemp_c\n2026-03-09\t02:05 PM\t-1,25\n")),
            "2026-03-09T14:05:00 -1.25");
}

TEST(LoggerFile, ReadsFahrenheit) {
  EXPECT_EQ(first(read("timestamp,Temp (°F)\n2026-03-09T14:00:00Z,77\n")),
            "2026-03-09T14:00:00 25.00");
  LoggerOptions options;
  options.unit = TemperatureUnit::fahrenheit;
  EXPECT_EQ(first(read("time,temperature\n2026-03-09 00:00,14\n", options)),
            "2026-03-09T00:00:00 -10.00");
}

TEST(LoggerFile, ReadsLatin1) {
  EXPECT_EQ(first(read("time,Temp \xB0"
                       "C\n2026-03-09 00:00,14\n")),
            "2026-03-09T00:00:00 14.00");
}

TEST(LoggerFile, LearnsTheOrderOfTheDateFromTheWholeFile) {
  EXPECT_EQ(first(read("time,temp_c\n03/09/2026 1:00,1\n03/19/2026 1:00,2\n")),
            "2026-03-09T01:00:00 1.00");
  EXPECT_EQ(first(read("time,temp_c\n03/09/26 1:00,1\n19/09/26 1:00,2\n")),
            "2026-09-03T01:00:00 1.00");
  EXPECT_NE(refusal("time,temp_c\n03/09/2026 1:00,1\n").find("--date-order"), std::string::npos);
  EXPECT_NE(refusal("time,temp_c\n13/09/2026 1:00,1\n09/13/2026 1:00,1\n").find("line 3"),
            std::string::npos);
  LoggerOptions options;
  options.date_order = DateOrder::day_month_year;
  EXPECT_EQ(first(read("time,temp_c\n03/09/2026 1:00,1\n", options)), "2026-09-03T01:00:00 1.00");
}

TEST(LoggerFile, PutsRowsInOrderAndCountsWhatIsOdd) {
  const auto file = read("time,temp_c\n2026-03-09 02:00,2\n2026-03-09 01:00,1\n"
                         "2026-03-09 02:00,2\n2026-03-09 01:00,9\n2026-03-09 03:00,\n"
                         "2026-03-09 04:00,NaN\n");
  ASSERT_EQ(file.readings.size(), 2U);
  EXPECT_EQ(first(file), "2026-03-09T01:00:00 1.00");
  EXPECT_EQ(file.out_of_order, 2U);
  EXPECT_EQ(file.repeated, 1U);
  EXPECT_EQ(file.second_answers, std::vector<std::size_t>{5});
  EXPECT_EQ(file.without_reading, 2U);
}

TEST(LoggerFile, SaysWhereItCannotRead) {
  EXPECT_NE(refusal("time,temp_c\n2026-03-09 01:00,1\n2026-03-09 02:00,warm\n")
                .find("log.csv, line 3, column temp_c: 'warm'"),
            std::string::npos);
  EXPECT_NE(refusal("time,temp_c\nyesterday,1\n").find("line 2, column time"), std::string::npos);
  EXPECT_NE(refusal("time,temp_c\n2026-02-30 01:00,1\n").find("line 2, column time"),
            std::string::npos);
  EXPECT_NE(refusal("time,temp_c\n2026-03-09,1\n").find("time of day"), std::string::npos);
  EXPECT_NE(refusal("time,temperature\n2026-03-09 01:00,1\n").find("--unit"), std::string::npos);
  EXPECT_NE(refusal("time,temp_c,temp_soil_c\n2026-03-09 01:00,1,2\n").find("temp_c, temp_soil_c"),
            std::string::npos);
  EXPECT_NE(refusal("a,b\n1,2\n").find("--time-column"), std::string::npos);
  EXPECT_NE(refusal("").find("no header"), std::string::npos);
  EXPECT_NE(refusal("time,temp_c\n").find("no row"), std::string::npos);
}

TEST(LoggerFile, TakesTheColumnsThatAreNamed) {
  LoggerOptions options;
  options.time_column = "When";
  options.temperature_column = "probe 2";
  options.unit = TemperatureUnit::celsius;
  EXPECT_EQ(first(read("when,probe 1,probe 2\n2026-03-09 01:00,1,2\n", options)),
            "2026-03-09T01:00:00 2.00");
}

RC_GTEST_PROP(LoggerFile, AnyTextIsReadOrRefused, (const std::string& text)) {
  const auto file = read_logger("time,temp_c\n2026-03-09 01:00,1\n" + text, "log.csv", {});
  if (!file)
    RC_ASSERT(!file.error().text().empty());
  else
    RC_ASSERT(!file->readings.empty());
}

} // namespace
} // namespace coneline::exchange
