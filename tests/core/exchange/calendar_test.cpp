// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/calendar.h"
#include "tests/core/day.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace coneline::exchange {
namespace {

using tests::day;

work::Due pass(int put_off = 0) {
  work::Due due;
  due.kind = work::DueKind::pollinate;
  due.code = Code::of(Kind::cone, 17, 3).value();
  due.from = day("2026-05-19");
  due.to = day("2026-05-20");
  due.told = "pass 2 on Old Sentinel × Blue Twin, if the cone is still loose; a long line, that "
             "has to be folded; with \\ and commas";
  due.key = "pollinate " + due.code.text() + " 1";
  due.times_put_off = put_off;
  return due;
}

CalendarGiven given(CalendarAs as = CalendarAs::todo) {
  CalendarGiven all;
  all.title = {"Test nursery", 17, true, day("2024-01-02")};
  all.due = {pass()};
  all.as = as;
  all.stamp = "20260519T060000Z";
  return all;
}

CalendarRead back(const std::string& text) {
  auto read = read_calendar(text, "due.ics", given().title);
  EXPECT_TRUE(read) << read.error().text();
  return read.value_or(CalendarRead{});
}

TEST(Calendar, WhatIsWrittenIsReadBack) {
  for (const auto as : {CalendarAs::todo, CalendarAs::event}) {
    const auto read = back(calendar_text(given(as)));
    ASSERT_EQ(read.lines.size(), 1U);
    EXPECT_EQ(read.lines[0].key, pass().key);
    EXPECT_EQ(read.lines[0].from, day("2026-05-19"));
    EXPECT_EQ(read.lines[0].to, day("2026-05-20"));
    EXPECT_FALSE(read.lines[0].completed);
    EXPECT_FALSE(read.lines[0].cancelled);
  }
}

// RFC 5545, 3.1: lines end with CR LF and are folded at 75 octets; 3.8.4.7: UID is the same for as
// long as it is the same thing; 3.8.7.4: SEQUENCE grows with each revision.
TEST(Calendar, HoldsToTheStandard) {
  auto text = calendar_text(given());
  for (std::size_t at = 0; at < text.size();) {
    const auto end = text.find("\r\n", at);
    ASSERT_NE(end, std::string::npos);
    EXPECT_LE(end - at, 75U) << text.substr(at, end - at);
    at = end + 2;
  }
  EXPECT_NE(text.find("UID:" + calendar_uid(given().title, pass().key)), std::string::npos);
  EXPECT_NE(text.find("DTSTART;VALUE=DATE:20260519"), std::string::npos) << text;
  EXPECT_NE(text.find("DTSTAMP:20260519T060000Z"), std::string::npos);
  EXPECT_EQ(back(text).lines[0].sequence, 0);
  auto later = given();
  later.due = {pass(2)};
  later.due[0].from = day("2026-05-25");
  EXPECT_EQ(back(calendar_text(later)).lines[0].sequence, 2);
  EXPECT_EQ(back(calendar_text(later)).lines[0].key, pass().key) << "the same work, another day";
}

TEST(Calendar, WhatIsSettledSaysSo) {
  auto all = given();
  all.due.clear();
  all.settled = {{"inspect T171X 3", day("2026-05-18"), "inspect T171X", false, 0},
                 {"have mix ready 50 % bark_fine 2026-05-01", day("2026-05-18"), "none", true, 1}};
  const auto read = back(calendar_text(all));
  ASSERT_EQ(read.lines.size(), 2U);
  EXPECT_TRUE(read.lines[0].completed);
  EXPECT_EQ(read.lines[0].completed_on, day("2026-05-18"));
  EXPECT_EQ(read.lines[0].sequence, 1);
  EXPECT_TRUE(read.lines[1].cancelled);
  EXPECT_EQ(read.lines[1].key, "have mix ready 50 % bark_fine 2026-05-01");
}

TEST(Calendar, OtherCalendarsArePassedOver) {
  auto other = given();
  other.title.series = 18;
  EXPECT_EQ(back(calendar_text(other)).of_others, 1);
  EXPECT_TRUE(back(calendar_text(other)).lines.empty());
}

// Found by the fuzzer.
TEST(Calendar, OneThatNamesTheBookAndNoWorkIsNotOurs) {
  auto text = calendar_text(given());
  const auto at = text.find("UID:");
  const auto end = text.find("\r\nD", at); // the line may be folded
  ASSERT_NE(end, std::string::npos) << text;
  text.replace(at, end - at, "UID:" + calendar_uid(given().title, ""));
  const auto read = back(text);
  EXPECT_TRUE(read.lines.empty());
  EXPECT_EQ(read.of_others, 1);
}

TEST(Calendar, BrokenLinesAreNamed) {
  const auto whole = calendar_text(given());
  const auto spoilt = [&](const std::string& from, const std::string& to) {
    auto text = whole;
    const auto at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    text.replace(at, from.size(), to);
    return read_calendar(text, "due.ics", given().title);
  };
  const std::vector<std::pair<std::string, std::string>> spoils{
      {"DTSTART;VALUE=DATE:20260519", "DTSTART;VALUE=DATE:20260230"},
      {"DTSTART;VALUE=DATE:20260519", "DTSTART VALUE=DATE 20260519"},
      {"SEQUENCE:0", "%%%"},
      {"END:VTODO\r\n", ""},
      {"END:VCALENDAR", "END:VTODO"},
      {"BEGIN:VCALENDAR", "BEGIN:VTODO"},
  };
  for (const auto& [from, to] : spoils) {
    const auto read = spoilt(from, to);
    ASSERT_FALSE(read) << from << " → " << to;
    ASSERT_TRUE(read.error().where) << from;
    EXPECT_GT(read.error().where->line, 0U);
    EXPECT_FALSE(read.error().remedy.empty());
  }
  EXPECT_EQ(spoilt("SEQUENCE:0", "%%%").error().where->line,
            1U + static_cast<std::size_t>(std::count(
                     whole.begin(),
                     whole.begin() + static_cast<std::ptrdiff_t>(whole.find("SEQUENCE:0")), '\n')));
  EXPECT_FALSE(read_calendar("", "due.ics", given().title));
  EXPECT_FALSE(read_calendar(whole.substr(0, whole.size() / 2), "due.ics", given().title));
}

} // namespace
} // namespace coneline::exchange
