// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/benchmark/raw_sqlite.h"

#include <sqlite3.h>
#include <stdexcept>

namespace coneline::tests {

namespace {

struct Close {
  void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};
using Statement = std::unique_ptr<sqlite3_stmt, Close>;

void must(bool done, sqlite3* file) {
  if (!done)
    throw std::runtime_error(sqlite3_errmsg(file));
}

Statement prepared(sqlite3* file, const std::string& sql) {
  sqlite3_stmt* statement = nullptr;
  must(sqlite3_prepare_v2(file, sql.c_str(), -1, &statement, nullptr) == SQLITE_OK, file);
  return Statement(statement);
}

RawSqlite::Value value_at(sqlite3_stmt* row, int column) {
  switch (sqlite3_column_type(row, column)) {
  case SQLITE_NULL:
    return {};
  case SQLITE_INTEGER:
    return sqlite3_column_int64(row, column);
  default: {
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(row, column));
    return std::string(text, static_cast<std::size_t>(sqlite3_column_bytes(row, column)));
  }
  }
}

void bind(sqlite3_stmt* statement, int place, const RawSqlite::Value& value) {
  if (const auto* number = std::get_if<std::int64_t>(&value))
    sqlite3_bind_int64(statement, place, *number);
  else if (const auto* text = std::get_if<std::string>(&value))
    sqlite3_bind_text(statement, place, text->data(), static_cast<int>(text->size()),
                      SQLITE_STATIC);
  else
    sqlite3_bind_null(statement, place);
}

} // namespace

RawSqlite::RawSqlite(const std::filesystem::path& path) {
  must(sqlite3_open(path.c_str(), &file_) == SQLITE_OK, file_);
  run("PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA journal_mode = WAL");
}

RawSqlite::~RawSqlite() {
  sqlite3_close(file_);
}

void RawSqlite::run(const std::string& sql) {
  must(sqlite3_exec(file_, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK, file_);
}

RawSqlite::Rows RawSqlite::all(const std::string& sql) {
  const auto statement = prepared(file_, sql);
  Rows rows;
  while (sqlite3_step(statement.get()) == SQLITE_ROW) {
    auto& row = rows.emplace_back();
    for (int column = 0; column < sqlite3_column_count(statement.get()); ++column)
      row.push_back(value_at(statement.get(), column));
  }
  return rows;
}

std::int64_t RawSqlite::sum(const std::string& sql) {
  const auto statement = prepared(file_, sql);
  std::int64_t sum = 0;
  while (sqlite3_step(statement.get()) == SQLITE_ROW)
    for (int column = 0; column < sqlite3_column_count(statement.get()); ++column)
      sum += sqlite3_column_int64(statement.get(), column);
  return sum;
}

void RawSqlite::insert(const std::string& table, const Rows& rows) {
  if (rows.empty())
    return;
  std::string places;
  for (std::size_t column = 0; column < rows.front().size(); ++column)
    places += places.empty() ? "?" : ", ?";
  const auto statement = prepared(file_, "INSERT INTO " + table + " VALUES (" + places + ")");
  for (const auto& row : rows) {
    for (std::size_t column = 0; column < row.size(); ++column)
      bind(statement.get(), static_cast<int>(column) + 1, row[column]);
    must(sqlite3_step(statement.get()) == SQLITE_DONE, file_);
    sqlite3_reset(statement.get());
  }
}

} // namespace coneline::tests
