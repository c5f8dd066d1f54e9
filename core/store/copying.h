// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How copies are made, for the book's opening and its migrations. Private to this room.

#include "core/base/fault.h"
#include "core/base/progress.h"

#include <soci/soci.h>

#include <filesystem>
#include <optional>
#include <string>

namespace coneline::store {

/// Copies the book if it changed since the newest copy, then thins the copies by the stated rule.
/// Returns the new copy, if one was due. Fails when the book is damaged, which `damaged` tells, and
/// when the copy cannot be written (full disk, a folder that may not be written).
Result<std::optional<std::filesystem::path>> copy_if_changed(soci::session& session,
                                                             const std::filesystem::path& book);

/// Fails where no file is named.
Result<void> is_named(const std::filesystem::path& path);
/// Fails then too, and where something stands there.
Result<void> is_free(const std::filesystem::path& path);
/// Fails where the folder that the file is to stand in is not there.
Result<void> has_folder(const std::filesystem::path& path);

/// A name for what is not finished, of this program's own, so that two that write the same at the
/// same moment stay apart.
std::filesystem::path unfinished_name(const std::filesystem::path& to);

/// Takes it away with whatever logs the engine left beside it.
void remove_unfinished(const std::filesystem::path& path);

/// Takes away what programs that were stopped left unfinished in a folder, of files whose names
/// begin so.
void remove_abandoned(const std::filesystem::path& folder, const std::string& begins);

/// Gives a finished file its name. Fails where that is taken, by another program's file of the same
/// moment or by somebody's.
Result<void> give_name(const std::filesystem::path& unfinished, const std::filesystem::path& to);

/// Writes a checked copy to `to`, which must not exist and is never written over; nothing is left
/// there when it fails, nor when `progress` stops it.
Result<void> checked_copy(soci::session& session, const std::filesystem::path& book,
                          const std::filesystem::path& to, const Progress& progress = {});

/// Makes what stands at `path` last: the file's content and, with it, its name in the folder.
Result<void> settle(const std::filesystem::path& path);

/// Copies a file as it is, with its time of change, for its owner alone; what stood at `to` goes.
/// Nothing stands there when it fails or is stopped.
Result<void> copy_bytes(const std::filesystem::path& from, const std::filesystem::path& to,
                        const Progress& progress = {});

/// An empty file that only its owner may read; fails when it is there, and then names what it is to
/// become.
Result<void> make_private_file(const std::filesystem::path& path,
                               const std::filesystem::path& becomes = {});

/// The next running number in the folder of copies.
std::int64_t next_number(const std::filesystem::path& book);

/// Makes the folder of copies, its owner's alone.
Result<void> make_copies_folder(const std::filesystem::path& book);

} // namespace coneline::store
