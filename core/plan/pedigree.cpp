// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/pedigree.h"

namespace coneline::plan {

std::vector<stats::Parents> pedigree_of(const book::Registers& registers) {
  return std::vector<stats::Parents>(registers.plants.size());
}

std::string own_ancestor_in_words(const book::Registers& registers,
                                  const std::vector<stats::Parents>& pedigree) {
  std::string words;
  for (const auto at : stats::own_ancestor(pedigree)) {
    const auto& plant = registers.plants[at];
    words += (words.empty() ? "" : " → ") + plant.code.text() +
             (plant.name.empty() ? "" : " (" + plant.name + ")");
  }
  return words;
}

} // namespace coneline::plan
