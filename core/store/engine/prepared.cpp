// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/engine/prepared.h"

#include "core/base/phrase.h"
#include "core/store/engine/connection.h"

#include <stdexcept>

namespace coneline::store::engine {

namespace {

sqlite_api::sqlite3_stmt* prepare(soci::session& session, const std::string& sql) {
  sqlite_api::sqlite3_stmt* statement = nullptr;
  auto* to = connection(session);
  const int result = sqlite_api::sqlite3_prepare_v2(to, sql.c_str(), static_cast<int>(sql.size()),
                                                    &statement, nullptr);
  if (result != SQLITE_OK)
    throw soci::sqlite3_soci_error(sqlite_api::sqlite3_errmsg(to), result);
  return statement;
}

} // namespace

Cursor::Cursor(soci::session& session, const std::string& sql)
    : statement_(prepare(session, sql)) {}

Cursor::~Cursor() {
  if (idle_ == nullptr) {
    sqlite_api::sqlite3_finalize(statement_);
    return;
  }
  sqlite_api::sqlite3_reset(statement_);
  sqlite_api::sqlite3_clear_bindings(statement_);
  idle_->push_back(statement_);
}

void Cursor::check(int result) const {
  if (result != SQLITE_OK)
    throw soci::sqlite3_soci_error(
        sqlite_api::sqlite3_errmsg(sqlite_api::sqlite3_db_handle(statement_)), result);
}

void Cursor::bind(std::int64_t value) {
  check(sqlite_api::sqlite3_bind_int64(statement_, ++bound_, value));
}

void Cursor::bind(double value) {
  check(sqlite_api::sqlite3_bind_double(statement_, ++bound_, value));
}

void Cursor::bind(const std::string& value) {
  check(sqlite_api::sqlite3_bind_text(statement_, ++bound_, value.data(),
                                      static_cast<int>(value.size()), SQLITE_STATIC));
}

void Cursor::bind_nothing() {
  check(sqlite_api::sqlite3_bind_null(statement_, ++bound_));
}

bool Cursor::step() {
  const int result = sqlite_api::sqlite3_step(statement_);
  if (result == SQLITE_DONE)
    return false;
  if (result != SQLITE_ROW)
    check(result);
  // Only after a step, since a table that was changed is looked up anew within it.
  columns_ = sqlite_api::sqlite3_column_count(statement_);
  return true;
}

bool Cursor::is_named(int column, std::string_view name) const {
  const auto at = static_cast<std::size_t>(column);
  if (names_.size() <= at)
    names_.resize(static_cast<std::size_t>(columns_));
  if (names_[at].empty()) // the engine takes longer for each than all the rest of reading it
    names_[at] = sqlite_api::sqlite3_column_name(statement_, column);
  return names_[at] == name;
}

int Cursor::column(std::string_view name) const {
  for (int tried = 0; tried < columns_; ++tried) {
    const int at = next_ < columns_ ? next_ : 0;
    next_ = at + 1;
    if (is_named(at, name))
      return at;
  }
  throw std::runtime_error(phrase("there is no column {}", name));
}

Cursor::Holds Cursor::holds(int column) const {
  switch (sqlite_api::sqlite3_column_type(statement_, column)) {
  case SQLITE_INTEGER:
    return Holds::whole;
  case SQLITE_FLOAT:
    return Holds::real;
  case SQLITE_TEXT:
    return Holds::text;
  case SQLITE_BLOB:
    return Holds::bytes;
  default:
    return Holds::nothing;
  }
}

std::int64_t Cursor::whole(int column) const {
  return sqlite_api::sqlite3_column_int64(statement_, column);
}

double Cursor::real(int column) const {
  return sqlite_api::sqlite3_column_double(statement_, column);
}

std::string_view Cursor::text(int column) const {
  // In this order, since the length is that of the text it was made into.
  const auto* text = sqlite_api::sqlite3_column_text(statement_, column);
  const auto size = sqlite_api::sqlite3_column_bytes(statement_, column);
  return text == nullptr ? std::string_view()
                         : std::string_view(reinterpret_cast<const char*>(text),
                                            static_cast<std::size_t>(size));
}

Cursor Prepared::take(const std::string& sql) {
  auto& idle = idle_[sql]; // an unordered map leaves its values where they are
  if (idle.empty())
    return {prepare(session_, sql), idle};
  auto* statement = idle.back();
  idle.pop_back();
  return {statement, idle};
}

Prepared::~Prepared() {
  for (const auto& [sql, statements] : idle_)
    for (auto* statement : statements)
      sqlite_api::sqlite3_finalize(statement);
}

} // namespace coneline::store::engine
