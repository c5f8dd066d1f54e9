// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Reads the fields of one row and says what is wrong with each. References become the ids that
// `keys` has for them: the row numbers within the folder, not yet those of a book.

#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/exchange/faults.h"
#include "core/exchange/keys.h"

#include <fmt/format.h>

namespace coneline::exchange {

class FieldReader {
 public:
  FieldReader(const CsvTable& table, const CsvRow& row, const Keys& keys, Faults& faults)
      : table_(table), row_(row), keys_(keys), faults_(faults) {}

  [[nodiscard]] bool sound() const { return sound_; } ///< no field so far was at fault

  void field(std::string_view column, std::string& text, Rule rule = Rule::none);
  void field(std::string_view column, Code& code, Kind kind);
  void lot_code(std::string_view column, Code& code);
  void any_code(std::string_view column, Code& code);
  template <class Id>
  void own_number(std::string_view column, Id& id) {
    field(column, id.value, Rule::above_zero);
  }

  void field(std::string_view column, Date& date);
  void field(std::string_view column, Moment& moment);
  void field(std::string_view column, double& number, Rule rule = Rule::none);
  void field(std::string_view column, int& number, Rule rule = Rule::none);
  void field(std::string_view column, std::int64_t& number, Rule rule = Rule::none);
  void field(std::string_view column, Count& count);
  void field(std::string_view column, bool& yes);
  template <class Set>
  requires std::is_enum_v<Set>
  void field(std::string_view column, Set& member) { take(column, member, book::read_word<Set>); }

  template <class Of>
  void field(std::string_view column, book::Id<Of>& id);
  void field(std::string_view column, book::Origin& origin);

  void field(const std::string& column, book::Range& range);
  void field(const std::string& column, std::optional<book::Range>& range);
  template <class Value, class... RuleOrKind>
  void field(std::string_view column, std::optional<Value>& value, RuleOrKind... rule) {
    if (!cell(column).empty())
      field(column, value.emplace(), rule...);
  }

 private:
  [[nodiscard]] std::string_view cell(std::string_view column) const {
    return row_.fields[*table_.column(column)];
  }
  void refuse_field(std::string_view column, const Fault& why) {
    sound_ = false;
    faults_.add(why.at(table_.where(row_, column)));
  }
  /// Reads a cell with `parse`, or says why not. A cut text is as wrong as the whole one.
  template <class Value, class Parse>
  bool take(std::string_view column, Value& to, Parse parse) {
    auto read = parse(cell(column));
    if (!read)
      read = parse(std::string_view(shortened(cell(column))));
    if (read)
      to = *read;
    else
      refuse_field(column, read.error());
    return read.has_value();
  }
  void check(std::string_view column, double number, Rule rule);

  const CsvTable& table_;
  const CsvRow& row_;
  const Keys& keys_;
  Faults& faults_;
  bool sound_ = true;
};

/// A key as it is compared: codes whatever way they were typed, names as they stand.
template <class Id>
Result<std::string> read_key(std::string_view text) {
  if constexpr (numbered<Id>) {
    return parse_whole(text).map([](std::int64_t number) { return std::to_string(number); });
  } else if constexpr (Called<Id>::letters.empty()) {
    return from_spreadsheet(text);
  } else {
    return Code::parse(text).and_then([&](const Code& code) -> Result<std::string> {
      if (Called<Id>::letters.find(static_cast<char>(code.kind())) == std::string_view::npos)
        return refuse(fault(phrase("{} is the code of a {}", code.text(), kind_said(code.kind())),
                            phrase("Here the code of a {} is expected.", Called<Id>::what)));
      return code.text();
    });
  }
}

template <class Of>
void FieldReader::field(std::string_view column, book::Id<Of>& id) {
  using Id = book::Id<Of>;
  std::string key;
  if (!take(column, key, read_key<Id>))
    return;
  const auto& known = keys_.of<Id>();
  const auto found = known.ids.find(key);
  if (found != known.ids.end())
    id = found->second;
  else if (known.whole)
    refuse_field(column, fault(phrase("there is no {} '{}' in {}", Called<Id>::what, shortened(key),
                                      file_of<typename Called<Id>::Row>),
                               "Correct it, or add that row."));
  else
    sound_ = false; // its file has a fault of its own, which is told there
}

} // namespace coneline::exchange
