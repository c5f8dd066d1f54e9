// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/space.h"

#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cmath>

namespace coneline::plan {

namespace {
using Micrometres = std::int64_t;

constexpr double most_millimetres = 1e6;

Micrometres whole(double millimetres) {
  return std::llround(millimetres * 1000);
}

/// What is left to put centres in, and how far apart they are.
struct Room {
  Micrometres along;  ///< the row, bench minus one pot; below 0 where no pot fits
  Micrometres across; ///< the rows, the same
  Micrometres spacing;
};

/// Pots in a row whose first centre lies `start` half spacings in.
std::int64_t in_row(const Room& room, int start) {
  const Micrometres left = 2 * room.along - start * room.spacing;
  return left < 0 ? 0 : left / (2 * room.spacing) + 1;
}

/// Whether so many staggered rows fit: (rows - 1) * spacing * sqrt(3) / 2 <= across, in whole
/// numbers. Both sides stay below 2^64 for the lengths allowed.
bool rows_fit(const Room& room, std::int64_t rows) {
  const auto high = static_cast<std::uint64_t>((rows - 1) * room.spacing);
  const auto across = static_cast<std::uint64_t>(2 * room.across);
  return 3 * high * high <= across * across;
}

std::int64_t staggered_rows(const Room& room) {
  const double distance = static_cast<double>(room.spacing) * std::sqrt(3.0) / 2;
  auto rows = static_cast<std::int64_t>(static_cast<double>(room.across) / distance) + 1;
  // The quotient of doubles can be a whole number off.
  while (rows_fit(room, rows + 1))
    ++rows;
  while (rows > 1 && !rows_fit(room, rows))
    --rows;
  return rows;
}

Stand stand(const Room& room, RowsAlong along, Pattern pattern) {
  Stand s;
  s.along = along;
  if (room.along < 0 || room.across < 0)
    return s;
  s.in_a_row = in_row(room, 0);
  if (pattern == Pattern::square) {
    s.rows = room.across / room.spacing + 1;
    s.in_the_next = s.in_a_row;
  } else {
    s.rows = staggered_rows(room);
    s.in_the_next = in_row(room, 1);
  }
  s.pots = (s.rows + 1) / 2 * s.in_a_row + s.rows / 2 * s.in_the_next;
  return s;
}

std::optional<Fault> wrong_with(const Bench& bench) {
  for (const double side : {bench.length, bench.width})
    if (!(side > 0))
      return fault(phrase("a bench side of {} mm cannot be", write_real(side)),
                   "Give length and width in millimetres.");
  if (!(bench.pot >= 1))
    return fault(phrase("a pot of {} mm is below 1 mm", write_real(bench.pot)),
                 "Give its largest outside diameter in millimetres.");
  if (!(bench.gap >= 0))
    return fault(phrase("a gap of {} mm cannot be", write_real(bench.gap)),
                 "Give 0 for pots that touch.");
  for (const double measure : {bench.length, bench.width, bench.pot, bench.gap})
    if (!(measure <= most_millimetres))
      return fault(phrase("{} mm is longer than a kilometre", write_real(measure)),
                   "Check the unit: lengths are in millimetres.");
  return std::nullopt;
}

} // namespace

Result<Stand> pots_on_bench(const Bench& bench, Pattern pattern) {
  if (const auto wrong = wrong_with(bench))
    return refuse(*wrong);
  const Micrometres pot = whole(bench.pot);
  const Micrometres spacing = pot + whole(bench.gap);
  const Micrometres length = whole(bench.length) - pot;
  const Micrometres width = whole(bench.width) - pot;
  const Stand by_length = stand({length, width, spacing}, RowsAlong::length, pattern);
  const Stand by_width = stand({width, length, spacing}, RowsAlong::width, pattern);
  Stand best = by_width.pots > by_length.pots ? by_width : by_length;
  best.per_square_metre =
      static_cast<double>(best.pots) / (bench.length / 1000 * (bench.width / 1000));
  return best;
}

} // namespace coneline::plan
