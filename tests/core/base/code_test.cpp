// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/check_character.h"
#include "core/base/code.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace coneline {
namespace {

TEST(Code, IsKindSeriesNumberAndCheckCharacter) {
  const auto code = Code::of(Kind::tray, 17, 42).value();
  EXPECT_EQ(code.text(), std::string("T1742") + *check_character("T1742"));
  EXPECT_EQ(code.series(), 17);
  EXPECT_EQ(code.running(), 1742);
}

TEST(Code, NeverIsLongerThanAQrCodeOfVersion1Holds) {
  EXPECT_EQ(Code::of(Kind::tray, 99, 999'999).value().text().size(), 10U);
  EXPECT_FALSE(Code::of(Kind::tray, 99, 1'000'000));
  EXPECT_FALSE(Code::of(Kind::tray, 9, 1));
  EXPECT_FALSE(Code::of(Kind::tray, 17, 0));
}

TEST(Code, ReadsWhatWetFingersType) {
  const auto code = Code::of(Kind::pot_group, 31, 7).value();
  const auto text = code.text();
  std::string low = text;
  for (auto& c : low)
    c = static_cast<char>(std::tolower(c));
  EXPECT_EQ(Code::parse(low).value(), code);
  EXPECT_EQ(Code::parse(" " + text.substr(0, 3) + "-" + text.substr(3) + " ").value(), code);
}

TEST(Code, SaysWhatIsWrong) {
  EXPECT_NE(Code::parse("").error().what.find("no code"), std::string::npos);
  EXPECT_NE(Code::parse("HELLO WORLD").error().what.find("no code"), std::string::npos);
  EXPECT_NE(Code::parse("T1742T1742T1742").error().what.find("15 characters"), std::string::npos);
  const auto code = Code::of(Kind::tray, 17, 42).value().text();
  auto wrong = code;
  wrong[2] = '8';
  EXPECT_NE(Code::parse(wrong).error().what.find("wrong character"), std::string::npos);
}

RC_GTEST_PROP(Code, ComesBackFromItsText, ()) {
  const auto kind = *rc::gen::element(Kind::plant, Kind::pollen, Kind::cone, Kind::purchase,
                                      Kind::batch, Kind::tray, Kind::pot_group, Kind::place);
  const auto code =
      Code::of(kind, *rc::gen::inRange(10, 100), *rc::gen::inRange(1, 1'000'000)).value();
  RC_ASSERT(Code::parse(code.text()).value() == code);
  RC_ASSERT(Code::from_running(kind, code.running()).value() == code);
}

RC_GTEST_PROP(Code, OneWrongCharacterIsRefusedAndTheRightOneIsAmongTheCorrections, ()) {
  const auto text =
      Code::of(Kind::tray, *rc::gen::inRange(10, 100), *rc::gen::inRange(1, 1'000'000))
          .value()
          .text();
  auto wrong = text;
  const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
  wrong[at] = *rc::gen::distinctFrom(
      rc::gen::elementOf(std::string("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ")), text[at]);
  RC_ASSERT(!Code::parse(wrong));
  RC_ASSERT(std::ranges::count(corrections(wrong), text, &Code::text) == 1);
}

} // namespace
} // namespace coneline
