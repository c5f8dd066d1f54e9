// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Puts the rows of a folder into a book. Private to this room.

#include "core/exchange/faults.h"
#include "core/exchange/rows.h"
#include "core/exchange/rows_done.h"
#include "core/exchange/stored.h"
#include "core/store/writing.h"

namespace coneline::exchange {

/// Registers and lots first, then the entries. What the book refuses goes to `faults`, with its
/// place. Returns how many entries could not be judged, since they follow from something at fault.
/// Where `progress` stops it, what was put is not all.
std::size_t store_season(const Sheets& sheets, store::Writing& writing, Faults& faults,
                         const Progress& progress);

/// The entries alone, in the order of their rows.
std::size_t store_entries(const Sheets& sheets, Stored& stored, store::Writing& writing,
                          Faults& faults, RowsDone& done);

/// The chain that the entries made in the book must be the one the folder has, where it has one.
void check_links(const Sheets& sheets, const Stored& stored, store::Writing& writing,
                 Faults& faults);

template <class Row>
Where where(const Lined<Row>& row, std::string_view column) {
  return {std::string(file_of<Row>), row.line, std::string(column)};
}

/// Rounds and sightings, which refer to lots and entries.
void store_rounds(const Sheets& sheets, Stored& stored, store::Writing& writing, Faults& faults);

} // namespace coneline::exchange
