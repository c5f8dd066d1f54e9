// SPDX-License-Identifier: GPL-3.0-or-later
// book name, book copy, book move: the book's cover and its file.
#include "core/commands/book_file.h"
#include "core/commands/book_options.h"
#include "core/store/copy_book.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string text; ///< the name, or the file to write
};

Result<Answer> name_book(const Asked& asked) {
  auto book = asked.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  if (asked.text.find_first_not_of(' ') == std::string::npos)
    return refuse(fault("no name", "Write what the nursery is called."));
  return book
      ->write([&](store::Writing& writing) {
        auto title = writing.registers().title;
        title.name = asked.text;
        return writing.put(title);
      })
      .map([&] {
        return Answer{{{"name", asked.text}},
                      fmt::format("The book is now called {}.\n", asked.text)};
      });
}

/// A book that cannot be opened is not carried elsewhere as if it were one.
Result<void> opens(const std::string& path) {
  auto book = store::Book::open(path, store::Access::read);
  return book ? Result<void>() : refuse(book.error());
}

Result<Answer> copy_book(const Asked& asked) {
  return opens(asked.book.path)
      .and_then([&] { return store::copy_book(asked.book.path, asked.text); })
      .map([&] {
        return Answer{{{"book", asked.book.path}, {"copy", asked.text}},
                      fmt::format("A whole copy stands at {}.\n", asked.text)};
      });
}

Result<Answer> move_book(const Asked& asked) {
  return opens(asked.book.path)
      .and_then([&] { return store::nobody_has_it_open(asked.book.path); })
      .and_then([&] {
        return store::move_book(asked.book.path, asked.text, [&] { return opens(asked.text); });
      })
      .map([&] {
        return Answer{{{"from", asked.book.path}, {"to", asked.text}},
                      fmt::format("The book now stands at {}.\n", asked.text)};
      });
}

} // namespace

void add_book_file(CommandLine& line) {
  const auto add = [&](const char* name, const char* help, const char* argument, const char* about,
                       auto run) {
    const auto asked = std::make_shared<Asked>();
    auto& command = line.add("book", name, help, [asked, run] { return run(*asked); });
    asked->book.add_to(command);
    command.add_option(argument, asked->text, about).required();
  };
  add("name", "Call the book, and with it the nursery, by another name", "name", "The new name",
      name_book);
  add("copy", "Write a whole copy of the book, also while it is open", "to", "The file to write",
      copy_book);
  add("move", "Put the book's file elsewhere", "to", "The file it becomes", move_book);
  line.about_group("book", "The book's name, and its file");
}

} // namespace coneline::commands
