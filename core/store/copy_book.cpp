// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copy_book.h"

#include "core/base/phrase.h"
#include "core/store/copies.h"
#include "core/store/copying.h"
#include "core/store/engine/sqlite.h"

namespace coneline::store {

namespace fs = std::filesystem;

namespace {

Result<void> may_become(const fs::path& to) {
  std::error_code error;
  if (to.empty())
    return refuse(fault("no name for the copy", "Give the file to write."));
  if (fs::exists(fs::symlink_status(to, error)))
    return refuse(fault(phrase("'{}' is there already", to.string()), "Give another name."));
  if (auto has = has_folder(to); !has)
    return has;
  if (!copies_of(to).empty())
    return refuse(fault(phrase("'{}' has copies of another book beside it", to.string()),
                        "Give another name, or another folder."));
  return {};
}

/// Moves a file; fails where one stands already.
Result<void> move_file(const fs::path& from, const fs::path& to) {
  std::error_code error;
  if (!fs::exists(to, error))
    fs::rename(from, to, error);
  if (error == std::errc::cross_device_link) {
    if (auto copied = copy_bytes(from, to); !copied)
      return copied;
    fs::remove(from, error);
  }
  if (!error && !fs::exists(from, error))
    return {};
  return refuse(book_fault(phrase("the copy '{}' cannot be taken along: {}", from.string(),
                                  error ? error.message() : phrase("its new name is taken")),
                           "Move it by hand to where the book stands."));
}

/// Its own name, or the next number where a copy of the same moment has taken it.
fs::path free_name(const fs::path& folder, const std::string& name, const fs::path& book) {
  std::error_code error;
  if (!fs::exists(folder / name, error))
    return folder / name;
  return folder / (fmt::format("{:06}", next_number(book)) + name.substr(name.find('-')));
}

/// Takes the copies along: those in the folder of copies, and those before a migration.
Result<void> move_copies(const fs::path& from, const fs::path& to) {
  if (copies_of(from).empty())
    return {};
  if (auto made = make_copies_folder(to); !made)
    return made;
  for (const auto& copy : copies_of(from)) {
    const auto there = copy.kind == Copy::Kind::before_migration
                           ? fs::path(to.string() + copy.path.filename().string().substr(
                                                        from.filename().string().size()))
                           : free_name(copies_folder(to), copy.path.filename().string(), to);
    if (auto moved = move_file(copy.path, there); !moved)
      return moved;
    // A book that was replaced while a program had it open has its log beside it.
    const fs::path log = copy.path.string() + "-wal";
    if (std::error_code none; fs::exists(log, none))
      if (auto moved = move_file(log, there.string() + "-wal"); !moved)
        return moved;
  }
  std::error_code kept; // not where somebody put a file of theirs into it
  fs::remove(copies_folder(from), kept);
  return {};
}

/// A session on the book, with the checks that both a copy and a move begin with.
Result<void> open_to_copy(soci::session& book, const fs::path& from, const fs::path& to,
                          engine::Mode mode) {
  if (auto is = engine::looks_like_a_book(from); !is)
    return is;
  if (auto may = may_become(to); !may)
    return may;
  try {
    engine::open(book, from, mode);
  } catch (const std::exception& failed) {
    return refuse(engine::explain(failed, from));
  }
  return {};
}

Result<void> copy_with_rights(soci::session& book, const fs::path& from, const fs::path& to,
                              const Progress& progress) {
  remove_abandoned(fs::absolute(to).parent_path(), to.filename().string() + ".");
  if (auto copied = checked_copy(book, from, to, progress); !copied)
    return copied;
  std::error_code error;
  fs::permissions(to, fs::status(from, error).permissions(), error);
  return {};
}

Fault open_elsewhere(const fs::path& book, std::string remedy) {
  return book_fault(phrase("'{}' is open in another program", book.string()), std::move(remedy));
}

/// Takes the old file away, closed to all others meanwhile.
Result<void> take_away(soci::session& book, std::int64_t as_copied, const fs::path& old_file,
                       const fs::path& stands_at) {
  try {
    // Before the log is left, which itself takes what was written for its own.
    const bool changed = engine::seen_changes(book) != as_copied;
    engine::leave_log(book);
    engine::begin_alone(book);
    if (changed)
      return refuse(book_fault(phrase("'{}' was written to while it was moved", old_file.string()),
                               phrase("It stays. What stands at '{}' lacks its last entries: take "
                                      "that away, then move it again.",
                                      stands_at.string())));
  } catch (const std::exception& failed) {
    if (engine::is_busy(failed))
      return refuse(open_elsewhere(
          old_file, phrase("It stays. Close it there, take '{}' away, then move it again.",
                           stands_at.string())));
    return refuse(engine::explain(failed, old_file));
  }
  std::error_code error;
  if (!fs::remove(old_file, error))
    return refuse(fault(phrase("'{}' cannot be taken away: {}", old_file.string(), error.message()),
                        "The copy stands; take the old file away by hand."));
  return {};
}

/// Why a move failed; its copies are to be where the old file is.
Result<void> undone(const Fault& why, const fs::path& from, const fs::path& to) {
  if (auto back = move_copies(to, from); !back)
    return refuse(book_fault(why.what + "; " + back.error().what, back.error().remedy));
  return refuse(why);
}

} // namespace

Result<void> copy_book(const fs::path& from, const fs::path& to, const Progress& progress) {
  soci::session book;
  return open_to_copy(book, from, to, engine::Mode::read).and_then([&] {
    return copy_with_rights(book, from, to, progress);
  });
}

Result<void> move_book(const fs::path& from, const fs::path& to,
                       const std::function<Result<void>()>& now_there, const Progress& progress) {
  soci::session book;
  if (auto opened = open_to_copy(book, from, to, engine::Mode::write); !opened)
    return opened;
  const auto as_copied = engine::seen_changes(book);
  if (auto copied = copy_with_rights(book, from, to, progress); !copied)
    return copied;
  // Before it is opened there, which would begin a folder of copies anew.
  if (auto there = move_copies(from, to).and_then(now_there); !there) {
    remove_unfinished(to);
    return undone(there.error(), from, to);
  }
  if (auto gone = take_away(book, as_copied, from, to); !gone)
    return undone(gone.error(), from, to);
  return {};
}

Result<void> nobody_has_it_open(const fs::path& book) {
  if (!engine::looks_like_a_book(book))
    return {};
  try {
    soci::session session;
    engine::open(session, book, engine::Mode::write);
    engine::leave_log(session);
  } catch (const std::exception& failed) {
    if (engine::is_busy(failed))
      return refuse(open_elsewhere(book, "Close it there, then do it again. Nothing was changed."));
  }
  return {};
}

} // namespace coneline::store
