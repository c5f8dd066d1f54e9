// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/quantity.h"

#include <gtest/gtest.h>

#include <array>

namespace coneline {
namespace {

constexpr auto us = UnitSystem::us;
constexpr auto metric = UnitSystem::metric;

// The exact definitions of NIST Special Publication 811 (2008), Appendix B.8.
TEST(Quantity, ExactDefinitions) {
  EXPECT_DOUBLE_EQ(from_units(us, Quantity::litres, 1), 3.785411784);
  EXPECT_DOUBLE_EQ(from_units(us, Quantity::millimetres, 1), 25.4);
  EXPECT_DOUBLE_EQ(from_units(us, Quantity::square_metres, 1), 0.09290304);
  EXPECT_DOUBLE_EQ(from_units(us, Quantity::kilograms, 1), 0.45359237);
  EXPECT_DOUBLE_EQ(in_units(us, Quantity::celsius, 0), 32);
  EXPECT_DOUBLE_EQ(in_units(us, Quantity::celsius, 100), 212);
  EXPECT_DOUBLE_EQ(in_units(us, Quantity::celsius, -40), -40);
  EXPECT_DOUBLE_EQ(from_units(us, Quantity::celsius, 98.6), 37);
}

// 231 cubic inches are a US gallon, 144 square inches a square foot.
TEST(Quantity, UnitsFitTogether) {
  const double inch = from_units(us, Quantity::millimetres, 1);
  EXPECT_NEAR(from_units(us, Quantity::litres, 1), 231 * inch * inch * inch / 1e6, 1e-12);
  EXPECT_NEAR(from_units(us, Quantity::square_metres, 1), 144 * inch * inch / 1e6, 1e-15);
}

TEST(Quantity, ThereAndBack) {
  for (const auto quantity : {Quantity::litres, Quantity::millimetres, Quantity::square_metres,
                              Quantity::celsius, Quantity::kilograms})
    for (const double kept : {0.0, 0.001, 1.0, 7.5, 22.5, 12345.678}) {
      EXPECT_NEAR(from_units(us, quantity, in_units(us, quantity, kept)), kept, 1e-9);
      EXPECT_EQ(in_units(metric, quantity, kept), kept);
      EXPECT_EQ(from_units(metric, quantity, kept), kept);
    }
}

// A litre at 0.20 is a US gallon at 0.757; what is bought costs the same either way.
TEST(Quantity, PricesForOneUnit) {
  EXPECT_DOUBLE_EQ(for_one_unit(us, Quantity::litres, 0.20), 0.7570823568);
  EXPECT_DOUBLE_EQ(for_one_kept(us, Quantity::litres, 0.7570823568), 0.20);
  EXPECT_DOUBLE_EQ(for_one_unit(us, Quantity::litres, 0.20) * in_units(us, Quantity::litres, 50),
                   0.20 * 50);
  EXPECT_EQ(for_one_unit(metric, Quantity::litres, 0.20), 0.20);
}

TEST(Quantity, TheGallonSaysWhich) {
  EXPECT_EQ(unit_word(us, Quantity::litres), "US gal");
  EXPECT_EQ(unit_word(metric, Quantity::litres), "L");
  EXPECT_EQ(unit_word(us, Quantity::celsius), "°F");
  EXPECT_EQ(unit_word(us, Quantity::square_metres), "ft²");
}

} // namespace
} // namespace coneline
