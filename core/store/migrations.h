// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The chain of numbered steps that makes a new book and brings an older one up to date. Private to
// this room.

#include "core/base/fault.h"

#include <soci/soci.h>

#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace coneline::store {

struct Migration {
  int version; ///< of the book after this step
  std::string name;
  std::string script;
};

/// The steps of this program, in the order of their versions.
const std::vector<Migration>& migrations();

/// Runs what the book lacks, each step in one transaction, after a copy of the book beside it when
/// it is not new. Fails on a book newer than the last step. Throws soci::soci_error; the book then
/// has the version before the failed step.
Result<void> bring_up_to_date(soci::session& session, const std::filesystem::path& path,
                              std::span<const Migration> steps);

/// Where the copy before a migration goes: beside the book, never over another file.
std::filesystem::path copy_before_migration(const std::filesystem::path& path, int version);

} // namespace coneline::store
