// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A book's file as a whole: copied, also while it is open, and moved.

#include "core/base/fault.h"
#include "core/base/progress.h"

#include <filesystem>
#include <functional>

namespace coneline::store {

/// Writes a whole copy at `to`, read back and checked, with the rights of the old file. Fails: no
/// book at `from`, something at `to` already, copies there that belong to another book, a folder
/// that may not be written, a full disk, and when `progress` stops it; then nothing new stands at
/// `to`. It holds the book as it was at one moment: entries that others make meanwhile are in it
/// whole or not at all.
Result<void> copy_book(const std::filesystem::path& from, const std::filesystem::path& to,
                       const Progress& progress = {});

/// Puts the book at `to`, its copies with it. `now_there` is called once it stands there and before
/// the old file goes: a program that has the book open opens the new one then. Fails as `copy_book`
/// does, when `now_there` does, when another program has the old file open, and when an entry came
/// to the old file meanwhile; the old file then stays as it is, and only in the last two cases,
/// which say so, something stays at `to`. `progress` is asked, and can stop it, until `now_there`
/// is called.
Result<void> move_book(const std::filesystem::path& from, const std::filesystem::path& to,
                       const std::function<Result<void>()>& now_there,
                       const Progress& progress = {});

/// Fails when any program, this one too, has the book open.
Result<void> nobody_has_it_open(const std::filesystem::path& book);

} // namespace coneline::store
