// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"

#include <gtest/gtest.h>

namespace coneline {
namespace {

/// A language whose texts stand the other way round.
class Reversed final : public Language {
 public:
  [[nodiscard]] std::string text(std::string_view english) const override {
    if (english == "{} of {}")
      return "{1}: {0}";
    if (english == "wait")
      return "tiaw";
    return std::string(english);
  }
  [[nodiscard]] std::string counted(std::int64_t count, std::string_view,
                                    std::string_view) const override {
    return count == 1 ? "eno" : "{} ynam of {}";
  }
  [[nodiscard]] std::string day(Date day) const override {
    return fmt::format("{}/{}", day.day(), day.month());
  }
  [[nodiscard]] std::string decimal(std::string written) const override {
    for (auto& sign : written)
      sign = sign == '.' ? ',' : sign;
    return written;
  }
  [[nodiscard]] UnitSystem units() const override { return UnitSystem::us; }
};

class Phrase : public testing::Test {
 protected:
  ~Phrase() override { speak(nullptr); }
  Reversed reversed_;
};

TEST_F(Phrase, IsEnglishWithDaysOfIsoByItself) {
  const auto day = Date::of(2026, 3, 9).value();
  EXPECT_EQ(phrase("{} of {}", 3, "T42"), "3 of T42");
  EXPECT_EQ(phrase("since {}", day.said()), "since 2026-03-09");
  EXPECT_EQ(phrase("{:.2f} short", 1.5), "1.50 short");
  EXPECT_EQ(phrase_n(1, "{} seed of {}", "{} seeds of {}", "B7"), "1 seed of B7");
  EXPECT_EQ(phrase_n(0, "{} seed of {}", "{} seeds of {}", "B7"), "0 seeds of B7");
  EXPECT_EQ(measured(Quantity::square_metres, 0.5, 2), "0.50 m²");
  EXPECT_EQ(month_said(3), "March");
}

TEST_F(Phrase, PutsPlacesWhereTheLanguageHasThem) {
  speak(&reversed_);
  EXPECT_EQ(phrase("{} of {}", 3, "T42"), "T42: 3");
  EXPECT_EQ(phrase_n(1, "{} seed of {}", "{} seeds of {}", "B7"), "eno");
  EXPECT_EQ(phrase_n(8, "{} seed of {}", "{} seeds of {}", "B7"), "8 ynam of B7");
}

TEST_F(Phrase, WritesDaysDecimalsAndUnitsOfTheLanguage) {
  speak(&reversed_);
  EXPECT_EQ(phrase("since {}", Date::of(2026, 3, 9)->said()), "since 9/3");
  EXPECT_EQ(phrase("{:.2f} and {:g}", 1.5, 0.25), "1,50 and 0,25");
  EXPECT_EQ(measured(Quantity::litres, 3.785411784, 1), "1,0 US gal");
  EXPECT_EQ(Date::of(2026, 3, 9)->iso(), "2026-03-09");
}

TEST_F(Phrase, FaultsAreSaid) {
  speak(&reversed_);
  EXPECT_EQ(fault("wait", "wait").text(), "tiaw. tiaw");
}

TEST_F(Phrase, AnUnknownTextStaysAsItIs) {
  speak(&reversed_);
  EXPECT_EQ(phrase("{} lots", 4), "4 lots");
}

} // namespace
} // namespace coneline
