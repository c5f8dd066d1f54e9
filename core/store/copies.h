// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Copies of a book that make themselves, in the folder BOOK.copies beside it, and the way back.
//
// When: at each opening to write, if the book changed since the newest copy. A book above 32 MB is
// copied then at most once in fifteen minutes. Before every migration always (BOOK.version-N.copy).
// Each copy is read back and checked before it counts as one.
// Kept: the ten newest, the last of each of the fourteen newest days with a copy, and the last of
// each month. Days and months order nothing: copies carry running numbers, so a clock that was set
// back loses none. A new copy thins the others only after it was found good.
// A book that a restore replaced is kept as NNNNNN-….replaced, never thinned, and `undo` brings it
// back.
//
// Files are their owner's alone. A copy has the book's own time of change as its time.

#include "core/base/fault.h"
#include "core/base/progress.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace coneline::store {

struct Copy {
  enum class Kind { copy, before_migration, replaced };
  std::filesystem::path path;
  Kind kind = Kind::copy;
  std::int64_t number = 0; ///< runs with each copy; 0 for those before a migration
  std::string changed;     ///< when the book it holds was last changed, "2026-11-25 21:24:30" UTC
  std::uintmax_t bytes = 0;
};

/// What a look into a copy found.
struct CopyState {
  bool good = false; ///< whole, and of this version also proven
  std::int64_t entries = 0;
  std::string last_entry; ///< the latest day of an entry, or empty
  std::string fault;      ///< why it is not good
};

std::filesystem::path copies_folder(const std::filesystem::path& book);

/// Newest first; replaced books among them.
std::vector<Copy> copies_of(const std::filesystem::path& book);

/// Reads all of a copy. Never changes it. One that `progress` stopped is not known to be good.
CopyState look_into(const Copy& copy, const Progress& progress = {});

/// The newest copy that is good, if any; replaced books do not count.
std::optional<Copy> newest_good_copy(const std::filesystem::path& book);

/// What to do about a damaged book, naming its newest good copy.
std::string advice_for_damaged(const std::filesystem::path& book);
/// The same where that copy is known.
std::string advice_to_restore(const Copy& copy);

/// Opens a book to write and lets go of it, so that the copy that is due is made now and not when
/// it is opened next. Fails as that opening would, and where the copy could not be made.
Result<void> make_due_copy(const std::filesystem::path& book);

struct Restored {
  Copy from;
  std::optional<std::filesystem::path> replaced; ///< where the book that stood there is kept
};

/// Puts a copy in the book's place; the newest good one when none is named. The book that stood
/// there, damaged or not, is kept. Fails when no such copy is good, and when another program has
/// the book open; the book then is as it was. So it is when `progress` stops it, which is asked
/// until the book is replaced.
Result<Restored> restore(const std::filesystem::path& book,
                         const std::optional<std::filesystem::path>& copy,
                         const Progress& progress = {});

/// Puts back what the last restore (or undo) replaced. Fails when there is nothing.
Result<Restored> undo_restore(const std::filesystem::path& book, const Progress& progress = {});

} // namespace coneline::store
