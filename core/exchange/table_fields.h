// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the columns of an older spreadsheet can be matched to, and the match itself.

#include "core/book/words.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace coneline::exchange {

enum class TableField {
  kind,
  taxon,
  name,
  sex,
  cross,
  seed_parent,
  pollen_parent,
  cone,
  pollinated,
  harvested,
  since,
  count,
  seedlings,
  seen,
  pot,
  litres,
  width,
  place,
  supplier,
  note,
};

/// How the numbers of a date stand.
enum class TableDates { year_month_day, day_month_year, month_day_year };

/// Which column holds what, as the grower says it.
struct TableMatch {
  std::map<TableField, std::string> columns; ///< by the column's name
  std::map<TableField, std::string> for_all; ///< one value for every row, where no column has it
  std::optional<TableDates> dates;           ///< none: what the file itself tells
};

/// What a field is for, in a line.
std::string_view about(TableField field);

/// What the header's names suggest, to begin matching with; a column at most once.
TableMatch guess(const std::vector<std::string>& columns);

} // namespace coneline::exchange

namespace coneline::book {

template <>
struct Words<exchange::TableField> {
  using F = exchange::TableField;
  static constexpr std::string_view what = "field";
  static constexpr std::array<std::pair<F, std::string_view>, 20> all{
      {{F::kind, "kind"},
       {F::taxon, "taxon"},
       {F::name, "name"},
       {F::sex, "sex"},
       {F::cross, "cross"},
       {F::seed_parent, "seed parent"},
       {F::pollen_parent, "pollen parent"},
       {F::cone, "cone"},
       {F::pollinated, "pollinated"},
       {F::harvested, "harvested"},
       {F::since, "since"},
       {F::count, "count"},
       {F::seedlings, "seedlings"},
       {F::seen, "seen"},
       {F::pot, "pot"},
       {F::litres, "litres"},
       {F::width, "width"},
       {F::place, "place"},
       {F::supplier, "supplier"},
       {F::note, "note"}}};
};

} // namespace coneline::book
