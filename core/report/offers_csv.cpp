// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/offers_csv.h"

#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace coneline::report {

namespace {

constexpr std::array<std::string_view, 5> needed{"good", "supplier", "form", "litres", "cents"};
constexpr std::array<std::string_view, 5> possible{"expansion", "delivery_cents", "lead_days",
                                                   "least", "kilograms"};

/// One row; keeps the first fault.
class Row {
 public:
  Row(const CsvTable& table, const CsvRow& row) : table_(table), row_(row) {}

  std::string text(std::string_view column) {
    auto value = field(column);
    if (value.empty())
      wrong(column, fault("an empty cell", "Fill it in."));
    return value;
  }
  book::Form form() {
    const auto form = book::read_word<book::Form>(field("form"));
    if (!form)
      wrong("form", form.error());
    return form.value_or(book::Form::bag);
  }
  double real(std::string_view column, double low, double otherwise) {
    const auto value = field(column);
    if (value.empty() && optional(column))
      return otherwise;
    const auto number = parse_real(value);
    if (!number)
      wrong(column, number.error());
    else if (*number < low)
      wrong(column, fault(phrase("{} is below {}", value, low), "Correct it."));
    return number.value_or(otherwise);
  }
  std::int64_t whole(std::string_view column, std::int64_t low, std::int64_t otherwise) {
    constexpr std::int64_t most = 1'000'000'000;
    const auto value = field(column);
    if (value.empty() && optional(column))
      return otherwise;
    const auto number = parse_whole(value);
    if (!number)
      wrong(column, number.error());
    else if (*number < low || *number > most)
      wrong(column, fault(phrase("{} is not from {} to {}", value, low, most), "Correct it."));
    return number.value_or(otherwise);
  }
  std::optional<double> weight() {
    return field("kilograms").empty() ? std::nullopt : std::optional(real("kilograms", 0, 0));
  }
  [[nodiscard]] const std::optional<Fault>& fault_found() const { return fault_; }

 private:
  static bool optional(std::string_view column) {
    return std::ranges::find(possible, column) != possible.end();
  }
  [[nodiscard]] std::string field(std::string_view column) const {
    const auto at = table_.column(column);
    return at ? from_spreadsheet(row_.fields[*at]) : std::string();
  }
  void wrong(std::string_view column, const Fault& what) {
    if (!fault_)
      fault_ = what.at(table_.where(row_, column));
  }

  const CsvTable& table_;
  const CsvRow& row_;
  std::optional<Fault> fault_;
};

Result<void> known_columns(const CsvTable& table) {
  for (const auto name : needed)
    if (!table.column(name))
      return refuse(fault(phrase("the header has no column '{}'", name),
                          "It needs good, supplier, form, litres and cents.")
                        .at({table.file, 1, std::string(name)}));
  for (const auto& name : table.columns)
    if (std::ranges::find(needed, name) == needed.end() &&
        std::ranges::find(possible, name) == possible.end())
      return refuse(fault(phrase("the column '{}' is not known", name),
                          "Beside the needed ones there may be expansion, delivery_cents, "
                          "lead_days, least and kilograms.")
                        .at({table.file, 1, name}));
  return {};
}

} // namespace

Result<std::vector<book::Offer>> read_offers(const std::filesystem::path& file) {
  const auto table = read_csv_file(file);
  if (!table)
    return refuse(table.error());
  if (auto known = known_columns(*table); !known)
    return refuse(known.error());
  std::vector<book::Offer> offers;
  for (const auto& cells : table->rows) {
    Row row(*table, cells);
    constexpr double least_litres = 0.001;
    const book::Offer offer{{},
                            row.text("good"),
                            row.text("supplier"),
                            row.form(),
                            row.real("litres", least_litres, 1),
                            row.real("expansion", 1, 1),
                            row.whole("cents", 0, 0),
                            row.whole("delivery_cents", 0, 0),
                            static_cast<int>(row.whole("lead_days", 0, 0)),
                            row.whole("least", 1, 1),
                            row.weight()};
    if (row.fault_found())
      return refuse(*row.fault_found());
    offers.push_back(offer);
  }
  if (offers.empty())
    return refuse(
        fault("there are no offers", "Add a row for every offer.").at({table->file, 1, {}}));
  return offers;
}

} // namespace coneline::report
