// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// An invented book that is larger than any nursery's: trays with thirty inspections each, sixteen
// of one cross, drawn from curves with spread between trays, given up at different times.

#include "core/stats/germination_data.h"
#include "core/work/germination.h"

#include <vector>

namespace coneline::tests {

inline constexpr int looks_of_a_tray = 30;
inline constexpr int trays_of_a_cross = 16;

/// The same on every machine.
std::vector<stats::Tray> large_counts(int trays);

/// The same as observed trays of a book, to make a report of.
std::vector<work::ObservedTray> large_book(int trays);

} // namespace coneline::tests
