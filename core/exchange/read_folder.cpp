// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/read_folder.h"

#include "core/base/phrase.h"
#include "core/exchange/field_reader.h"
#include "core/exchange/field_writer.h"
#include "core/exchange/fields.h"
#include "core/exchange/folder.h"
#include "core/exchange/rows_done.h"

#include <fmt/format.h>

#include <map>

namespace coneline::exchange {

namespace {

namespace fs = std::filesystem;
using Tables = std::map<std::string, CsvTable, std::less<>>;

template <class Row>
std::vector<std::string> columns_of() {
  const Keys none;
  FieldWriter header(none);
  Row row{};
  fields(header, row);
  return header.columns();
}

/// Files under other names may be there (a note, a picture); a CSV file may not, since a slip in
/// its name would leave its rows out.
void check_other_files(const fs::path& folder, Faults& faults) {
  const auto known = files_of_a_season();
  std::error_code error;
  std::vector<fs::path> others;
  for (fs::directory_iterator each(folder, error), end; !error && each != end;
       each.increment(error))
    if (std::ranges::find(known, each->path().filename().string()) == known.end())
      others.push_back(each->path());
  std::ranges::sort(others);
  for (const auto& path : others) {
    const auto name = path.filename().string();
    if (fs::is_symlink(fs::symlink_status(path, error))) {
      if (auto inside = is_file_inside(folder, path); !inside)
        faults.add(inside.error());
    } else if (path.extension() == ".csv") {
      faults.add(fault(phrase("'{}' is no file of a season folder", shortened(name)),
                       "Correct its name, or take it out.")
                     .at({name, 0, {}}));
    }
  }
}

/// False where the rows cannot be read for want of columns.
template <class Row>
bool check_columns(const CsvTable& table, Faults& faults) {
  const auto wanted = columns_of<Row>();
  bool whole = true;
  for (const auto& name : wanted)
    if (!table.column(name)) {
      whole = false;
      faults.add(fault(phrase("the column '{}' is missing", name), "Add it to the header.")
                     .at({table.file, 1, name}));
    }
  for (const auto& name : table.columns)
    if (std::ranges::find(wanted, name) == wanted.end())
      faults.add(fault(phrase("the column '{}' is not known", shortened(name)),
                       phrase("Take it out; the columns are {}.",
                              fmt::format("{}", fmt::join(wanted, ", "))))
                     .at({table.file, 1, shortened(name)}));
  return whole;
}

template <class Row>
void open_table(const fs::path& folder, Tables& tables, Faults& faults) {
  const std::string name(file_of<Row>);
  std::error_code error;
  if (!fs::exists(fs::symlink_status(folder / name, error))) {
    if constexpr (may_be_missing<Row>)
      return;
    faults.add(
        fault("the file is missing", phrase("It needs at least its header: {}.",
                                            fmt::format("{}", fmt::join(columns_of<Row>(), ","))))
            .at({name, 0, {}}));
    return;
  }
  if (auto inside = is_file_inside(folder, folder / name); !inside) {
    faults.add(inside.error());
    return;
  }
  auto table = read_csv_file(folder / name);
  if (!table)
    faults.add(table.error().at({name, 0, {}}));
  else if (check_columns<Row>(*table, faults))
    tables.emplace(name, std::move(*table));
}

/// What the rows of a file are called. The first of two with one name keeps it.
template <class Row>
void learn_keys(const Tables& tables, Keys& keys, Faults& faults) {
  using Id = typename IdOf<Row>::Id;
  if constexpr (!std::is_void_v<Id>) {
    const auto table = tables.find(file_of<Row>);
    keys.of<Id>().whole = table != tables.end();
    if (table == tables.end())
      return;
    const auto column = *table->second.column(Called<Id>::column);
    std::map<std::string, std::size_t> lines;
    Id id;
    for (const auto& row : table->second.rows) {
      ++id.value;
      const auto key = read_key<Id>(row.fields[column]);
      if (!key || key->empty())
        continue; // told when the field itself is read
      const auto [first, is_new] = lines.emplace(*key, row.line);
      if (is_new)
        keys.add(*key, id);
      else
        faults.add(fault(phrase("the {} '{}' stands on line {} already", Called<Id>::what,
                                shortened(*key), first->second),
                         "Each is written once.")
                       .at(table->second.where(row, Called<Id>::column)));
    }
  }
}

std::size_t rows_of(const Tables& tables) {
  std::size_t rows = 0;
  for (const auto& [name, table] : tables)
    rows += table.rows.size();
  return rows;
}

template <class Row>
void read_rows(const Tables& tables, const Keys& keys, Sheet<Row>& sheet, Faults& faults,
               RowsDone& done) {
  const auto table = tables.find(file_of<Row>);
  sheet.whole = table != tables.end();
  if (!sheet.whole)
    return;
  std::int64_t number = 0;
  for (const auto& from : table->second.rows) {
    if (!done.go_on())
      return;
    Lined<Row> to{{}, from.line};
    FieldReader io(table->second, from, keys, faults);
    fields(io, to.row);
    to.sound = io.sound();
    if constexpr (requires { to.row.id; })
      to.row.id = {++number};
    if constexpr (!std::is_void_v<typename IdOf<Row>::Id>)
      to.sound = to.sound && keys.of<typename IdOf<Row>::Id>().texts.contains(to.row.id);
    sheet.rows.push_back(std::move(to));
  }
}

} // namespace

Result<ReadFolder> read_folder(const fs::path& folder, const Progress& progress) {
  std::error_code error;
  if (!fs::is_directory(folder, error))
    return refuse(fault(phrase("there is no folder '{}'", folder.string()),
                        "Name the folder that holds book.csv and the other files."));
  ReadFolder read;
  Tables tables;
  Keys keys;
  check_other_files(folder, read.faults);
  bool goes_on = true;
  each_sheet(read.sheets, [&]<class Row>(Sheet<Row>&) {
    goes_on = goes_on && (!progress || progress(0, 1));
    if (goes_on)
      open_table<Row>(folder, tables, read.faults);
  });
  if (!goes_on)
    return read;
  each_sheet(read.sheets,
             [&]<class Row>(Sheet<Row>&) { learn_keys<Row>(tables, keys, read.faults); });
  RowsDone done(progress, rows_of(tables));
  each_sheet(read.sheets, [&]<class Row>(Sheet<Row>& sheet) {
    read_rows(tables, keys, sheet, read.faults, done);
  });
  if (const auto title = tables.find(file_of<book::Title>);
      title != tables.end() && title->second.rows.size() != 1)
    read.faults.add(
        fault(phrase("{} rows", title->second.rows.size()), "The cover of the book is one row.")
            .at({title->second.file, 0, {}}));
  return read;
}

} // namespace coneline::exchange
