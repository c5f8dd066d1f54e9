// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The demonstration as a season folder, the same bytes each time.

#include "core/exchange/export_season.h"

namespace coneline::demo {

/// Founds the nursery in a new book at `passing`, lives through its seasons and writes the folder.
Result<std::vector<exchange::FileCount>> invent(const std::filesystem::path& passing,
                                                const std::filesystem::path& folder,
                                                exchange::Existing existing);

} // namespace coneline::demo
