// SPDX-License-Identifier: GPL-3.0-or-later
// take-in-table: an older spreadsheet into a book, its columns matched by hand.
#include "core/commands/book_file.h"
#include "core/commands/book_options.h"
#include "core/commands/table.h"
#include "core/exchange/old_table.h"
#include "core/exchange/take_in_table.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

using exchange::TableField;

struct Asked {
  BookOption book;
  std::string file;
  std::vector<std::string> columns;
  std::vector<std::string> for_all;
  std::string dates;
  std::string delimiter;
  std::size_t header = 0;
  std::string on;
  bool dry_run = false;
};

/// "Mother plant=seed parent", split at the last equals sign.
Result<std::pair<std::string, std::string>> halves(const std::string& given) {
  const auto at = given.rfind('=');
  if (at == std::string::npos || at == 0 || at + 1 == given.size())
    return refuse(usage_fault(fmt::format("'{}' has no two sides", given),
                              "Write it like 'Mother plant=seed parent'."));
  return std::pair(given.substr(0, at), given.substr(at + 1));
}

/// A field that there is not is a fault of the command line, not of the file.
Result<TableField> field_named(const std::string& word) {
  auto field = book::read_word<TableField>(word);
  if (!field)
    return refuse(usage_fault(field.error().what, field.error().remedy));
  return *field;
}

Result<exchange::TableMatch> match_of(const Asked& asked) {
  exchange::TableMatch match;
  for (const auto& given : asked.columns) {
    auto both = halves(given);
    if (!both)
      return refuse(both.error());
    auto field = field_named(both->second);
    if (!field)
      return refuse(field.error());
    if (!match.columns.emplace(*field, both->first).second)
      return refuse(usage_fault(fmt::format("two columns for '{}'", both->second), "Name one."));
  }
  for (const auto& given : asked.for_all) {
    auto both = halves(given);
    if (!both)
      return refuse(both.error());
    auto field = field_named(both->first);
    if (!field)
      return refuse(field.error());
    match.for_all[*field] = both->second;
  }
  if (asked.dates == "dmy")
    match.dates = exchange::TableDates::day_month_year;
  if (asked.dates == "mdy")
    match.dates = exchange::TableDates::month_day_year;
  if (asked.dates == "ymd")
    match.dates = exchange::TableDates::year_month_day;
  return match;
}

exchange::TableLayout layout_of(const Asked& asked) {
  exchange::TableLayout layout;
  if (asked.header > 0)
    layout.header = asked.header;
  if (asked.delimiter == "comma")
    layout.delimiter = ',';
  if (asked.delimiter == "semicolon")
    layout.delimiter = ';';
  if (asked.delimiter == "tab")
    layout.delimiter = '\t';
  return layout;
}

/// What the columns are, and what they may be: nothing is taken in before it was said.
Answer suggestion(const CsvTable& table) {
  const auto match = exchange::guess(table.columns);
  Answer answer;
  answer.json = {{"file", table.file}, {"rows", table.rows.size()}, {"columns", Json::array()}};
  Table shown({"column", "first cell", "perhaps"});
  std::string line;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const auto& column = table.columns[i];
    const auto found =
        std::ranges::find_if(match.columns, [&](const auto& one) { return one.second == column; });
    const bool any = found != match.columns.end();
    const auto field = any ? std::string(book::word(found->first)) : std::string();
    const auto& first = table.rows.front().fields[i];
    shown.row({column, exchange::shortened(first), field});
    answer.json["columns"].push_back(
        {{"column", column}, {"first", first}, {"perhaps", any ? Json(field) : Json(nullptr)}});
    if (any)
      line += fmt::format(" --column '{}={}'", column, field);
  }
  answer.table = shown.text() + "\nMatch them, such as:\n " + line + "\nFields:\n";
  for (const auto& [field, word] : book::Words<TableField>::all)
    answer.table += fmt::format("  {:14} {}\n", word, exchange::about(field));
  return answer;
}

Json as_json(const Fault& fault) {
  Json json{{"file", nullptr}, {"line", nullptr}, {"column", nullptr}};
  if (fault.where) {
    json["file"] = fault.where->file;
    json["line"] = fault.where->line;
    if (!fault.where->column.empty())
      json["column"] = fault.where->column;
  }
  json["what"] = fault.what;
  json["remedy"] = fault.remedy;
  return json;
}

