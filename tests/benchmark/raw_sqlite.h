// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The engine by its own C interface and nothing around it: what the store is measured against.

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace coneline::tests {

/// All rows of a table, value after value in one run of bytes.
struct RawTable {
  std::string name;
  int columns = 0;
  std::int64_t rows = 0;
  std::string values;
};

class RawSqlite {
 public:
  /// Opens with the settings of the store: foreign keys, write-ahead log, full synchronisation.
  explicit RawSqlite(const std::filesystem::path& path);
  ~RawSqlite();
  RawSqlite(const RawSqlite&) = delete;
  RawSqlite& operator=(const RawSqlite&) = delete;

  void run(const std::string& script);
  /// Runs one statement, which stays prepared, with whole numbers in its places.
  void write(const std::string& sql, const std::vector<std::int64_t>& values);
  /// Steps through what a query gives and reads every value; how many rows there were.
  std::int64_t read(const std::string& query);
  /// The same, handing each row's statement on.
  void each(const std::string& query, const std::function<void(sqlite3_stmt*)>& take);

  RawTable table(const std::string& name);
  /// Tables with rows, in an order in which each comes after those it refers to.
  std::vector<RawTable> tables();
  /// Inserts rows within the transaction that is open.
  void insert(const RawTable& table);
  /// Triggers and rows go, tables with their keys and indexes stay.
  void make_bare();

 private:
  sqlite3_stmt* prepare(const std::string& sql);
  void expect(int result, int wanted);
  sqlite3* database_ = nullptr;
  std::map<std::string, sqlite3_stmt*> kept_;
};

} // namespace coneline::tests
