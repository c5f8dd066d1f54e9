// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The book on disk: one file, opened, read and written in transactions.
//
//   auto book = store::Book::open(path, store::Access::write);
//   auto done = book->write([&](store::Writing& writing) -> Result<book::EntryId> { return
//   writing.enter(entry); });
//
// What `write` was given back as done survives the plug being pulled. What is refused inside leaves
// the file as it was.

#include "core/store/writing.h"

#include <filesystem>
#include <memory>
#include <type_traits>

namespace coneline::store {

enum class Access { read, write };

class Book {
 public:
  /// Makes a new book. Fails when the file exists or cannot be made.
  static Result<Book> make(const std::filesystem::path& path, const book::Title& title);

  /// Opens a book and, with Access::write, brings an older one up to date after copying it beside
  /// the file, and copies one that changed (copies.h). Fails, in words: missing, locked, read-only
  /// when to be written, not a book of Coneline, cut short or damaged, made by a newer program.
  static Result<Book> open(const std::filesystem::path& path, Access access);

  Book(Book&&) noexcept;
  Book& operator=(Book&&) noexcept;
  ~Book();

  [[nodiscard]] const std::filesystem::path& path() const;
  /// Why the copy that was due at opening could not be made, such as a full disk. The book is open
  /// all the same.
  [[nodiscard]] const std::optional<Fault>& not_copied() const;

  /// Runs `ask(Reading&)` on one unchanging state of the book. `ask` returns a Result or a plain
  /// value.
  template <class Ask>
  auto read(Ask ask) {
    return run<Ask, Reading>(std::move(ask), Way::read);
  }

  /// Runs `act(Writing&)`, which returns a Result, in one transaction: all of it is kept, or none.
  template <class Act>
  auto write(Act act) {
    return run<Act, Writing>(std::move(act), Way::write);
  }

  /// Like `write`, but nothing is kept: what would come of it.
  template <class Act>
  auto try_out(Act act) {
    return run<Act, Writing>(std::move(act), Way::try_out);
  }

  class File;

 private:
  enum class Way { read, write, try_out };
  explicit Book(std::unique_ptr<File> file);
  enum class Copying { when_changed, never };
  static Result<Book> open(const std::filesystem::path& path, Access access, Copying copying);
  static Result<void> as_result(Result<void> result) { return result; }

  /// Calls `inside` in a transaction; keeps what was done when it returns true.
  Result<void> in_transaction(Way way, const std::function<bool(Writing&)>& inside);

  template <class Act, class Session>
  auto run(Act act, Way way) {
    using Given = std::invoke_result_t<Act, Session&>;
    constexpr bool gives_result = requires(Given given) {
      given.error();
    };
    using Outcome = std::conditional_t<gives_result, Given, Result<Given>>;
    std::optional<Outcome> outcome;
    const auto ran = in_transaction(way, [&](Writing& session) {
      outcome.emplace(act(session));
      return outcome->has_value();
    });
    if (outcome && (!*outcome || ran))
      return std::move(*outcome);
    return Outcome(tl::unexpect, ran.error());
  }

  std::unique_ptr<File> file_;
};

} // namespace coneline::store
