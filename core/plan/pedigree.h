// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Who the parents of the plants in the register are, as far as the register says.

#include "core/book/registers.h"
#include "core/stats/kinship.h"

namespace coneline::plan {

/// By place in registers.plants. A parent that is not a plant of the register is not known.
std::vector<stats::Parents> pedigree_of(const book::Registers& registers);

/// The way from a plant back to itself in words: "P171K (Ada) → P172I → P171K (Ada)"; empty where
/// no plant is its own ancestor.
std::string own_ancestor_in_words(const book::Registers& registers,
                                  const std::vector<stats::Parents>& pedigree);

} // namespace coneline::plan
