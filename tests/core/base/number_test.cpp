// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/count.h"
#include "core/base/number.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline {
namespace {

TEST(Number, ReadsWholeNumbersStrictly) {
  EXPECT_EQ(parse_whole("42").value(), 42);
  EXPECT_EQ(parse_whole("-3").value(), -3);
  for (const auto* bad : {"", " 4", "4 ", "+4", "4.0", "4e2", "0x4", "99999999999999999999"})
    EXPECT_FALSE(parse_whole(bad)) << bad;
}

TEST(Number, NamesADecimalComma) {
  EXPECT_NE(parse_real("22,5").error().what.find("comma"), std::string::npos);
  EXPECT_EQ(parse_real("22.5").value(), 22.5);
  for (const auto* bad : {"", "nan", "inf", "1.2.3", "twelve", "1e999"})
    EXPECT_FALSE(parse_real(bad)) << bad;
}

TEST(Count, IsNeverBelowZero) {
  EXPECT_FALSE(Count::of(-1));
  EXPECT_FALSE(Count::parse("-1"));
  EXPECT_FALSE(Count::of(1'000'000'001));
  EXPECT_THROW((void)Count::sure(-1), std::out_of_range);
  EXPECT_EQ(Count::sure(3) - Count::sure(5), -2);
  EXPECT_EQ((Count::sure(3) + Count::sure(5)).value(), 8);
}

RC_GTEST_PROP(Number, ComesBackFromItsText, (double value)) {
  RC_PRE(std::isfinite(value));
  RC_ASSERT(parse_real(write_real(value)).value() == value);
}

} // namespace
} // namespace coneline
