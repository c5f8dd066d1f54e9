// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One SQL statement with its values, and the rows that come back. Private to this room.
//
//   Statement(session, sql::lot_by_id).with(id.value).each([&](const Row& row) { row.text("note");
//   });

#include "core/base/date.h"
#include "core/book/id.h"
#include "core/book/words.h"
#include "core/store/engine/prepared.h"

#include <functional>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace coneline::store {

/// A row with its columns by name, until the next one comes. Numbers are read whatever type the
/// engine gave the column.
class Row {
 public:
  explicit Row(const engine::Cursor& row) : row_(row) {}

  [[nodiscard]] std::int64_t whole(std::string_view column) const;
  [[nodiscard]] double real(std::string_view column) const;
  [[nodiscard]] std::string text(std::string_view column) const; ///< empty where NULL
  [[nodiscard]] bool has(std::string_view column) const;         ///< is not NULL

  [[nodiscard]] std::optional<std::int64_t> maybe_whole(std::string_view column) const;
  [[nodiscard]] std::optional<double> maybe_real(std::string_view column) const;
  /// A damaged date is a fault of the book and throws.
  [[nodiscard]] Date date(std::string_view column) const;
  [[nodiscard]] std::optional<Date> maybe_date(std::string_view column) const;
  template <class Id>
  [[nodiscard]] std::optional<Id> maybe_id(std::string_view column) const {
    const auto value = maybe_whole(column);
    return value ? std::optional<Id>(Id{*value}) : std::nullopt;
  }
  /// One of a closed set of words; another word is a fault of the book and throws.
  template <class Set>
  [[nodiscard]] Set one_of(std::string_view column) const {
    auto read = book::read_word<Set>(view(column));
    if (!read)
      throw std::runtime_error(read.error().what);
    return *read;
  }

 private:
  /// A text, or nothing where NULL; anything else throws.
  [[nodiscard]] std::string_view view(std::string_view column) const;
  [[nodiscard]] std::int64_t whole_at(int at, std::string_view column) const;
  [[nodiscard]] double real_at(int at, std::string_view column) const;

  const engine::Cursor& row_;
};

/// A text that is no UTF-8, which no book takes.
class NotText : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

class Statement {
 public:
  /// Prepared for this once.
  Statement(soci::session& session, std::string sql) : session_(&session), sql_(std::move(sql)) {}
  /// Kept for the next time.
  Statement(engine::Prepared& prepared, std::string sql)
      : prepared_(&prepared), sql_(std::move(sql)) {}

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
  using Bound = std::variant<std::monostate, std::int64_t, double, std::string>;
  [[nodiscard]] engine::Cursor asked() const;
  void bind(engine::Cursor& cursor) const;

  soci::session* session_ = nullptr;
  engine::Prepared* prepared_ = nullptr;
  std::string sql_;
  std::vector<Bound> bound_;
};

} // namespace coneline::store
