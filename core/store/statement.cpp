// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/statement.h"

#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline::store {

using Holds = engine::Cursor::Holds;

bool Row::has(std::string_view column) const {
  return row_.holds(row_.column(column)) != Holds::nothing;
}

std::int64_t Row::whole_at(int at, std::string_view column) const {
  switch (row_.holds(at)) {
  case Holds::whole:
    return row_.whole(at);
  case Holds::real:
    return static_cast<std::int64_t>(row_.real(at));
  case Holds::text:
    if (auto value = parse_whole(std::string(row_.text(at))))
      return *value;
    break;
  default:
    break;
  }
  throw std::runtime_error(phrase("the column {} holds no whole number", column));
}

double Row::real_at(int at, std::string_view column) const {
  if (row_.holds(at) == Holds::real)
    return row_.real(at);
  if (row_.holds(at) == Holds::text)
    return parse_real(std::string(row_.text(at))).value();
  return static_cast<double>(whole_at(at, column));
}

std::int64_t Row::whole(std::string_view column) const {
  return whole_at(row_.column(column), column);
}

double Row::real(std::string_view column) const {
  return real_at(row_.column(column), column);
}

std::string_view Row::view(std::string_view column) const {
  const int at = row_.column(column);
  if (const auto holds = row_.holds(at); holds != Holds::text && holds != Holds::nothing)
    throw std::runtime_error(phrase("the column {} holds no text", column));
  return row_.text(at);
}

std::string Row::text(std::string_view column) const {
  return std::string(view(column));
}

std::optional<std::int64_t> Row::maybe_whole(std::string_view column) const {
  const int at = row_.column(column);
  return row_.holds(at) == Holds::nothing ? std::nullopt : std::optional(whole_at(at, column));
}

std::optional<double> Row::maybe_real(std::string_view column) const {
  const int at = row_.column(column);
  return row_.holds(at) == Holds::nothing ? std::nullopt : std::optional(real_at(at, column));
}

Date Row::date(std::string_view column) const {
  auto read = Date::parse(view(column));
  if (!read)
    throw std::runtime_error(read.error().what);
  return *read;
}

std::optional<Date> Row::maybe_date(std::string_view column) const {
  return has(column) ? std::optional(date(column)) : std::nullopt;
}

Statement& Statement::with(std::int64_t value) {
  bound_.emplace_back(value);
  return *this;
}

Statement& Statement::with(double value) {
  bound_.emplace_back(value);
  return *this;
}

Statement& Statement::with(std::string value) {
  if (!is_utf8(value))
    throw NotText("a text holds bytes that are no UTF-8");
  bound_.emplace_back(std::move(value));
  return *this;
}

Statement& Statement::with_nothing() {
  bound_.emplace_back();
  return *this;
}

engine::Cursor Statement::asked() const {
  return prepared_ != nullptr ? prepared_->take(sql_) : engine::Cursor(*session_, sql_);
}

void Statement::bind(engine::Cursor& cursor) const {
  for (const auto& value : bound_) {
    if (const auto* whole = std::get_if<std::int64_t>(&value))
      cursor.bind(*whole);
    else if (const auto* real = std::get_if<double>(&value))
      cursor.bind(*real);
    else if (const auto* text = std::get_if<std::string>(&value))
      cursor.bind(*text);
    else
      cursor.bind_nothing();
  }
}

void Statement::run() {
  auto cursor = asked();
  bind(cursor);
  while (cursor.step()) {
  }
}

void Statement::each(const std::function<void(const Row&)>& take) {
  auto cursor = asked();
  bind(cursor);
  const Row row(cursor);
  while (cursor.step())
    take(row);
}

std::optional<std::int64_t> Statement::number() {
  auto cursor = asked();
  bind(cursor);
  if (!cursor.step())
    return std::nullopt;
  const auto value =
      cursor.holds(0) == Holds::nothing ? std::nullopt : std::optional(cursor.whole(0));
  // To the end, so that what writes has written all of it.
  while (cursor.step()) {
  }
  return value;
}

} // namespace coneline::store
