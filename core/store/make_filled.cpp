// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/make_filled.h"

#include "core/store/copying.h"

namespace coneline::store {

Result<void> make_filled(const std::filesystem::path& path, const book::Title& title,
                         const std::function<Result<void>(Book&)>& fill) {
  if (auto free = is_free(path); !free)
    return free;
  remove_abandoned(std::filesystem::absolute(path).parent_path(), path.filename().string() + ".");
  const auto unfinished = unfinished_name(path);
  Result<void> done;
  if (auto book = Book::make(unfinished, title))
    done = fill(*book);
  else
    done = refuse(book.error());
  // Closed by now, so that all of it is in the one file.
  if (done)
    done = settle(unfinished).and_then([&] { return give_name(unfinished, path); });
  remove_unfinished(unfinished);
  if (!done)
    return done;
  // Opened once for its first copy. Where that cannot be made the book is there all the same, and
  // the next opening to write tries again.
  return Book::open(path, Access::write).map([](const Book&) {}).and_then([&] {
    return settle(path);
  });
}

} // namespace coneline::store
