// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of a scanner's memory beyond the common ones, and what is refused of them.
#include "core/exchange/faults.h"
#include "core/exchange/scanner_log.h"
#include "tests/core/store/scratch.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>

namespace coneline::exchange {
namespace {

const auto t = Code::of(Kind::tray, 17, 42).value().text();

/// "DATE SECOND" of a line with one scan, or what was said of it.
std::string scanned(const std::string& line) {
  const auto log = read_scanner_log(line + "\n", "log.txt");
  if (!log.bad.empty())
    return log.bad.front().what;
  if (log.scans.size() != 1)
    return fmt::format("{} scans", log.scans.size());
  const auto& scan = log.scans.front();
  return fmt::format("{} {}", scan.date ? scan.date->iso() : "-", scan.second.value_or(-1));
}

// 14:05:00 is second 14 × 3600 + 5 × 60 = 50700 of the day.
TEST(ScannerForms, AZoneIsPassedOverInEitherDirection) {
  for (const char* moment :
       {"2026-11-20T14:05:00Z", "2026-11-20T14:05:00z", "2026-11-20T14:05:00+01:00",
        "2026-11-20T14:05:00-05:00", "2026-11-20T14:05:00.250+01:00", "2026-11-20T14:05"})
    EXPECT_EQ(scanned(fmt::format("{} {}", moment, t)), "2026-11-20 50700") << moment;
}

TEST(ScannerForms, DigitsWithoutSignsAreAMomentWhereTheyCanBe) {
  EXPECT_EQ(scanned("20261120,140500," + t), "2026-11-20 50700");
  EXPECT_EQ(scanned("19991120,140500," + t), "1999-11-20 50700");
  EXPECT_EQ(scanned("20261120140500," + t), "2026-11-20 50700");
  // Six digits before any day are a number of the scanner's, eight of another century too.
  EXPECT_EQ(scanned("140500," + t), "- -1");
  EXPECT_EQ(scanned("31261120," + t), "- -1");
}

TEST(ScannerForms, DaysOfEveryOrder) {
  EXPECT_EQ(scanned("03/03/2026 14:05," + t), "2026-03-03 50700"); // either way the same day
  EXPECT_EQ(scanned("23/04/2026 14:05," + t), "2026-04-23 50700");
  EXPECT_EQ(scanned("04/23/2026 14:05," + t), "2026-04-23 50700");
  EXPECT_EQ(scanned("3.4.2026 14:05," + t), "2026-04-03 50700");
  EXPECT_EQ(scanned("03/04/2026 14:05," + t), "'03/04/2026' can be two days");
  EXPECT_EQ(scanned("23/04/26 14:05," + t), "'23/04/26' has a year of fewer than four digits");
}

TEST(ScannerForms, TimesThatNoClockShowsAreRefused) {
  EXPECT_EQ(scanned("2026-11-20,24:00," + t), "'24:00' is no time");
  EXPECT_EQ(scanned("2026-11-20,14:60," + t), "'14:60' is no time");
  EXPECT_EQ(scanned("2026-11-20,14:05:60," + t), "'14:05:60' is no time");
  // Four parts are no time at all, and the day alone counts.
  EXPECT_EQ(scanned("2026-11-20,14:05:00:00," + t), "2026-11-20 -1");
}

TEST(ScannerForms, OneLineIsOneScan) {
  const auto other = Code::of(Kind::tray, 17, 43).value().text();
  EXPECT_EQ(scanned(t + "," + other), fmt::format("two codes in one line, {} and {}", t, other));
  EXPECT_EQ(scanned("2026-11-20,2026-11-21," + t), "two days or two times in one line");
  EXPECT_EQ(scanned("14:05,14:06," + t), "two days or two times in one line");
  EXPECT_EQ(scanned("2026-11-20 14:05:00"), "'2026-11-20 14:05:00' holds no code");
}

TEST(ScannerForms, WhatSaysNothingIsPassedOver) {
  for (const char* kind : {"QR", "qr code", "Data Matrix", "CODE128", "1", "\"\""})
    EXPECT_EQ(scanned(fmt::format("2026-11-20,14:05:00,{},{}", kind, t)), "2026-11-20 50700")
        << kind;
  // A time whose day cannot be read is not taken for a time of today.
  EXPECT_NE(scanned("20-nov-2026,14:05:00," + t).find("is no code"), std::string::npos);
  EXPECT_EQ(scanned("scanner A," + t), "- -1");
}

TEST(ScannerForms, ARepeatIsTheSameCodeWithinThreeSeconds) {
  const auto repeats = [&](const std::string& first, const std::string& second) {
    return read_scanner_log(first + "\n" + second + "\n", "log.txt").repeated;
  };
  const auto at = [&](const char* time) { return fmt::format("2026-11-20 {},{}", time, t); };
  EXPECT_EQ(repeats(at("14:05:00"), at("14:05:03")), 1U);
  EXPECT_EQ(repeats(at("14:05:00"), at("14:05:04")), 0U);
  EXPECT_EQ(repeats(at("14:05:03"), at("14:05:00")), 0U); // the clock was set back
  EXPECT_EQ(repeats(at("14:05:00"), "2026-11-21 14:05:00," + t), 0U);
  EXPECT_EQ(repeats(at("14:05:00"), t), 0U);
  EXPECT_EQ(repeats(t, at("14:05:00")), 0U);
}

TEST(ScannerForms, LinesEndInAnyWayAndAMarkIsPassedOver) {
  const auto log = read_scanner_log("\xEF\xBB\xBF" + t + "\r" + t + "\r\n \t,;\n" + t, "log.txt");
  ASSERT_EQ(log.scans.size(), 3U);
  EXPECT_EQ(log.scans.back().line, 4U);
  EXPECT_EQ(scanned("\"" + t + " "), "- -1"); // an open quote ends with its line
  EXPECT_EQ(scanned("1\xFF," + t), "the line is no UTF-8 text");
}

TEST(ScannerForms, FilesThatCannotBeReadAreNamed) {
  const tests::Scratch scratch;
  const auto said = [&](const char* name) {
    const auto log = read_scanner_log_file(scratch.at(name));
    return log ? "read" : log.error().what;
  };
  EXPECT_NE(said("no.txt").find("no.txt' cannot be read"), std::string::npos);
  std::ofstream(scratch.at("empty.txt")).flush();
  EXPECT_NE(said("empty.txt").find("is empty or cannot be read"), std::string::npos);
  std::ofstream(scratch.at("large.txt")) << "x";
  std::filesystem::resize_file(scratch.at("large.txt"), 16'000'001);
  EXPECT_NE(said("large.txt").find("has 16000001 bytes, more than 16000000"), std::string::npos);
  std::ofstream(scratch.at("good.txt")) << t << "\n";
  EXPECT_EQ(said("good.txt"), "read");
}

TEST(Faults, BeyondTenThousandTheyAreCounted) {
  Faults faults;
  EXPECT_TRUE(faults.none());
  for (int i = 0; i < 10'002; ++i)
    faults.add(fault("wrong"));
  EXPECT_EQ(faults.listed().size(), 10'000U);
  EXPECT_EQ(faults.unlisted(), 2U);
}

} // namespace
} // namespace coneline::exchange
