// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Writes the fields of one row as text.

#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/exchange/keys.h"

namespace coneline::exchange {

class FieldWriter {
 public:
  explicit FieldWriter(const Keys& keys) : keys_(keys) {}

  [[nodiscard]] const std::vector<std::string>& columns() const { return columns_; }
  [[nodiscard]] const std::vector<std::string>& cells() const { return cells_; }
  /// The first column whose text no file can carry, or empty.
  [[nodiscard]] const std::string& unwritable() const { return unwritable_; }

  template <class... RuleOrKind>
  void field(std::string_view column, const std::string& text, RuleOrKind...) {
    if (!is_utf8(text) && unwritable_.empty())
      unwritable_ = column;
    cell(column, for_spreadsheet(text));
  }
  void field(std::string_view column, const Code& code, Kind) { cell(column, code.text()); }
  void lot_code(std::string_view column, const Code& code) { cell(column, code.text()); }
  void any_code(std::string_view column, const Code& code) { cell(column, code.text()); }
  template <class Id>
  void own_number(std::string_view column, Id id) {
    cell(column, std::to_string(id.value));
  }

  void field(std::string_view column, Date date) { cell(column, date.iso()); }
  void field(std::string_view column, Moment moment) { cell(column, moment.iso()); }
  void field(std::string_view column, double number, Rule = Rule::none) {
    cell(column, write_real(number));
  }
  void field(std::string_view column, int number, Rule = Rule::none) {
    cell(column, std::to_string(number));
  }
  void field(std::string_view column, std::int64_t number, Rule = Rule::none) {
    cell(column, std::to_string(number));
  }
  void field(std::string_view column, Count count) { cell(column, std::to_string(count.value())); }
  void field(std::string_view column, bool yes) { cell(column, yes ? "yes" : "no"); }
  template <class Set>
  requires std::is_enum_v<Set>
  void field(std::string_view column, Set member) { cell(column, std::string(book::word(member))); }

  template <class Of>
  void field(std::string_view column, book::Id<Of> id) {
    cell(column, id.stored() ? for_spreadsheet(keys_.text(id)) : "");
  }
  void field(std::string_view column, const book::Origin& origin) {
    std::visit([&](auto id) { field(column, id); }, origin);
  }

  void field(const std::string& column, const book::Range& range) {
    field(column + "_low", range.low);
    field(column + "_high", range.high);
  }
  void field(const std::string& column, const std::optional<book::Range>& range) {
    cell(column + "_low", range ? write_real(range->low) : "");
    cell(column + "_high", range ? write_real(range->high) : "");
  }
  template <class Value, class... RuleOrKind>
  void field(std::string_view column, const std::optional<Value>& value, RuleOrKind... rule) {
    if (value)
      field(column, *value, rule...);
    else
      cell(column, "");
  }

 private:
  void cell(std::string_view column, std::string text) {
    columns_.emplace_back(column);
    cells_.push_back(std::move(text));
  }

  const Keys& keys_;
  std::vector<std::string> columns_;
  std::vector<std::string> cells_;
  std::string unwritable_;
};

} // namespace coneline::exchange
