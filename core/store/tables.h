// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The session behind Reading and Writing. Private to this room.

#include "core/base/code.h"
#include "core/store/statement.h"

#include <string>
#include <string_view>

namespace coneline::store {

class Tables {
 public:
  Tables(soci::session& session, engine::Prepared& prepared, int series)
      : session_(session), prepared_(prepared), series_(series) {}

  Statement ask(std::string sql) { return {prepared_, std::move(sql)}; }
  soci::session& session() { return session_; }

  [[nodiscard]] int series() const { return series_; }
  void set_series(int series) { series_ = series; }
  /// A code of this book from the number in a table.
  [[nodiscard]] Code code(Kind kind, std::int64_t number) const {
    return Code::of(kind, series_, number).value();
  }

 private:
  soci::session& session_;
  engine::Prepared& prepared_;
  int series_;
};

/// Fails when the label belongs to another book.
Result<void> of_this_book(const Code& code, int series);

/// The table whose rows have codes of this kind.
std::string_view table_of(Kind kind);

} // namespace coneline::store
