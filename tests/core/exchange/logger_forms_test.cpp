// SPDX-License-Identifier: GPL-3.0-or-later
// The many ways in which loggers write times, numbers, units and the names of columns.
#include "core/exchange/logger_text.h"
#include "tests/core/store/scratch.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>

namespace coneline::exchange {
namespace {

std::string time_of(std::string_view clock) {
  const auto time = logger_time(fmt::format("2026-03-09 {}", clock));
  return time ? Moment{Date::parse("2026-03-09").value(), time->seconds}.iso().substr(11) : "none";
}

TEST(LoggerForms, AClockIsReadInEveryUsualForm) {
  EXPECT_EQ(time_of("14:05"), "14:05:00");
  EXPECT_EQ(time_of("4:5"), "04:05:00");
  EXPECT_EQ(time_of("14:05:30.125"), "14:05:30");
  EXPECT_EQ(time_of("14:05:30."), "14:05:30");
  EXPECT_EQ(time_of("02:05 PM"), "14:05:00");
  EXPECT_EQ(time_of("02:05:09.5 p.m."), "14:05:09");
  EXPECT_EQ(time_of("02:05 a.m."), "02:05:00");
  EXPECT_EQ(time_of("12:05 AM"), "00:05:00"); // five past midnight
  EXPECT_EQ(time_of("12:05 PM"), "12:05:00"); // five past noon
  // An offset or zone is passed over: the clock on the bench counts.
  for (const char* zoned : {"14:05Z", "14:05 UTC", "14:05:00+01:00", "14:05:00-05:00"})
    EXPECT_EQ(time_of(zoned), "14:05:00") << zoned;
}

TEST(LoggerForms, AClockThatShowsNoSuchTimeIsNone) {
  for (const char* wrong : {"24:00", "x:00", "-1:00", "14", "14.05", "14:60", "14:x", "14:05:60",
                            "14:05:x", "13:05 PM", "0:05 AM", "14:05 Uhr", "14:05 noon", ""})
    EXPECT_EQ(time_of(wrong), "none") << wrong;
}

TEST(LoggerForms, ADateHasThreeNumbersWithOneSignBetween) {
  for (const char* good : {"2026-03-09 14:05", "2026/3/9 14:05", "9.3.2026, 14:05",
                           "09-03-26T14:05", "3/9/26  2:05 PM"})
    EXPECT_TRUE(logger_time(good)) << good;
  for (const char* wrong :
       {"", "2026", "2026_03_09 14:05", "2026-03/09 14:05", "2026-x-09 14:05", "2026-03 14:05",
        "2026-03-x 14:05", "2026-03-09", "2026-03-09 ", "today 14:05", "-3-09-2026 14:05"})
    EXPECT_FALSE(logger_time(wrong)) << wrong;
  const auto time = logger_time("9.3.26 14:05").value();
  EXPECT_TRUE(time.dotted);
  EXPECT_FALSE(time.year_first);
  EXPECT_EQ(moment_of(time, DateOrder::day_month_year).value().iso(), "2026-03-09T14:05:00");
  EXPECT_EQ(moment_of(time, DateOrder::month_day_year).value().iso(), "2026-09-03T14:05:00");
}

TEST(LoggerForms, NumbersWithEitherDecimalSign) {
  EXPECT_EQ(logger_number("24.5", '.'), 24.5);
  EXPECT_EQ(logger_number("+24,5", ','), 24.5);
  EXPECT_EQ(logger_number("-0.5", '.'), -0.5);
  EXPECT_EQ(logger_number("24,5", '.'), std::nullopt);
  EXPECT_EQ(logger_number("1.024,5", ','), std::nullopt); // neither 1.024 nor 1024
  EXPECT_EQ(logger_number("warm", '.'), std::nullopt);
}

TEST(LoggerForms, QuotesAreDoubledInsideAndAStrayOneSpoilsItsRowOnly) {
  const auto rows = logger_rows("\"a \"\"b\"\"\";c\n\"open;d\ne;f;\"\"", ';');
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0].cells, (std::vector<std::string>{"a \"b\"", "c"}));
  EXPECT_EQ(rows[1].cells, (std::vector<std::string>{"open;d"}));
  EXPECT_EQ(rows[2].cells, (std::vector<std::string>{"e", "f", ""}));
  EXPECT_EQ(logger_rows("x;\"y\"", ';').front().cells.back(), "y");
  // 0xB0 is the degree sign of Latin-1.
  EXPECT_EQ(logger_rows("T\xB0;x", ';').front().cells.front(), "T°");
}

std::string said(const std::string& text, const LoggerOptions& options = {}) {
  const auto file = read_logger(text, "log.csv", options);
  if (!file)
    return file.error().text();
  return fmt::format("{} | {} | {} {:.1f}", file->time_column, file->temperature_column,
                     file->readings.front().at.iso(), file->readings.front().celsius);
}

