// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_fields.h"

#include "core/base/phrase.h"
#include "core/exchange/logger_text.h"

#include <algorithm>
#include <array>

namespace coneline::exchange {

namespace {

struct Told {
  TableField field;
  std::string_view about;
  std::vector<std::string_view> names; ///< parts of a header that suggest it, the surest first
};

/// In the order in which columns are given away: the plain words last, so that "sown date" is not
/// taken for the seeds sown.
const std::vector<Told>& all_told() {
  static const std::vector<Told> told{
      {TableField::seed_parent,
       to_phrase("the plant that bore the cone, by name or code"),
       {"seed parent", "mother", "female parent", "madre", "female"}},
      {TableField::pollen_parent,
       to_phrase("the plant the pollen came from, by name or code"),
       {"pollen parent", "father", "male parent", "pollen from", "padre", "male"}},
      {TableField::cross,
       to_phrase("both parents in one cell: Old Gate × Tall Male"),
       {"cross", "cruce", "parents"}},
      {TableField::pollinated, to_phrase("the day of pollination"), {"pollinat", "polinizad"}},
      {TableField::harvested, to_phrase("the day the cone came off"), {"harvest", "cosecha"}},
      {TableField::seen,
       to_phrase("the day the seedlings were counted; today where it is left out"),
       {"checked", "last look", "inspected", "seen"}},
      {TableField::since,
       to_phrase("since when it is there: sown, potted, bought"),
       {"sown on", "sow date", "date sown", "sowing date", "since", "potted on", "date", "acquired",
        "fecha"}},
      {TableField::seedlings,
       to_phrase("of a tray: how many are up"),
       {"seedling", "germinated", "came up", "sprout", "roots"}},
      {TableField::count,
       to_phrase("how many: seeds, seeds sown, or plants"),
       {"count", "number of", "quantity", "qty", "seeds", "on hand", "sown", "cantidad", "how many",
        "number"}},
      {TableField::taxon,
       to_phrase("the botanical name"),
       {"taxon", "species", "botanical", "especie"}},
      {TableField::kind,
       to_phrase("seed, tray, pot or parent"),
       {"kind", "type", "stage", "what", "tipo"}},
      {TableField::litres,
       to_phrase("litres of a tray or pot that the book lacks"),
       {"litre", "liter", "volume"}},
      {TableField::width,
       to_phrase("mm across a tray or pot that the book lacks"),
       {"mm", "width", "diameter"}},
      {TableField::pot,
       to_phrase("the tray or pot it is in, by name"),
       {"pot", "tray", "container", "maceta"}},
      {TableField::place,
       to_phrase("where it stands, by name or code"),
       {"place", "bench", "location", "where", "house", "lugar"}},
      {TableField::supplier,
       to_phrase("where it came from"),
       {"supplier", "source", "from", "origin", "bought"}},
      {TableField::cone,
       to_phrase("the list's own word for cone or batch; rows that share it are of one"),
       {"cone", "batch", "lot"}},
      {TableField::name, to_phrase("what a parent plant is called"), {"plant name", "name"}},
      {TableField::sex, to_phrase("of a parent plant: male or female"), {"sex", "sexo"}},
      {TableField::note,
       to_phrase("what is worth remembering"),
       {"note", "remark", "comment", "nota"}}};
  return told;
}

} // namespace

std::string_view about(TableField field) {
  return std::ranges::find(all_told(), field, &Told::field)->about;
}

TableMatch guess(const std::vector<std::string>& columns) {
  TableMatch match;
  std::vector<std::string> left = columns;
  for (const auto& [field, about, names] : all_told())
    for (const auto& name : names) {
      const auto found = std::ranges::find_if(
          left, [&](const auto& column) { return lower(column).find(name) != std::string::npos; });
      if (found == left.end())
        continue;
      match.columns[field] = *found;
      left.erase(found);
      break;
    }
  return match;
}

} // namespace coneline::exchange
