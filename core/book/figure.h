// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A figure that the grower reckons with, asked once and kept: what a plant is worth, what a sown
// seed costs.

#include "core/base/fault.h"

#include <string>

namespace coneline::book {

struct Figure {
  std::string name; ///< one of a kind in the book
  double value = 0;
};

namespace figure {
inline constexpr const char* plant_worth = "worth of a plant";
inline constexpr const char* seed_cost = "cost of a sown seed";
inline constexpr const char* litre_price = "price of a litre of mix";
inline constexpr const char* bench_price = "price of a square metre of bench a month";
inline constexpr const char* keep_cost = "cost of a kept seed";
/// A share, 0 to 1: a tray is done when the chance of one more is below it.
inline constexpr const char* done_below = "chance of one more seed below which a tray is done";
/// Of a bit a month, January the lowest: the months in which one pots. 4095 is the whole year.
inline constexpr const char* potting_months = "months of potting";
inline constexpr const char* ready_stands = "months a ready plant stands";
inline constexpr const char* settling = "share of the mix that settles";
inline constexpr const char* wet_kilograms = "kilograms of a watered litre";
inline constexpr const char* pot_gap = "millimetres between pots";
/// 1: round pots stand staggered; 0: in a square.
inline constexpr const char* staggered = "pots stand staggered";
/// A share, 0 to 1: of seasons in which nothing is to run short.
inline constexpr const char* plan_assurance = "assurance of the season plan";
} // namespace figure

/// Fails where the value is outside the range of the figure of that name, and says the range with
/// its unit. Of a figure that is none of the above any finite number is sound.
Result<void> is_sound(const Figure& figure);

} // namespace coneline::book
