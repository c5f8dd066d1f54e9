// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Files that are written whole or not at all.

#include "core/base/fault.h"

#include <filesystem>
#include <string_view>

namespace coneline::report {

/// Who may read the file: whom any new file is read by, or its owner alone (papers, buyers).
enum class Readers { as_usual, owner };

/// Writes beside the file under a name of its own, then puts it in place: a reader sees the old
/// file or the new one. Takes the place of a file that is there. Fails where the folder cannot be
/// written or is full; nothing is left behind then.
Result<void> write_whole(const std::filesystem::path& path, std::string_view text,
                         Readers readers = Readers::as_usual);

} // namespace coneline::report
