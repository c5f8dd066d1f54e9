// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A season folder into an empty book. Every row goes the way that a grower's entries go, through
// the ledger's gate, and either all of them come in or none.

#include "core/base/progress.h"
#include "core/exchange/export_season.h"
#include "core/exchange/faults.h"

namespace coneline::exchange {

enum class Import { dry_run, write };

struct Imported {
  std::vector<FileCount> files; ///< rows that came in, or would
  Faults faults;                ///< any: nothing came in
  std::size_t not_judged = 0;   ///< entries that follow from one at fault and could not be judged
};

/// Fails where there is no such folder, the book holds something already or cannot be written, and
/// when `progress` stops it; nothing came in then. What is wrong in the files is in `faults`, each
/// with its file, line and column.
Result<Imported> import_season(const std::filesystem::path& folder, store::Book& book, Import how,
                               const Progress& progress = {});

/// The same into a new book, which stands at `path` when all of the folder is in it. Where anything
/// in the folder is at fault, or it was stopped, there is none. `today` is the day it was made
/// until the folder's own title comes in.
Result<Imported> import_new(const std::filesystem::path& folder, const std::filesystem::path& path,
                            Date today, const Progress& progress = {});

} // namespace coneline::exchange
