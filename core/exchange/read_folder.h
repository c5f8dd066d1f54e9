// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Reads a season folder into rows, without a book. Everything that can be told wrong from the files
// alone is told here: missing and unknown files and columns, fields, codes used twice, references
// that lead nowhere, links out of the folder.

#include "core/base/progress.h"
#include "core/exchange/faults.h"
#include "core/exchange/rows.h"

#include <filesystem>

namespace coneline::exchange {

/// Ids in the rows count from 1 within each file.
struct ReadFolder {
  Sheets sheets;
  Faults faults;
};

/// Fails where there is no such folder. Where `progress` stops it, what it gives is not all.
Result<ReadFolder> read_folder(const std::filesystem::path& folder, const Progress& progress = {});

} // namespace coneline::exchange
