// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A folder that is either there as a whole or not at all, and files in it that stay inside it.

#include "core/base/fault.h"

#include <filesystem>
#include <functional>
#include <vector>

namespace coneline::exchange {

/// What to do with an earlier export in the folder.
enum class Existing { keep, replace };

/// Writes a folder under another name beside `folder`, lets `fill` put the files in, and only then
/// gives it its name. What is there already is taken away only with Existing::replace, and only
/// when it holds no other files than `known`. Fails: no such parent folder, a folder with other
/// files, the folder one stands in, a full or read-only disk.
Result<void> write_whole(const std::filesystem::path& folder, Existing existing,
                         const std::vector<std::string>& known,
                         const std::function<Result<void>(const std::filesystem::path&)>& fill);

/// Writes one file and waits until it is on the disk.
Result<void> write_file(const std::filesystem::path& path, std::string_view text);

/// Fails unless `path` is an ordinary file inside `folder`, links followed.
Result<void> is_file_inside(const std::filesystem::path& folder, const std::filesystem::path& path);

} // namespace coneline::exchange
