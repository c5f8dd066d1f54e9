// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_rows.h"

#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/exchange/logger_text.h"

#include <fmt/format.h>

#include <array>

namespace coneline::exchange {

namespace {

constexpr std::array date_fields{TableField::pollinated, TableField::harvested, TableField::since,
                                 TableField::seen};

/// A date's three numbers as they were written; a time after it is passed over.
std::optional<LoggerTime> numbers_of(const std::string& cell) {
  if (const auto alone = logger_time(cell + " 00:00"))
    return alone;
  return logger_time(cell);
}

DateOrder as_order(TableDates dates) {
  switch (dates) {
  case TableDates::day_month_year:
    return DateOrder::day_month_year;
  case TableDates::month_day_year:
    return DateOrder::month_day_year;
  default:
    return DateOrder::year_month_day;
  }
}

/// What a word for a kind means, in the singular or plural.
std::optional<Kind> kind_meant(const std::string& cell) {
  static const std::map<std::string, Kind> words{
      {"seed", Kind::batch},      {"seeds", Kind::batch},      {"batch", Kind::batch},
      {"tray", Kind::tray},       {"trays", Kind::tray},       {"sown", Kind::tray},
      {"flat", Kind::tray},       {"flats", Kind::tray},       {"pot", Kind::pot_group},
      {"pots", Kind::pot_group},  {"potted", Kind::pot_group}, {"pot group", Kind::pot_group},
      {"parent", Kind::plant},    {"parents", Kind::plant},    {"parent plant", Kind::plant},
      {"plants", Kind::pot_group}};
  const auto found = words.find(lower(cell));
  return found == words.end() ? std::nullopt : std::optional(found->second);
}

/// "1 200" and "120.0" are what spreadsheets make of 1200 and 120.
Result<Count> count_of(const std::string& cell) {
  std::string digits;
  for (const char c : cell)
    if (c != ' ' && c != '\'')
      digits += c;
  const auto mark = digits.find_first_of(".,");
  if (mark != std::string::npos && mark + 1 < digits.size() &&
      digits.find_first_not_of('0', mark + 1) == std::string::npos && digits.size() - mark <= 3)
    digits.erase(mark);
  auto count = Count::parse(digits);
  if (!count)
    return refuse(fault(phrase("'{}' is no count", shortened(cell)),
                        "Write a whole number, such as 40, and words in a note."));
  return count;
}

Result<double> number_of(const std::string& cell) {
  std::string plain = cell;
  if (plain.find('.') == std::string::npos)
    std::ranges::replace(plain, ',', '.');
  auto number = parse_real(plain);
  if (!number || *number <= 0)
    return refuse(fault(phrase("'{}' is no number above 0", shortened(cell)),
                        "Write the number alone, without its unit."));
  return number;
}

/// "Old Gate × Tall Male", also with x, X or *.
Result<std::pair<std::string, std::string>> parents_in(const std::string& cell) {
  for (const std::string_view between : {" × ", " x ", " X ", " * ", "×"}) {
    const auto at = cell.find(between);
    if (at == std::string::npos)
      continue;
    const auto first = trimmed(std::string_view(cell).substr(0, at));
    const auto second = trimmed(std::string_view(cell).substr(at + between.size()));
    if (!first.empty() && !second.empty() && second.find(between) == std::string::npos)
      return std::pair(first, second);
  }
  return refuse(fault(phrase("'{}' names no two parents", shortened(cell)),
                      "Write the seed parent, ×, and the pollen parent."));
}

/// What lists write for a father or place that nobody knows.
std::string known(const std::string& cell) {
  const auto word = lower(cell);
  return word == "?" || word == "-" || word == "unknown" || word == "not known" || word == "n/a"
             ? std::string()
             : cell;
}

class RowReader {
 public:
  RowReader(const CsvTable& table, const TableMatch& match, DateOrder order, Faults& faults)
      : match_(match), order_(order), faults_(faults), table_(table) {
    for (const auto& [field, column] : match.columns)
      places_[field] = *table.column(column);
  }

