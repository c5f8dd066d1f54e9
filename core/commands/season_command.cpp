// SPDX-License-Identifier: GPL-3.0-or-later
// export and import: a book as a folder of CSV files, and back into a new book.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/exchange/import_season.h"

#include <fmt/format.h>

#include <cstdlib>

namespace coneline::commands {

namespace {

namespace fs = std::filesystem;

struct Asked {
  BookOption book;
  std::string folder;
  bool replace = false;
  bool dry_run = false;
};

Json as_json(const std::vector<exchange::FileCount>& files) {
  auto list = Json::array();
  for (const auto& [file, rows] : files)
    list.push_back({{"file", file}, {"rows", rows}});
  return list;
}

std::string as_table(const std::vector<exchange::FileCount>& files) {
  Table table({"file", "rows"});
  for (const auto& [file, rows] : files)
    table.row({file, std::to_string(rows)});
  return table.text();
}

Json as_json(const Fault& fault) {
  Json json{{"file", nullptr}, {"line", nullptr}, {"column", nullptr}};
  if (fault.where) {
    json["file"] = fault.where->file;
    if (fault.where->line > 0)
      json["line"] = fault.where->line;
    if (!fault.where->column.empty())
      json["column"] = fault.where->column;
  }
  json["what"] = fault.what;
  json["remedy"] = fault.remedy;
  return json;
}

Result<Answer> run_export(const Asked& asked) {
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto existing = asked.replace ? exchange::Existing::replace : exchange::Existing::keep;
  return exchange::export_season(*book, asked.folder, existing).map([&](const auto& files) {
    return Answer{{{"folder", asked.folder}, {"files", as_json(files)}}, as_table(files)};
  });
}

/// A book that is there only while something is tried out in it.
class PassingBook {
 public:
  PassingBook() {
    auto name = (fs::temp_directory_path() / "coneline-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
      throw std::runtime_error("no folder for passing files can be made");
    folder_ = name;
  }
  ~PassingBook() {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
  }
  PassingBook(const PassingBook&) = delete;
  PassingBook& operator=(const PassingBook&) = delete;
  [[nodiscard]] fs::path path() const { return folder_ / "book"; }

 private:
  fs::path folder_;
};

/// Stands on the cover until the folder's own title comes in.
book::Title no_title_yet() {
  return {"", 10, false, Date::today()};
}

Result<exchange::Imported> try_out(const Asked& asked) {
  std::error_code error;
  const PassingBook passing;
  const bool there = fs::exists(fs::symlink_status(asked.book.path, error));
  auto book = there ? asked.book.open(store::Access::write)
                    : store::Book::make(passing.path(), no_title_yet());
  if (!book)
    return refuse(book.error());
  return exchange::import_season(asked.folder, *book, exchange::Import::dry_run);
}

Result<exchange::Imported> import_into(const Asked& asked) {
  std::error_code error;
  if (asked.dry_run)
    return try_out(asked);
  if (!fs::exists(fs::symlink_status(asked.book.path, error)))
    return exchange::import_new(asked.folder, asked.book.path, Date::today());
  auto book = asked.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  return exchange::import_season(asked.folder, *book, exchange::Import::write);
}

std::string told(const exchange::Imported& imported) {
  std::string text;
  for (const auto& fault : imported.faults.listed())
    text += fault.text() + '\n';
  const auto all = imported.faults.listed().size() + imported.faults.unlisted();
  if (imported.faults.unlisted() > 0)
    text += fmt::format("{} more faults are not listed.\n", imported.faults.unlisted());
  if (imported.not_judged > 0)
    text += fmt::format("{} entries follow from something at fault and could not be judged yet.\n",
                        imported.not_judged);
  return text + fmt::format("Nothing was imported: {} at fault.\n", all);
}

Result<Answer> run_import(const Asked& asked) {
  return import_into(asked).map([&](const exchange::Imported& imported) {
    const bool fine = imported.faults.none();
    Answer answer;
    answer.at_fault = !fine;
    answer.json = {{"folder", asked.folder},
                   {"imported", fine && !asked.dry_run},
                   {"files", as_json(imported.files)},
                   {"faults", Json::array()},
                   {"faults_not_listed", imported.faults.unlisted()},
                   {"entries_not_judged", imported.not_judged}};
    for (const auto& fault : imported.faults.listed())
      answer.json["faults"].push_back(as_json(fault));
    answer.table = fine ? as_table(imported.files) : told(imported);
    if (fine && asked.dry_run)
      answer.table += "These rows would come in; nothing was written.\n";
    return answer;
  });
}

} // namespace

void add_season(CommandLine& line) {
  const auto asked = std::make_shared<Asked>();
  auto& out = line.add("export", "Write a book as a folder of CSV files",
                       [asked] { return run_export(*asked); });
  asked->book.add_to(out);
  out.add_option("FOLDER", asked->folder, "A new or empty folder").required();
  out.add_flag("--replace", asked->replace, "Replace an earlier export in the folder");
  auto& in =
      line.add("import", "Read a folder of CSV files into a new book, made when it is not there",
               [asked] { return run_import(*asked); });
  asked->book.add_to(in);
  in.add_option("FOLDER", asked->folder, "The folder with book.csv and the other files").required();
  in.add_flag("--dry-run", asked->dry_run, "Only say what would come in, or what is wrong");
}

} // namespace coneline::commands
