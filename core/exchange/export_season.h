// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A book as a folder of CSV files (RFC 4180, UTF-8, LF). The same book gives the same bytes, and
// what is exported can be imported again without loss. A text that a spreadsheet would run as a
// formula gets an apostrophe in front.

#include "core/exchange/folder.h"
#include "core/exchange/season.h"
#include "core/store/book.h"

namespace coneline::exchange {

struct FileCount {
  std::string file;
  std::size_t rows = 0; ///< without the header
};

/// Writes the folder, whole or not at all. Fails as `write_whole` does, and on a text that is no
/// UTF-8.
Result<std::vector<FileCount>> write_season(const Season& season,
                                            const std::filesystem::path& folder, Existing existing);

/// The same from a book, as it stands at one moment.
Result<std::vector<FileCount>> export_season(store::Book& book, const std::filesystem::path& folder,
                                             Existing existing);

} // namespace coneline::exchange
