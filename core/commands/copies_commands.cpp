// SPDX-License-Identifier: GPL-3.0-or-later
// copies and restore: the copies a book makes of itself, and the way back to one of them.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/store/copies.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

std::string why_it_is_there(const store::Copy& copy) {
  switch (copy.kind) {
  case store::Copy::Kind::copy:
    return "copy";
  case store::Copy::Kind::before_migration:
    return "before migration";
  case store::Copy::Kind::replaced:
    return "replaced by a restore";
  }
  return {};
}

Result<Answer> list(const std::string& path) {
  Answer answer;
  answer.json = {{"book", path}, {"copies", Json::array()}};
  Table table({"copy", "book as of (UTC)", "why", "entries", "last entry", "bytes", "state"});
  const auto copies = store::copies_of(path);
  // A lost book's copies are what is asked for; without any, the name may be misspelt.
  if (copies.empty())
    if (const auto book = store::Book::open(path, store::Access::read); !book)
      return refuse(book.error());
  for (const auto& copy : copies) {
    const auto state = store::look_into(copy);
    answer.json["copies"].push_back(
        {{"file", copy.path.string()},
         {"changed", copy.changed},
         {"why", why_it_is_there(copy)},
         {"entries", state.good ? Json(state.entries) : Json()},
         {"last_entry", state.last_entry.empty() ? Json() : Json(state.last_entry)},
         {"bytes", copy.bytes},
         {"good", state.good},
         {"fault", state.good ? Json() : Json(state.fault)}});
    table.row({copy.path.filename().string(), copy.changed, why_it_is_there(copy),
               state.good ? std::to_string(state.entries) : "", state.last_entry,
               std::to_string(copy.bytes), state.good ? "good" : state.fault});
  }
  answer.table = copies.empty()
                     ? "No copy yet; the next command that writes makes one if the book changed.\n"
                     : table.text();
  return answer;
}

struct AskedBack {
  BookOption book;
  std::string copy;
  bool undo = false;
};

Result<Answer> bring_back(const AskedBack& asked) {
  const auto wanted =
      asked.copy.empty() ? std::nullopt : std::optional<std::filesystem::path>(asked.copy);
  const auto restored =
      asked.undo ? store::undo_restore(asked.book.path) : store::restore(asked.book.path, wanted);
  if (!restored)
    return refuse(restored.error());
  Answer answer;
  answer.json = {{"book", asked.book.path},
                 {"from", restored->from.path.string()},
                 {"changed", restored->from.changed},
                 {"replaced", restored->replaced ? Json(restored->replaced->string()) : Json()}};
  answer.table = fmt::format("'{}' is the book as it was on {} UTC, from '{}'.\n", asked.book.path,
                             restored->from.changed, restored->from.path.string());
  if (restored->replaced)
    answer.table +=
        fmt::format("What stood there is kept as '{}'; 'coneline restore --undo' puts it back.\n",
                    restored->replaced->string());
  return answer;
}

} // namespace

void add_copies(CommandLine& line) {
  const auto book = std::make_shared<BookOption>();
  book->add_to(line.add("copies",
                        "The copies a book made of itself, newest first, and which are good",
                        [book] { return list(book->path); }));
  const auto asked = std::make_shared<AskedBack>();
  auto& back = line.add("restore", "Put a copy in the book's place; the book there is kept",
                        [asked] { return bring_back(*asked); });
  asked->book.add_to(back);
  const auto copy = back.add_option(
      "--copy", asked->copy, "A name from 'copies' or a file; the newest good one when left out");
  back.add_flag("--undo", asked->undo, "Put back what the last restore replaced").excludes(copy);
}

} // namespace coneline::commands
