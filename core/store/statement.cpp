// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/statement.h"

#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline::store {

bool Row::has(const std::string& column) const {
  return row_.get_indicator(column) == soci::i_ok;
}

std::int64_t Row::whole(const std::string& column) const {
  switch (row_.get_properties(column).get_data_type()) {
  case soci::dt_integer:
    return row_.get<int>(column);
  case soci::dt_long_long:
    return row_.get<long long>(column);
  case soci::dt_unsigned_long_long:
    return static_cast<std::int64_t>(row_.get<unsigned long long>(column));
  case soci::dt_double:
    return static_cast<std::int64_t>(row_.get<double>(column));
  default:
    if (auto value = parse_whole(row_.get<std::string>(column)))
      return *value;
    throw std::runtime_error(phrase("the column {} holds no whole number", column));
  }
}

double Row::real(const std::string& column) const {
  if (row_.get_properties(column).get_data_type() == soci::dt_double)
    return row_.get<double>(column);
  if (row_.get_properties(column).get_data_type() == soci::dt_string)
    return parse_real(row_.get<std::string>(column)).value();
  return static_cast<double>(whole(column));
}

std::string Row::text(const std::string& column) const {
  return row_.get<std::string>(column, {});
}

std::optional<std::int64_t> Row::maybe_whole(const std::string& column) const {
  return has(column) ? std::optional(whole(column)) : std::nullopt;
}

std::optional<double> Row::maybe_real(const std::string& column) const {
  return has(column) ? std::optional(real(column)) : std::nullopt;
}

Date Row::date(const std::string& column) const {
  auto read = Date::parse(text(column));
  if (!read)
    throw std::runtime_error(read.error().what);
  return *read;
}

std::optional<Date> Row::maybe_date(const std::string& column) const {
  return has(column) ? std::optional(date(column)) : std::nullopt;
}

Statement& Statement::with(std::int64_t value) {
  bound_.push_back({Bound::Type::whole, value, 0, {}, soci::i_ok});
  return *this;
}

Statement& Statement::with(double value) {
  bound_.push_back({Bound::Type::real, 0, value, {}, soci::i_ok});
  return *this;
}

Statement& Statement::with(std::string value) {
  bound_.push_back({Bound::Type::text, 0, 0, std::move(value), soci::i_ok});
  return *this;
}

Statement& Statement::with_nothing() {
  bound_.push_back({Bound::Type::nothing, 0, 0, {}, soci::i_null});
  return *this;
}

soci::details::prepare_temp_type Statement::prepared() {
  auto prepared = session_.prepare << sql_;
  for (auto& value : bound_)
    switch (value.type) {
    case Bound::Type::whole:
      prepared, soci::use(value.whole, value.indicator);
      break;
    case Bound::Type::real:
      prepared, soci::use(value.real, value.indicator);
      break;
    case Bound::Type::text:
    case Bound::Type::nothing:
      prepared, soci::use(value.text, value.indicator);
      break;
    }
  return prepared;
}

void Statement::run() {
  soci::statement statement = prepared();
  statement.execute(true);
}

void Statement::each(const std::function<void(const Row&)>& take) {
  const soci::rowset<soci::row> rows = prepared();
  for (const auto& row : rows)
    take(Row(row));
}

std::optional<std::int64_t> Statement::number() {
  long long value = 0;
  soci::indicator indicator = soci::i_null;
  auto statement_parts = prepared();
  statement_parts, soci::into(value, indicator);
  soci::statement statement = statement_parts;
  if (!statement.execute(true) || indicator != soci::i_ok)
    return std::nullopt;
  return value;
}

} // namespace coneline::store
