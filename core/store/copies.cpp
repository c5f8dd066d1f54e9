// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copies.h"

#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/store/copy_book.h"
#include "core/store/copying.h"
#include "core/store/engine/sqlite.h"
#include "core/store/migrations.h"
#include "core/store/proof.h"
#include "core/store/statement.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <algorithm>
#include <sys/stat.h>

namespace coneline::store {

namespace {

namespace fs = std::filesystem;

std::optional<Copy::Kind> kind_of(const fs::path& file) {
  if (file.extension() == ".copy")
    return Copy::Kind::copy;
  if (file.extension() == ".replaced")
    return Copy::Kind::replaced;
  return std::nullopt;
}

std::optional<Copy> described(const fs::path& file, Copy::Kind kind) {
  struct stat state {};
  if (::stat(file.c_str(), &state) != 0 || !S_ISREG(state.st_mode))
    return std::nullopt;
  const auto name = file.filename().string();
  Copy copy{file, kind, 0, "", static_cast<std::uintmax_t>(state.st_size)};
  if (kind != Copy::Kind::before_migration)
    copy.number = parse_whole(name.substr(0, name.find('-'))).value_or(0);
  copy.changed = fmt::format("{:%Y-%m-%d %H:%M:%S}", fmt::gmtime(state.st_mtim.tv_sec));
  return copy;
}

void add_numbered(std::vector<Copy>& copies, const fs::path& book) {
  std::error_code error;
  for (const auto& file : fs::directory_iterator(copies_folder(book), error))
    if (const auto kind = kind_of(file.path()))
      if (auto copy = described(file.path(), *kind))
        copies.push_back(*copy);
}

void add_before_migration(std::vector<Copy>& copies, const fs::path& book) {
  std::error_code error;
  const auto begins = book.filename().string() + ".version-";
  for (const auto& file : fs::directory_iterator(fs::absolute(book).parent_path(), error)) {
    const auto name = file.path().filename().string();
    if (name.starts_with(begins) && name.ends_with(".copy"))
      if (auto copy = described(book.parent_path() / name, Copy::Kind::before_migration))
        copies.push_back(*copy);
  }
}

CopyState state_of(soci::session& session, const fs::path& path, ProgressOfParts& parts) {
  CopyState state;
  if (!engine::is_ours(session))
    return {false, 0, "", "it is no book of Coneline"};
  constexpr double sound = 0.25; // the proof goes over all of it again
  if (const auto faults = engine::integrity_faults(session, parts.part(0, sound)); !faults.empty())
    return {false, 0, "", faults.front()};
  if (engine::version(session) > migrations().back().version)
    return {false, 0, "", "a newer program wrote it"};
  state.entries = Statement(session, "SELECT count(*) FROM entry").number().value_or(0);
  Statement(session, "SELECT coalesce(max(date), '') AS latest FROM entry")
      .each([&](const Row& row) { state.last_entry = row.text("latest"); });
  state.good = true;
  if (engine::version(session) != migrations().back().version)
    return state;
  auto book = Book::open(path, Access::read);
  const auto proof = book ? prove(*book, {}, parts.part(sound, 1)) : refuse(book.error());
  if (!proof)
    state.fault = proof.error().what;
  else if (!proof->holds())
    state.fault = proof->faults.front();
  state.good = state.fault.empty();
  return state;
}

/// Keeps the book that stands at `book`, with its log, under a name of its own.
Result<std::optional<fs::path>> put_aside(const fs::path& book) {
  std::error_code error;
  if (!fs::exists(book, error))
    return std::nullopt;
  if (auto made = make_copies_folder(book); !made)
    return refuse(made.error());
  const auto aside =
      copies_folder(book) / fmt::format("{:06}-{:%Y-%m-%d-%H%M%S}.replaced", next_number(book),
                                        fmt::gmtime(::time(nullptr)));
  if (::link(book.c_str(), aside.c_str()) != 0)
    if (auto copied = copy_bytes(book, aside); !copied)
      return refuse(copied.error());
  // The log would be played into the copy; it belongs to the book that goes.
  fs::rename(book.string() + "-wal", aside.string() + "-wal", error);
  fs::remove(book.string() + "-shm", error);
  if (auto settled = settle(aside); !settled)
    return refuse(settled.error());
  return aside;
}

/// Asks how far it is until what is coming stands beside the book; from there on nothing stops it.
Result<Restored> put_in_place(const fs::path& book, const Copy& from, const Progress& progress) {
  if (auto alone = nobody_has_it_open(book); !alone)
    return refuse(alone.error());
  const fs::path coming = book.string() + ".coming";
  if (auto copied = copy_bytes(from.path, coming, progress); !copied)
    return refuse(copied.error());
  auto aside = put_aside(book);
  std::error_code error;
  if (!aside) {
    fs::remove(coming, error);
    return refuse(aside.error());
  }
  if (fs::exists(from.path.string() + "-wal", error))
    if (auto log = copy_bytes(from.path.string() + "-wal", book.string() + "-wal"); !log)
      return refuse(log.error());
  fs::rename(coming, book, error);
  if (error)
    return refuse(
        book_fault(phrase("'{}' cannot be put in place: {}", coming.string(), error.message()),
                   fmt::format("Rename it to '{}' by hand.", book.string())));
  if (auto settled = settle(book); !settled)
    return refuse(settled.error());
  return Restored{from, *aside};
}

} // namespace

fs::path copies_folder(const fs::path& book) {
  return book.string() + ".copies";
}

std::vector<Copy> copies_of(const fs::path& book) {
  std::vector<Copy> copies;
  add_numbered(copies, book);
  add_before_migration(copies, book);
  std::sort(copies.begin(), copies.end(), [](const Copy& a, const Copy& b) {
    if (a.number != b.number)
      return a.number > b.number;
    return a.changed != b.changed ? a.changed > b.changed : a.path > b.path;
  });
  return copies;
}

CopyState look_into(const Copy& copy, const Progress& progress) {
  if (auto looks = engine::looks_like_a_book(copy.path); !looks)
    return {false, 0, "", looks.error().what};
  try {
    soci::session session;
    engine::open(session, copy.path, engine::Mode::read);
    ProgressOfParts parts(progress);
    return state_of(session, copy.path, parts);
  } catch (const std::exception& failed) {
    return {false, 0, "", failed.what()};
  }
}

std::optional<Copy> newest_good_copy(const fs::path& book) {
  for (const auto& copy : copies_of(book))
    if (copy.kind != Copy::Kind::replaced && look_into(copy).good)
      return copy;
  return std::nullopt;
}

std::string advice_for_damaged(const fs::path& book) {
  const auto copy = newest_good_copy(book);
  if (!copy)
    return phrase("No good copy stands beside it; take one from elsewhere, and keep this file.");
  return advice_to_restore(*copy);
}

std::string advice_to_restore(const Copy& copy) {
  return phrase(
      "The newest good copy is '{}', of the book as it was on {} UTC. 'Go back to a copy' in the "
      "window, or 'coneline restore', puts it in place and keeps this file.",
      copy.path.string(), copy.changed);
}

Result<void> make_due_copy(const fs::path& book) {
  const auto opened = Book::open(book, Access::write);
  if (!opened)
    return refuse(opened.error());
  if (const auto& why = opened->not_copied())
    return refuse(*why);
  return {};
}

Result<Restored> restore(const fs::path& book, const std::optional<fs::path>& wanted,
                         const Progress& progress) {
  constexpr double looked_into = 0.9;
  ProgressOfParts parts(progress);
  if (!wanted) {
    if (const auto copy = newest_good_copy(book))
      return put_in_place(book, *copy, parts.part(looked_into, 1));
    return refuse(book_fault(phrase("'{}' has no good copy", book.string()),
                             "Name a copy from elsewhere. Nothing was changed."));
  }
  // A bare name is one from the list.
  std::error_code error;
  auto file = *wanted;
  if (!file.has_parent_path() && !fs::exists(file, error))
    file = copies_folder(book) / file;
  const auto copy = described(file, kind_of(file).value_or(Copy::Kind::copy));
  if (!copy)
    return refuse(book_fault(phrase("there is no copy '{}'", file.string()),
                             "'coneline copies' lists them. Nothing was changed."));
  if (fs::equivalent(file, book, error))
    return refuse(fault(phrase("'{}' is the book itself", file.string()), "Name a copy."));
  const auto state = look_into(*copy, parts.part(0, looked_into));
  if (parts.stopped())
    return refuse(stopped_copying());
  if (!state.good)
    return refuse(
        book_fault(phrase("the copy '{}' is not good: {}", file.string(), state.fault),
                   "Take another; 'coneline copies' tells which are good. Nothing was changed."));
  return put_in_place(book, *copy, parts.part(looked_into, 1));
}

Result<Restored> undo_restore(const fs::path& book, const Progress& progress) {
  for (const auto& copy : copies_of(book))
    if (copy.kind == Copy::Kind::replaced)
      return put_in_place(book, copy, progress);
  return refuse(book_fault(phrase("no restore of '{}' is to be undone", book.string()),
                           "Nothing was changed."));
}

} // namespace coneline::store
