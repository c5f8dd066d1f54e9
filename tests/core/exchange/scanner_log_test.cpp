// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/scanner_log.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

std::string tray(int number) {
  return Code::of(Kind::tray, 17, number).value().text();
}

TEST(ScannerLog, ReadsTheCommonLineForms) {
  const auto t = tray(42);
  const std::vector<std::string> forms{
      "2026-11-20 14:05:00," + t,
      t + ";20.11.2026;14:05",
      "2026-11-20T14:05:00Z " + t,
      "\"2026/11/20\",\"14:05:00\",\"QR\",\"" + t + "\",1",
      "20/11/2026\t14:05\t" + t,
      "11/20/2026,14:05:00," + t,
      "20261120140500," + t,
      t + ",20261120,140500",
      "]Q1" + t + ",2026-11-20,14:05:00.250",
  };
  for (const auto& form : forms) {
    const auto log = read_scanner_log(form + "\r\n", "log.txt");
    ASSERT_TRUE(log.bad.empty()) << form << ": " << log.bad.front().text();
    ASSERT_EQ(log.scans.size(), 1U) << form;
    EXPECT_EQ(log.scans[0].code.text(), t) << form;
    EXPECT_EQ(log.scans[0].date, Date::parse("2026-11-20").value()) << form;
    EXPECT_EQ(log.scans[0].second, 14 * 3600 + 5 * 60) << form;
  }
  const auto bare = read_scanner_log(t, "log.txt");
  ASSERT_EQ(bare.scans.size(), 1U);
  EXPECT_FALSE(bare.scans[0].date);
}

TEST(ScannerLog, NamesEveryBadLineAndKeepsTheOthers) {
  const auto t = tray(42);
  auto wrong = t;
  wrong.back() = wrong.back() == 'A' ? 'B' : 'A';
  const auto log = read_scanner_log("time,code\n" // 1: a heading
                                    "2026-11-20 14:05:00," +
                                        t +
                                        "\n" // 2: good
                                        "2026-11-20 14:06:00," +
                                        wrong +
                                        "\n" // 3: half or wrong
                                        "\n" // 4: empty
                                        "03/04/2026 14:00," +
                                        t +
                                        "\n" // 5: two days
                                        "2026-02-30 14:00," +
                                        t +
                                        "\n" // 6: no day
                                        "2026-11-20 25:00," +
                                        t +
                                        "\n"                    // 7: no time
                                        "2026-11-20 14:07:00\n" // 8: no code
                                        + t + "," + tray(43) +
                                        "\n" // 9: two codes
                                        "\xff\xfe," +
                                        t +
                                        "\n" // 10: no text
                                        "2026-11-20 14:08:00," +
                                        tray(43), // 11: good
                                    "log.txt");
  ASSERT_EQ(log.scans.size(), 2U);
  EXPECT_EQ(log.scans[1].line, 11U);
  std::vector<std::size_t> lines;
  for (const auto& bad : log.bad) {
    EXPECT_EQ(bad.where->file, "log.txt");
    lines.push_back(bad.where->line);
  }
  EXPECT_EQ(lines, (std::vector<std::size_t>{3, 5, 6, 7, 8, 9, 10}));
}

TEST(ScannerLog, TakesTheSameCodeWithinAMomentOnce) {
  const auto t = tray(42);
  const auto log = read_scanner_log("2026-11-20 14:05:00," + t + "\n2026-11-20 14:05:02," + t +
                                        "\n2026-11-20 14:09:00," + t,
                                    "log.txt");
  EXPECT_EQ(log.scans.size(), 2U);
  EXPECT_EQ(log.repeated, 1U);
}

} // namespace
} // namespace coneline::exchange
