// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copy_book.h"

#include "core/base/phrase.h"
#include "core/store/engine/sqlite.h"

#include <fmt/format.h>

#include <fcntl.h>
#include <unistd.h>

namespace coneline::store {

namespace fs = std::filesystem;

namespace {

Fault there_already(const fs::path& to) {
  return fault(phrase("'{}' is there already", to.string()), "Give another name.");
}

/// What was written stands on the disk, not only in its memory.
bool settled(const fs::path& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  const bool kept = file >= 0 && ::fsync(file) == 0;
  if (file >= 0)
    ::close(file);
  return kept;
}

Result<void> write_copy(const fs::path& from, const fs::path& part) {
  soci::session book;
  engine::open(book, from, engine::Mode::read);
  if (!engine::is_ours(book))
    return refuse(
        book_fault(phrase("'{}' is no book of Coneline", from.string()), "Check the name."));
  engine::copy(book, part);
  soci::session copy;
  engine::open(copy, part, engine::Mode::read);
  const auto wrong = engine::integrity_faults(copy);
  if (!wrong.empty())
    return refuse(book_fault(phrase("the copy is not sound: {}", wrong.front()),
                             "See what 'coneline check' says of the book."));
  return {};
}

} // namespace

Result<void> copy_book(const fs::path& from, const fs::path& to) {
  std::error_code error;
  if (auto is = engine::looks_like_a_book(from); !is)
    return is;
  if (to.empty())
    return refuse(fault("no name for the copy", "Give the file to write."));
  if (fs::exists(fs::symlink_status(to, error)))
    return refuse(there_already(to));
  const fs::path part = to.string() + ".part";
  if (fs::exists(fs::symlink_status(part, error)))
    return refuse(there_already(part));
  Result<void> written;
  try {
    written = write_copy(from, part);
  } catch (const std::exception& wrong) {
    written = refuse(engine::explain(wrong, to));
  }
  if (written) {
    fs::permissions(part, fs::status(from, error).permissions(), error);
    // A link fails where a file came up meanwhile; a rename would write over it.
    if (!settled(part))
      written = refuse(fault(phrase("'{}' could not be written whole", to.string()),
                             "See whether the disk has room."));
    else if (fs::create_hard_link(part, to, error); error)
      fs::rename(part, to, error);
    if (written && error)
      written = refuse(fault(phrase("'{}' cannot be written: {}", to.string(), error.message()),
                             "Check the folder."));
  }
  for (const auto* end : {"", "-wal", "-shm", "-journal"})
    fs::remove(part.string() + end, error);
  return written;
}

Result<void> is_closed(const fs::path& path) {
  std::error_code error;
  try {
    // The last to close a book clears its log away.
    soci::session book;
    engine::open(book, path, engine::Mode::write);
  } catch (const std::exception& wrong) {
    return refuse(engine::explain(wrong, path));
  }
  if (fs::exists(path.string() + "-wal", error))
    return refuse(book_fault(phrase("'{}' is open in another program", path.string()),
                             "Close it there first; it stays where it is until then."));
  return {};
}

Result<void> take_away_book(const fs::path& path) {
  if (auto is = is_closed(path); !is)
    return is;
  std::error_code error;
  if (!fs::remove(path, error))
    return refuse(fault(phrase("'{}' cannot be taken away: {}", path.string(),
                               error ? error.message() : "it is not there"),
                        "The copy stands; take the old file away by hand."));
  return {};
}

} // namespace coneline::store
