// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Prepared statements of one connection. Each is prepared once and kept, since preparing takes
// longer than most of what a book is asked; and values come straight from the engine's row, since
// SOCI's rows of unknown columns allocate for every cell.

#include <soci/soci.h>

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace sqlite_api {
struct sqlite3_stmt;
}

namespace coneline::store::engine {

class Prepared;

/// One statement while it is asked. Its values are let go and it is given back at the end. Every
/// call may throw soci::soci_error.
class Cursor {
 public:
  /// Prepared for this once.
  Cursor(soci::session& session, const std::string& sql);
  Cursor(Cursor&&) = delete;
  ~Cursor();

  /// Values in the order of their places. A text must live as long as the cursor.
  void bind(std::int64_t value);
  void bind(double value);
  void bind(const std::string& value);
  void bind_nothing();

  /// To the next row; false after the last.
  bool step();

  enum class Holds { nothing, whole, real, text, bytes };
  /// The column of this name; throws where there is none. Columns asked for in their order are
  /// found at once.
  [[nodiscard]] int column(std::string_view name) const;
  [[nodiscard]] Holds holds(int column) const;
  [[nodiscard]] std::int64_t whole(int column) const;
  [[nodiscard]] double real(int column) const;
  /// Until the next step.
  [[nodiscard]] std::string_view text(int column) const;

 private:
  friend class Prepared;
  using Idle = std::vector<sqlite_api::sqlite3_stmt*>;
  Cursor(sqlite_api::sqlite3_stmt* statement, Idle& back) : statement_(statement), idle_(&back) {}
  void check(int result) const;
  [[nodiscard]] bool is_named(int column, std::string_view name) const;

  sqlite_api::sqlite3_stmt* statement_ = nullptr;
  Idle* idle_ = nullptr; ///< where it goes back to; nothing where it is for this once
  int bound_ = 0;
  int columns_ = -1; ///< not asked yet
  mutable int next_ = 0;
  mutable std::vector<std::string> names_; ///< of the columns, as far as they were asked for
};

/// What was prepared. Must be let go before its session is closed.
class Prepared {
 public:
  explicit Prepared(soci::session& session) : session_(session) {}
  Prepared(Prepared&&) = delete;
  ~Prepared();

  /// A statement that is in use already is prepared a second time.
  [[nodiscard]] Cursor take(const std::string& sql);

 private:
  soci::session& session_;
  std::unordered_map<std::string, Cursor::Idle> idle_;
};

} // namespace coneline::store::engine
