// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"

#include "core/base/phrase.h"
#include "core/store/copies.h"
#include "core/store/copying.h"
#include "core/store/engine/sqlite.h"
#include "core/store/migrations.h"
#include "core/store/tables.h"

#include <fmt/format.h>

#include <atomic>
#include <stdexcept>
#include <unistd.h>

namespace coneline::store {

class Book::File {
 public:
  explicit File(std::filesystem::path place) : path(std::move(place)) {}
  std::filesystem::path path;
  soci::session session;
  engine::Prepared prepared{session}; // goes before its session
  std::optional<Fault> not_copied;
  std::atomic_flag in_use;
};

namespace {

constexpr int no_series_yet = 10;

/// A transaction is its beginner's. Where the book is asked again meanwhile, that is told, since
/// otherwise both would go on in one transaction.
class Alone {
 public:
  explicit Alone(std::atomic_flag& in_use) : in_use_(in_use) {
    if (in_use_.test_and_set())
      throw std::logic_error("a book is asked twice at once; each thread opens it for itself");
  }
  ~Alone() { in_use_.clear(); }
  Alone(const Alone&) = delete;
  Alone& operator=(const Alone&) = delete;

 private:
  std::atomic_flag& in_use_;
};

} // namespace

Book::Book(std::unique_ptr<File> file) : file_(std::move(file)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

const std::filesystem::path& Book::path() const {
  return file_->path;
}

const std::optional<Fault>& Book::not_copied() const {
  return file_->not_copied;
}

Result<Book> Book::make(const std::filesystem::path& path, const book::Title& title) {
  if (auto free = is_free(path); !free)
    return refuse(free.error());
  // Made under another name, so that a stop half way leaves no half book.
  const auto unfinished = unfinished_name(path);
  remove_unfinished(unfinished);
  remove_abandoned(std::filesystem::absolute(path).parent_path(), path.filename().string() + ".");
  if (auto made = make_private_file(unfinished, path); !made)
    return refuse(made.error());
  auto file = std::make_unique<File>(unfinished);
  try {
    engine::open(file->session, unfinished, engine::Mode::make);
    auto made = bring_up_to_date(file->session, unfinished, migrations()).and_then([&] {
      return Book(std::move(file)).write([&](Writing& writing) { return writing.put(title); });
    });
    if (!made) {
      remove_unfinished(unfinished);
      return refuse(made.error());
    }
  } catch (const std::exception& failed) {
    remove_unfinished(unfinished);
    return refuse(engine::explain(failed, path));
  }
  const auto named = give_name(unfinished, path);
  remove_unfinished(unfinished);
  if (!named)
    return refuse(named.error());
  return open(path, Access::write, Copying::never); // it holds nothing yet
}

Result<Book> Book::open(const std::filesystem::path& path, Access access) {
  return open(path, access, access == Access::write ? Copying::when_changed : Copying::never);
}

Result<Book> Book::open(const std::filesystem::path& path, Access access, Copying copying) {
  if (auto named = is_named(path); !named)
    return refuse(named.error());
  if (auto looks = engine::looks_like_a_book(path); !looks)
    return refuse(looks.error());
  if (access == Access::write && ::access(path.c_str(), W_OK) != 0)
    return refuse(book_fault(phrase("'{}' may only be read", path.string()),
                             "Ask for the right to write to it."));
  auto file = std::make_unique<File>(path);
  try {
    // First only to read, so that a file that is not ours stays exactly as it is.
    engine::open(file->session, path, engine::Mode::read);
    if (!engine::is_ours(file->session))
      return refuse(book_fault(phrase("'{}' is no book of Coneline", path.string()),
                               "Name another file, or make a new book."));
    const int version = engine::version(file->session);
    const int newest = migrations().back().version;
    if (access == Access::read && version < newest)
      return refuse(book_fault(
          phrase("'{}' has version {}, and this program reads {}", path.string(), version, newest),
          "Open it once to write; a copy of the old one is kept. If that fails, "
          "it is damaged. " +
              advice_for_damaged(path)));
    if (access == Access::write && version <= newest) {
      file->session.close();
      engine::open(file->session, path, engine::Mode::write);
    }
    if (copying == Copying::when_changed && version == newest)
      if (auto copied = copy_if_changed(file->session, path); !copied)
        file->not_copied = copied.error();
    if (file->not_copied && !engine::integrity_faults(file->session).empty())
      return refuse(book_fault(phrase("'{}' is damaged: {}", path.string(), file->not_copied->what),
                               advice_for_damaged(path)));
    if (auto done = bring_up_to_date(file->session, path, migrations()); !done)
      return refuse(done.error());
  } catch (const std::exception& failed) {
    return refuse(engine::explain(failed, path));
  }
  return Book(std::move(file));
}

Result<void> Book::in_transaction(Way way, const std::function<bool(Writing&)>& inside) {
  auto& session = file_->session;
  bool begun = false;
  bool keeping = false;
  try {
    const Alone alone(file_->in_use);
    way == Way::read ? engine::begin_reading(session) : engine::begin_writing(session);
    begun = true;
    Tables tables(session, file_->prepared, no_series_yet);
    if (const auto series = tables.ask("SELECT series FROM book").number())
      tables.set_series(static_cast<int>(*series));
    Writing writing(tables);
    const bool wanted = inside(writing);
    keeping = wanted && way == Way::write;
    if (keeping)
      engine::keep(session);
    else
      engine::drop(session);
    return {};
  } catch (const std::exception& failed) {
    if (begun)
      engine::drop(session);
    auto fault = engine::explain(failed, file_->path);
    // A disk that fails within the last step may have taken it all the same.
    if (keeping && engine::is_of_the_disk(failed))
      fault.remedy = "Make room or see to the disk, and open the book again. Whether this was "
                     "written shows there; look before doing it again.";
    return refuse(std::move(fault));
  }
}

} // namespace coneline::store
