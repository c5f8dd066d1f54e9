// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/benchmark/raw_sqlite.h"

#include <algorithm>
#include <cstring>
#include <sqlite3.h>
#include <stdexcept>

namespace coneline::tests {

namespace {

template <class Value>
void put(std::string& bytes, Value value) {
  bytes.append(reinterpret_cast<const char*>(&value), sizeof value);
}

template <class Value>
Value get(const char*& at) {
  Value value;
  std::memcpy(&value, at, sizeof value);
  at += sizeof value;
  return value;
}

void keep(sqlite3_stmt* row, int column, std::string& bytes) {
  const auto type = static_cast<char>(sqlite3_column_type(row, column));
  bytes += type;
  if (type == SQLITE_INTEGER)
    put(bytes, sqlite3_column_int64(row, column));
  else if (type == SQLITE_FLOAT)
    put(bytes, sqlite3_column_double(row, column));
  else if (type == SQLITE_TEXT) {
    const int size = sqlite3_column_bytes(row, column);
    put(bytes, size);
    bytes.append(reinterpret_cast<const char*>(sqlite3_column_text(row, column)),
                 static_cast<std::size_t>(size));
  }
}

int bind(sqlite3_stmt* statement, int place, const char*& at) {
  const char type = *at++;
  if (type == SQLITE_INTEGER)
    return sqlite3_bind_int64(statement, place, get<sqlite3_int64>(at));
  if (type == SQLITE_FLOAT)
    return sqlite3_bind_double(statement, place, get<double>(at));
  if (type != SQLITE_TEXT)
    return sqlite3_bind_null(statement, place);
  const int size = get<int>(at);
  const char* text = at;
  at += size;
  return sqlite3_bind_text(statement, place, text, size, SQLITE_STATIC);
}

void read_value(sqlite3_stmt* row, int column) {
  switch (sqlite3_column_type(row, column)) {
  case SQLITE_INTEGER:
    sqlite3_column_int64(row, column);
    break;
  case SQLITE_FLOAT:
    sqlite3_column_double(row, column);
    break;
  case SQLITE_TEXT:
    sqlite3_column_text(row, column);
    break;
  default:
    break;
  }
}

} // namespace

RawSqlite::RawSqlite(const std::filesystem::path& path) {
  expect(sqlite3_open(path.c_str(), &database_), SQLITE_OK);
  run("PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA journal_mode = WAL");
}

RawSqlite::~RawSqlite() {
  for (const auto& [sql, statement] : kept_)
    sqlite3_finalize(statement);
  sqlite3_close(database_);
}

void RawSqlite::expect(int result, int wanted) {
  if (result != wanted)
    throw std::runtime_error(sqlite3_errmsg(database_));
}

void RawSqlite::run(const std::string& script) {
  expect(sqlite3_exec(database_, script.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
}

sqlite3_stmt* RawSqlite::prepare(const std::string& sql) {
  sqlite3_stmt* statement = nullptr;
  expect(sqlite3_prepare_v2(database_, sql.c_str(), -1, &statement, nullptr), SQLITE_OK);
  return statement;
}

void RawSqlite::each(const std::string& query, const std::function<void(sqlite3_stmt*)>& take) {
  auto* statement = prepare(query);
  int result = 0;
  while ((result = sqlite3_step(statement)) == SQLITE_ROW)
    take(statement);
  sqlite3_finalize(statement);
  expect(result, SQLITE_DONE);
}

void RawSqlite::write(const std::string& sql, const std::vector<std::int64_t>& values) {
  auto& statement = kept_[sql];
  if (statement == nullptr)
    statement = prepare(sql);
  int place = 0;
  for (const auto value : values)
    expect(sqlite3_bind_int64(statement, ++place, value), SQLITE_OK);
  expect(sqlite3_step(statement), SQLITE_DONE);
  sqlite3_reset(statement);
}

std::int64_t RawSqlite::read(const std::string& query) {
  auto* statement = prepare(query);
  const int columns = sqlite3_column_count(statement);
  std::int64_t rows = 0;
  int result = 0;
  for (; (result = sqlite3_step(statement)) == SQLITE_ROW; ++rows)
    for (int column = 0; column < columns; ++column)
      read_value(statement, column);
  sqlite3_finalize(statement);
  expect(result, SQLITE_DONE);
  return rows;
}

RawTable RawSqlite::table(const std::string& name) {
  RawTable table{name, 0, 0, {}};
  each("SELECT * FROM " + name + " ORDER BY rowid", [&](sqlite3_stmt* row) {
    table.columns = sqlite3_column_count(row);
    ++table.rows;
    for (int column = 0; column < table.columns; ++column)
      keep(row, column, table.values);
  });
  return table;
}

std::vector<RawTable> RawSqlite::tables() {
  std::vector<std::string> names;
  // Tables are made after those they refer to.
  each("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' "
       "ORDER BY rowid",
       [&](sqlite3_stmt* row) {
         names.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(row, 0)));
       });
  std::vector<RawTable> tables;
  for (const auto& name : names)
    if (auto one = table(name); one.rows > 0)
      tables.push_back(std::move(one));
  return tables;
}

void RawSqlite::insert(const RawTable& table) {
  std::string places;
  for (int column = 0; column < table.columns; ++column)
    places += column == 0 ? "?" : ", ?";
  auto* statement = prepare("INSERT INTO " + table.name + " VALUES (" + places + ")");
  const char* at = table.values.data();
  for (std::int64_t row = 0; row < table.rows; ++row) {
    for (int place = 1; place <= table.columns; ++place)
      expect(bind(statement, place, at), SQLITE_OK);
    expect(sqlite3_step(statement), SQLITE_DONE);
    sqlite3_reset(statement);
  }
  sqlite3_finalize(statement);
}

void RawSqlite::make_bare() {
  std::string drops;
  each("SELECT name FROM sqlite_master WHERE type = 'trigger'", [&](sqlite3_stmt* row) {
    drops += "DROP TRIGGER ";
    drops += reinterpret_cast<const char*>(sqlite3_column_text(row, 0));
    drops += ";";
  });
  run(drops + "DELETE FROM pollen_store; DELETE FROM book");
}

} // namespace coneline::tests
