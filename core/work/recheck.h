// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The verb "recheck": a look at stored seed. What is dead is taken out, and the next look gets its
// day; store and conditions stay as they were.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Recheck {
  Code batch;
  Count dead;                       ///< rotten, dried out, eaten
  std::optional<book::State> state; ///< of the dead; none where the batch holds only one
  std::optional<Date> next;         ///< none: as it was if that is still to come, else in a month
  Noted noted;
};

/// Fails: no such batch, not in a store, more dead than there are, a next look before this one.
Result<Done> recheck(store::Book& book, const Recheck& wanted);

} // namespace coneline::work
