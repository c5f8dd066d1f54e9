// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A book's file as a whole: copied, also while it is open, and taken away from its old place.

#include "core/base/fault.h"

#include <filesystem>

namespace coneline::store {

/// Writes a whole copy at `to`, found sound by the engine, with the rights of the old file. Fails:
/// no book at `from`, something at `to` already, a folder that may not be written, a full disk;
/// then nothing new stands at `to`.
Result<void> copy_book(const std::filesystem::path& from, const std::filesystem::path& to);

/// Fails where any program, this one too, has the book open: its log stands beside it then.
Result<void> is_closed(const std::filesystem::path& path);

/// Takes the file away once it stands elsewhere. Fails where it is not closed, or where it may not
/// be taken away.
Result<void> take_away_book(const std::filesystem::path& path);

} // namespace coneline::store
