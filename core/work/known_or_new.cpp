// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/known_or_new.h"

#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/book/names.h"
#include "core/work/find_code.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// Whether a name is written like a code: then it is one, and a mistyped one makes no new row.
bool looks_like_code(const std::string& said, char letter) {
  return said.size() >= 4 && (said.front() == letter || said.front() == letter - 'A' + 'a') &&
         std::ranges::all_of(said.substr(1, said.size() - 2),
                             [](char c) { return c >= '0' && c <= '9'; });
}

template <class Row>
Result<const Row*> by_code_or_name(store::Reading& reading, const book::Registers& registers,
                                   const std::vector<Row>& rows, const std::string& said,
                                   char letter) {
  if (looks_like_code(said, letter)) {
    auto code = find_code(reading, registers, said);
    if (!code)
      return refuse(code.error());
    return book::coded(rows, *code);
  }
  if (std::ranges::count(rows, said, &Row::name) > 1)
    return refuse(fault(phrase("several are called '{}'", said), "Write the code instead."));
  return book::named(rows, said);
}

} // namespace

Result<book::TaxonId> KnownOrNew::taxon(const std::string& name) {
  if (name.empty())
    return refuse(fault("no taxon", "Write the botanical name."));
  if (const auto* known = book::alike(registers_.taxa, name))
    return known->id;
  book::Taxon taxon;
  taxon.name = book::squeezed(name);
  auto id = writing_.put(taxon);
  if (!id)
    return id;
  taxon.id = *id;
  registers_.taxa.push_back(taxon);
  news_.taxa.push_back(taxon.name);
  return id;
}

Result<book::Plant> KnownOrNew::add(const book::Plant& given) {
  auto code = writing_.next_code(Kind::plant);
  if (!code)
    return refuse(code.error());
  auto plant = given;
  plant.code = *code;
  auto id = writing_.put(plant);
  if (!id)
    return refuse(id.error());
  plant.id = *id;
  registers_.plants.push_back(plant);
  news_.plants.push_back(book::plant_name(plant));
  return plant;
}

Result<void> KnownOrNew::shows_its_sex(book::Plant& plant, book::Sex sex) {
  if (plant.sex == sex)
    return {};
  if (plant.sex != book::Sex::not_known)
    return refuse(fault(phrase("{} is a {} plant", plant.code.text(), book::said(plant.sex)),
                        sex == book::Sex::female ? "A seed parent is female: name another, or "
                                                   "correct the sex."
                                                 : "A pollen parent is male: name another, or "
                                                   "correct the sex."));
  plant.sex = sex;
  auto id = writing_.put(plant);
  if (!id)
    return refuse(id.error());
  std::ranges::find(registers_.plants, plant.id, &book::Plant::id)->sex = sex;
  return {};
}

Result<book::Plant> KnownOrNew::plant(const ParentSaid& parent) {
  if (!parent.said.empty()) {
    auto known = by_code_or_name(writing_, registers_, registers_.plants, parent.said, 'P');
    if (!known)
      return refuse(known.error());
    if (*known != nullptr) {
      auto plant = **known;
      if (auto shown = shows_its_sex(plant, parent.sex); !shown)
        return refuse(shown.error());
      return plant;
    }
  }
  if (parent.taxon.empty())
    return refuse(fault(phrase("the plant '{}' is new, and its taxon is not said", parent.said),
                        "Give the row a taxon, or enter the plant first."));
  auto of = taxon(parent.taxon);
  if (!of)
    return refuse(of.error());
  book::Plant plant;
  plant.name = parent.said;
  plant.taxon = *of;
  plant.taxon_certainty = parent.taxon_certainty;
  plant.sex = parent.sex;
  plant.origin = parent.origin;
  plant.note = note_;
  return add(plant);
}

Result<std::optional<book::PlaceId>> KnownOrNew::place(const std::string& said) {
  if (said.empty())
    return std::nullopt;
  auto known = by_code_or_name(writing_, registers_, registers_.places, said, 'H');
  if (!known)
    return refuse(known.error());
  if (*known != nullptr)
    return (*known)->id;
  if (const auto* same = book::alike(registers_.places, said))
    return same->id;
  auto code = writing_.next_code(Kind::place);
  if (!code)
    return refuse(code.error());
  book::Place place;
  place.code = *code;
  place.name = book::squeezed(said);
  auto id = writing_.put(place);
  if (!id)
    return refuse(id.error());
  place.id = *id;
  registers_.places.push_back(place);
  news_.places.push_back(place.name);
  return *id;
}

Result<book::Pot> KnownOrNew::pot(const PotSaid& meant) {
  if (meant.name.empty())
    return refuse(fault("no tray or pot", "Write which one it is in, by its name."));
  if (const auto* known = book::alike(registers_.pots, meant.name))
    return *known;
  if (!meant.litres || !meant.width_mm)
    return refuse(fault(phrase("there is no tray or pot called '{}'", meant.name),
                        "Enter it first, or give its litres and its width in mm."));
  book::Pot pot;
  pot.name = book::squeezed(meant.name);
  pot.litres = *meant.litres;
  pot.shape = meant.shape;
  pot.length_mm = *meant.width_mm;
  pot.width_mm = *meant.width_mm;
  pot.source = note_;
  auto id = writing_.put(pot);
  if (!id)
    return refuse(id.error());
  pot.id = *id;
  registers_.pots.push_back(pot);
  news_.pots.push_back(pot.name);
  return pot;
}

Result<book::PollenLotId> KnownOrNew::pollen(const book::Plant& male, Date day) {
  for (const auto& lot : registers_.pollen_lots)
    if (lot.plant == male.id && lot.collected == day && lot.note == note_)
      return lot.id;
  auto code = writing_.next_code(Kind::pollen);
  if (!code)
    return refuse(code.error());
  book::PollenLot lot;
  lot.code = *code;
  lot.plant = male.id;
  lot.collected = day;
  lot.note = note_;
  auto id = writing_.put(lot);
  if (!id)
    return id;
  lot.id = *id;
  registers_.pollen_lots.push_back(lot);
  return id;
}

} // namespace coneline::work
