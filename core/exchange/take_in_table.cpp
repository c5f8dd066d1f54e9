// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/take_in_table.h"

#include "core/base/near_words.h"
#include "core/base/phrase.h"
#include "core/exchange/table_rows.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::exchange {

namespace {

bool matched(const TableMatch& match, TableField field) {
  return match.columns.contains(field) || match.for_all.contains(field);
}

Result<void> sound(const CsvTable& table, const TableMatch& match) {
  for (const auto& [field, column] : match.columns)
    if (!table.column(column)) {
      std::string names;
      for (const auto& name : table.columns)
        names += (names.empty() ? "" : ", ") + name;
      return refuse(
          fault(phrase("there is no column '{}'", column), phrase("The file has: {}.", names))
              .at({table.file, 0, {}}));
    }
  if (!matched(match, TableField::kind))
    return refuse(fault("nothing says what the rows are",
                        "Match a column to 'kind', or say seed, tray, pot or parent for all rows.")
                      .at({table.file, 0, {}}));
  return {};
}

/// New names that differ from others by a letter or two may be slips of the pen.
void look_at_names(const std::string& what, const std::vector<std::string>& news,
                   std::vector<std::string> known, std::vector<std::string>& look_at) {
  constexpr std::size_t short_name = 4; // "A 1" and "A 2" are two benches
  constexpr std::size_t slip = 2;
  for (const auto& name : news) {
    const auto near = std::ranges::find_if(known, [&](const auto& other) {
      const bool numbers_differ = name.find_first_of("0123456789") != std::string::npos;
      return name.size() > short_name && !numbers_differ && letters_between(name, other) <= slip;
    });
    if (near != known.end())
      look_at.push_back(phrase("Is the {} '{}' the same as '{}'? Both would stand in the book.",
                               what, name, *near));
    known.push_back(name);
  }
}

template <class Row>
std::vector<std::string> names_of(const std::vector<Row>& rows) {
  std::vector<std::string> names;
  for (const auto& row : rows)
    names.push_back(row.name);
  return names;
}

void look_at_news(const book::Registers& before, TableTaken& taken) {
  look_at_names(phrase("taxon"), taken.taxa, names_of(before.taxa), taken.look_at);
  look_at_names(phrase("plant"), taken.plants, names_of(before.plants), taken.look_at);
  look_at_names(phrase("place"), taken.places, names_of(before.places), taken.look_at);
  look_at_names(phrase("tray or pot"), taken.pots, names_of(before.pots), taken.look_at);
  if (!taken.places.empty())
    taken.look_at.push_back(
        phrase("New places have no measures yet: enter their length and width, so that room can be "
               "reckoned."));
}

/// Puts a fault of a line where the grower finds it: its row, and the column matched to the member.
Fault placed(const Fault& fault, const CsvTable& table, const CsvRow& row,
             const TableMatch& match) {
  auto column = fault.where ? fault.where->column : std::string();
  if (const auto field = book::read_word<TableField>(column))
    column = column_of(match, *field == TableField::seed_parent &&
                                      match.columns.contains(TableField::cross)
                                  ? TableField::cross
                                  : *field);
  auto there = fault;
  there.where = table.where(row, column);
  return there;
}

} // namespace

Result<TableTaken> take_in_table(const CsvTable& table, const TableMatch& match, store::Book& book,
                                 Import how, Date today, const Progress& progress) {
  if (auto is = sound(table, match); !is)
    return refuse(is.error());
  TableTaken taken;
  auto read = read_lines(table, match, taken.faults);
  if (!read)
    return refuse(read.error());
  for (const auto& column : table.columns)
    if (std::ranges::none_of(match.columns, [&](const auto& one) { return one.second == column; }))
      taken.left_out.push_back(column);
  bool brought = false;
  const auto put_all = [&](store::Writing& writing) -> Result<void> {
    const auto before = writing.registers();
    auto all = work::bring_in(writing, read->lines, today, [&](std::size_t done) {
      return !progress || progress(done, read->lines.size());
    });
    if (all.stopped)
      return refuse(stopped_taking_in());
    brought = true;
    for (std::size_t i = 0; i < all.lines.size(); ++i)
      if (all.lines[i])
        taken.rows.push_back({read->rows[i]->line, all.lines[i]->told, all.lines[i]->made});
      else
        taken.faults.add(placed(all.lines[i].error(), table, *read->rows[i], match));
    taken.taxa = std::move(all.taxa);
    taken.plants = std::move(all.plants);
    taken.places = std::move(all.places);
    taken.pots = std::move(all.pots);
    taken.entries = std::move(all.entries);
    look_at_news(before, taken);
    if (!taken.faults.none())
      return refuse(taken.faults.listed().front()); // so that nothing of it is kept
    return {};
  };
  const auto done = how == Import::write ? book.write(put_all) : book.try_out(put_all);
  if (!done && (!brought || taken.faults.none()))
    return refuse(done.error());
  return taken;
}

} // namespace coneline::exchange
