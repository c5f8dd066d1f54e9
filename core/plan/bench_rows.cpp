// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/bench_rows.h"

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {

std::int64_t in_a_row(Micrometres across, Micrometres pot, Micrometres gap) {
  return pot > across || pot <= 0 ? 0 : (across - pot) / (pot + gap) + 1;
}

/// Rows with `across` of the pot across the bench and `along` along it.
Rows square(const Ground& ground, Micrometres across, Micrometres along) {
  const auto gap = micrometres(ground.gap_mm);
  const auto width = micrometres(std::min(ground.length_mm, ground.width_mm));
  const auto in_row = in_a_row(width, across, gap);
  if (in_row == 0 || along > micrometres(std::max(ground.length_mm, ground.width_mm)))
    return {};
  return {in_row, in_row, along + gap, along + gap};
}

Rows staggered(const Ground& ground, Micrometres pot) {
  auto rows = square(ground, pot, pot);
  if (rows.in_a_row == 0)
    return rows;
  const auto spacing = rows.first;
  const auto width = micrometres(std::min(ground.length_mm, ground.width_mm));
  const auto left = 2 * (width - pot) - spacing; // half a spacing on
  rows.in_the_next = left < 0 ? 0 : left / (2 * spacing) + 1;
  rows.more = static_cast<Micrometres>(
      std::ceil(static_cast<double>(spacing) * std::sqrt(3.0) / 2)); // never too near
  return rows;
}

} // namespace

Micrometres micrometres(double millimetres) {
  constexpr double thousand = 1000;
  return std::llround(millimetres * thousand);
}

Micrometres Ground::room() const {
  return micrometres(std::max(length_mm, width_mm)) + micrometres(gap_mm);
}

std::int64_t Rows::rows_for(std::int64_t pots) const {
  const auto pair = in_a_row + in_the_next;
  const auto left = pots % pair;
  if (left == 0)
    return pots / pair * 2 - (in_the_next == 0 ? 1 : 0); // an empty row at the end is none
  return pots / pair * 2 + (left <= in_a_row ? 1 : 2);
}

Micrometres Rows::room_for(std::int64_t pots) const {
  return pots <= 0 ? 0 : first + (rows_for(pots) - 1) * more;
}

std::int64_t Rows::most(Micrometres room) const {
  if (in_a_row == 0 || room < first)
    return 0;
  const auto rows = (room - first) / more + 1;
  return (rows + 1) / 2 * in_a_row + rows / 2 * in_the_next;
}

Rows rows_across(const Ground& ground, const book::Pot& pot) {
  const auto length = micrometres(pot.length_mm);
  const auto width = micrometres(pot.width_mm);
  if (pot.shape == book::Shape::round)
    return ground.pattern == Pattern::staggered ? staggered(ground, length)
                                                : square(ground, length, length);
  const auto one = square(ground, width, length);
  const auto other = square(ground, length, width);
  return other.most(ground.room()) > one.most(ground.room()) ? other : one;
}

} // namespace coneline::plan
