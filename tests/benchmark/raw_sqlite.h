// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The bare engine, without any part of Coneline, to compare with.

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <variant>
#include <vector>

struct sqlite3;

namespace coneline::tests {

class RawSqlite {
 public:
  using Value = std::variant<std::monostate, std::int64_t, std::string>;
  using Rows = std::vector<std::vector<Value>>;

  /// Opens a file as a book is opened: write-ahead log, full synchronisation, foreign keys.
  explicit RawSqlite(const std::filesystem::path& path);
  ~RawSqlite();
  RawSqlite(const RawSqlite&) = delete;
  RawSqlite& operator=(const RawSqlite&) = delete;

  void run(const std::string& sql);
  /// Every row of an answer.
  Rows all(const std::string& sql);
  /// Steps through an answer and adds up its whole numbers; what a bare query costs.
  std::int64_t sum(const std::string& sql);
  /// Puts the rows into a table, one prepared statement for all.
  void insert(const std::string& table, const Rows& rows);

 private:
  sqlite3* file_ = nullptr;
};

} // namespace coneline::tests
