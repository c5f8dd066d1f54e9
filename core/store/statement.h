// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One SQL statement with its values, and the rows that come back. Private to this room.
//
//   Statement(session, sql::lot_by_id).with(id.value).each([&](const Row& row) { row.text("note");
//   });

#include "core/base/date.h"
#include "core/book/id.h"
#include "core/book/words.h"

#include <soci/soci.h>

#include <deque>
#include <functional>
#include <optional>
#include <stdexcept>
#include <string>

namespace coneline::store {

/// A row with its columns by name. Numbers are read whatever type the engine gave the column.
class Row {
 public:
  explicit Row(const soci::row& row) : row_(row) {}

  [[nodiscard]] std::int64_t whole(const std::string& column) const;
  [[nodiscard]] double real(const std::string& column) const;
  [[nodiscard]] std::string text(const std::string& column) const;
  [[nodiscard]] bool has(const std::string& column) const; ///< is not NULL

  [[nodiscard]] std::optional<std::int64_t> maybe_whole(const std::string& column) const;
  [[nodiscard]] std::optional<double> maybe_real(const std::string& column) const;
  /// A damaged date is a fault of the book and throws.
  [[nodiscard]] Date date(const std::string& column) const;
  [[nodiscard]] std::optional<Date> maybe_date(const std::string& column) const;
  template <class Id>
  [[nodiscard]] std::optional<Id> maybe_id(const std::string& column) const {
    const auto value = maybe_whole(column);
    return value ? std::optional<Id>(Id{*value}) : std::nullopt;
  }
  /// One of a closed set of words; another word is a fault of the book and throws.
  template <class Set>
  [[nodiscard]] Set one_of(const std::string& column) const {
    auto read = book::read_word<Set>(text(column));
    if (!read)
      throw std::runtime_error(read.error().what);
    return *read;
  }

 private:
  const soci::row& row_;
};

/// A text that is no UTF-8, which no book takes.
class NotText : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

class Statement {
 public:
  Statement(soci::session& session, std::string sql) : session_(session), sql_(std::move(sql)) {}

  /// Values in the order of their places.
  Statement& with(std::int64_t value);
  Statement& with(int value) { return with(static_cast<std::int64_t>(value)); }
  Statement& with(double value);
  /// Throws NotText.
  Statement& with(std::string value);
  Statement& with(std::string_view value) { return with(std::string(value)); }
  Statement& with(Date value) { return with(value.iso()); }
  template <class Value>
  Statement& with(const std::optional<Value>& value) {
    if (value)
      return with(*value);
    return with_nothing();
  }
  template <class Tag>
  Statement& with(book::Id<Tag> id) {
    return with(id.value);
  }
  Statement& with_nothing();

  void run();
  void each(const std::function<void(const Row&)>& take);
  /// The first column of the first row, or nothing.
  std::optional<std::int64_t> number();

 private:
  struct Bound {
    enum class Type { whole, real, text, nothing } type;
    long long whole = 0;
    double real = 0;
    std::string text;
    soci::indicator indicator = soci::i_ok;
  };
  soci::details::prepare_temp_type prepared();

  soci::session& session_;
  std::string sql_;
  std::deque<Bound> bound_; // a deque, since SOCI keeps references
};

} // namespace coneline::store
