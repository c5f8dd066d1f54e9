// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_reader.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline::exchange {

std::string shortened(std::string_view value) {
  constexpr std::size_t shown = 60;
  if (value.size() <= shown)
    return std::string(value);
  auto end = shown;
  while (end > 0 && (static_cast<unsigned char>(value[end]) & 0xC0U) == 0x80U)
    --end; // not through the middle of a letter
  return phrase("{}… ({} bytes)", value.substr(0, end), value.size());
}

namespace {

Result<bool> read_yes_or_no(std::string_view text) {
  if (text != "yes" && text != "no")
    return refuse(fault(phrase("'{}' is neither yes nor no", text), "Write yes or no."));
  return text == "yes";
}

Result<int> read_int(std::string_view text) {
  return parse_whole(text).and_then([&](std::int64_t number) -> Result<int> {
    if (number > most_whole || number < -most_whole)
      return refuse(fault(phrase("{} is far out of range", number),
                          phrase("At most {} is expected.", most_whole)));
    return static_cast<int>(number);
  });
}

std::optional<std::string_view> broken(Rule rule, double number) {
  switch (rule) {
  case Rule::above_zero:
    return number > 0 ? std::nullopt : std::optional("A number above 0 is expected.");
  case Rule::zero_or_more:
    return number >= 0 ? std::nullopt : std::optional("A number of 0 or more is expected.");
  case Rule::share:
    return number > 0 && number <= 1 ? std::nullopt
                                     : std::optional("A share above 0, at most 1, is expected.");
  case Rule::share_or_none:
    return number >= 0 && number < 1 ? std::nullopt
                                     : std::optional("A share from 0 to below 1 is expected.");
  case Rule::none:
  case Rule::given:
    break;
  }
  return std::nullopt;
}

} // namespace

void FieldReader::check(std::string_view column, double number, Rule rule) {
  if (const auto expected = broken(rule, number))
    refuse_field(column, fault(phrase("'{}' is out of range", shortened(cell(column))),
                               std::string(*expected)));
}

void FieldReader::field(std::string_view column, std::string& text, Rule rule) {
  text = from_spreadsheet(cell(column));
  if (rule == Rule::given && text.empty())
    refuse_field(column, fault("the field is empty", "A name is expected."));
}

void FieldReader::field(std::string_view column, Code& code, Kind kind) {
  if (take(column, code, Code::parse) && code.kind() != kind)
    refuse_field(column,
                 fault(phrase("{} is the code of a {}", code.text(), kind_said(code.kind())),
                       phrase("Here the code of a {} is expected.", kind_said(kind))));
}

void FieldReader::lot_code(std::string_view column, Code& code) {
  if (take(column, code, Code::parse) &&
      Called<book::LotId>::letters.find(static_cast<char>(code.kind())) == std::string_view::npos)
    refuse_field(column,
                 fault(phrase("{} is the code of a {}", code.text(), kind_said(code.kind())),
                       "Here the code of a batch, tray or pot group is expected."));
}

void FieldReader::any_code(std::string_view column, Code& code) {
  take(column, code, Code::parse);
}

void FieldReader::field(std::string_view column, Date& date) {
  take(column, date, Date::parse);
}

void FieldReader::field(std::string_view column, Moment& moment) {
  take(column, moment, Moment::parse);
}

void FieldReader::field(std::string_view column, double& number, Rule rule) {
  if (take(column, number, parse_real))
    check(column, number, rule);
}

void FieldReader::field(std::string_view column, int& number, Rule rule) {
  if (take(column, number, read_int))
    check(column, number, rule);
}

void FieldReader::field(std::string_view column, std::int64_t& number, Rule rule) {
  if (take(column, number, parse_whole))
    check(column, static_cast<double>(number), rule);
}

void FieldReader::field(std::string_view column, Count& count) {
  if (take(column, count, Count::parse) && count.none())
    refuse_field(column, fault("a movement of 0", "A count of 1 or more is expected."));
}

void FieldReader::field(std::string_view column, bool& yes) {
  take(column, yes, read_yes_or_no);
}

void FieldReader::field(std::string_view column, book::Origin& origin) {
  const auto text = cell(column);
  if (!text.empty() && (text.front() == 'Q' || text.front() == 'q'))
    field(column, origin.emplace<book::PurchaseId>());
  else
    field(column, origin.emplace<book::ConeId>());
}

void FieldReader::field(const std::string& column, book::Range& range) {
  const bool low = take(column + "_low", range.low, parse_real);
  const bool high = take(column + "_high", range.high, parse_real);
  if (!low || !high)
    return;
  if (const auto sound = book::Range::of(range.low, range.high); !sound)
    refuse_field(column + "_low", sound.error());
}

void FieldReader::field(const std::string& column, std::optional<book::Range>& range) {
  const bool low = !cell(column + "_low").empty();
  const bool high = !cell(column + "_high").empty();
  if (low && high)
    field(column, range.emplace());
  else if (low != high)
    refuse_field(column + (low ? "_high" : "_low"),
                 fault("one end of the range is empty", "Give both ends, or none."));
}

} // namespace coneline::exchange