// 68 degrees of Fahrenheit are 20 of Celsius: (68 - 32) / 1.8.
TEST(LoggerForms, TheUnitStandsInTheNameOfTheColumn) {
  for (const char* name :
       {"Temp °C", "Celsius", "temp (C)", "temp [C]", "TempDegC", "temp deg C", "temp_C", "Temp C"})
    EXPECT_EQ(said(fmt::format("time;{}\n2026-03-09 14:00;20\n", name)),
              fmt::format("time | {} | 2026-03-09T14:00:00 20.0", name));
  for (const char* name : {"Temp °F", "Fahrenheit", "temp (F)", "temp [F]", "TempDegF",
                           "temp deg F", "temp_F", "Temp F"})
    EXPECT_EQ(said(fmt::format("time;{}\n2026-03-09 14:00;68\n", name)),
              fmt::format("time | {} | 2026-03-09T14:00:00 20.0", name));
  EXPECT_NE(said("time;Temp °C or °F\n2026-03-09 14:00;20\n").find("unit of the temperatures"),
            std::string::npos);
  EXPECT_EQ(said("time;°C\n2026-03-09 14:00;20\n"), "time | °C | 2026-03-09T14:00:00 20.0");
  EXPECT_EQ(said("time;°F\n2026-03-09 14:00;68\n"), "time | °F | 2026-03-09T14:00:00 20.0");
}

TEST(LoggerForms, DateAndTimeMayStandInTwoColumns) {
  EXPECT_EQ(said("Date;;Time;Temp °C\n2026-03-09;x;14:00;20\n"),
            "Date + Time | Temp °C | 2026-03-09T14:00:00 20.0");
  LoggerOptions options;
  options.date_column = "day";
  options.time_column = "hour";
  EXPECT_EQ(said("Day;Hour;Temp °C\n2026-03-09;14:00;20\n", options),
            "Day + Hour | Temp °C | 2026-03-09T14:00:00 20.0");
  EXPECT_NE(said("Day;Hour;Temp °C\n2026-03-09\n", options).find("at least 3 are needed"),
            std::string::npos);
  // The column that cannot be read is blamed.
  const auto blamed = [&](const std::string& rows) {
    return said("Day;Hour;Temp °C\n" + rows, options);
  };
  EXPECT_NE(blamed("spring;14:00;20\n").find("line 2, column Day: 'spring' cannot be read"),
            std::string::npos);
  EXPECT_NE(blamed("2026-03-09;noon;20\n").find("line 2, column Hour: 'noon' cannot be read"),
            std::string::npos);
  EXPECT_NE(blamed("2026-13-09;14:00;20\n").find("line 2, column Day"), std::string::npos);
  EXPECT_NE(blamed("3/4/2026;14:00;20\n").find("line 2, column Day"), std::string::npos)
      << "day or month first";
}

TEST(LoggerForms, ColumnsThatCouldBothBeMeantAreNamed) {
  EXPECT_EQ(said("start date;end date;temp_c\n2026-03-09 14:00;2026-03-09 15:00;20\n"),
            "log.csv, line 1: several columns could be meant: start date, end date. Name one with "
            "--time-column.");
  EXPECT_EQ(said("date;on time;off time;temp_c\n2026-03-09;14:00;15:00;20\n"),
            "log.csv, line 1: several columns could be meant: on time, off time. Name one with "
            "--time-column.");
  // A temperature without any time is no header.
  EXPECT_NE(said("place;temp_c\nbench;20\n").find("no header with a column"), std::string::npos);
}

TEST(LoggerForms, TheDecimalSignIsFoundOrStated) {
  // No cell of temperature has a comma: the point.
  EXPECT_EQ(said("time;temp_c\n2026-03-09 14:00;20.5\n2026-03-09 14:10\n"),
            "time | temp_c | 2026-03-09T14:00:00 20.5");
  LoggerOptions comma;
  comma.decimal = ',';
  EXPECT_EQ(said("time;temp_c\n2026-03-09 14:00;20,5\n", comma),
            "time | temp_c | 2026-03-09T14:00:00 20.5");
  EXPECT_NE(said("time;temp_c\n2026-03-09 14:00;20.5\n", comma).find("a decimal ','"),
            std::string::npos);
}

TEST(LoggerForms, RowsWithoutAReadingAreCountedAndOnlyThoseAreNone) {
  const auto file =
      read_logger("time;temp_c\n2026-03-09 14:00;--\n2026-03-09 14:10\n2026-03-09 14:20;21\n",
                  "log.csv", {})
          .value();
  EXPECT_EQ(file.without_reading, 2U);
  EXPECT_EQ(file.readings.size(), 1U);
  EXPECT_EQ(said("time;temp_c\n2026-03-09 14:00;ERR\n"),
            "log.csv: no row with a temperature. Check the file.");
}

TEST(LoggerForms, FilesThatCannotBeReadAreNamed) {
  const tests::Scratch scratch;
  EXPECT_NE(read_logger_file(scratch.at("no.csv"), {}).error().what.find("cannot be read"),
            std::string::npos);
  std::ofstream(scratch.at("large.csv")) << "x";
  std::filesystem::resize_file(scratch.at("large.csv"), (512ULL << 20U) + 1);
  EXPECT_NE(read_logger_file(scratch.at("large.csv"), {}).error().what.find("more than 512 MB"),
            std::string::npos);
  std::ofstream(scratch.at("good.csv")) << "time,temp_c\n2026-03-09 14:00,20\n";
  EXPECT_EQ(read_logger_file(scratch.at("good.csv"), {}).value().readings.size(), 1U);
}

} // namespace
} // namespace coneline::exchange
