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

/// All are moved, or none.
Result<Done> relocate(store::Book& book, const Relocate& wanted);
/// The same as a part of something larger, in one transaction with it.
Result<Done> relocate(store::Writing& writing, const Relocate& wanted);

} // namespace coneline::work
