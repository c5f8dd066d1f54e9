// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Who the parents of the plants in the register are, as far as the register says.

#include "core/book/plant.h"
#include "core/stats/kinship.h"

#include <string>
#include <vector>

namespace coneline::book {

/// By place in `plants`, which are in the order of their ids. A parent that is not in the list is
/// not known.
std::vector<stats::Parents> pedigree_of(const std::vector<Plant>& plants);

/// The way from a plant back to itself: "P171K (Ada) → P172I → P171K (Ada)"; empty where no plant
/// is its own ancestor.
std::string own_ancestor_in_words(const std::vector<Plant>& plants,
                                  const std::vector<stats::Parents>& pedigree);

} // namespace coneline::book
