// SPDX-License-Identifier: GPL-3.0-or-later
// What stands at the edges of codes, days, moments, numbers and faults.
#include "core/base/code.h"
#include "core/base/count.h"
#include "core/base/fault.h"
#include "core/base/moment.h"
#include "core/base/number.h"
#include "core/base/on_demand.h"
#include "core/base/quantity.h"

#include <gtest/gtest.h>

#include <limits>
#include <stdexcept>

namespace coneline {
namespace {

TEST(Edges, AMomentIsReadToTheLastSecondOfTheDay) {
  EXPECT_EQ(Moment::parse("2026-03-09T23:59:59").value().second, 86399);
  EXPECT_EQ(Moment::parse("2026-03-09T00:00:00").value().second, 0);
  // 24 h a day since 1970: one day and half an hour.
  EXPECT_DOUBLE_EQ(Moment::parse("1970-01-02T00:30:00").value().hours(), 24.5);
}

TEST(Edges, WhatIsNoMomentIsRefusedWithTheWayToWriteIt) {
  for (const char* wrong : {"2026-03-09T24:00:00", "2026-03-09T10:60:00", "2026-03-09T10:00:60",
                            "2026-03-09 10:00:00", "2026-03-09T1x:00:00", "2026-03-09T1/:00:00",
                            "2026-03-09T10.00:00", "2026-03-09T10:00", ""}) {
    const auto moment = Moment::parse(wrong);
    ASSERT_FALSE(moment) << wrong;
    EXPECT_NE(moment.error().what.find("is no date with a time of day"), std::string::npos);
    EXPECT_EQ(moment.error().remedy, "Write it as 2026-03-09T14:05:00.");
  }
  EXPECT_FALSE(Moment::parse("2026-02-29T10:00:00")); // 2026 is no leap year
}

TEST(Edges, WhatIsNoDayIsRefused) {
  for (const char* wrong : {"2026/03-09", "2026-03/09", "x026-03-09", "2026-x3-09", "2026-03-x9",
                            "2026-3-9", "2026-13-01", "2026-04-31"})
    EXPECT_FALSE(Date::parse(wrong)) << wrong;
  EXPECT_EQ(Date::parse("2028-02-29").value().iso(), "2028-02-29");
}

TEST(Edges, ACodeIsReadWithWhateverStandsBetween) {
  const auto code = Code::of(Kind::tray, 17, 42).value();
  const auto text = code.text();
  for (const auto& typed : {text.substr(0, 1) + "\t" + text.substr(1), " " + text + " ",
                            text.substr(0, 3) + "-" + text.substr(3)})
    EXPECT_EQ(Code::parse(typed).value(), code) << typed;
  EXPECT_EQ(code.series(), 17);
  EXPECT_EQ(code.number_in_series(), 42);
}

TEST(Edges, WhatIsNoCodeSaysWhy) {
  const auto said = [](std::string_view typed) { return Code::parse(typed).error().what; };
  EXPECT_EQ(said(" - "), "no code was given");
  EXPECT_NE(said("T123456789Q").find("it has 11 characters, a code at most 10"), std::string::npos);
  EXPECT_EQ(said("X1742Q"), "'X1742Q' is no code");
  EXPECT_EQ(said("T17Q"), "'T17Q' is no code");
  EXPECT_EQ(said("T1/42Q"), "'T1/42Q' is no code");
  EXPECT_EQ(said("T1:42Q"), "'T1:42Q' is no code");
  EXPECT_FALSE(Code::of(Kind::tray, 9, 1));
  EXPECT_FALSE(Code::of(Kind::tray, 100, 1));
  EXPECT_FALSE(Code::of(Kind::tray, 17, 0));
  EXPECT_FALSE(Code::of(Kind::tray, 17, 1'000'000));
  // Series and number in one: 1 to 999999 follow the series, so no 0 stands first.
  for (const std::int64_t wrong : {100, 1705, 100'000'000})
    EXPECT_FALSE(Code::from_running(Kind::tray, wrong)) << wrong;
  EXPECT_EQ(Code::from_running(Kind::tray, 99'999'999).value().number_in_series(), 999'999);
}

TEST(Edges, EveryKindIsFoundByItsWord) {
  for (const auto kind : all_kinds)
    EXPECT_EQ(kind_named(kind_word(kind)).value(), kind);
  const auto other = kind_named("bucket");
  ASSERT_FALSE(other);
  EXPECT_EQ(other.error().what, "'bucket' is no kind of thing");
  EXPECT_NE(other.error().remedy.find("plant, pollen"), std::string::npos);
}

TEST(Edges, NumbersThatAreTooLargeOrNoneAreTold) {
  EXPECT_EQ(parse_whole("-7").value(), -7);
  for (const char* wrong : {"", "4 2", "4.0", "x", "+4"})
    EXPECT_NE(parse_whole(wrong).error().what.find("is no whole number"), std::string::npos);
  EXPECT_NE(parse_whole("9223372036854775808").error().what.find("too large"), std::string::npos);
  EXPECT_NE(parse_real("1,5").error().what.find("has a comma"), std::string::npos);
  for (const char* wrong : {"", "1.5x", "inf", "nan", "1e999"})
    EXPECT_FALSE(parse_real(wrong)) << wrong;
  EXPECT_EQ(write_real(-0.0), "0");
  EXPECT_EQ(Count::of(1'000'000'000).value().value(), 1'000'000'000);
  EXPECT_NE(Count::of(1'000'000'001).error().what.find("than any nursery counts"),
            std::string::npos);
  EXPECT_NE(Count::of(-1).error().what.find("below zero"), std::string::npos);
  EXPECT_THROW(static_cast<void>(Count::sure(-1)), std::out_of_range);
}

TEST(Edges, AFaultSaysThePlacesItKnows) {
  const auto placed = [](Where place) { return fault("2 too many").at(std::move(place)).text(); };
  EXPECT_EQ(placed({"", 3, ""}), "line 3: 2 too many");
  EXPECT_EQ(placed({"", 0, "sown"}), "column sown: 2 too many");
  EXPECT_EQ(placed({"a.csv", 0, ""}), "a.csv: 2 too many");
  EXPECT_EQ(placed({}), "2 too many");
}

// A sentence that has its end gets no second one.
TEST(Edges, AFaultEndsItsFirstSentenceOnce) {
  EXPECT_EQ(fault("The disk is full.", "Make room.").text(), "The disk is full. Make room.");
  EXPECT_EQ(fault("Which tray?", "Scan it.").text(), "Which tray? Scan it.");
  EXPECT_EQ(fault("Stop!", "Look.").text(), "Stop! Look.");
  EXPECT_EQ(fault("locked", "Close it").text(), "locked. Close it");
  EXPECT_EQ(fault("", "Close it").text(), ". Close it");
}

TEST(Edges, EachFaultKnowsWhoHasToAct) {
  EXPECT_EQ(fault("x").blame, Blame::input);
  EXPECT_EQ(book_fault("x").blame, Blame::book);
  EXPECT_EQ(usage_fault("x").blame, Blame::usage);
  EXPECT_EQ(program_fault("x").blame, Blame::program);
}

TEST(Edges, UnitsAreNamedInBothSystems) {
  using enum Quantity;
  using enum UnitSystem;
  EXPECT_EQ(unit_word(metric, litres), "L");
  EXPECT_EQ(unit_word(us, litres), "US gal");
  EXPECT_EQ(unit_word(metric, millimetres), "mm");
  EXPECT_EQ(unit_word(us, millimetres), "in");
  EXPECT_EQ(unit_word(metric, square_metres), "m²");
  EXPECT_EQ(unit_word(us, square_metres), "ft²");
  EXPECT_EQ(unit_word(metric, celsius), "°C");
  EXPECT_EQ(unit_word(us, celsius), "°F");
  EXPECT_EQ(unit_word(metric, kilograms), "kg");
  EXPECT_EQ(unit_word(us, kilograms), "lb");
}

// A degree of Fahrenheit is 1/1.8 of one of Celsius: what 18 cost for each of those is 10 for each
// of these. A price by the kilogram of 1 is 0.45359237 by the pound (NIST SP 811, Appendix B.8).
TEST(Edges, WhatIsForOneUnitGoesBothWays) {
  using enum Quantity;
  EXPECT_NEAR(for_one_unit(UnitSystem::us, celsius, 18), 10, 1e-12);
  EXPECT_NEAR(for_one_kept(UnitSystem::us, celsius, 10), 18, 1e-12);
  EXPECT_DOUBLE_EQ(for_one_unit(UnitSystem::us, kilograms, 1), 0.45359237);
  EXPECT_EQ(for_one_kept(UnitSystem::metric, litres, 0.2), 0.2);
}

TEST(Edges, ALibraryThatIsMissingIsNamed) {
  try {
    loaded("libconeline-is-no-library.so", "f");
    FAIL() << "there is no such library";
  } catch (const std::runtime_error& missing) {
    EXPECT_STREQ(missing.what(), "libconeline-is-no-library.so is missing or of another version; "
                                 "install it as the package says");
  }
  EXPECT_THROW(loaded("libc.so.6", "coneline_is_no_function"), std::runtime_error);
  EXPECT_NE(loaded("libc.so.6", "strlen"), nullptr);
}

} // namespace
} // namespace coneline
