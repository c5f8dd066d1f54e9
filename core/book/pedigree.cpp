// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/pedigree.h"

#include <algorithm>

namespace coneline::book {

namespace {

std::optional<std::size_t> place_of(const std::vector<Plant>& plants,
                                    const std::optional<PlantId>& id) {
  if (!id)
    return std::nullopt;
  const auto found = std::ranges::lower_bound(plants, *id, {}, &Plant::id);
  if (found == plants.end() || found->id != *id)
    return std::nullopt;
  return static_cast<std::size_t>(found - plants.begin());
}

} // namespace

std::vector<stats::Parents> pedigree_of(const std::vector<Plant>& plants) {
  std::vector<stats::Parents> parents;
  parents.reserve(plants.size());
  for (const auto& plant : plants)
    parents.push_back({place_of(plants, plant.seed_parent), place_of(plants, plant.pollen_parent)});
  return parents;
}

std::string own_ancestor_in_words(const std::vector<Plant>& plants,
                                  const std::vector<stats::Parents>& pedigree) {
  std::string words;
  for (const auto at : stats::own_ancestor(pedigree))
    words += (words.empty() ? "" : " → ") + plants[at].code.text() +
             (plants[at].name.empty() ? "" : " (" + plants[at].name + ")");
  return words;
}

} // namespace coneline::book
