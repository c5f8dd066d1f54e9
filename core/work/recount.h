// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Counting again. A difference is not hidden: it goes to "unexplained" and is reported.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Recount {
  Code lot;
  std::optional<book::State> state; ///< none where the lot holds only one
  Count counted;
  Noted noted;
};

/// `Done::told` says the difference. An exact count is an entry too.
Result<Done> recount(store::Book& book, const Recount& wanted);

} // namespace coneline::work
