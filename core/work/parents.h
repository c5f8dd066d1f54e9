// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The parents of a plant in the register, entered or corrected.

#include "core/work/verb_done.h"

namespace coneline::work {

struct GiveParents {
  Code plant;
  std::optional<Code> seed_parent;   ///< none: not known
  std::optional<Code> pollen_parent; ///< none: not known
};

/// Fails: a code that is no plant, a male seed parent, a female pollen parent, a plant that would
/// be its own ancestor (the way is named).
Result<Done> give_parents(store::Book& book, const GiveParents& wanted);

} // namespace coneline::work
