// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/germination_csv.h"

#include "core/base/count.h"
#include "core/base/date.h"
#include "core/base/number.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace coneline::commands {

namespace {

using stats::Look;
using stats::Tray;

/// One row as read.
struct Counted {
  std::string group;
  std::string tray;
  std::int64_t sown = 0;
  Look look;
  std::size_t line = 0;
};

struct Placed {
  std::size_t line = 0;
  Fault fault;
};

/// A tray is known by its group and its own name: trays numbered from 1 in every group are usual.
using Name = std::pair<std::string, std::string>;

/// A tray while its rows are gathered.
struct Gathered {
  std::int64_t sown = 0;
  std::vector<Counted> rows;
};

class Reader {
 public:
  explicit Reader(const CsvTable& table) : table_(table) {}

  Result<std::vector<Tray>> read() {
    if (!has_columns())
      return refuse(all_faults());
    for (const auto& row : table_.rows)
      if (auto counted = counted_in(row))
        gather(std::move(*counted));
    if (table_.rows.empty())
      add(1, {},
          fault("the file has a header and no rows", "Add a row for every inspection of a tray."));
    std::vector<Tray> trays;
    for (const auto& name : names_)
      trays.push_back(tray_of(name));
    if (!faults_.empty())
      return refuse(all_faults());
    return trays;
  }

 private:
  void add(std::size_t line, std::string column, const Fault& what) {
    faults_.push_back({line, what.at({table_.file, line, std::move(column)})});
  }

  bool has_columns() {
    if (const auto other = other_separator(table_)) {
      add(1, {},
          fault(fmt::format("the columns seem to be separated by {}", *other),
                "Save the file with commas between columns and decimals with a point, such as "
                "7.5."));
      return false;
    }
    for (const auto* name : {"group", "tray", "sown", "day", "germinated"})
      if (!table_.column(name))
        add(1, name,
            fault(fmt::format("the header has no column '{}'", name),
                  "It needs group, tray, sown, day and germinated, and may have removed."));
    return faults_.empty();
  }

  [[nodiscard]] const std::string& field(const CsvRow& row, std::string_view column) const {
    static const std::string none;
    const auto place = table_.column(column);
    return place ? row.fields[*place] : none;
  }

  std::string name_in(const CsvRow& row, const char* column) {
    const auto& name = field(row, column);
    if (name.empty())
      add(row.line, column, fault(fmt::format("the {} has no name", column), "Write one."));
    return name;
  }

  std::int64_t count_in(const CsvRow& row, const char* column) {
    const auto& text = field(row, column);
    if (text.empty() && std::string_view(column) == "removed")
      return 0;
    const auto count = Count::parse(text);
    if (!count)
      add(row.line, column, count.error());
    return count ? count->value() : 0;
  }

  double day_in(const CsvRow& row) {
    const auto& text = field(row, "day");
    const auto day = parse_real(text);
    if (day)
      return *day;
    if (Date::parse(text))
      add(row.line, "day",
          fault(fmt::format("{} is a date", text), "Write the days since sowing, such as 21."));
    else
      add(row.line, "day", day.error());
    return 0;
  }

  std::optional<Counted> counted_in(const CsvRow& row) {
    const auto before = faults_.size();
    Counted counted;
    counted.line = row.line;
    counted.group = name_in(row, "group");
    counted.tray = name_in(row, "tray");
    counted.sown = count_in(row, "sown");
    counted.look = {day_in(row), count_in(row, "germinated"), count_in(row, "removed")};
    if (faults_.size() > before)
      return std::nullopt;
    return counted;
  }

  void gather(Counted row) {
    const Name name{row.group, row.tray};
    const auto [found, is_new] = trays_.try_emplace(name, Gathered{row.sown, {}});
    auto& tray = found->second;
    if (is_new)
      names_.push_back(name);
    if (row.sown != tray.sown)
      add(row.line, "sown",
          fault(fmt::format("tray '{}' has {} sown here and {} in line {}", row.tray, row.sown,
                            tray.sown, tray.rows.front().line),
                "Write the same number in every row of the tray."));
    tray.rows.push_back(std::move(row));
  }

  Tray tray_of(const Name& name) {
    auto& gathered = trays_.at(name);
    std::ranges::stable_sort(gathered.rows, {}, [](const Counted& row) { return row.look.day; });
    Tray tray{name.first, name.second, gathered.sown, {}};
    for (const auto& row : gathered.rows)
      tray.looks.push_back(row.look);
    for (const auto& found : stats::faults_of(tray)) {
      const auto line = gathered.rows[found.look.value_or(0)].line;
      add(line, column_name(found.column), fault(found.what, found.remedy));
    }
    return tray;
  }

  static std::string column_name(stats::TrayColumn column) {
    switch (column) {
    case stats::TrayColumn::sown:
      return "sown";
    case stats::TrayColumn::day:
      return "day";
    case stats::TrayColumn::germinated:
      return "germinated";
    case stats::TrayColumn::removed:
      return "removed";
    }
    return {};
  }

  /// One fault keeps its place; several become one text with a line for each.
  Fault all_faults() {
    constexpr std::size_t most = 20;
    if (faults_.size() == 1)
      return faults_.front().fault;
    std::ranges::stable_sort(faults_, {}, &Placed::line);
    std::string text;
    for (std::size_t i = 0; i < std::min(most, faults_.size()); ++i)
      text += (i > 0 ? "\n" : "") + faults_[i].fault.text();
    if (faults_.size() > most)
      text += fmt::format("\nand {} more faults.", faults_.size() - most);
    return coneline::fault(std::move(text));
  }

  const CsvTable& table_;
  std::vector<Name> names_; // in the order of their first rows
  std::map<Name, Gathered> trays_;
  std::vector<Placed> faults_;
};

} // namespace

Result<std::vector<Tray>> read_germination(const CsvTable& table) {
  return Reader(table).read();
}

} // namespace coneline::commands
