// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/sheet/wrap.h"

#include <gtest/gtest.h>

namespace coneline::labels {
namespace {

/// Every code point is one wide.
double letters(std::string_view text) {
  double count = 0;
  for (const char c : text)
    count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
  return count;
}

TEST(Wrap, BreaksAtBlanks) {
  EXPECT_EQ(wrapped("Zamia integrifolia", 18, letters),
            (std::vector<std::string>{"Zamia integrifolia"}));
  EXPECT_EQ(wrapped("Zamia  integrifolia\n", 17, letters),
            (std::vector<std::string>{"Zamia", "integrifolia"}));
  EXPECT_TRUE(wrapped(" \t", 10, letters).empty());
}

TEST(Wrap, KeepsTheCrossWithTheWordAfterIt) {
  EXPECT_EQ(wrapped("Dioon edule × Dioon mejiae", 13, letters),
            (std::vector<std::string>{"Dioon edule", "× Dioon", "mejiae"}));
}

TEST(Wrap, BreaksAWordThatIsTooLong) {
  const auto lines = wrapped("abcdefghij kl", 4, letters);
  EXPECT_EQ(lines, (std::vector<std::string>{"abcd", "efgh", "ij", "kl"}));
}

TEST(Wrap, BreaksAWordThatIsTooLongAfterItsHyphen) {
  EXPECT_EQ(wrapped("2026-12", 6, letters), (std::vector<std::string>{"2026-", "12"}));
  EXPECT_EQ(wrapped("2026-12", 7, letters), (std::vector<std::string>{"2026-12"}));
  EXPECT_EQ(wrapped("-abcdef", 3, letters), (std::vector<std::string>{"-", "abc", "def"}));
}

TEST(Wrap, NeverTakesALetterApart) {
  // e with a combining acute accent stays whole.
  for (const auto& line : wrapped("e\u0301e\u0301e\u0301e\u0301", 3, letters))
    EXPECT_TRUE(line.starts_with("e")) << line;
  EXPECT_EQ(elided("ëëëëëë", 4, letters), "ëëë…");
}

TEST(Elide, KeepsTheBeginning) {
  EXPECT_EQ(elided("Cycas", 5, letters), "Cycas");
  EXPECT_EQ(elided("Cycas revoluta", 7, letters), "Cycas…");
  EXPECT_EQ(elided("Cycas", 0.5, letters), "");
}

} // namespace
} // namespace coneline::labels
