// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/trade_rules.h"

#include "core/base/csv.h"
#include "core/base/phrase.h"
#include "trade_rules_csv.h"

#include <fmt/format.h>

#include <array>

namespace coneline::report {

namespace {

Result<TradeRule> rule_of(const CsvTable& table, const CsvRow& row) {
  const auto field = [&](std::string_view column) { return row.fields[*table.column(column)]; };
  const auto at = [&](Fault fault, std::string_view column) {
    return refuse(fault.at(table.where(row, column)));
  };
  TradeRule rule;
  if (field("kind") != "listing" && field("kind") != "rule")
    return at(fault(phrase("'{}' is no kind of rule", field("kind")), "Use 'listing' or 'rule'."),
              "kind");
  rule.kind = field("kind") == "rule" ? TradeRule::Kind::rule : TradeRule::Kind::listing;
  rule.name = field("name");
  rule.says = field("says");
  rule.source = field("source");
  for (const auto* column : {"name", "says", "source"})
    if (field(column).empty())
      return at(fault("nothing stands here", "A rule has a name, what it says, and its source."),
                column);
  auto as_of = Date::parse(field("as_of"));
  if (!as_of)
    return at(as_of.error(), "as_of");
  rule.as_of = *as_of;
  return rule;
}

Result<std::vector<TradeRule>> rules_of(const CsvTable& table) {
  for (const auto* column : {"kind", "name", "says", "source", "as_of"})
    if (!table.column(column))
      return refuse(fault(phrase("the column '{}' is missing", column),
                          "The columns are kind, name, says, source, as_of.")
                        .at({table.file, 1, column}));
  std::vector<TradeRule> rules;
  for (const auto& row : table.rows) {
    auto rule = rule_of(table, row);
    if (!rule)
      return refuse(rule.error());
    rules.push_back(*std::move(rule));
  }
  return rules;
}

/// "Zamia furfuracea var. x" -> "Zamia", "Zamia furfuracea".
std::array<std::string_view, 2> genus_and_species(std::string_view taxon) {
  const auto first = taxon.find(' ');
  const auto genus = taxon.substr(0, first);
  if (first == std::string_view::npos)
    return {genus, genus};
  return {genus, taxon.substr(0, taxon.find(' ', first + 1))};
}

} // namespace

const std::vector<TradeRule>& built_in_trade_rules() {
  static const auto rules = read_csv(trade_rules_csv, "trade_rules.csv").and_then(rules_of).value();
  return rules;
}

Result<std::vector<TradeRule>> trade_rules_of(const std::filesystem::path& file) {
  return read_csv_file(file).and_then(rules_of);
}

const TradeRule* listing_of(const std::vector<TradeRule>& rules, std::string_view taxon) {
  const auto [genus, species] = genus_and_species(taxon);
  const TradeRule* of_genus = nullptr;
  for (const auto& rule : rules) {
    if (rule.kind != TradeRule::Kind::listing)
      continue;
    if (rule.name == species)
      return &rule;
    if (rule.name == genus)
      of_genus = &rule;
  }
  return of_genus;
}

} // namespace coneline::report
