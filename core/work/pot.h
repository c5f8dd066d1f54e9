// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// From the tray into a first pot, and from a pot into the next: each makes a pot group, or adds to
// one.

#include "core/work/verb_done.h"

namespace coneline::work {

struct PotUp {
  Code from;                        ///< a tray ("pot") or a pot group ("pot on")
  std::optional<book::State> state; ///< of a tray: none takes leaves first, then roots
  std::optional<Count> count;       ///< none: all
  std::string pot;                  ///< by name
  std::optional<std::string> mix;
  std::optional<Code> into;  ///< an existing pot group of the same cone and judgement
  std::optional<Code> place; ///< none: a new group stands where its source stood on the day
  Noted noted;
};

/// Fails: more potted than germinated, a different cone, an unknown pot, mix or place, nothing to
/// pot, a group in another pot or mix or of seed judged otherwise.
Result<Done> pot_up(store::Book& book, const PotUp& wanted);

} // namespace coneline::work
