// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The large book as a file, entered through the ledger's gate like any other.

#include "core/store/book.h"

#include <filesystem>

namespace coneline::tests {

/// Makes a book of so many trays in a path where nothing is. All crosses are of one taxon and one
/// male; each inspection is an entry, those that found nothing too.
store::Book make_large_book(const std::filesystem::path& path, int trays);

} // namespace coneline::tests
