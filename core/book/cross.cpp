// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/cross.h"

namespace coneline::book {

Cross cross_of(const Registers& registers, const Cone& cone, std::span<const Entry> pollinations) {
  Cross cross{cone.plant, {}, pollinations.empty()};
  for (const auto& entry : pollinations) {
    const auto* pass = std::get_if<Pollination>(&entry.detail);
    if (pass == nullptr)
      continue;
    for (const auto& used : pass->pollen) {
      if (used.lot)
        cross.pollen_parents.insert(registers.pollen_lot(*used.lot).plant);
      else
        cross.unknown_father = true;
    }
  }
  return cross;
}

std::string plant_name(const Plant& plant) {
  return plant.name.empty() ? plant.code.text() : plant.name;
}

std::string cross_name(const Registers& registers, const Cross& cross) {
  std::string fathers;
  for (const auto& id : cross.pollen_parents)
    fathers += (fathers.empty() ? "" : " + ") + plant_name(registers.plant(id));
  if (cross.unknown_father)
    fathers += fathers.empty() ? "unknown" : " + unknown";
  return plant_name(registers.plant(cross.seed_parent)) + " × " + fathers;
}

std::string taxon_formula(const Registers& registers, const Cross& cross) {
  const auto mother = registers.plant(cross.seed_parent).taxon;
  std::string formula = registers.taxon(mother).name;
  std::set<TaxonId> others;
  for (const auto& id : cross.pollen_parents)
    if (const auto taxon = registers.plant(id).taxon;
        taxon != mother && others.insert(taxon).second)
      formula += " × " + registers.taxon(taxon).name;
  return formula;
}

} // namespace coneline::book
