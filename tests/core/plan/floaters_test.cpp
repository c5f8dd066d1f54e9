// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/floaters.h"

#include <gtest/gtest.h>

namespace coneline::plan {
namespace {

FloatersAsked fifty(double low, double middle, double high) {
  FloatersAsked asked;
  asked.seeds = 50;
  asked.filled_low = low;
  asked.filled_middle = middle;
  asked.filled_high = high;
  asked.plant_of_filled = {0.4, 0.8};
  asked.plant_of_filled_middle = 0.6;
  asked.worth = 20;
  asked.cost = 1;
  asked.keep_cost = 0.1;
  return asked;
}

// By hand: 1 / (20 x 0.6) = 0.08333; sowing all costs 50, and 8 filled are 4.8 plants worth 96.
TEST(Floaters, BreakEvenAndWhatEachChoiceGives) {
  const auto decision = decide_on_floaters(fifty(4, 8, 12)).value();
  EXPECT_NEAR(decision.break_even, 1.0 / 12, 1e-12);
  EXPECT_NEAR(decision.sow.plants, 4.8, 1e-12);
  EXPECT_NEAR(decision.sow.plants_low, 1.6, 1e-12);
  EXPECT_NEAR(decision.sow.plants_high, 9.6, 1e-12);
  EXPECT_NEAR(decision.sow.cost, 50, 1e-12);
  EXPECT_NEAR(decision.sow.gain, 46, 1e-12);
  EXPECT_NEAR(decision.keep.cost, 55, 1e-12);
  EXPECT_EQ(decision.discard.cost, 0);
  EXPECT_EQ(decision.discard.plants, 0);
}

TEST(Floaters, AboveTheBreakEvenTheyAreSown) {
  EXPECT_EQ(decide_on_floaters(fifty(5, 9, 14)).value().advice, FloatersAdvice::sow);
}

TEST(Floaters, AroundTheBreakEvenMoreAreOpened) {
  const auto decision = decide_on_floaters(fifty(0, 3, 12)).value();
  EXPECT_EQ(decision.advice, FloatersAdvice::open_more);
  EXPECT_GT(decision.open_more, 0);
  EXPECT_NE(decision.why.find("Open"), std::string::npos);
}

// Dehgan & Yuen 1983: of one group the floaters are dead, of another alive. The same counts must
// not lead to the same advice.
TEST(Floaters, BelowTheBreakEvenTheyAreDiscardedOnlyWhereTheFloatTestHolds) {
  auto asked = fifty(0, 1, 3);
  asked.known = FloatKnown::trusted;
  EXPECT_EQ(decide_on_floaters(asked).value().advice, FloatersAdvice::discard);
  for (const auto known : {FloatKnown::unknown, FloatKnown::not_trusted}) {
    asked.known = known;
    const auto decision = decide_on_floaters(asked).value();
    EXPECT_EQ(decision.advice, FloatersAdvice::open_more);
    EXPECT_NE(decision.why.find("before any are thrown away"), std::string::npos);
  }
}

TEST(Floaters, EnoughOpenedFloatersSpeakForThemselves) {
  auto asked = fifty(0, 0, 3);
  asked.opened = 30; // of 80, with 7 filled wanted: 27 would do at 0.95
  asked.known = FloatKnown::unknown;
  const auto decision = decide_on_floaters(asked).value();
  EXPECT_EQ(decision.open_more, 0);
  EXPECT_EQ(decision.advice, FloatersAdvice::discard);
}

TEST(Floaters, WhereSowingCannotPayItIsSaid) {
  auto asked = fifty(0, 20, 50);
  asked.cost = 15;
  asked.known = FloatKnown::trusted;
  const auto decision = decide_on_floaters(asked).value();
  EXPECT_GT(decision.break_even, 1);
  EXPECT_EQ(decision.advice, FloatersAdvice::discard);
  EXPECT_NE(decision.why.find("costs more"), std::string::npos);
}

TEST(Floaters, FiguresThatCannotBeAreRefused) {
  EXPECT_FALSE(decide_on_floaters(fifty(5, 4, 6)));
  EXPECT_FALSE(decide_on_floaters(fifty(0, 4, 51)));
  auto asked = fifty(1, 2, 3);
  asked.worth = 0;
  EXPECT_FALSE(decide_on_floaters(asked));
  asked = fifty(1, 2, 3);
  asked.cost = -1;
  EXPECT_FALSE(decide_on_floaters(asked));
  asked = fifty(1, 2, 3);
  asked.plant_of_filled.high = 1.2;
  EXPECT_FALSE(decide_on_floaters(asked));
}

} // namespace
} // namespace coneline::plan
