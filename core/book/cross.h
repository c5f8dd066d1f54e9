// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A cross is a seed parent and the pollen parents whose pollen was used on its cone. It is not
// stored: it follows from the cone and its pollinations.

#include "core/book/entry.h"
#include "core/book/registers.h"

#include <set>
#include <span>
#include <string>

namespace coneline::book {

struct Cross {
  PlantId seed_parent;
  std::set<PlantId> pollen_parents;
  bool unknown_father = false; ///< some or all of the pollen came from nobody knows where

  auto operator<=>(const Cross&) const = default;
};

/// `pollinations` are the standing entries of that cone. A cone without any has an unknown father.
Cross cross_of(const Registers& registers, const Cone& cone, std::span<const Entry> pollinations);

/// Seed parent first, then the pollen parents in the order of their codes: "Old Sentinel × Blue
/// Twin + P174K". A plant without a name goes by its code; an unknown father is "unknown".
std::string cross_name(const Registers& registers, const Cross& cross);

/// The botanical side: the taxon's name, or for parents of different taxa their names joined by ×
/// (ICN Art. H.2), seed parent first.
std::string taxon_formula(const Registers& registers, const Cross& cross);

/// A plant as people say it: its name, or its code.
std::string plant_name(const Plant& plant);

} // namespace coneline::book
