// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Entries from their rows. Private to this room.

#include "core/book/entry.h"
#include "core/store/tables.h"

#include <vector>

namespace coneline::store {

/// Without its movements and what it noted.
book::Entry entry_of(const Row& row);

book::Movement movement_of(const Row& row);

/// Puts what they noted into the entries.
void fill_details(Tables& tables, std::vector<book::Entry>& entries);

} // namespace coneline::store
