// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Names as people write them: with a blank too many, small letters for large, a letter wrong. Such
// a name is the same thing again, not a further one.

#include "core/base/near_words.h"
#include "core/base/phrase.h"
#include "core/book/registers.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace coneline::book {

/// Without blanks at its ends, and with one where several stood.
std::string squeezed(std::string_view name);

/// Squeezed and in small letters (A to Z), as names are compared.
std::string in_small_letters(std::string_view name);

/// Whether two names differ in nothing but blanks and the case of their letters (A to Z).
bool read_alike(std::string_view one, std::string_view other);

/// The row of this name, else the first whose name reads alike; null where there is none.
template <class Row>
const Row* alike(const std::vector<Row>& rows, std::string_view name) {
  if (const auto* row = named(rows, name))
    return row;
  const auto found =
      std::ranges::find_if(rows, [&](const Row& row) { return read_alike(row.name, name); });
  return found == rows.end() ? nullptr : &*found;
}

/// The row whose name is nearest, where it is near enough to be meant: one letter in four wrong, at
/// most three. Null where none is.
template <class Row>
const Row* nearest(const std::vector<Row>& rows, std::string_view name) {
  constexpr std::size_t most = 3;
  const auto small = in_small_letters(name);
  const auto near = std::min(most, small.size() / 4);
  const Row* found = nullptr;
  auto best = near + 1;
  for (const auto& row : rows)
    if (const auto apart = letters_between(in_small_letters(row.name), small); apart < best) {
      best = apart;
      found = &row;
    }
  return found;
}

/// The name squeezed, for the row `own` or, without one, a further row. Fails where another row has
/// a name that reads alike but is written otherwise; whether the very name is taken is for the
/// store to say.
template <class Row, class RowId = decltype(Row::id)>
Result<std::string> name_for(const std::vector<Row>& rows, std::string_view given, RowId own = {}) {
  auto name = squeezed(given);
  for (const auto& row : rows)
    if (row.id != own && row.name != name && read_alike(row.name, name))
      return refuse(fault(phrase("'{}' stands in the book as '{}'", name, row.name),
                          "Write it as the book does, or choose another name."));
  return name;
}

/// The row of this name, blanks aside. Fails with the name that is nearest, where one is near.
/// `kind` is the register's word: "taxon".
template <class Row>
Result<const Row*> row_said(const std::vector<Row>& rows, const std::string& said,
                            std::string_view kind) {
  for (const auto& name : {said, squeezed(said)})
    if (const auto* row = named(rows, name))
      return row;
  const auto* near = nearest(rows, said);
  return refuse(fault(
      phrase("there is no {} '{}'", phrase_of(kind), said),
      near == nullptr
          ? phrase("Enter it first.")
          : phrase("The book has '{}': write that, or enter the new one first.", near->name)));
}

} // namespace coneline::book