  std::optional<work::BroughtIn> read(const CsvRow& row) {
    row_ = &row;
    sound_ = true;
    work::BroughtIn line;
    take(TableField::kind, line.kind, [](const std::string& cell) -> Result<Kind> {
      if (const auto kind = kind_meant(cell))
        return *kind;
      return refuse(fault(phrase("'{}' is no kind of lot", shortened(cell)),
                          "Write seed, tray, pot or parent."));
    });
    take(TableField::sex, line.sex, [](const std::string& cell) {
      const auto word = lower(cell);
      return book::read_word<book::Sex>(word == "f" ? "female" : word == "m" ? "male" : word);
    });
    for (const auto& [field, text] : {std::pair(TableField::taxon, &line.taxon),
                                      {TableField::name, &line.name},
                                      {TableField::seed_parent, &line.seed_parent},
                                      {TableField::pollen_parent, &line.pollen_parent},
                                      {TableField::cone, &line.cone},
                                      {TableField::pot, &line.pot},
                                      {TableField::place, &line.place},
                                      {TableField::supplier, &line.supplier},
                                      {TableField::note, &line.note}})
      *text = known(cell(field));
    take_cross(line);
    take(TableField::count, line.count, count_of);
    take(TableField::seedlings, line.seedlings, count_of);
    take(TableField::litres, line.litres, number_of);
    take(TableField::width, line.width_mm, number_of);
    for (const auto& [field, day] : {std::pair(TableField::pollinated, &line.pollinated),
                                     {TableField::harvested, &line.harvested},
                                     {TableField::since, &line.since},
                                     {TableField::seen, &line.seen}})
      take(field, *day, [&](const std::string& cell) { return date_of(cell); });
    return sound_ ? std::optional(line) : std::nullopt;
  }

 private:
  [[nodiscard]] std::string cell(TableField field) const {
    if (const auto place = places_.find(field); place != places_.end())
      return row_->fields[place->second];
    const auto all = match_.for_all.find(field);
    return all == match_.for_all.end() ? std::string() : all->second;
  }

  template <class Value, class Read>
  void take(TableField field, Value& value, Read parse) {
    const auto text = known(cell(field));
    if (text.empty())
      return;
    auto got = parse(text);
    if (got)
      value = *got;
    else
      refuse_cell(field, got.error());
  }

  void take_cross(work::BroughtIn& line) {
    const auto text = known(cell(TableField::cross));
    if (text.empty())
      return;
    auto parents = parents_in(text);
    if (!parents)
      return refuse_cell(TableField::cross, parents.error());
    if (line.seed_parent.empty())
      line.seed_parent = known(parents->first);
    if (line.pollen_parent.empty())
      line.pollen_parent = known(parents->second);
  }

  Result<Date> date_of(const std::string& cell) const {
    const auto numbers = numbers_of(cell);
    if (!numbers)
      return refuse(fault(phrase("'{}' is no day", shortened(cell)),
                          "Write it like 2026-03-09, or leave it empty."));
    return moment_of(*numbers, numbers->year_first ? DateOrder::year_month_day : order_)
        .map([](const Moment& moment) { return moment.date; });
  }

  void refuse_cell(TableField field, const Fault& why) {
    sound_ = false;
    faults_.add(why.at(table_.where(*row_, column_of(match_, field))));
  }

  std::map<TableField, std::size_t> places_;
  const TableMatch& match_;
  DateOrder order_;
  Faults& faults_;
  const CsvTable& table_;
  const CsvRow* row_ = nullptr;
  bool sound_ = true;
};

/// Every cell that is to be a date, and those given for all rows.
std::vector<std::pair<std::string, Where>> dates_of(const CsvTable& table,
                                                    const TableMatch& match) {
  std::vector<std::pair<std::string, Where>> dates;
  for (const auto field : date_fields) {
    if (const auto matched = match.columns.find(field); matched != match.columns.end()) {
      const auto at = *table.column(matched->second);
      for (const auto& row : table.rows)
        dates.emplace_back(row.fields[at], table.where(row, matched->second));
    } else if (const auto all = match.for_all.find(field); all != match.for_all.end()) {
      dates.emplace_back(all->second, Where{table.file, 0, column_of(match, field)});
    }
  }
  return dates;
}

/// Whether the day or the month comes first, as far as all dates of the file tell together.
Result<DateOrder> order_in(const CsvTable& table, const TableMatch& match) {
  if (match.dates)
    return as_order(*match.dates);
  std::optional<Where> undecided;
  for (const auto& [cell, where] : dates_of(table, match)) {
    const auto numbers = numbers_of(cell);
    if (!numbers || numbers->year_first)
      continue;
    if (numbers->dotted || numbers->first > 12)
      return DateOrder::day_month_year;
    if (numbers->second > 12)
      return DateOrder::month_day_year;
    if (!undecided)
      undecided = where;
  }
  if (undecided)
    return refuse(fault("the dates do not tell whether the day or the month comes first",
                        "Say how they are written: day first, or month first.")
                      .at(*undecided));
  return DateOrder::year_month_day;
}

} // namespace

std::string column_of(const TableMatch& match, TableField field) {
  const auto matched = match.columns.find(field);
  return matched == match.columns.end() ? std::string(book::word(field)) : matched->second;
}

Result<TableLines> read_lines(const CsvTable& table, const TableMatch& match, Faults& faults) {
  auto order = order_in(table, match);
  if (!order)
    return refuse(order.error());
  RowReader reader(table, match, *order, faults);
  TableLines read;
  for (const auto& row : table.rows)
    if (auto line = reader.read(row)) {
      read.lines.push_back(std::move(*line));
      read.rows.push_back(&row);
    }
  return read;
}

} // namespace coneline::exchange
