// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The verb "move": lots get another place.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Relocate {
  std::vector<Code> lots;
  Code place;
  Noted noted;
};

/// All are moved, or none. Tells where they stand now, which a later move in the book may have
/// changed again. Fails: a lot that holds nothing on the day, an unknown place.
Result<Done> relocate(store::Book& book, const Relocate& wanted);
/// The same as a part of something larger, in one transaction with it.
Result<Done> relocate(store::Writing& writing, const Relocate& wanted);

} // namespace coneline::work
