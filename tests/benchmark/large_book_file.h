// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The large book as a file, entered through the ledger's gate like any other.

#include "core/store/book.h"
#include "tests/benchmark/large_book.h"

#include <filesystem>

namespace coneline::tests {

/// Makes a book of so many trays in a path where nothing is. All crosses are of one taxon and one
/// male; each inspection is an entry, those that found nothing too. `looks` is how many inspections
/// of a tray are entered at most.
store::Book make_large_book(const std::filesystem::path& path, int trays,
                            int looks = looks_of_a_tray);

/// A book without anything in it, for what is entered next.
store::Book make_empty_book(const std::filesystem::path& path);
/// Enters trays in one transaction.
void enter(store::Book& book, const std::vector<stats::Tray>& trays, int looks = looks_of_a_tray);

} // namespace coneline::tests