std::string listed(const char* what, const std::vector<std::string>& names) {
  if (names.empty())
    return {};
  std::string line = fmt::format("New {}: ", what);
  for (const auto& name : names)
    line += (&name == &names.front() ? "" : ", ") + name;
  return line + "\n";
}

std::string as_text(const exchange::TableTaken& taken, bool dry_run) {
  std::string text;
  for (const auto& fault : taken.faults.listed())
    text += fault.text() + '\n';
  if (!taken.faults.none()) {
    text += fmt::format("Nothing was taken in: {} at fault.\n",
                        taken.faults.listed().size() + taken.faults.unlisted());
    return text;
  }
  Table rows({"line", dry_run ? "would become" : "became"});
  for (const auto& row : taken.rows)
    rows.row({std::to_string(row.line), row.told});
  text += rows.text() + "\n" + listed("taxa", taken.taxa) + listed("plants", taken.plants) +
          listed("places", taken.places) + listed("trays and pots", taken.pots);
  for (const auto& look : taken.look_at)
    text += look + '\n';
  for (const auto& column : taken.left_out)
    text += fmt::format("The column '{}' is left out.\n", column);
  text += dry_run ? fmt::format("{} rows would come in; nothing was written.\n", taken.rows.size())
                  : fmt::format("{} rows came in.\n", taken.rows.size());
  return text;
}

Answer as_answer(const CsvTable& table, const exchange::TableTaken& taken, bool dry_run) {
  Answer answer;
  answer.at_fault = !taken.faults.none();
  answer.json = {{"file", table.file},
                 {"taken_in", !dry_run && !answer.at_fault},
                 {"rows", Json::array()},
                 {"faults", Json::array()},
                 {"faults_not_listed", taken.faults.unlisted()},
                 {"new",
                  {{"taxa", taken.taxa},
                   {"plants", taken.plants},
                   {"places", taken.places},
                   {"pots", taken.pots}}},
                 {"look_at", taken.look_at},
                 {"left_out", taken.left_out}};
  for (const auto& row : taken.rows) {
    Json made = Json::array();
    for (const auto& code : row.made)
      made.push_back(code.text());
    answer.json["rows"].push_back({{"line", row.line}, {"told", row.told}, {"made", made}});
  }
  for (const auto& fault : taken.faults.listed())
    answer.json["faults"].push_back(as_json(fault));
  answer.table = as_text(taken, dry_run);
  return answer;
}

Result<Answer> run(const Asked& asked) {
  auto table = exchange::read_old_table_file(asked.file, layout_of(asked));
  if (!table)
    return refuse(table.error());
  if (asked.columns.empty())
    return suggestion(*table);
  auto match = match_of(asked);
  auto today = date_or_today(asked.on, "--on");
  if (!match)
    return refuse(match.error());
  if (!today)
    return refuse(today.error());
  auto book = asked.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto how = asked.dry_run ? exchange::Import::dry_run : exchange::Import::write;
  return exchange::take_in_table(*table, *match, *book, how, *today).map([&](const auto& taken) {
    return as_answer(*table, taken, asked.dry_run);
  });
}

} // namespace

void add_take_in_table(CommandLine& line) {
  const auto asked = std::make_shared<Asked>();
  auto& command =
      line.add("take-in-table", "Take in an older spreadsheet (CSV), its columns matched by hand",
               [asked] { return run(*asked); });
  asked->book.add_to(command);
  command.add_option("file", asked->file, "The sheet, saved as CSV").required();
  command.add_option("--column", asked->columns,
                     "What a column holds: 'Mother plant=seed parent'. With none, the columns and "
                     "what they may hold are shown");
  command.add_option("--all", asked->for_all, "What holds for every row: kind=tray");
  command.add_option("--dates", asked->dates, "How dates are written; what they tell when left out")
      .one_of({"ymd", "dmy", "mdy"});
  command
      .add_option("--delimiter", asked->delimiter, "What stands between cells; found when left out")
      .one_of({"comma", "semicolon", "tab"});
  command.add_option("--header", asked->header, "The line with the names of the columns");
  command.add_option("--on", asked->on, "The day the list is of; today when left out");
  command.add_flag("--dry-run", asked->dry_run, "Only say what would come of each row");
}

} // namespace coneline::commands
