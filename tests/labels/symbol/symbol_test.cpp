// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/symbol/symbol.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace coneline::labels {
namespace {

TEST(Symbol, IsVersion1WithItsThreeSquares) {
  const auto symbol = symbol_of("T1742Q").value();
  EXPECT_EQ(symbol.size(), symbol_modules);
  for (const auto& [row, column] : {std::pair(0, 0), std::pair(0, 14), std::pair(14, 0)}) {
    EXPECT_TRUE(symbol.dark(row, column));
    EXPECT_FALSE(symbol.dark(row + 1, column + 1));
    EXPECT_TRUE(symbol.dark(row + 3, column + 3));
  }
  EXPECT_FALSE(symbol.dark(14, 14) && symbol.dark(14, 15) && symbol.dark(14, 16) &&
               symbol.dark(14, 17) && symbol.dark(14, 18) && symbol.dark(14, 19) &&
               symbol.dark(14, 20));
}

// ISO/IEC 18004: the two bits before the mask in the format information are 10 for level H; after
// the fixed mask 101010000010010 the first bits read 10 xor 10 = 00.
TEST(Symbol, SaysLevelHInItsFormat) {
  for (const auto* text : {"T1742Q", "A", "G99999999Z"}) {
    const auto symbol = symbol_of(text).value();
    EXPECT_FALSE(symbol.dark(8, 0)) << text;
    EXPECT_FALSE(symbol.dark(8, 1)) << text;
  }
}

TEST(Symbol, RefusesWhatWouldNeedAnotherVersion) {
  EXPECT_TRUE(symbol_of("ABCDEFGHIJ"));
  EXPECT_NE(symbol_of("ABCDEFGHIJK").error().what.find("1 too many"), std::string::npos);
  EXPECT_NE(symbol_of("T1742q").error().what.find("character 6"), std::string::npos);
  EXPECT_FALSE(symbol_of(""));
  EXPECT_FALSE(symbol_of("T 17"));
}

TEST(Symbol, RunsAreItsDarkModules) {
  const auto symbol = symbol_of("G31007B").value();
  std::vector<bool> dark(symbol_modules * symbol_modules, false);
  for (const auto& run : symbol.runs()) {
    EXPECT_FALSE(symbol.dark(run.row, run.column - 1));
    EXPECT_FALSE(symbol.dark(run.row, run.column + run.length));
    for (int i = 0; i < run.length; ++i)
      dark[static_cast<std::size_t>(run.row * symbol_modules + run.column + i)] = true;
  }
  EXPECT_EQ(Symbol(symbol_modules, dark), symbol);
}

TEST(Symbol, IsSquare) {
  EXPECT_THROW(Symbol(3, std::vector<bool>(8)), std::invalid_argument);
  EXPECT_FALSE(Symbol(1, {true}).dark(-1, 0));
}

} // namespace
} // namespace coneline::labels
